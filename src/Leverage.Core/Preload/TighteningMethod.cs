using Leverage.Tables;

namespace Leverage.Preload;

/// <summary>What a joint is tightened with, from the table <c>tightening-scatter</c>.</summary>
/// <param name="Name">Its key: <c>wrench</c>, <c>angle</c>, <c>feel</c>, <c>impact</c>.</param>
/// <param name="Words">What it is.</param>
/// <param name="Low">Scatter of the clamp either way at best, a share.</param>
/// <param name="High">Scatter at worst.</param>
public sealed record TighteningMethod(string Name, string Words, double Low, double High)
{
    /// <summary>What a first torque is set with when nothing is said.</summary>
    public static TighteningMethod Wrench => Named("wrench");

    /// <summary>Whether it is a torque wrench, whose scatter is that of the friction.</summary>
    public bool IsWrench => Name == "wrench";

    /// <summary>A torque and then an angle.</summary>
    public static TighteningMethod Angle => Named("angle");

    /// <summary>How far over its setting a clicking wrench gets when it is pulled again.</summary>
    public static double SecondClick => Named("second-click").High;

    /// <summary>How far a torque wrench itself may be off.</summary>
    public static double WrenchAlone => Named("wrench-alone").Low;

    /// <summary>α_A at worst, largest over smallest clamp.</summary>
    public double AlphaA => ClampScatter.LargestOverSmallest(High);

    /// <summary>The method of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The method.</returns>
    /// <exception cref="Reading.InputException">No such method; the message gives the nearest names.</exception>
    public static TighteningMethod Named(string name)
    {
        TableRow row = RowLookup.Named("tightening-scatter", name, "a way of tightening");
        return new TighteningMethod(row.Key, row.Text("words"), row.Number("low_percent") / 100, row.Number("high_percent") / 100);
    }
}
