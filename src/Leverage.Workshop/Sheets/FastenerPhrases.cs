using System.Globalization;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Threads;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Sheets;

/// <summary>A fastener, how it comes loose and how it goes back, in words.</summary>
public static class FastenerPhrases
{
    /// <summary>Force of the hands above which a pull on a vehicle on stands is a strong one, N (judgement).</summary>
    public const double StrongPullN = 250;

    /// <summary>What it is: "M10, 17 mm hex".</summary>
    public static string Kind(JobFastener fastener, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        ArgumentNullException.ThrowIfNull(units);
        var parts = new List<string>(3);
        if (fastener.Thread is { } thread)
        {
            parts.Add(thread.Printed);
        }

        if (fastener.AcrossFlats is { } flats)
        {
            parts.Add($"{Width(fastener, units).Length(flats)} hex");
        }

        return string.Join(", ", parts);
    }

    /// <summary>What goes together, and the reach of it.</summary>
    public static IReadOnlyList<string> Tools(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
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

    /// <summary>What it takes: the likely torque, the verdict in capitals, the hard torque, and where it is no go the chance.</summary>
    public static IReadOnlyList<string> Takes(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        NutFigures nut = planned.Assessment.Nut;
        var lines = new List<string>
        {
            units.TorqueNumber(Torque.FromNewtonMillimeters(nut.LikelyNmm)),
            VerdictWords.Word(planned.Verdict).ToUpperInvariant(),
            $"hard {units.TorqueNumber(Torque.FromNewtonMillimeters(nut.HighNmm))}",
        };
        if (planned is { Choice: not null, Verdict: not Assessments.Verdict.Go })
        {
            lines[2] += string.Create(CultureInfo.InvariantCulture, $"; {100 * planned.Assessment.Judgement.ComesLoose:0} in 100");
        }

        lines.AddRange(History(planned.History, units));
        return lines;
    }

    /// <summary>Why it is no clean go, and what to change first; empty where it is one.</summary>
    public static string Note(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        var sentences = new List<string>();
        if (planned is { Choice: not null, Verdict: not Assessments.Verdict.Go })
        {
            sentences.AddRange(Reasons.Of(planned.Assessment, units).Take(1));
            sentences.AddRange(planned.Assessment.Moves.Where(step => IsFirst(step, planned.Verdict)).Take(1).Select(step => $"{MoveWords.Of(step, units)}."));
        }

        if (planned.Fastener.Rounded)
        {
            sentences.Add("Corners rounded off: a six-point ring or a socket driven on; expect to split the nut or drill the head.");
        }

        if (PullsHardOnStands(planned))
        {
            sentences.Add("On stands a strong pull can tip it: pull steadily, never with your weight.");
        }

        return string.Join(' ', sentences);
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
    public static IReadOnlyList<string> Held(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        string stance = planned.Assessment.Setup.Hands.Stance.Key.Replace('-', ' ');
        var lines = new List<string> { planned.Choice is null ? "–" : planned.Choice.Person is { } person ? $"{person}, {stance}" : stance };
        if (planned.Hold is not { } hold)
        {
            lines.AddRange(planned.Fastener.HeldBy is { } by ? [$"held by {by}"] : []);
            return lines;
        }

        string what = hold.Request.HeldBy is { Count: > 0 } restraints ? string.Join(", ", restraints.Select(Words)) : "nothing";
        lines.Add((hold.Request.OnStands ? "wheel off the ground, " : "") + $"held by {what}"
            + (planned.Assessment.Hold is { } held ? $": {units.Torque(Torque.FromNewtonMillimeters(held.Capacity.TotalNmm))}" : ""));
        string[] more = [.. planned.Assessment.Hold?.Roll is null ? (string[])[] : ["it can roll"], .. hold.Lost];
        lines[1] += string.Concat(more.Select(words => "; " + words));
        return lines;
    }

    /// <summary>A restraint in words.</summary>
    public static string Words(Restraint restraint) => restraint switch
    {
        Restraint.Brake => "parking brake",
        Restraint.OldBrake => "old parking brake",
        Restraint.Gear => "in gear",
        Restraint.Chock => "chock",
        Restraint.Helper => "helper on the foot brake",
        _ => "bar across the studs",
    };

    /// <summary>A width across flats is told as its thread is: a 36 mm socket is no 1.417 in one.</summary>
    private static UnitStyle Width(JobFastener fastener, UnitStyle units) => fastener.Thread?.Family switch
    {
        null => units,
        ThreadFamily.Unified => UnitStyle.Us,
        _ => UnitStyle.Metric,
    };

    /// <summary>Names of one kind as one: "wheel nuts, left and right"; others side by side.</summary>
    internal static string Together(IReadOnlyList<string> names) => string.Join("; ", Pairs(names));

    /// <summary>Names, those that differ only behind the last comma told as one.</summary>
    internal static IEnumerable<string> Pairs(IEnumerable<string> names) => names
        .GroupBy(name => name.LastIndexOf(", ", StringComparison.Ordinal) is var comma and > 0 ? name[..comma] : name, StringComparer.OrdinalIgnoreCase)
        .Select(group => group.Count() == 1
            ? group.First()
            : $"{group.Key}, {string.Join(" and ", group.Select(name => name.Length > group.Key.Length ? name[(group.Key.Length + 2)..] : name))}");

    /// <summary>Sizes of tools, in millimetres or inches as each is: "13, 16, 18 mm, 1-1/8 in".</summary>
    internal static string Sizes(IReadOnlyList<Length> sizes)
    {
        Length[] inches = [.. sizes.Where(IsInch)];
        string metric = string.Join(", ", sizes.Except(inches).Select(size => UnitStyle.Trim(size.Millimeters, 1)));
        string imperial = string.Join(", ", inches.Select(Fraction));
        return string.Join(", ", ((string[])[metric.Length > 0 ? metric + " mm" : "", imperial.Length > 0 ? imperial + " in" : ""]).Where(text => text.Length > 0));
    }

    /// <summary>Whether a width is a whole number of sixteenths of an inch, and no whole millimetre.</summary>
    private static bool IsInch(Length size) => Math.Abs(size.Millimeters - Math.Round(size.Millimeters)) > 0.05
        && Math.Abs(16 * size.Inches - Math.Round(16 * size.Inches)) < 0.01;

    private static string Fraction(Length size)
    {
        int sixteenths = (int)Math.Round(16 * size.Inches);
        int under = 16;
        int rest = sixteenths % 16;
        while (rest > 0 && rest % 2 == 0)
        {
            (rest, under) = (rest / 2, under / 2);
        }

        string whole = sixteenths >= 16 ? Whole(sixteenths / 16) : "";
        return rest == 0 ? whole : $"{whole}{(whole.Length > 0 ? "-" : "")}{Whole(rest)}/{Whole(under)}";
    }

    internal static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Missing(PlannedLoosening planned, UnitStyle units)
    {
        string size = planned.Assessment.Setup.Fastener.AcrossFlats is { } flats ? $"for {Width(planned.Fastener, units).Length(flats)}" : "for its head: measure it";
        return $"borrow a tool {size}, with a lever of at least {units.Reach(planned.Assessment.NeededLikely)}";
    }
}
