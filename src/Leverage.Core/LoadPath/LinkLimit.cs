using Leverage.Probability;

namespace Leverage.LoadPath;

/// <summary>What a link of the load path is.</summary>
public enum LinkKind
{
    /// <summary>A socket on the hexagon.</summary>
    Socket,

    /// <summary>A ring spanner on the hexagon.</summary>
    Ring,

    /// <summary>An open spanner on the hexagon.</summary>
    Open,

    /// <summary>A hexagon key.</summary>
    Key,

    /// <summary>The corners of the hexagon.</summary>
    Corners,

    /// <summary>An adapter between drives.</summary>
    Adapter,

    /// <summary>An extension between bar and socket.</summary>
    Extension,

    /// <summary>The drive square of the bar.</summary>
    Square,

    /// <summary>The pin of a flex head.</summary>
    FlexPin,

    /// <summary>The bar in bending.</summary>
    Bar,

    /// <summary>The tube in bending at the bar's tip.</summary>
    TubeBending,

    /// <summary>The tube's wall where the bar's tip presses.</summary>
    TubeDentTip,

    /// <summary>The tube's wall at its mouth.</summary>
    TubeDentMouth,

    /// <summary>The bolt or stud in torsion.</summary>
    Stud,
}

/// <summary>Where a limit comes from.</summary>
public enum LimitSource
{
    /// <summary>Test torque in print, ISO 1711-1 or, of a key, ISO 2936.</summary>
    TestTorque,

    /// <summary>Between the tabled sizes of its series.</summary>
    BetweenSizes,

    /// <summary>The law of ISO 1711-1 series A, for a size its table lacks.</summary>
    SeriesLaw,

    /// <summary>A recalled test torque.</summary>
    RecalledTest,

    /// <summary>The smallest legal square, fully plastic at its least hardness.</summary>
    LeastSquare,

    /// <summary>The square a bar of unknown size carries.</summary>
    BarOfSquare,

    /// <summary>Fully plastic bending of a round bar.</summary>
    Folds,

    /// <summary>Double shear at yield.</summary>
    DoubleShear,

    /// <summary>Fully plastic bending of a compact tube, EN 1993-1-1 class 1.</summary>
    PlasticTube,

    /// <summary>First yield of a tube that is not class 1.</summary>
    ElasticTube,

    /// <summary>What a jack handle carries at its end by its own standard, AS 2615.</summary>
    JackHandle,

    /// <summary>A dent of 1 % of the diameter, DNV-RP-C204.</summary>
    Dent,

    /// <summary>0.7 of the dent resistance, at a free mouth.</summary>
    DentAtMouth,

    /// <summary>Fully plastic torsion of the root.</summary>
    TwistsOff,

    /// <summary>Our own solids of a corner that rounds off.</summary>
    CornerSolids,
}

/// <summary>One link of the load path and the torque at the nut at which it breaks.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="LimitNmm">Torque at the nut it stands, N·mm.</param>
/// <param name="MedianOverLimit">Median strength over the limit.</param>
/// <param name="Scatter">σ of the logarithm of what it really stands.</param>
/// <param name="Source">Where the limit comes from.</param>
/// <param name="Confirmed">False for a recalled or editable figure.</param>
public readonly record struct LinkLimit(
    LinkKind Kind, double LimitNmm, double MedianOverLimit, double Scatter, LimitSource Source, bool Confirmed)
{
    /// <summary>Width across flats, or diameter, mm; 0 where the name tells the size.</summary>
    public double SizeMm { get; init; }

    /// <summary>Its name in a table: a drive square in inches, a thread with its grade; null where a size tells it.</summary>
    public string? Name { get; init; }

    /// <summary>Torque at which it takes a set though it does not fold yet, N·mm; null where that is not told.</summary>
    public double? SetsNmm { get; init; }

    /// <summary>Median by an input evenly spread from 0 to 1, such as play, N·mm; null for none.</summary>
    public Func<double, double>? MedianAt { get; init; }

    /// <summary>Whether it is the tube that breaks there.</summary>
    public bool IsTube => Kind is LinkKind.TubeBending or LinkKind.TubeDentTip or LinkKind.TubeDentMouth;

    /// <summary>What it really stands, scattered.</summary>
    public Strength Strength => new(LimitNmm * MedianOverLimit, Scatter);

    /// <summary>A limit that is the least a sound part stands: its median lies above it.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="limitNmm">Torque at the nut, N·mm.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <param name="confirmed">False for a recalled or editable figure.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Least(LinkKind kind, double limitNmm, LimitSource source, bool confirmed) =>
        new(kind, limitNmm, ToolStrength.MedianOverLeast, ToolStrength.LeastScatter, source, confirmed);

    /// <summary>A limit worked out from likely sizes and steel: its own median.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="limitNmm">Torque at the nut, N·mm.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <param name="confirmed">False for a recalled or editable figure.</param>
    /// <returns>The link.</returns>
    public static LinkLimit Likely(LinkKind kind, double limitNmm, LimitSource source, bool confirmed) =>
        new(kind, limitNmm, 1, ToolStrength.LikelyScatter, source, confirmed);
}
