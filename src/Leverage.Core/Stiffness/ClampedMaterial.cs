using Leverage.Tables;
using UnitsNet;

namespace Leverage.Stiffness;

/// <summary>What a bolt clamps, from the table <c>clamped-materials</c>.</summary>
/// <param name="Name">Its key: <c>steel</c>, <c>aluminium</c>, <c>iron</c>, <c>copper</c>.</param>
/// <param name="Words">What it is.</param>
/// <param name="Modulus">E, modulus of elasticity.</param>
/// <param name="Factor">A of the stiffness of clamped parts.</param>
/// <param name="Exponent">B of the same.</param>
public sealed record ClampedMaterial(string Name, string Words, Pressure Modulus, double Factor, double Exponent)
{
    /// <summary>What is taken when nothing is said.</summary>
    public static ClampedMaterial Steel => Named("steel");

    /// <summary>The material of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The material.</returns>
    /// <exception cref="Reading.InputException">No such material; the message gives the nearest names.</exception>
    public static ClampedMaterial Named(string name)
    {
        TableRow row = RowLookup.Named("clamped-materials", name, "a clamped material");
        return new ClampedMaterial(
            row.Key, row.Text("words"), Pressure.FromMegapascals(row.Number("modulus_mpa")), row.Number("factor"), row.Number("exponent"));
    }
}
