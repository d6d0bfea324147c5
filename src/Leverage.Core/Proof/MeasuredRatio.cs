using Leverage.BreakLoose;
using Leverage.Preload;
using Leverage.Tables;
using Leverage.Threads;
using MathNet.Numerics.Distributions;

namespace Leverage.Proof;

/// <summary>One measured or stated loosening figure of <c>shared/measured</c>, and where it falls in its state.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Words">What it is.</param>
/// <param name="Condition">The state it belongs to; null for none.</param>
/// <param name="RefersTo">What the ratio is over: <c>tightening</c>, <c>loosening</c>, <c>moving</c>, <c>no-oil</c>.</param>
/// <param name="Low">Low end.</param>
/// <param name="Typical">Typical.</param>
/// <param name="High">High end, or an <em>up to</em>.</param>
/// <param name="Source">Who said so.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record MeasuredRatio(
    string Key, string Words, string? Condition, string RefersTo, double? Low, double? Typical, double? High, string Source, ValueStatus Status)
{
    /// <summary>Loosening over tightening torque of a clean joint where its thread is not known: 40 % + 50 % − 10 % of the common split.</summary>
    private const double CommonShare = 0.8;

    /// <summary>Preload left on average: losses of 0 to 10 %, evenly spread.</summary>
    private const double MeanLeft = 0.95;

    private ScrewThread? Thread { get; init; }

    private double Friction { get; init; }

    /// <summary>All figures, in the order of the file.</summary>
    public static IEnumerable<MeasuredRatio> All => TableCatalog.Measured["loosening"].Rows.Select(Read);

    /// <summary>The share of nuts in its state that take less than a ratio; null where the state cannot be compared.</summary>
    /// <param name="ratio">The ratio, above 0, or null for none.</param>
    /// <returns>Share, 0 to 1.</returns>
    public double? ShareBelow(double? ratio) =>
        ratio is { } value && State is { } state && Scale(state) is { } scale
            ? Normal.CDF(0, 1, Math.Log(value / (scale * state.Growth.Median)) / state.Growth.Sigma)
            : null;

    /// <summary>Typical over the state's median; null where either is missing.</summary>
    public double? OverMedian => Typical is { } value && State is { } state && Scale(state) is { } scale
        ? value / (scale * state.Growth.Median) : null;

    private Condition? State => Condition is { } name ? BreakLoose.Condition.Named(name) : null;

    /// <summary>What G is multiplied by to give this ratio; null where a locker's own torque or another measure stands between.</summary>
    private double? Scale(Condition state) => (RefersTo, state.Basis, state.LockerNm) switch
    {
        (_, _, > 0) => null,
        ("tightening", GrowthBasis.Book, _) => 1,
        ("tightening", GrowthBasis.Loosening, _) => CleanShare * MeanLeft,
        ("loosening", GrowthBasis.Loosening, _) => 1,
        _ => null,
    };

    private double CleanShare => Thread is { } thread
        ? JointTorque.LooseningShare(thread.Joint(HexagonCatalog.Bearing(thread).BearingMm), JointFriction.Same(Friction))
        : CommonShare;

    private static MeasuredRatio Read(TableRow row)
    {
        string refers = row.Text("refers_to");
        if (refers is not ("tightening" or "loosening" or "moving" or "no-oil"))
        {
            throw row.Error("refers_to", "tightening, loosening, moving or no-oil");
        }

        return new MeasuredRatio(
            row.Key, row.Text("words"), row.OptionalText("condition"), refers,
            row.OptionalNumber("low"), row.OptionalNumber("typical"), row.OptionalNumber("high"), row.Source, row.Status)
        {
            Thread = row.OptionalText("thread") is { } thread ? ThreadCatalog.Named(thread) : null,
            Friction = row.OptionalNumber("friction") ?? 0.14,
        };
    }
}
