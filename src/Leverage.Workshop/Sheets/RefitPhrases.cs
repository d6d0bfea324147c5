using System.Globalization;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>How a fastener goes back, in words.</summary>
public static class RefitPhrases
{
    /// <summary>The torque and where it comes from.</summary>
    public static IReadOnlyList<string> Torque(PlannedTightening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        string lubricant = planned.Fastener.Lubricant is { } name ? $", {name}" : "";
        return
        [
            units.Torque(planned.Torque),
            planned.Basis == TorqueBasis.Book
                ? $"book{lubricant}"
                : $"worked out: 75 % of proof load, friction {UnitStyle.Trim(planned.Friction.Likely, 2)}{lubricant}",
        ];
    }

    /// <summary>Stages and order of a group; "in one go" for a single one.</summary>
    public static IReadOnlyList<string> Order(PlannedTightening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        string[] held = planned.Fastener.Wheel is null ? [] : ["full torque on the ground, chocked; on stands only snug"];
        if (planned.Sequence.Count == 0)
        {
            return [planned.Fastener.Count > 1 ? "each in one go" : "in one go", .. held];
        }

        string order = string.Join('-', planned.Sequence.Select(FastenerPhrases.Whole));
        string pattern = planned.Fastener.Pattern == TighteningPattern.Row ? "from the middle"
            : planned.Sequence.Count % 2 == 1 ? "star" : "crosswise";
        return
        [
            string.Join(" · ", planned.Stages.Select(units.TorqueNumber)) + $" {units.TorqueUnit}",
            $"{pattern} {order}",
            .. held,
        ];
    }

    /// <summary>The torque wrench, what to set, and how far it scatters.</summary>
    public static IReadOnlyList<string> Wrench(PlannedTightening planned, Job job, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(units);
        if (planned.Wrench is { } choice)
        {
            string setting = planned.Fastener.Adapter is { } adapter
                ? $"set {units.Torque(choice.Setting)}, {units.Length(adapter)} adapter straight out"
                : $"set {units.Torque(choice.Setting)}";
            return [choice.Wrench.Name, $"{setting}, ± {UnitStyle.Trim(units.TorqueValue(choice.Scatter), 1)} {units.TorqueUnit}"];
        }

        return job.Chest.TorqueWrenches.Count == 0
            ? ["no torque wrench"]
            : ["none in range", $"yours go from {units.TorqueNumber(job.Chest.TorqueWrenches.MinBy(w => w.From.NewtonMeters)!.From)} to "
                + units.Torque(job.Chest.TorqueWrenches.MaxBy(w => w.To.NewtonMeters)!.To)];
    }

    /// <summary>Where to hang a mass instead; a dash where none is known.</summary>
    public static IReadOnlyList<string> Hang(PlannedTightening planned, UnitStyle units)
    {
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(units);
        return [planned.Hang is { } hang ? $"{units.Mass(hang.Mass)}{(hang.Person is { } person ? $" ({person})" : "")} at {units.Reach(hang.Distance)}" : "–"];
    }

    /// <summary>Whether the book's torque is believable, and what it does to the bolt.</summary>
    public static IReadOnlyList<string> Believable(PlannedTightening planned)
    {
        ArgumentNullException.ThrowIfNull(planned);
        if (planned.Check is not { } check)
        {
            return [planned.Basis == TorqueBasis.Book ? "not checked" : "worked out"];
        }

        ShareRange share = check.Buys.YieldShare;
        var lines = new List<string>
        {
            CheckingAnswer.Word(check.Quote),
            $"{UnitStyle.Percent(share.Likely)} of yield, {UnitStyle.Fixed(100 * share.Low, 0)} to {UnitStyle.Percent(share.High)}",
        };
        if (check.Quote == QuoteVerdict.Low)
        {
            lines.Add(planned.Fastener.Wheel is null
                ? "right only where it need not clamp: a plug, a union"
                : "usual where it seats a hub or bearing: the book rules");
        }

        if (planned.Fastener.Wheel is null && check.ReadsBetterAs is { } unit)
        {
            lines.Add($"fits as {CheckingAnswer.UnitWord(unit)}: misread?");
        }

        if (planned.Fastener.Grade is null)
        {
            lines.Add($"grade {check.Grade.Name} assumed");
        }

        return lines;
    }

    /// <summary>A part to buy: "8 × locknut".</summary>
    public static string Part(PartToBuy part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return string.Create(CultureInfo.InvariantCulture, $"{part.Count} × {part.Part} ({string.Join("; ", part.For)})");
    }
}
