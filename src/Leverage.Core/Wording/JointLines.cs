using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Grades;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>A label and what is said under it.</summary>
/// <param name="Label">The label.</param>
/// <param name="Words">One or two sentences.</param>
internal readonly record struct LabelledWords(string Label, string Words);

/// <summary>What is said of a joint that is tightened, by <c>tighten</c> and <c>check</c> alike.</summary>
internal static class JointLines
{
    private const double RoughNutFactor = 0.35;

    /// <summary>From here on a share of yield rounds to more than 100 %.</summary>
    private const double PastYield = 1.005;

    /// <summary>What changes the way of working, before any figure.</summary>
    internal static IReadOnlyList<LabelledWords> First(JointAssessment result, UnitStyle units)
    {
        JointSetup setup = result.Setup;
        var lines = new List<LabelledWords>();
        Add(setup.Request.AdjustableBearing, "Bearing nut", "it sets the play of a bearing: turn the wheel while tightening, back off as its maker says. No preload is judged.");
        Add(setup.Request.LeftHand, "Left-hand", "turn anticlockwise to tighten. The torque is the same.");
        Add(result.Grade.IsStainless, "Stainless", "it galls and seizes: paste on thread and face, turn slowly, no impact wrench.");
        Add(result.Castle is not null, "Castle nut", result.Castle is { } castle ? Castle(castle, units) : "");
        Add(setup.Request.Staked, "Staked", "fit a new nut, tighten, then press its collar into the slot. Never stake one place twice.");
        Add(setup.Request.Locker, "Locker", "clean both threads of oil first. Wet locker oils the thread about like oil; tighten before it sets.");
        Add(setup.Request.RoughThread, "Rough thread", $"clean or recut it first. Dirty or rusty, the same torque clamps with only about {units.Preload(Rough(result))}.");
        return lines;

        void Add(bool holds, string label, string words)
        {
            if (holds)
            {
                lines.Add(new LabelledWords(label, words));
            }
        }
    }

    /// <summary>The verdict in a sentence.</summary>
    internal static string Why(JointAssessment result, UnitStyle units)
    {
        string why = string.Join(' ', [Bolt(result, units), .. result.Quote is TorqueVerdict.Fits or TorqueVerdict.Low or TorqueVerdict.High ? result.Cautions.Select(one => Caution(one, result)) : []]);
        return result is { Quote: not TorqueVerdict.Strips, Strip: { } strip } && strip.StripLoad < strip.BreakLoad
            ? $"{why} The thread strips before the bolt breaks: too much torque ruins the hole." : why;
    }

    /// <summary>The verdict of a quoted torque as a headline.</summary>
    internal static string Headline(JointAssessment result) => result.Quote switch
    {
        null => "not judged",
        TorqueVerdict.Strips => result.Holds ? "may strip the thread" : "strips the thread",
        { } quote => CheckingAnswer.Word(quote),
    };

    /// <summary>A share of yield; past yield it is no share of what the bolt carries.</summary>
    internal static string Share(double share) => share < PastYield ? UnitStyle.Percent(share) : "past yield";

    /// <summary>What the turn after the first torque does.</summary>
    internal static string Turn(AngleFigures angle, JointAssessment result, UnitStyle units)
    {
        if (result.TurnBreaks)
        {
            return $"yields the bolt after {UnitStyle.Fixed(angle.Elastic.Degrees, 0)}° and breaks it before its end.";
        }

        string to = $"takes the preload from {units.Preload(result.FirstStage.Likely)} to a likely {units.Preload(angle.Preload)}";
        return !angle.Yields ? $"{to}. The bolt does not yield."
            : $"{to}. The bolt yields after {UnitStyle.Fixed(angle.Elastic.Degrees, 0)}°."
                + (result.Holds ? $" It stays {units.Fine(angle.Stretch)} longer, {UnitStyle.Fixed(100 * angle.StretchShare, 1)} % of its grip: fit a new bolt each time." : "");
    }

    /// <summary>How far the clamp misses by the way of tightening.</summary>
    internal static string Scatter(TighteningMethod method)
    {
        string from = method.Low < method.High ? $"{UnitStyle.Fixed(100 * method.Low, 0)} to " : "up to ";
        string click = method.IsWrench
            ? $" Click once: a second click adds about {UnitStyle.Percent(TighteningMethod.SecondClick)} of torque."
            : "";
        return $"{method.Words}: the clamp is off by {from}{UnitStyle.Percent(method.High)}. "
            + $"The tightest of many bolts clamps {UnitStyle.Fixed(method.AlphaA, 1)} times the loosest.{click}";
    }

    /// <summary>What is left of the likely preload once the joint has settled.</summary>
    internal static string Settled(JointAssessment result, UnitStyle units)
    {
        var (least, most) = result.Settled;
        return $"{UnitStyle.Figures(units.PreloadValue(least))} to {units.Preload(most)} of the likely preload is left";
    }

    /// <summary>What is set to about a torque though it does not fit the bolt, the first two; null where nothing is known that is.</summary>
    internal static string? UsualFor(CheckingAssessment assessment, UnitStyle units)
    {
        string Range(LargeNut row) => row is { LowNm: { } low, HighNm: { } high }
            ? $"{units.TorqueNumber(Torque.FromNewtonMeters(low))} to {units.Torque(Torque.FromNewtonMeters(high))}"
            : units.Torque(Torque.FromNewtonMillimeters(row.TorqueNmm.Median));
        return assessment.UsualFor is [] ? null : "is usual for: "
            + string.Join("; ", assessment.UsualFor.Take(2).Select(row => $"{row.Application}, {Range(row)}{UnconfirmedWords.MarkOf(row.Status)}"));
    }

    /// <summary>When the thread of the hole or bolt strips.</summary>
    internal static string Strip(StripAssessment strip, TappedHole hole, JointAssessment result, UnitStyle units)
    {
        string other = hole.Material.Else is { } more ? $" You named no alloy: {more.Words} would shear at {units.Stress(more.Shear)}, this one shears at {units.Stress(hole.Material.Shear)}." : "";
        return $"the thread of the {(strip.HoleStrips ? "hole" : "bolt")}, {units.Length(hole.Engagement)} in {hole.Material.Words}. "
            + $"Preload goes up to {units.Preload(result.MostPreload)}: margin {UnitStyle.Fixed(result.StripMargin!.Value, 1)}.{other}";
    }

    private static string Bolt(JointAssessment result, UnitStyle units) => result.Quote switch
    {
        null => "The bearing's play decides, not the preload.",
        TorqueVerdict.Strips => $"The thread of the {(result.Strip!.HoleStrips ? "hole" : "bolt")} strips "
            + (result.Holds ? $"if friction is as low as {Friction(result.Friction.Low)}." : "before the bolt has its preload."),
        TorqueVerdict.Breaks when result.Torque < result.Breaking.Likely =>
            $"The bolt breaks: the turn stretches it {units.Length(result.Angle!.Stretch)}, and one of its grade stands about {BreaksAt(result.Angle, units)}.",
        TorqueVerdict.Breaks => $"The bolt breaks: at friction {Friction(result.Friction.Likely)} it twists off at {units.Torque(result.Breaking.Likely)}.",
        TorqueVerdict.Fits when result.Cautions.Count > 0 => "The torque fits the bolt.",
        TorqueVerdict.Fits when result.End.YieldShare.High >= PastYield => "The bolt clamps well. "
            + $"At friction {Friction(result.Friction.Low)} it just passes the least yield of its grade; most bolts hold more.",
        TorqueVerdict.Fits => "The bolt clamps well and is not stretched for good.",
        TorqueVerdict.Low => $"This torque uses {Share(result.End.YieldShare.Likely)} of the bolt's yield; 45 to 95 % is usual. A joint that must clamp may work loose. "
            + "For a plug or a union it can be right.",
        TorqueVerdict.Yields when result.Angle is { } angle && result.FirstStage.YieldShare.Likely <= 1 => angle.OfBreaking > BoltStretch.MostShare
            ? $"The turn stretches the bolt {units.Length(angle.Stretch)} for good, and one of its grade breaks at about {BreaksAt(angle, units)}: look the angle up again."
            : "The turn stretches the bolt for good, as such bolts are meant to.",
        TorqueVerdict.Yields => $"The bolt stretches for good at the likely friction.{MayBreak(result, units)}",
        _ when result.End.YieldShare.Likely > TighteningRule.MostShare => $"The bolt reaches {Share(result.End.YieldShare.Likely)} of its yield at the likely friction.{MayBreak(result, units)}",
        _ => $"The bolt stretches for good if friction is as low as {Friction(result.Friction.Low)}: know your lubricant.{MayBreak(result, units)}",
    };

    private static string BreaksAt(AngleFigures angle, UnitStyle units) => units.Length(angle.BreaksAt!.Stretch) + UnconfirmedWords.MarkOf(angle.BreaksAt.Status);

    private static string MayBreak(JointAssessment result, UnitStyle units) => result.Torque < result.Breaking.AtLow ? ""
        : $" It may break: at friction {Friction(result.Friction.Low)} it twists off at {units.Torque(result.Breaking.AtLow)}.";

    private static string Caution(JointCaution caution, JointAssessment result) => caution switch
    {
        JointCaution.Scatter => $"Tightened this way the clamp may be {UnitStyle.Percent(result.Method.High)} higher and stretch the bolt for good.",
        JointCaution.RoughThread => "On a rough thread it clamps far less.",
        JointCaution.Galls => "Without paste a stainless thread may seize before it clamps.",
        _ => "The turn to the next slot may stretch the bolt for good.",
    };

    private static string Castle(CastleFigures castle, UnitStyle units) =>
        $"start at the low end of the torque range, then on to the next slot, never back. A whole slot is {UnitStyle.Angle(castle.Step)} and adds up to "
        + $"{units.Preload(castle.Adds)}. {(castle.YieldShare < PastYield ? $"That makes {Share(castle.YieldShare)} of yield." : "The bolt yields before it gets there: too much.")}";

    /// <summary>Preload of a dirty or rusty thread: nut factor 0.35 (engineers' mail archive, seaintarchive.org).</summary>
    private static UnitsNet.Force Rough(JointAssessment result) => UnitsNet.Force.FromNewtons(
        result.Torque.NewtonMillimeters / (RoughNutFactor * result.Setup.Thread.DiameterMm));

    private static string Friction(double friction) => UnitStyle.Friction(friction);
}

/// <summary>The case in one line: what is tightened; no torque stands before the one asked for.</summary>
internal static class TighteningTitle
{
    /// <summary>The title of an assessment.</summary>
    internal static string Of(TighteningAssessment assessment) => $"Tighten {assessment.Setup.Thread.Printed}, grade {assessment.Grade.Name}";
}
