using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Wording;

/// <summary>Words of the steps against a nut that stays tight: a verb, the thing, the size one can buy.</summary>
internal static class MoveWords
{
    /// <summary>One step.</summary>
    internal static string Of(LadderStep step, UnitStyle style) =>
        step.Key switch
        {
            "now" => Now(step, style),
            "on-its-wheels" => "Put it on its wheels",
            "chock" or "bar" or "brake" or "oldbrake" or "gear" when step.Tool?.Name is { } hold => $"Hold the wheel with {hold} too",
            "gear" => "Put it in gear",
            "chock" => step.Tool?.Height is { } height ? $"Chock the wheel, {style.Length(height)} high" : "Chock the wheel",
            "helper" => "Have a helper hold the foot brake down",
            "brake" => "Pull the parking brake",
            "clean-bar" => "Clean bar and tube of oil and grease",
            "best-overlap" => $"Set the tube {style.Length(step.Tool!.Overlap!.Value)} over the bar",
            "ring" => $"Take a ring spanner of {Width(step.Tool!, style)}, {Long(step.Tool!.Bar!.Value, style)} long",
            "start-square" => "Begin the pull with the bar square, not past it",
            "better-stance" => $"Change your stance: {Stance.Named(step.Tool!.Stance!).Short}",
            "longer-lever" or "bigger-drive" => Take(step.Tool!, style),
            _ => step.Move!.Words,
        };

    /// <summary>The steps as an answer holds them.</summary>
    internal static IReadOnlyList<MoveAnswer> Answers(IReadOnlyList<LadderStep> steps, UnitStyle style) =>
        [.. steps.Select(step => new MoveAnswer(step.Key, Of(step, style), step.ComesLooseBy, step.BreaksBy))];

    /// <summary>What stands before each step: the pull as asked is "now", what destroys the nut "last", the others are counted.</summary>
    internal static IReadOnlyList<string> Marks(IReadOnlyList<LadderStep> steps)
    {
        int number = 0;
        int now = Enumerable.Range(0, steps.Count).FirstOrDefault(i => steps[i].Key == "now");
        return [.. steps.Select((step, i) => step.Key == "now" ? "now"
            : i < now ? "first"
            : i == steps.Count - 1 ? "last"
            : (++number).ToString(System.Globalization.CultureInfo.InvariantCulture))];
    }

    /// <summary>The set-up of the first pull: "this bar, pushing down".</summary>
    private static string Now(LadderStep step, UnitStyle style)
    {
        LooseningSetup setup = step.Setup!;
        string on = setup.Tube is null ? "" : $", tube {style.Length(setup.Overlap)} on";
        string lever = step.Tool?.Name is { } name ? name + on : (setup.Tool.Kind switch
        {
            ToolKind.Ring => "this ring spanner",
            ToolKind.Open => "this open spanner",
            ToolKind.Key when setup.Tool.Drive is null => "this key",
            _ => "this bar" + on,
        });
        return $"{lever}, {setup.Hands.Stance.Short}{(setup.Hands.Two ? ", two people" : "")}";
    }

    private static string Take(LadderTool tool, UnitStyle style)
    {
        if (tool.Name is { } name)
        {
            return tool.Overlap is { } overlap ? $"Take {name}, tube {style.Length(overlap)} on" : $"Take {name}";
        }

        if (tool is { Bar: null, Tube: { } over })
        {
            return $"{(tool.ToGet ? "Get" : "Put")} a {Tube(over, style)} over your bar";
        }

        string bar = $"{(tool.ToGet ? "Borrow or buy" : "Take")} a {(tool.Drive is { } drive ? $"{drive} in " : "")}bar {Long(tool.Bar!.Value, style)}";
        string on = tool.AcrossFlats is null ? "" : $", {Width(tool, style)} {(tool.Kind == ToolKind.Key ? "hexagon key" : "socket")}";
        return tool.Tube is { } tube ? $"{bar}{on}, {Tube(tube, style)}" : bar + on;
    }

    private static string Tube(TubeText tube, UnitStyle style) =>
        $"{Long(tube.Length, style)} tube {Section(tube, style)}";

    private static string Section(TubeText tube, UnitStyle style) => style.IsUs
        ? $"{UnitStyle.Trim(tube.Outside!.Value.Inches, 2)}×{UnitStyle.Trim(tube.Wall!.Value.Inches, 3)} in"
        : $"{UnitStyle.Trim(tube.Outside!.Value.Millimeters, 1)}×{UnitStyle.Trim(tube.Wall!.Value.Millimeters, 1)}";

    private static string Width(LadderTool tool, UnitStyle style) => PartWords.Hexagon(tool.AcrossFlats!.Value.Millimeters, style);

    /// <summary>A length as one asks for it in a shop: "450 mm", "1 m", "1.5 m", "18 in", "40 in".</summary>
    private static string Long(Length length, UnitStyle style) => style.IsUs
        ? $"{UnitStyle.Fixed(length.Inches, 0)} in"
        : length.Meters >= 1 ? $"{UnitStyle.Trim(length.Meters, 2)} m" : $"{UnitStyle.Fixed(length.Millimeters, 0)} mm";
}
