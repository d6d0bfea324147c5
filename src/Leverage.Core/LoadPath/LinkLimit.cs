using Leverage.Probability;
using Leverage.Outcomes;

namespace Leverage.LoadPath;

/// <summary>What a link of the load path is.</summary>
public enum LinkKind
{
    /// <summary>Socket, spanner or key on the hexagon.</summary>
    Hexagon,

    /// <summary>An adapter between drives.</summary>
    Adapter,

    /// <summary>The drive square.</summary>
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

/// <summary>One link of the load path and the torque at the nut at which it gives.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Part">Which one, in the trade's words: "36", "1/2 in", "20".</param>
/// <param name="LimitNmm">Torque at the nut it stands, N·mm.</param>
/// <param name="MedianOverLimit">Median strength over the limit: 1.25 for a test torque, 1 for a computed one.</param>
/// <param name="Source">Where the limit comes from.</param>
/// <param name="Confirmed">False for a recalled or editable figure.</param>
public readonly record struct LinkLimit(
    LinkKind Kind, string Part, double LimitNmm, double MedianOverLimit, string Source, bool Confirmed)
{
    /// <summary>What it really stands, scattered.</summary>
    public Strength Strength => new(LimitNmm * MedianOverLimit, ToolStrength.Scatter);
}
