namespace Leverage.BreakLoose;

/// <summary>What nuts have shown so far, all torques at the nut, N·mm.</summary>
/// <param name="HeldNmm">The largest torque this nut has stood without moving; 0 for none.</param>
/// <param name="CameNmm">What like nuts on the same machine came loose at.</param>
/// <param name="AlikeHeldNmm">What like nuts stood without moving.</param>
public sealed record Shown(double HeldNmm, IReadOnlyList<double> CameNmm, IReadOnlyList<double> AlikeHeldNmm)
{
    /// <summary>Share of the variance of the logarithm that is nut to nut; the rest is common to like nuts of one machine (judgement).</summary>
    public const double Within = 0.5;

    /// <summary>Nothing shown.</summary>
    public static Shown Nothing { get; } = new(0, [], []);
}
