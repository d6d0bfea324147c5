using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Page.Answering;

/// <summary>A link of the load path, worded; shares are of its limit.</summary>
internal sealed record LinkLine(
    string Part, string Limit, string Load, string Margin, double LikelyShare, double StrongShare, string Source, bool Confirmed, bool Breaks);

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
    double SquareN,
    string Push,
    bool LeftHand,
    string HandWords,
    string ReachWords,
    string TorqueWords,
    string PullText,
    string? Breaks,
    TubeFigures? Tube);

/// <summary>The tube of the side view. Gap is the play of tube on bar.</summary>
internal sealed record TubeFigures(
    double LengthMm,
    double BoreMm,
    double? WallMm,
    double OverlapMm,
    double LeastOverlapMm,
    double MostOverlapMm,
    double BestOverlapMm,
    double HandToTipMm,
    double TiltDeg,
    double TipN,
    double MouthN,
    double OutwardN,
    double HoldsN,
    bool StaysOn,
    double SafeDeg,
    double SafeAtEndDeg,
    string? Fails,
    string TipWords,
    string MouthWords,
    string OverlapWords,
    string SafeWords,
    double GripOffsetMm);

/// <summary>One curve of force against length.</summary>
internal sealed record CurveLine(string Name, IReadOnlyList<double?> ForceN);

/// <summary>Force of the hands against length of the lever.</summary>
internal sealed record WindowFigures(
    IReadOnlyList<double> ReachMm,
    IReadOnlyList<double> NeedLowN,
    IReadOnlyList<double> NeedLikelyN,
    IReadOnlyList<double> NeedHighN,
    double HandLowN,
    double HandLikelyN,
    double HandHighN,
    IReadOnlyList<CurveLine> Limits,
    IReadOnlyList<double> RoofN,
    double? YourReachMm,
    double? WorksFromMm,
    double? WorksToMm,
    double TopN,
    IReadOnlyList<TickLine> LengthTicks,
    IReadOnlyList<TickLine> ForceTicks,
    string LengthUnit,
    string ForceUnit,
    string Words);

/// <summary>Everything the page shows for a set-up.</summary>
internal sealed record PageAnswer(
    LooseningAnswer Answer, PageWords Words, SideFigures? Side, WindowFigures Window, IReadOnlyDictionary<string, string> Assumed, string Command);
