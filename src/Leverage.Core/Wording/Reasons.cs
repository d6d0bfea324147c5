using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Outcomes;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>Sentences for what speaks for care or stop: a part, what it does, the figures.</summary>
internal static class Reasons
{
    /// <summary>A limit is above the strong pull where the two are printed apart.</summary>
    private const double Above = 1.001;

    /// <summary>A chance that is told: less rounds to none in a hundred.</summary>
    private const double Told = 0.005;

    /// <summary>One sentence for each rule, the stops first, and why it falls short.</summary>
    internal static IReadOnlyList<string> Of(LooseningAssessment assessment, UnitStyle style) =>
        [.. Safety(assessment, style), .. Short(assessment, style)];

    /// <summary>One sentence for each rule that speaks for care or stop.</summary>
    internal static IEnumerable<string> Safety(LooseningAssessment a, UnitStyle style) =>
        Rules(a.Judgement.Ruling.Stops).Concat(Rules(a.Judgement.Ruling.Cares)).Select(rule => Sentence(rule, a, style));

    /// <summary>Why a pull falls short, where the nut stays tight more often than anything breaks.</summary>
    internal static IEnumerable<string> Short(LooseningAssessment a, UnitStyle style)
    {
        if (a is { Verdict: Verdict.Short, Judgement: var judged, Lever: { } lever } && judged.StaysTight >= judged.Breaks)
        {
            yield return $"The nut likely needs {Nmm(a.Nut.LikelyNmm, style)}. Your hands likely make {Number(a.Hand.Quantile(0.5) * lever.ReachMm, style)}.";
        }
    }

    /// <summary>Why it is safe, or is not: the first reason, or what a verdict without one rests on.</summary>
    internal static string Why(LooseningAssessment a, UnitStyle style) => Safety(a, style).FirstOrDefault() ?? Rests(a, style);

    /// <summary>The same with every reason.</summary>
    internal static string AllWhy(LooseningAssessment a, UnitStyle style) =>
        string.Join(' ', Safety(a, style)) is { Length: > 0 } reasons ? reasons : Rests(a, style);

    private static string Rests(LooseningAssessment a, UnitStyle style) =>
        a.Lever is null ? NoBar
        : a.Setup.RecessWorn ? "how a key holds a worn recess has no figure"
        : a.Judgement.Ruling.Safe != Safe.Yes ? "give the size of the socket, spanner, key or drive square"
        : Nothing(a, style);

    /// <summary>What a yes rests on: the strong pull, the chance over all pulls, and what was not judged.</summary>
    private static string Nothing(LooseningAssessment a, UnitStyle style)
    {
        string judged = a.NotJudged.Count > 0 ? " that was judged" : "";
        string broken = $"{UnitStyle.InHundred(a.Judgement.Breaks)} break something.";
        string strong = a is { Judgement.Margin: < 1, Weakest.Limit: var part }
            ? $"A strong pull reaches the limit of the {PartWords.Name(part, style)}; of all pulls {broken}"
            : $"No part{judged} breaks at a strong pull.{(a.Judgement.Breaks >= Told ? $" 1 pull in 10 is harder: {broken}" : "")}";
        LinkLimit? first = a.Links.Select(link => link.Limit).Where(limit => limit.Kind is LinkKind.Stud or LinkKind.Corners && limit.LimitNmm < a.Nut.LikelyNmm)
            .OrderBy(limit => limit.LimitNmm).Cast<LinkLimit?>().FirstOrDefault();
        strong += first is { } weak ? $" Pull harder and the {PartWords.Fails(weak, style)} at {Nmm(weak.LimitNmm, style)}, before the nut likely comes." : "";
        return strong + (a.NotJudged.Count > 0 ? $" Not judged: {string.Join(", ", a.NotJudged.Select(PartWords.Name))}." : "");
    }

    /// <summary>What is missing where no pull could be judged.</summary>
    internal const string NoBar = "give the length of your bar";

    internal static IEnumerable<VerdictRules> Rules(VerdictRules rules) =>
        Enum.GetValues<VerdictRules>().Where(rule => rule != VerdictRules.None && rules.HasFlag(rule));

    private static string Sentence(VerdictRules rule, LooseningAssessment a, UnitStyle style) => rule switch
    {
        VerdictRules.ToolGives => Part(a, style, RiskKind.ToolGives),
        VerdictRules.StudTwistsOff => Part(a, style, RiskKind.StudTwistsOff),
        VerdictRules.CornersRound => Part(a, style, RiskKind.CornersRound),
        VerdictRules.WheelTurns => Wheel(a, style),
        VerdictRules.SlidesOff => Slides(a),
        VerdictRules.SlidesAsItTurns => SlidesAsItTurns(a.Judgement.Shares.SlidesAsItTurns),
        VerdictRules.FastHands => $"Your hands move at {UnitStyle.Fixed(a.Release!.Turns.MetersPerSecond, 1)} m/s when the nut lets go.",
        VerdictRules.OnStands => Stands(a, style),
        _ => TubeBelowPush(
            a.Links.Select(link => link.Limit).Where(link => link.IsTube).MinBy(link => link.LimitNmm),
            a.Tube!.BreaksAtN, a.Hand, a.Judgement.Ruling, style),
    };

    private static string Part(LooseningAssessment a, UnitStyle style, RiskKind kind)
    {
        LinkLimit part = a.Links.Where(link => Judgement.RiskOf(link.Limit, a.Nut).Kind == kind).MaxBy(link => link.Gives).Limit;
        string breaks = $"The {PartWords.Fails(part, style)}";
        if (part.LimitNmm > Above * a.Judgement.StrongPullNmm)
        {
            return $"{breaks}: {UnitStyle.InHundred(Share(kind, a.Judgement.Shares))} pulls, typically at {Nmm(part.LimitNmm, style)}.";
        }

        string limit = part.Source is LimitSource.TestTorque or LimitSource.BetweenSizes or LimitSource.SeriesLaw or LimitSource.RecalledTest
            ? $"The {PartWords.Name(part, style)} is tested to {Nmm(part.LimitNmm, style)} only"
            : $"{breaks} at {Nmm(part.LimitNmm, style)}";
        return $"{limit}. "
            + $"A strong pull makes {Number(a.Judgement.StrongPullNmm, style)}.";
    }

    private static double Share(RiskKind kind, OutcomeShares shares) => kind switch
    {
        RiskKind.StudTwistsOff => shares.StudTwistsOff,
        RiskKind.CornersRound => shares.CornersRound,
        RiskKind.WheelTurns => shares.WheelTurns,
        _ => shares.ToolGives,
    };

    private static string Wheel(LooseningAssessment a, UnitStyle style)
    {
        var hold = a.Hold!.Capacity;
        if (hold.TotalNmm <= 0)
        {
            return "The wheel turns first: nothing holds it.";
        }

        string by = string.Join(" and ", hold.Parts.Where(part => part.CapacityNmm > 0).Select(part => VerdictWords.Name(part.Restraint)));
        string turns = hold.TotalNmm > a.Nut.LikelyNmm
            ? $"The wheel turns: {UnitStyle.InHundred(Share(RiskKind.WheelTurns, a.Judgement.Shares))} pulls." : "The wheel turns first.";
        return $"{turns} The {by} {(hold.Parts.Count > 1 ? "hold" : "holds")} {Nmm(hold.TotalNmm, style)}; "
            + $"the nut likely needs {Number(a.Nut.LikelyNmm, style)}.";
    }

    private static string Slides(LooseningAssessment a) => a.Tube!.Checked.HeldRad < 0
        ? "The tube slides off even at a square pull (a prediction, not yet tested)."
        : $"The tube slides off from {VerdictWords.Angle(a.Tube.Checked.HeldRad, a.Setup.Hands.Stance.Push)}.";

    /// <summary>A tube that slides off once the nut turns.</summary>
    internal static string SlidesAsItTurns(double share) =>
        $"The tube slides off as the nut turns: {UnitStyle.InHundred(share)} pulls that loosen it.";

    /// <summary>A tube weaker than the stance: a stop below the likely force, care below the strong one.</summary>
    internal static string TubeBelowPush(LinkLimit part, double breaksAtN, HandFigures hand, Ruling ruling, UnitStyle style)
    {
        string push = ruling.Stops.HasFlag(VerdictRules.TubeBelowPush)
            ? $"Your likely force is {Newtons(hand.Quantile(0.5), style)}."
            : $"A strong pull is {Newtons(hand.Quantile(0.9), style)}.";
        return $"The {PartWords.Fails(part, style)} at {Newtons(breaksAtN, style)} of your hands. {push}";
    }

    private static string Newtons(double forceN, UnitStyle style) => style.Force(Force.FromNewtons(forceN));

    private static string Stands(LooseningAssessment a, UnitStyle style) => a.Stands is { } stands && stands.PullN <= stands.TipsAtN / 2
            && a.Judgement.Ruling.Stops.HasFlag(VerdictRules.OnStands)
        ? "The vehicle is on stands, and this fastener turns a wheel."
        : $"A stand tips at {style.Force(Force.FromNewtons(a.Stands!.Value.TipsAtN))}. A strong pull is {style.Force(Force.FromNewtons(a.Stands.Value.PullN))}.";

    private static string Nmm(double torqueNmm, UnitStyle style) => style.Torque(Torque.FromNewtonMillimeters(torqueNmm));

    private static string Number(double torqueNmm, UnitStyle style) => style.TorqueNumber(Torque.FromNewtonMillimeters(torqueNmm));
}
