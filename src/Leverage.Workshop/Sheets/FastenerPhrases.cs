using System.Globalization;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Threads;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Picking;
using UnitsNet;

namespace Leverage.Workshop.Sheets;

/// <summary>A fastener, how it comes loose and how it goes back, in words.</summary>
public static class FastenerPhrases
{
    /// <summary>Force of the hands above which a pull on a vehicle on stands is a strong one, N (judgement).</summary>
    public const double StrongPullN = 250;

    /// <summary>Pieces of advice on a sheet, best first.</summary>
    private const int Advices = 2;

    /// <summary>How many and what: "4 × M10, 17 mm".</summary>
    public static string Kind(JobFastener fastener, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        ArgumentNullException.ThrowIfNull(units);
        var parts = new List<string>(3);
        if (fastener.Thread is { } thread)
        {
            parts.Add(thread.Printed + (fastener.LeftHand ? " left-hand" : ""));
        }

        if (fastener.AcrossFlats is { } flats)
        {
            parts.Add($"{Width(fastener, units).Length(flats)} hex");
        }

        string what = string.Join(", ", parts);
        return fastener.Count > 1 ? $"{Whole(fastener.Count)} × {what}".TrimEnd(' ', '×') : what;
    }

    /// <summary>The set-up: what goes together, and who pulls how.</summary>
    public static IReadOnlyList<string> SetUp(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        if (planned.Choice is not { } choice)
        {
            return ["nothing in the chest fits, or leaves room for the hands", Missing(planned, units)];
        }

        LooseningAssessment a = planned.Assessment;
        var lines = new List<string> { PickWords.Tools(choice.Place, units) };
        string reach = a.Lever is { } lever ? $", reach {units.Reach(Length.FromMillimeters(lever.ReachMm))}" : "";
        string who = choice.Person is { } person ? $"{person}, " : "";
        lines.Add($"{who}{a.Setup.Hands.Stance.Words}{reach}");
        return lines;
    }

    /// <summary>What it takes.</summary>
    public static IReadOnlyList<string> Takes(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        NutFigures nut = planned.Assessment.Nut;
        return
        [
            units.Torque(Torque.FromNewtonMillimeters(nut.LikelyNmm)),
            $"{units.TorqueNumber(Torque.FromNewtonMillimeters(nut.LowNmm))} easy, "
                + $"{units.TorqueNumber(Torque.FromNewtonMillimeters(nut.HighNmm))} hard",
        ];
    }

    /// <summary>The verdict in capitals, the chances, the first reason, and what to change first.</summary>
    public static IReadOnlyList<string> Verdict(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        LooseningAssessment a = planned.Assessment;
        var lines = new List<string> { LooseningAnswers.Word(planned.Verdict).ToUpperInvariant() };
        if (planned.Choice is null)
        {
            return lines;
        }

        var (undone, stuck, gives) = Shares.Percent(a.Judgement.ComesLoose, a.Judgement.StaysTight, a.Judgement.Gives);
        lines.Add($"undone {undone} %, stuck {stuck} %, gives {gives} %");
        lines.AddRange(Reasons.Of(a, units).Take(1));
        if (planned.Verdict != Assessments.Verdict.Go)
        {
            lines.AddRange(AdviceWords.Of(a, units).Take(Advices).Select(Sentence));
        }

        if (PullsHardOnStands(planned))
        {
            lines.Add("On stands a strong pull can tip it: pull steadily, never with your weight.");
        }

        return lines;
    }

    private static string Sentence(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}.";

    private static bool PullsHardOnStands(PlannedLoosening planned) =>
        planned is { Lifted: true, Fastener.Wheel: null, Assessment: { Lever: { } lever, Nut: { } nut } }
            && nut.LikelyNmm / lever.ReachMm > StrongPullN;

    /// <summary>What holds the other end.</summary>
    public static IReadOnlyList<string> Held(PlannedLoosening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        if (planned.Hold is not { } hold)
        {
            return [planned.Fastener.HeldBy ?? "its own seat"];
        }

        var lines = new List<string>();
        if (hold.Request.OnStands)
        {
            lines.Add("wheel off the ground");
        }

        lines.Add(hold.Request.HeldBy is { Count: > 0 } by ? string.Join(", ", by.Select(Words)) : "nothing");
        if (planned.Assessment.Hold is { } held)
        {
            string torque = units.Torque(Torque.FromNewtonMillimeters(held.Capacity.TotalNmm));
            lines.Add($"{torque}, {UnitStyle.Fixed(held.Safety, 1)} of the hard case");
            if (held.Roll is { } roll)
            {
                lines.Add($"else it rolls {(roll == Roll.Forward ? "forward" : "backward")}");
            }
        }

        lines.AddRange(hold.Lost);
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

    internal static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Missing(PlannedLoosening planned, UnitStyle units)
    {
        string size = planned.Assessment.Setup.Fastener.AcrossFlats is { } flats ? $"for {Width(planned.Fastener, units).Length(flats)}" : "for its head: measure it";
        return $"borrow a tool {size}, with a lever of at least {units.Reach(planned.Assessment.NeededLikely)}";
    }
}
