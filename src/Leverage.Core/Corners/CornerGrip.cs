using Leverage.Probability;
using Leverage.Reading;

namespace Leverage.Corners;

/// <summary>What turns the hexagon from outside. A key in a recess is none of them: its recess rounds too, and that is not covered.</summary>
public enum CornerTool
{
    /// <summary>A socket or ring of six points.</summary>
    SixPoints,

    /// <summary>A socket or ring of twelve points.</summary>
    TwelvePoints,

    /// <summary>An open jaw.</summary>
    OpenJaw,
}

/// <summary>A tool on a nut or head.</summary>
/// <param name="AcrossFlatsMm">Nominal width across flats of the nut, mm.</param>
/// <param name="NutHeightMm">Height of the standard nut or head, mm; null where it is not known.</param>
/// <param name="EngagedShare">Share of that height the tool holds, above 0 to 1.</param>
/// <param name="Tool">What turns it.</param>
/// <param name="Wear">Share of the width across corners that is gone.</param>
/// <param name="YieldMpa">Yield of the nut, MPa.</param>
/// <param name="ToolAcrossFlatsMm">Nominal width across flats of the tool, mm; null for the nut's own size.</param>
/// <param name="JawTestNmm">Test torque of an open spanner, N·mm, by which it spreads; null for one that does not.</param>
public sealed record CornerGrip(
    double AcrossFlatsMm,
    double? NutHeightMm,
    double EngagedShare,
    CornerTool Tool,
    double Wear,
    double YieldMpa,
    double? ToolAcrossFlatsMm = null,
    double? JawTestNmm = null)
{
    /// <summary>Where the corners round off, by the play the tool may have.</summary>
    /// <returns>The limit, or null where no height is known: not judged.</returns>
    /// <exception cref="InputException">The tool does not go on the nut.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CornerLimit? Limit() => NutHeightMm is not { } height ? null : new CornerLimit(this, Fit(), height);

    /// <summary>Torque at a play, N·mm.</summary>
    internal double TorqueNmm(double heightMm, double play)
    {
        double held = Require.Positive(heightMm, nameof(NutHeightMm)) * Require.Positive(Require.Between(EngagedShare, 0, 1, nameof(EngagedShare)), nameof(EngagedShare));
        return Tool == CornerTool.OpenJaw && JawTestNmm is { } test
            ? CornerHold.SpreadingJaw(new JawGrip(held, AcrossFlatsMm, YieldMpa, play, Wear, test))
            : CornerHold.Torque(Coefficient(play), held, AcrossFlatsMm, YieldMpa);
    }

    private double Coefficient(double play) => Tool switch
    {
        CornerTool.SixPoints => CornerHold.SixPoints(play, Wear),
        CornerTool.TwelvePoints => CornerHold.TwelvePoints(play, Wear),
        _ => CornerHold.RigidJaw(play, Wear),
    };

    private PlayRange Fit() => ToolFit.Of(AcrossFlatsMm, ToolAcrossFlatsMm ?? AcrossFlatsMm) ?? throw new InputException(
        FormattableString.Invariant($"a tool of {ToolAcrossFlatsMm:0.##} mm does not go on a nut of {AcrossFlatsMm:0.##} mm across flats."));
}

/// <summary>Torque at which the corners round off. Its play is drawn evenly between the ends; about that it scatters as a lognormal.</summary>
public sealed record CornerLimit
{
    /// <summary>Factor either way at P5 and P95, as far as the solids behind the formula trust themselves (judgement).</summary>
    public const double ScatterFactor = 1.5;

    private readonly CornerGrip _grip;
    private readonly double _heightMm;

    internal CornerLimit(CornerGrip grip, PlayRange play, double heightMm)
    {
        (_grip, Play, _heightMm) = (grip, play, heightMm);
        (LowNmm, MedianNmm, HighNmm) = (TorqueNmm(1), TorqueNmm(0.5), TorqueNmm(0));
    }

    /// <summary>σ of the logarithm.</summary>
    public static double Sigma { get; } = LogNormalSpread.SigmaFromP5P95(1 / ScatterFactor, ScatterFactor);

    /// <summary>Play of the tool.</summary>
    public PlayRange Play { get; }

    /// <summary>Median at the most play, N·mm; 0 where the nut then spins.</summary>
    public double LowNmm { get; }

    /// <summary>Median at the likely play, N·mm; 0 where the nut then spins.</summary>
    public double MedianNmm { get; }

    /// <summary>Median at the least play, N·mm.</summary>
    public double HighNmm { get; }

    /// <summary>Median at a share of the way from the least to the most play.</summary>
    /// <param name="playShare">0 to 1, each as likely as the other.</param>
    /// <returns>Torque, N·mm; 0 where the nut spins.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 1.</exception>
    public double TorqueNmm(double playShare) => _grip.TorqueNmm(_heightMm, Play.At(playShare));
}
