using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Page.Answering;

/// <summary>A link of the load path, worded.</summary>
internal sealed record LinkLine(
    string Part, string Limit, string Load, string Margin, string Source, bool Confirmed, bool Breaks);

/// <summary>One outcome in 100.</summary>
internal sealed record ChanceLine(string Key, string Words, double Share, string In100);

/// <summary>A move: where it stands in the order, what to do, and the chances by then where a figure is known.</summary>
internal sealed record MoveLine(string Mark, string Words, string? ComesLoose, string? Breaks)
{
    /// <summary>The moves in their order.</summary>
    internal static IReadOnlyList<MoveLine> Of(IReadOnlyList<LadderStep> steps, UnitStyle units)
    {
        IReadOnlyList<string> marks = MoveWords.Marks(steps);
        return [.. steps.Select((step, i) => new MoveLine(marks[i], MoveWords.Of(step, units), In100(step.ComesLooseBy), In100(step.BreaksBy)))];
    }

    private static string? In100(double? share) => share is { } known ? UnitStyle.Fixed(100 * known, 0) : null;
}

/// <summary>What the page shows besides the answer itself, in words.</summary>
internal sealed record PageWords(
    string Title,
    string Verdict,
    string Sentence,
    string Now,
    IReadOnlyList<FigureLine> Figures,
    IReadOnlyList<LinkLine> Links,
    IReadOnlyList<ChanceLine> Chances,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<MoveLine> Moves,
    IReadOnlyList<string> Watch,
    IReadOnlyList<string> NotJudged,
    IReadOnlyList<string> Assumed,
    string Cautions);

/// <summary>The lever from the side: lengths, angles and forces of the drawing, and the words of its labels.</summary>
internal sealed record SideFigures(
    double BarMm,
    double? BarDiameterMm,
    double? AcrossFlatsMm,
    double ReachMm,
    double PastSquareDeg,
    double HandN,
    string Push,
    string HandWords,
    string ReachWords,
    string TorqueWords,
    string PullText,
    string? Breaks,
    TubeFigures? Tube);

/// <summary>The tube of the side view.</summary>
internal sealed record TubeFigures(
    double LengthMm,
    double BoreMm,
    double? WallMm,
    double OverlapMm,
    double LeastOverlapMm,
    double MostOverlapMm,
    double TiltDeg,
    double TipN,
    double MouthN,
    bool StaysOn,
    string? Fails,
    string TipWords,
    string MouthWords,
    string OverlapWords,
    string SafeWords);

/// <summary>One curve of force against length, as the text of a list of numbers; null where the limit does not exist.</summary>
internal sealed record CurveLine(string Name, string ForceN);

/// <summary>Force of the hands against length of the lever, with the limits that come first. Each curve is the text of a list of numbers.</summary>
internal sealed record WindowFigures(
    string ReachMm,
    string NeedLowN,
    string NeedLikelyN,
    string NeedHighN,
    double HandLowN,
    double HandLikelyN,
    double HandHighN,
    IReadOnlyList<CurveLine> Limits,
    double? YourReachMm,
    double TopN,
    IReadOnlyList<TickLine> LengthTicks,
    IReadOnlyList<TickLine> ForceTicks,
    string LengthUnit,
    string ForceUnit,
    string Words);

/// <summary>Everything the page shows for a set-up.</summary>
internal sealed record PageAnswer(
    LooseningAnswer Answer, PageWords Words, SideFigures? Side, WindowFigures Window, IReadOnlyDictionary<string, string> Assumed, string Command);

/// <summary>The verdict's line while a finger drags; what to do next is looked for when it rests.</summary>
internal sealed record SketchWords(string Verdict, string Sentence);

/// <summary>What changes at every frame of a drag: the verdict's line and the pictures in view.</summary>
internal sealed record SketchAnswer(SketchWords Words, SideFigures? Side, WindowFigures? Window);
