using Leverage.Probability;
using Leverage.Tables;

namespace Leverage.Friction;

/// <summary>A coefficient of friction and how far it scatters: one in ten lies below low, one in ten above high.</summary>
/// <param name="Low">10th percentile.</param>
/// <param name="Likely">Median.</param>
/// <param name="High">90th percentile.</param>
public readonly record struct FrictionRange(double Low, double Likely, double High)
{
    /// <summary>Friction at assembly when nothing is known: 0.14, lightly oiled steel (VDI 2230 classes B and C meet here).</summary>
    public const double Default = 0.14;

    /// <summary>Likely friction over low, and high over likely, when only one figure is given (judgement): 0.10 to 0.20 about 0.14.</summary>
    public const double Scatter = 1.4;

    /// <summary>σ of the logarithm through low and high.</summary>
    public double Sigma => LogNormalSpread.SigmaFromP10P90(Low, High);

    /// <summary>A single figure with the usual scatter about it.</summary>
    /// <param name="likely">Median, above 0.</param>
    /// <returns>The range.</returns>
    public static FrictionRange About(double likely) => new(likely / Scatter, likely, likely * Scatter);

    /// <summary>What is taken when neither a figure nor a lubricant is named: 0.14 with its usual scatter.</summary>
    public static FrictionRange Unknown => About(Default);

    /// <summary>A single figure taken as stated: low, likely and high alike, as published tables are worked out.</summary>
    /// <param name="friction">The figure, above 0.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not a finite number above 0.</exception>
    public static FrictionRange Stated(double friction)
    {
        Require.Positive(friction, nameof(friction));
        return new FrictionRange(friction, friction, friction);
    }

    /// <summary>Friction of a joint as lubricated, from the table <c>friction</c>.</summary>
    /// <param name="name">Its key, such as <c>oiled</c>.</param>
    /// <returns>The range.</returns>
    /// <exception cref="Reading.InputException">No such lubrication.</exception>
    public static FrictionRange Lubricated(string name)
    {
        TableRow row = RowLookup.Named("friction", name, "a lubrication");
        return new FrictionRange(row.Number("low"), row.Number("likely"), row.Number("high"));
    }

    /// <summary>Whether a lubrication is a solid paste, which stays where oil and grease go.</summary>
    /// <param name="name">Its key, such as <c>anti-seize</c>.</param>
    /// <returns>True for a paste.</returns>
    /// <exception cref="Reading.InputException">No such lubrication.</exception>
    public static bool IsPaste(string name) => RowLookup.Named("friction", name, "a lubrication").Says("paste", "yes");
}
