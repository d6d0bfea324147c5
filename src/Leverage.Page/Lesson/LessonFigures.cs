using Leverage.Wording;
using Leverage.Assessments;

namespace Leverage.Page.Lesson;

/// <summary>The lesson's own small drawings: one idea each, with the learner's numbers, to their scale; what the step asks for stands as a question mark.</summary>
internal static class LessonFigures
{
    private const string Ink = "#1b1b1b";
    private const string Hand = "#1f4e8c";
    private const string Holds = "#1d6b2c";
    private const string Pulls = "#a81212";
    private const string Steel = "#b9c0c7";

    /// <summary>Three forces on a level tube, arrows as long as they are strong.</summary>
    internal static string Reactions(LessonNumbers n)
    {
        TubeSketch s = n.Tube;
        var svg = new SvgSheet(800, 520, "Three forces on the tube", $"Hands push {n.ForceText(n.Sketch.SquareN)} down, the tip pushes up, the mouth is pressed down.");
        double one = 620 / (s.OverlapMm + s.HandToTipMm);
        double mouth = 80;
        double tip = mouth + s.OverlapMm * one;
        double hands = tip + s.HandToTipMm * one;
        double pull = 150 / Math.Max(s.TipN, 1);
        svg.Box(20, 236, tip - 20, 20, Steel, Ink);
        svg.Box(mouth, 222, hands + 40 - mouth, 48, "none", Ink);
        svg.Arrow(mouth, 222 - Math.Max(30, s.MouthN * pull), mouth, 220, Ink);
        svg.Arrow(tip, 272 + s.TipN * pull, tip, 274, Ink);
        svg.Arrow(hands, 222 - Math.Max(30, n.Sketch.SquareN * pull), hands, 220, Hand);
        svg.Text(30, 40, "mouth", Ink);
        svg.Text(tip, 485, "tip: ?", Ink, tip > 600 ? "end" : "middle");
        svg.Text(780, 40, $"hands {n.ForceText(n.Sketch.SquareN)}", Hand, "end");
        svg.Text((mouth + tip) / 2, 320, n.Long(s.OverlapMm), Ink, "middle");
        svg.Text((tip + hands) / 2, 320, n.Long(s.HandToTipMm), Ink, "middle");
        return svg.Whole();
    }

    /// <summary>What pulls outward against what friction holds, in a snug tube and in yours.</summary>
    internal static string Balance(LessonNumbers n)
    {
        double snug = n.Slip.SnugHoldsN(n.Sketch.SquareN);
        double most = Math.Max(snug, Math.Max(n.Tube.HoldsN, n.Tube.OutwardN));
        var svg = new SvgSheet(800, 400, "What holds the tube", $"Yours holds {n.ForceText(n.Tube.HoldsN)}, you pull {n.ForceText(n.Tube.OutwardN)}.");
        Row(svg, 0, "a snug tube would hold ?", snug / most, Holds);
        Row(svg, 1, $"yours holds {n.ForceText(n.Tube.HoldsN)}", n.Tube.HoldsN / most, Holds);
        Row(svg, 2, $"you pull along it {n.ForceText(n.Tube.OutwardN)}, at {UnitStyle.Angle(n.Slip.Setup.BelowLevel)} below level", n.Tube.OutwardN / most, Pulls);
        return svg.Whole();
    }

    /// <summary>The bar from the side: level, as low as you swing, and the last safe angles.</summary>
    internal static string Dial(LessonNumbers n, bool letsGo)
    {
        SlipAngles angles = n.Slip.Here.Checked;
        string held = letsGo ? LessonNumbers.Degrees(angles.HeldRad) : "?";
        double swing = n.Slip.Setup.BelowLevel.Radians;
        var svg = new SvgSheet(1000, 560, "Angles of the bar below level", $"Your swing goes to {LessonNumbers.Degrees(swing)}; the nut held, it is safe to {held}.");
        List<Spoke> spokes =
        [
            new(0, 520, "level", Ink, 3, ""),
            new(swing, 430, $"your lowest, {UnitStyle.Angle(n.Slip.Setup.BelowLevel)}", Ink, 16, ""),
            new(angles.HeldRad, 520, $"safe to {held} while it holds", Holds, 6, ""),
        ];
        if (letsGo)
        {
            spokes.Add(new(angles.ReleaseRad, 520, "safe to ? as it lets go", Pulls, 6, "14 8"));
        }

        Fan(svg, spokes);
        svg.Circle(60, 110, 26, Steel, Ink);
        return svg.Whole();
    }

    /// <summary>Rays from the nut, each with its words at its end, never on top of each other.</summary>
    private static void Fan(SvgSheet svg, List<Spoke> spokes)
    {
        double above = 0;
        foreach (Spoke spoke in spokes.OrderBy(spoke => spoke.AngleRad))
        {
            svg.Ray(60, 110, spoke.Length, spoke.AngleRad, spoke.Color, spoke.Width, spoke.Dashes);
            above = Math.Max(above + 38, 110 + spoke.Length * Math.Sin(spoke.AngleRad) + 9);
            svg.Text(60 + spoke.Length * Math.Cos(spoke.AngleRad) + 18, Math.Min(above, 545), spoke.Words, spoke.Color);
        }
    }

    private sealed record Spoke(double AngleRad, double Length, string Words, string Color, double Width, string Dashes);

    private static void Row(SvgSheet svg, int row, string words, double share, string color)
    {
        double y = 30 + row * 122;
        svg.Text(30, y + 20, words, Ink);
        svg.Box(30, y + 36, Math.Max(4, 740 * Math.Max(0, share)), 46, color, Ink);
    }
}
