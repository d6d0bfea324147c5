using System.Globalization;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Sheets;

/// <summary>A fastener, how it comes loose and how it goes back, in words.</summary>
internal static class FastenerPhrases
{
    /// <summary>Force of the hands above which a pull on a vehicle on stands is a strong one, N (judgement).</summary>
    internal const double StrongPullN = 250;

    /// <summary>Most steps that ease a nut told on paper.</summary>
    private const int MostEases = 2;

    /// <summary>What goes together, and the reach of it.</summary>
    internal static IReadOnlyList<string> Tools(PlannedLoosening planned, UnitStyle units)
    {
        if (planned.Choice is not { } choice)
        {
            return ["nothing in the chest fits", Missing(planned, units)];
        }

        LeverGeometry? lever = planned.Assessment.Lever;
        return
        [
            PickWords.Tools(choice.SetUp, units),
            .. lever is null ? (string[])[] : [$"hands {units.Reach(Length.FromMillimeters(lever.Value.ReachMm))} out"],
        ];
    }

    /// <summary>What it takes: the likely torque, the verdict in capitals, the hard torque, and where it may well stay tight the chance.</summary>
    internal static IReadOnlyList<string> Takes(PlannedLoosening planned, UnitStyle units)
    {
        NutFigures nut = planned.Assessment.Nut;
        var lines = new List<string>
        {
            units.TorqueNumber(Torque.FromNewtonMillimeters(nut.LikelyNmm)),
            VerdictWords.Word(planned.Verdict).ToUpperInvariant(),
            $"hard {units.TorqueNumber(Torque.FromNewtonMillimeters(nut.HighNmm))}",
        };
        if (planned.Choice is not null && !planned.Assessment.IsSure)
        {
            lines[2] += string.Create(CultureInfo.InvariantCulture, $"; {100 * planned.Assessment.Judgement.ComesLoose:0} in 100");
        }

        lines.AddRange(History(planned.History, units));
        return lines;
    }

    /// <summary>Why it is no clean go, and what to do first or if it stays tight; empty where it surely comes.</summary>
    internal static string Note(PlannedLoosening planned, UnitStyle units)
    {
        var sentences = new List<string>();
        bool unsure = planned is { Choice: not null, Verdict: not Assessments.Verdict.Go };
        bool breaks = unsure && MayBreak(planned.Assessment);
        if (unsure)
        {
            sentences.AddRange(Reasons.Safety(planned.Assessment, units).Take(1));
            sentences.AddRange(WatchWords.Stop(planned.Assessment, units));
            sentences.AddRange(breaks ? ForTheStud(planned.Assessment, units)
                : planned.Assessment.Moves.Where(step => IsFirst(step, planned.Verdict)).Take(1).Select(step => $"{MoveWords.Of(step, units)}."));
        }
        else if (planned.Choice is not null)
        {
            sentences.AddRange(planned.Assessment.Moves.Where(Prepares).Select(step => $"{MoveWords.Of(step, units)}."));
            sentences.AddRange(planned.Assessment.IsSure ? [] : planned.Assessment.Moves.Where(step => step.Key != "now" && !Prepares(step)).Take(1)
                .Select(step => $"If it stays tight: {Small(MoveWords.Of(step, units))}."));
        }

        if (planned.Fastener.Rounded && !breaks)
        {
            sentences.Add("Corners rounded off: a six-point ring or a socket driven on; expect to split the nut or drill the head.");
        }

        if (PullsHardOnStands(planned))
        {
            sentences.Add("On stands a strong pull can tip it: pull steadily, never with your weight.");
        }

        return string.Join(' ', sentences);
    }

    private static bool Prepares(LadderStep step) => step.Move is { IsOfJoint: true };

    private static string Small(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    /// <summary>Whether bolt or corners may well break: from there on it is no question of strength.</summary>
    private static bool MayBreak(LooseningAssessment assessment) =>
        assessment.Judgement.Shares.StudTwistsOff + assessment.Judgement.Shares.CornersRound >= LadderRank.LeastGain;

    /// <summary>The plan for what may break: what eases it, never more strength, and what to have ready if it breaks all the same.</summary>
    private static IEnumerable<string> ForTheStud(LooseningAssessment assessment, UnitStyle units)
    {
        string[] eases =
        [
            .. assessment.Moves.Where(step => step.Move?.Effect is MoveEffect.None or MoveEffect.Grip or MoveEffect.Growth)
                .OrderBy(step => step.Key is "soak" or "heat-nut" ? 0 : 1).Take(MostEases).OrderBy(step => step.Move!.Order).Select(step => MoveWords.Of(step, units)),
            .. assessment.Judgement.Shares.CornersRound >= LadderRank.LeastGain ? ["Take a six-point ring"] : (string[])[],
        ];
        yield return eases.Length == 0 ? "Turn it slowly, back and forth." : string.Join("; ", eases.Select((one, i) => i == 0 ? one : Small(one))) + ".";
        foreach (LadderStep cut in assessment.Moves.Where(step => step.Move?.Effect == MoveEffect.Cut).Take(1))
        {
            yield return cut.Key == "cut-off" ? "Expect to cut it off." : "Expect to split or drill it.";
        }
    }

    /// <summary>Whether a step is what to do before the pull: not the pull itself, and no nut is cut that likely comes.</summary>
    private static bool IsFirst(LadderStep step, Assessments.Verdict verdict) =>
        step.Key != "now" && (verdict != Assessments.Verdict.Care || step.Move?.Effect != MoveEffect.Cut);

    private static IEnumerable<string> History(NutHistory history, UnitStyle units)
    {
        if (history.Held is { } held)
        {
            yield return $"held at {units.Torque(held)}";
        }

        if (history.Came.Count > 0)
        {
            yield return $"like ones came loose at {string.Join(", ", history.Came.Select(units.TorqueNumber))}";
        }
    }

    private static bool PullsHardOnStands(PlannedLoosening planned) =>
        planned is { Lifted: true, Fastener.Wheel: null, Assessment: { Lever: { } lever, Nut: { } nut } }
            && nut.LikelyNmm / lever.ReachMm > StrongPullN;

    /// <summary>Who pulls how, and what holds the other end.</summary>
    internal static IReadOnlyList<string> Held(PlannedLoosening planned, UnitStyle units)
    {
        string stance = planned.Assessment.Setup.Hands.Stance.Short;
        var lines = new List<string> { planned.Choice is null ? "–" : planned.Choice.Person is { } person ? $"{person}: {stance}" : stance };
        if (planned.Hold is not { } hold)
        {
            lines.AddRange(planned.Fastener.HeldBy is { } by ? [by] : []);
            return lines;
        }

        bool free = hold.Request.HeldBy is not { Count: > 0 };
        string what = free ? "nothing holds the wheel" : string.Join(", ", hold.Request.HeldBy!.Select(Words));
        string[] more =
        [
            (hold.Request.OnStands ? "wheel off the ground, " : "") + what
                + (!free && planned.Assessment.Hold is { } held ? $": {units.Torque(Torque.FromNewtonMillimeters(held.Capacity.TotalNmm))}" : ""),
            .. planned.Assessment.Hold?.Roll is null || hold.Chocked || hold.Request.OnStands ? (string[])[] : ["it can roll: chock it front and rear"],
            .. hold.Lost,
        ];
        lines.Add(string.Join("; ", more));
        return lines;
    }

    /// <summary>A restraint in words.</summary>
    internal static string Words(Restraint restraint) => restraint switch
    {
        Restraint.Brake => "parking brake",
        Restraint.OldBrake => "old parking brake",
        Restraint.Gear => "in gear",
        Restraint.Chock => "chock",
        Restraint.Helper => "helper on the foot brake",
        _ => "bar across the studs",
    };

    /// <summary>Names of one kind as one: "wheel nuts, left and right"; others side by side.</summary>
    internal static string Together(IReadOnlyList<string> names) => string.Join("; ", Pairs(names));

    /// <summary>Names, those that differ only behind the last comma told as one.</summary>
    internal static IEnumerable<string> Pairs(IEnumerable<string> names) => names
        .GroupBy(name => name.LastIndexOf(", ", StringComparison.Ordinal) is var comma and > 0 ? name[..comma] : name, StringComparer.OrdinalIgnoreCase)
        .Select(group => group.Count() == 1
            ? group.First()
            : $"{group.Key}, {string.Join(" and ", group.Select(name => name.Length > group.Key.Length ? name[(group.Key.Length + 2)..] : name))}");

    internal static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Missing(PlannedLoosening planned, UnitStyle units)
    {
        string size = planned.Assessment.Setup.Fastener.AcrossFlats is { } flats ? $"for {SizePhrases.Width(planned.Fastener, units).Length(flats)}" : "for its head: measure it";
        return $"borrow a tool {size}, with a lever of at least {units.Reach(planned.Assessment.NeededLikely)}";
    }
}
