using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Holding;
using Leverage.LoadPath;

namespace Leverage.Wording;

/// <summary>What to watch: sentences that are warnings and no moves.</summary>
internal static class WatchWords
{
    /// <summary>The warnings of an assessment, the weightiest first.</summary>
    internal static IReadOnlyList<string> Of(LooseningAssessment assessment, UnitStyle style) =>
        [.. Stop(assessment, style), .. Joint(assessment, style), .. Lever(assessment, style), .. Wheel(assessment), .. Tube(assessment), .. HeatWords.Of(assessment, style)];

    /// <summary>Where to stop a pull that may break the work.</summary>
    internal static IEnumerable<string> Stop(LooseningAssessment a, UnitStyle style)
    {
        if (HoldBack.Of(a) is { } stop)
        {
            string breaks = stop.Part.Kind == LinkKind.Stud ? "twist off" : "round off";
            yield return $"Stop at {style.Torque(UnitsNet.Torque.FromNewtonMillimeters(stop.TorqueNmm))}: past that the {PartWords.Name(stop.Part, style)} may {breaks}.";
        }
    }

    private static IEnumerable<string> Joint(LooseningAssessment a, UnitStyle style)
    {
        Fastener fastener = a.Setup.Fastener;
        if (fastener.LeftHand)
        {
            yield return "Left-hand thread: turn it clockwise to loosen.";
        }

        if (fastener.Grade is { IsStainless: true })
        {
            yield return "Stainless galls: paste on the thread, and turn slowly by hand.";
        }

        if (a.Nut.Joint.FrictionRaised)
        {
            yield return $"{style.Torque(fastener.BookTorque)} is more than {(fastener.Grade is { } grade ? $"a bolt of grade {grade.Name}" : "this bolt")} takes. "
                + (a.StrongerGrade is { } stronger ? $"That grade was assumed; likeliest the bolt is stronger, such as {stronger.Name}: read its head."
                    : "Its thread was rough, or the bolt has stretched.");
        }

        if (a.Nut.Joint.TurnedPastYield)
        {
            yield return "The turn at tightening stretched this bolt for good: fit a new one.";
        }

        if (a.Setup.Place is { } place && place.Near.Contains("oil", StringComparer.Ordinal) && place.Key == "drain-plug")
        {
            yield return "Oil stands behind it: pan under it, and hot oil burns.";
        }
    }

    private static IEnumerable<string> Lever(LooseningAssessment a, UnitStyle style)
    {
        if (a.Setup is { Room: { } room, LeverLength: { } lever } && lever > room)
        {
            yield return $"There is room for {style.Reach(room)}. Your lever is {style.Reach(lever)} long.";
        }

        if (a.Setup is { Tool.Size: { } size, Fastener.AcrossFlats: { } flats })
        {
            yield return $"A {PartWords.Flats(size, style)} tool on {PartWords.Flats(flats, style)}: {UnitStyle.Trim((size - flats).Millimeters, 2)} mm more play.";
        }

        if (a.Setup.StandOff is { } off && off > UnitsNet.Length.Zero)
        {
            yield return $"The lever turns {style.Length(off)} off the nut and tips the socket. "
                + $"{(a.Setup.Tool.Extension is null ? "" : "The extension bends too. ")}Hold the head up with your other hand.";
        }
    }

    private static IEnumerable<string> Wheel(LooseningAssessment a)
    {
        if (a.Setup.Place is { Turns: TurnsWith.Crank })
        {
            yield return "The crank turns with it: lock the crank by the maker's tool or in gear.";
        }

        bool oneOut = a.Setup.Hold is { HalfShafts: HalfShafts.One };
        if (a.Setup.Place is { Turns: TurnsWith.Flange })
        {
            yield return "Gear holds only a gearbox's flange, the wheels only a final drive's"
                + $"{(oneOut ? ", and that not once a half shaft is out" : "")}: a bar bolted to the flange holds either.";
            yield break;
        }

        if (oneOut && a.Setup.Hold!.By.Contains(Restraint.Gear))
        {
            yield return "Gear holds nothing once a half shaft is out.";
        }

        if (a.Hold?.Roll is { } roll)
        {
            yield return roll == Roll.Forward
                ? "Loosening rolls the vehicle forward: chock the front of the wheel."
                : "Loosening rolls the vehicle backward: chock the rear of the wheel.";
        }
        else if (a.Setup.Place is { TurnsWheel: true } && a.Setup.Hold is null)
        {
            yield return "The wheel turns with it: brake on, wheels chocked.";
        }
    }

    private static IEnumerable<string> Tube(LooseningAssessment a)
    {
        if (a.Tube is not { } tube)
        {
            yield break;
        }

        string safe = VerdictWords.Angle(tube.Checked.HeldRad, a.Setup.Hands.Stance.Push);
        yield return $"The tube stays on to {safe} while the nut holds. If something snaps, nothing grips the tube.";
        if (tube.PlayShare > Tubes.Tube.LoosePlayShare)
        {
            yield return $"The tube is {UnitStyle.Percent(tube.PlayShare)} wider than the bar: a snugger tube stays on longer.";
        }
    }
}
