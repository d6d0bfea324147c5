using Leverage.Tables;
using MathNet.Numerics.Statistics;

namespace Leverage.Proof;

/// <summary>What the figures say of a state of the joint.</summary>
public enum EvidenceFinding
{
    /// <summary>No figure can be compared with it.</summary>
    None,

    /// <summary>The figures fall where they should.</summary>
    Fits,

    /// <summary>The figures lie above it: nuts take more than it says.</summary>
    TooLow,

    /// <summary>The figures lie below it: nuts take less than it says.</summary>
    TooHigh,
}

/// <summary>One state of the joint beside the figures that belong to it.</summary>
/// <param name="Condition">Key of the state.</param>
/// <param name="Words">The state in words.</param>
/// <param name="Ratios">The figures that belong to it.</param>
/// <param name="Finding">What they say.</param>
/// <param name="OverMedian">Median of the typical figures over the state's own median; null where there is none.</param>
public sealed record ConditionEvidence(
    string Condition, string Words, IReadOnlyList<MeasuredRatio> Ratios, EvidenceFinding Finding, double? OverMedian)
{
    /// <summary>Typical figures should fall within the middle half of their state (judgement).</summary>
    public const double TypicalFrom = 0.25;

    /// <summary>Ends should be rarer than one in two and commoner than one in a hundred (judgement).</summary>
    public const double EndRarest = 0.01;

    /// <summary>Every state, in the order of its table.</summary>
    /// <returns>One finding a state.</returns>
    public static IReadOnlyList<ConditionEvidence> All()
    {
        MeasuredRatio[] ratios = [.. MeasuredRatio.All];
        return [.. TableCatalog.Tables["conditions"].Rows.Select(row => Of(row, [.. ratios.Where(ratio => ratio.Condition == row.Key)]))];
    }

    /// <summary>What figures say of a state: the median share of the typical ones, else that of the ends.</summary>
    internal static ConditionEvidence Of(TableRow row, IReadOnlyList<MeasuredRatio> ratios)
    {
        double[] typical = Shares(ratios, ratio => ratio.Typical);
        double[] low = Shares(ratios, ratio => ratio.Low);
        double[] high = Shares(ratios, ratio => ratio.High);
        double[] over = [.. ratios.Select(ratio => ratio.OverMedian).OfType<double>()];
        EvidenceFinding finding = typical.Length > 0
            ? Find(typical, TypicalFrom, 1 - TypicalFrom)
            : high.Length > 0 ? Find(high, 0.5, 1 - EndRarest) : low.Length > 0 ? Find(low, EndRarest, 0.5) : EvidenceFinding.None;
        return new ConditionEvidence(row.Key, row.Text("words"), ratios, finding, over.Length > 0 ? over.Median() : null);
    }

    private static double[] Shares(IReadOnlyList<MeasuredRatio> ratios, Func<MeasuredRatio, double?> figure) =>
        [.. ratios.Select(ratio => ratio.ShareBelow(figure(ratio))).OfType<double>()];

    private static EvidenceFinding Find(double[] shares, double from, double to) => shares.Median() switch
    {
        var share when share < from => EvidenceFinding.TooHigh,
        var share when share > to => EvidenceFinding.TooLow,
        _ => EvidenceFinding.Fits,
    };
}
