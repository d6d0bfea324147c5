using System.Globalization;
using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Jobs;

namespace Leverage.Workshop.Sheets;

/// <summary>How a fastener goes back, in words.</summary>
internal static class RefitPhrases
{
    /// <summary>Most numbers of an order that are spelt out.</summary>
    private const int LongestOrder = 12;

    /// <summary>The torque, where it comes from where that is no book, and the rounds of a group.</summary>
    internal static IReadOnlyList<string> Torque(RefitFit fit, UnitStyle units)
    {
        PlannedTightening planned = fit.Tightening;
        if (fit.Stage == RefitStage.Snug)
        {
            return ["snug", "torque on its wheels"];
        }

        var lines = new List<string> { units.Torque(planned.Torque) };
        string stages = planned.Stages.Count > 1 ? string.Join(" · ", planned.Stages.Select(units.TorqueNumber)) : "";
        if (planned.Sequence.Count > 0)
        {
            string order = string.Join('-', planned.Sequence.Take(LongestOrder).Select(FastenerPhrases.Whole));
            string pattern = planned.Fastener.Pattern is TighteningPattern.Row or TighteningPattern.TwoRows ? "from the middle"
                : planned.Sequence.Count % 2 == 1 ? "star" : "crosswise";
            lines.Add($"{stages}{(stages.Length > 0 ? ", " : "")}{pattern} {order}{(planned.Sequence.Count > LongestOrder ? "-…" : "")}");
        }

        if (planned.Fastener.Then is { } turn)
        {
            lines.Add($"then turn {UnitStyle.Angle(turn)} more");
        }

        if (planned.Basis == TorqueBasis.WorkedOut)
        {
            lines.Add($"worked out from thread and grade, friction {UnitStyle.Trim(planned.Friction.Likely, 2)}");
        }

        lines.AddRange(Doubt(planned));
        return lines;
    }

    /// <summary>The torque wrench and what to set; where none fits, where to hang a mass instead, or what is wanted.</summary>
    internal static IReadOnlyList<string> Wrench(RefitFit fit, UnitStyle units)
    {
        PlannedTightening planned = fit.Tightening;
        string size = SizePhrases.Hex(planned.Fastener, units);
        string[] hex = size.Length > 0 ? [size] : [];
        if (fit.Stage == RefitStage.Snug)
        {
            return ["spanner", .. hex];
        }

        if (planned.Wrench is { } choice)
        {
            return planned.Fastener.Adapter is { } adapter
                ? [choice.Wrench.Name, .. hex, $"set {units.Torque(choice.Setting)}, {units.Length(adapter)} adapter straight out"]
                : [choice.Wrench.Name, .. hex];
        }

        return planned.Hang is { } hang
            ? [$"hang {units.Mass(hang.Mass)}{(hang.Person is { } person ? $" ({person})" : "")}", $"{units.Reach(hang.Distance)} out on a level bar"]
            : [planned.IsByHand ? "by feel" : "borrow a wrench", .. hex];
    }

    /// <summary>What is new, what goes on it, and what to remember.</summary>
    internal static SheetCell Remember(RefitFit fit)
    {
        JobFastener fastener = fit.Tightening.Fastener;
        var lines = new List<string>();
        if (fit.IsFitted)
        {
            lines.AddRange(fastener.NewPart is { } part
                ? [fastener.NewPartCount > 1 ? $"new: {FastenerPhrases.Whole(fastener.NewPartCount)} × {part}" : $"new: {part}"]
                : fastener.Sheared ? ["new bolt or stud"] : []);
            lines.AddRange(fastener.Lubricant is { } lubricant ? [lubricant] : []);
            lines.AddRange(fastener.RefitNote is { } note ? [note] : []);
        }

        if (fit.Stage == RefitStage.Full)
        {
            lines.AddRange(Secured(fastener));
        }

        return new SheetCell(CellKind.Words, lines.Count > 0 ? lines : ["–"])
        {
            Loud = fastener.LeftHand ? ["LEFT-HAND: tighten anticlockwise"] : [],
        };
    }

    /// <summary>What its own shape asks for: the play of a bearing, a slot, a collar.</summary>
    internal static IEnumerable<string> Secured(JobFastener fastener)
    {
        string pin = fastener.Castle ? "; split pin" : "";
        if (fastener.Adjustable)
        {
            yield return $"sets a bearing: turn the wheel as you tighten, then back off as its maker says{pin}";
        }
        else if (fastener.Castle)
        {
            yield return $"castle nut: on to the next slot, never back{pin}";
        }

        if (fastener.Staked)
        {
            yield return "new nut: stake its collar into the groove";
        }
    }

    /// <summary>Why a book's torque may be a misreading; nothing where it fits, seats a hub, or where only the turn after it passes yield, as it is meant to.</summary>
    private static IEnumerable<string> Doubt(PlannedTightening planned)
    {
        if (planned is { Fastener.Then: not null, Check: null or { Verdict: not Verdict.Stop } })
        {
            yield break;
        }

        if (planned is { Check: { Quote: TorqueVerdict.High or TorqueVerdict.Yields or TorqueVerdict.Breaks } check })
        {
            yield return check.Quote == TorqueVerdict.High
                ? $"high for the bolt: {UnitStyle.Percent(check.End.YieldShare.Likely)} of yield" : $"{CheckingAnswer.Word(check.Quote!.Value)} the bolt";
        }

        if (planned is { Fastener.Wheel: null, Check: { ReadsBetterAs: { } unit } })
        {
            yield return $"fits as {CheckingAnswer.UnitWord(unit)}: misread?";
        }
    }

    /// <summary>A part to buy: "8 × locknut".</summary>
    internal static string Part(PartToBuy part)
    {
        return string.Create(CultureInfo.InvariantCulture, $"{part.Count} × {part.Part}");
    }
}
