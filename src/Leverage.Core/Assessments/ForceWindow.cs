using Leverage.LoadPath;

namespace Leverage.Assessments;

/// <summary>A limit as force of the hands against reach.</summary>
/// <param name="Link">What breaks there.</param>
/// <param name="ForceN">Force at each reach of the window, N; NaN where the limit does not exist.</param>
public sealed record LimitCurve(LinkLimit Link, IReadOnlyList<double> ForceN);

/// <summary>
/// Force against length: at each reach the force must be above what the nut needs and below the lowest of hand and limits.
/// </summary>
public sealed record ForceWindow
{
    /// <summary>Reaches, nut's axis to middle of the hands, mm, rising.</summary>
    public required IReadOnlyList<double> ReachMm { get; init; }

    /// <summary>Force needed at P10 of the break-loose torque, N.</summary>
    public required IReadOnlyList<double> NeedLowN { get; init; }

    /// <summary>Force needed at P50, N.</summary>
    public required IReadOnlyList<double> NeedLikelyN { get; init; }

    /// <summary>Force needed at P90, N.</summary>
    public required IReadOnlyList<double> NeedHighN { get; init; }

    /// <summary>Hand force at P10, N.</summary>
    public required double HandLowN { get; init; }

    /// <summary>Hand force at P50, N.</summary>
    public required double HandLikelyN { get; init; }

    /// <summary>Hand force at P90, N.</summary>
    public required double HandHighN { get; init; }

    /// <summary>Every limit as a curve.</summary>
    public required IReadOnlyList<LimitCurve> Limits { get; init; }

    /// <summary>Where a bar takes a set, below where it folds.</summary>
    public required IReadOnlyList<LimitCurve> Sets { get; init; }

    /// <summary>The parts that could not be judged: no limit is drawn for them.</summary>
    public required IReadOnlyList<LinkKind> NotJudged { get; init; }

    /// <summary>Force at each reach that the nut has held, N; null where it has not been tried.</summary>
    public IReadOnlyList<double>? HeldN { get; init; }

    /// <summary>The strong pull at this set-up's reach, N; null with no bar.</summary>
    public double? StrongPullN { get; init; }

    /// <summary>Lowest of likely hand force and all limits at each reach, N: the roof of the window.</summary>
    public required IReadOnlyList<double> RoofN { get; init; }

    /// <summary>Reach of this set-up, mm; null with no bar.</summary>
    public double? YourReachMm { get; init; }

    /// <summary>The link whose torque limit lies below the likely need, so that no length helps; null where one does.</summary>
    public LinkLimit? NoLengthHelps { get; init; }

    /// <summary>Reaches at which it works: first and last, mm; null where it works nowhere on the chart.</summary>
    public (double FromMm, double ToMm)? Works { get; init; }
}

/// <summary>Draws up the window of an assessment.</summary>
public static class WindowMaker
{
    private const int Points = 181;

    /// <summary>The window of an assessment, from 0.2 to 2 m, or what the case needs.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <returns>The window.</returns>
    public static ForceWindow Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        double[] reach = Reaches(assessment);
        List<(LinkLimit Link, double[] ForceN)> limits = Limits(assessment, reach);
        double[] need = PerReach(assessment.Nut.LikelyNmm, reach);
        double hand = assessment.Hand.Quantile(0.5);
        double[] roof = Roof(hand, limits);
        return new ForceWindow
        {
            ReachMm = reach,
            NeedLowN = PerReach(assessment.Nut.LowNmm, reach),
            NeedLikelyN = need,
            NeedHighN = PerReach(assessment.Nut.HighNmm, reach),
            HandLowN = assessment.Hand.Quantile(0.1),
            HandLikelyN = hand,
            HandHighN = assessment.Hand.Quantile(0.9),
            Limits = [.. limits.Select(limit => new LimitCurve(limit.Link, limit.ForceN))],
            Sets = [.. assessment.Links.Where(link => link.Limit.SetsNmm is not null)
                .Select(link => new LimitCurve(link.Limit, PerReach(link.Limit.SetsNmm!.Value, reach)))],
            NotJudged = assessment.NotJudged,
            HeldN = assessment.Setup.Fastener.HeldNmm > 0 ? PerReach(assessment.Setup.Fastener.HeldNmm, reach) : null,
            StrongPullN = assessment.Lever is { } lever ? assessment.Judgement.StrongPullNmm / lever.ReachMm : null,
            RoofN = roof,
            YourReachMm = assessment.Lever?.ReachMm,
            NoLengthHelps = Blocker(assessment),
            Works = Working(reach, need, roof),
        };
    }

    /// <summary>A link below the likely need whatever the length: tube links are not, for a longer overlap shifts them.</summary>
    private static LinkLimit? Blocker(LooseningAssessment assessment)
    {
        JudgedLink? blocker = null;
        foreach (JudgedLink link in assessment.Links)
        {
            bool lower = link.Limit.LimitNmm < assessment.Nut.LikelyNmm && !link.Limit.IsTube;
            blocker = lower && !(blocker?.Limit.LimitNmm <= link.Limit.LimitNmm) ? link : blocker;
        }

        return blocker?.Limit;
    }

    private static double[] Reaches(LooseningAssessment assessment)
    {
        double needed = assessment.NeededHigh.Millimeters;
        double yours = assessment.Lever?.ReachMm ?? 0;
        double to = Math.Clamp(Math.Max(1.1 * needed, 1.15 * yours), 600, 3000);
        to = needed is > 1200 and < 2000 ? Math.Max(to, 2000) : to;
        double from = Math.Min(200, yours > 0 ? 0.6 * yours : 200);
        return [.. Enumerable.Range(0, Points).Select(i => from + (to - from) * i / (Points - 1))];
    }

    private static double[] PerReach(double torqueNmm, double[] reach)
    {
        double[] force = new double[reach.Length];
        for (int i = 0; i < force.Length; i++)
        {
            force[i] = torqueNmm / reach[i];
        }

        return force;
    }

    private static List<(LinkLimit Link, double[] ForceN)> Limits(LooseningAssessment assessment, double[] reach)
    {
        List<(LinkLimit, double[])> curves = [];
        foreach (JudgedLink link in assessment.Links)
        {
            if (!link.Limit.IsTube)
            {
                curves.Add((link.Limit, PerReach(link.Limit.LimitNmm, reach)));
            }
        }

        if (assessment.Setup is { Tube: { } tube, Bar: { } bar } && assessment.Lever is { } lever)
        {
            AddTube(TubeLimits.Of(tube), bar.Length.Millimeters, lever.OverlapMm, reach, curves);
        }

        return curves;
    }

    /// <summary>The tube's limits as the hands move along it: a = reach − bar, the overlap as it is.</summary>
    private static void AddTube(TubeLimits limits, double barMm, double overlapMm, double[] reach, List<(LinkLimit, double[])> curves)
    {
        curves.Add(Beyond(LinkKind.TubeBending, limits, reach, barMm, a => limits.MomentNmm / a));
        if (double.IsFinite(limits.TipN))
        {
            curves.Add(Beyond(LinkKind.TubeDentTip, limits, reach, barMm, a => limits.TipN * overlapMm / (a + overlapMm)));
            curves.Add(Beyond(LinkKind.TubeDentMouth, limits, reach, barMm, a => limits.MouthN * overlapMm / a));
        }
    }

    private static (LinkLimit, double[]) Beyond(LinkKind kind, TubeLimits limits, double[] reach, double barMm, Func<double, double> force) =>
        (LinkLimit.Likely(kind, 0, limits.Source, true), Array.ConvertAll(reach, r => r - barMm > 1 ? force(r - barMm) : double.NaN));

    /// <summary>The least of hand and limits at each reach; a limit that does not exist there is none.</summary>
    private static double[] Roof(double handN, List<(LinkLimit Link, double[] ForceN)> limits)
    {
        double[] roof = new double[Points];
        Array.Fill(roof, handN);
        foreach (var (_, force) in limits)
        {
            for (int i = 0; i < roof.Length; i++)
            {
                roof[i] = force[i] < roof[i] ? force[i] : roof[i];
            }
        }

        return roof;
    }

    private static (double, double)? Working(double[] reach, double[] need, double[] roof)
    {
        double? from = null;
        double to = 0;
        for (int i = 0; i < reach.Length; i++)
        {
            if (roof[i] >= need[i])
            {
                from ??= reach[i];
                to = reach[i];
            }
        }

        return from is { } first ? (first, to) : null;
    }
}
