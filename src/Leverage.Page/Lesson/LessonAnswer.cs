namespace Leverage.Page.Lesson;

/// <summary>One step of the lesson: words, a figure and a question with the answer of the learner's own numbers.</summary>
internal sealed record LessonStep(
    string Title, IReadOnlyList<string> Words, string Figure, string Question, string Unit, double Answer, double Within, string Worked);

/// <summary>The lesson for one set-up.</summary>
internal sealed record LessonAnswer(
    string Title, string Given, IReadOnlyList<LessonStep> Steps, string Cautions, LessonFigures Figures);

/// <summary>What the figures of the lesson are drawn from. Curves are last safe angles over the overlaps, degrees.</summary>
internal sealed record LessonFigures(
    double OverlapMm, double HandToTipMm, double SquareN, double TipN, double MouthN, double SnugN, double HoldsN, double OutwardN,
    double SafeDeg, double SafeAtEndDeg, double PastSquareDeg, double BestOverlapMm, double ForceN,
    IReadOnlyList<double> OverlapsMm, IReadOnlyList<double> SafeDegs, IReadOnlyList<double?> BreaksAtN, FigureWords Words);

/// <summary>The figures as the lesson's sentences say them, each rounded once and in the units asked for.</summary>
internal sealed record FigureWords(string Square, string Tip, string Mouth, string Snug, string Holds, string Outward, string Best);
