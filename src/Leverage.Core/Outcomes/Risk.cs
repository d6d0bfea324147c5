using Leverage.Probability;

namespace Leverage.Outcomes;

/// <summary>What can end a pull besides the nut, the hand and a sliding tube.</summary>
public enum RiskKind
{
    /// <summary>A tool, bar or tube gives.</summary>
    ToolGives,

    /// <summary>The bolt or stud twists off; its strength is that of the shank itself, without tension.</summary>
    StudTwistsOff,

    /// <summary>The corners of the hexagon round.</summary>
    CornersRound,

    /// <summary>The wheel, or whatever the fastener turns with, turns.</summary>
    WheelTurns,
}

/// <summary>One thing that can end a pull, and the torque at the nut that it stands.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Strength">Its scattered strength; for <see cref="RiskKind.StudTwistsOff"/> the torque in the shank.</param>
/// <param name="MedianAt">Median strength, N·mm, by an input evenly spread from 0 to 1, such as play; it never rises. Null for none.</param>
public readonly record struct Risk(RiskKind Kind, Strength Strength, Func<double, double>? MedianAt = null)
{
    /// <summary>Least median that is told from nothing, N·mm.</summary>
    internal const double LeastNmm = 1;
}

/// <summary>A tube that may slide off: it stays while the friction on the bar is at least what the pull needs.</summary>
/// <param name="Friction">Scatter of the friction of tube on bar.</param>
/// <param name="LeastToStay">Friction at which it just stays on while the nut holds: the same at any torque.</param>
/// <param name="LeastAsItTurns">Friction at which it just stays on to the end of the swing, by the torque that broke the nut loose, N·mm; null where that is not judged.</param>
public sealed record Sliding(SplitLogNormal Friction, double LeastToStay, Func<double, double>? LeastAsItTurns = null)
{
    /// <summary>Deviates of the friction between which the chance to slide as the nut turns is smooth.</summary>
    private static readonly double[] Deviates = [5, 1.5, -1.5, -5];

    /// <summary>Log torques at which the friction needed as the nut turns passes those deviates: the more it took to move, the less is needed after.</summary>
    internal IEnumerable<double> Bends(double low, double high)
    {
        foreach (double friction in LeastAsItTurns is null ? [] : Deviates.Select(Friction.At))
        {
            if (Root.Find(low, high, log => LeastAsItTurns!(Math.Exp(log)) - friction) is { } bend)
            {
                yield return bend;
            }
        }
    }
}

/// <summary>Chances of what happens first; they sum to 1.</summary>
/// <param name="ComesLoose">The nut turns.</param>
/// <param name="StaysTight">The hand has no more.</param>
/// <param name="ToolGives">A tool, bar or tube gives.</param>
/// <param name="StudTwistsOff">The bolt or stud twists off.</param>
/// <param name="CornersRound">The corners round.</param>
/// <param name="SlidesOff">The tube slides off.</param>
/// <param name="WheelTurns">The wheel turns.</param>
/// <param name="SlidesAsItTurns">Of the cases that come loose, the share in which the tube then slides off.</param>
public readonly record struct OutcomeShares(
    double ComesLoose,
    double StaysTight,
    double ToolGives,
    double StudTwistsOff,
    double CornersRound,
    double SlidesOff,
    double WheelTurns,
    double SlidesAsItTurns)
{
    /// <summary>Chance that something gives: tool, stud or corners.</summary>
    public double Gives => ToolGives + StudTwistsOff + CornersRound;

    /// <summary>Sums what each risk has taken into the shares of its kind.</summary>
    internal static OutcomeShares Of(
        double comesLoose, double staysTight, double slidesOff, double slidesAsItTurns, ReadOnlySpan<Risk> risks, ReadOnlySpan<double> each)
    {
        return new OutcomeShares(
            comesLoose,
            staysTight,
            Of(RiskKind.ToolGives, risks, each),
            Of(RiskKind.StudTwistsOff, risks, each),
            Of(RiskKind.CornersRound, risks, each),
            slidesOff,
            Of(RiskKind.WheelTurns, risks, each),
            slidesAsItTurns);
    }

    private static double Of(RiskKind kind, ReadOnlySpan<Risk> risks, ReadOnlySpan<double> each)
    {
        double sum = 0;
        for (int i = 0; i < risks.Length; i++)
        {
            sum += risks[i].Kind == kind ? each[i] : 0;
        }

        return sum;
    }
}
