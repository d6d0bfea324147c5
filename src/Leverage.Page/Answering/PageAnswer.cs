using Leverage.Wording;

namespace Leverage.Page.Answering;

/// <summary>A refusal: one line, and the field it is about, if it is about one.</summary>
internal sealed record Refusal(string Error, string? Field);

/// <summary>A link of the load path, worded; shares are of its limit.</summary>
internal sealed record LinkLine(
    string Part, string Likely, string Hard, string Limit, string Safety, double LikelyShare, double HardShare, string Source, bool Confirmed, bool GivesFirst);

/// <summary>The three chances: shares, and whole percentages that sum to 100.</summary>
internal sealed record ChanceLine(OutcomeAnswer Shares, string ComesLoose, string StaysTight, string Gives);

/// <summary>A slider: the field it writes, how it writes a value, and its range.</summary>
internal sealed record SliderLine(string Field, string Label, string Template, double Min, double Max, double Step, double Value, string Text);

/// <summary>What the page shows besides the answer itself, in words.</summary>
internal sealed record PageWords(
    string Title,
    string Verdict,
    string Sentence,
    IReadOnlyList<FigureLine> Takes,
    IReadOnlyList<FigureLine> Tube,
    IReadOnlyList<FigureLine> Around,
    IReadOnlyList<LinkLine> Links,
    ChanceLine? Chances,
    IReadOnlyList<string> Advice,
    string Assumed,
    string Cautions);

/// <summary>The drawings, each a whole SVG document.</summary>
internal sealed record PageDrawings(string Window, string? Side);

/// <summary>Everything the page shows for a set-up: the answer as the command line gives it, and words and drawings of it.</summary>
internal sealed record PageAnswer(
    LooseningAnswer Answer, PageWords Words, PageDrawings Drawings, IReadOnlyList<SliderLine> Sliders, string Command);
