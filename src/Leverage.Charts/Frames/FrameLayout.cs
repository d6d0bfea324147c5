using Leverage.Charts.Labels;
using SkiaSharp;

namespace Leverage.Charts.Frames;

/// <summary>Stacks title, answer, axis names and notes around the chart's area, which takes what room is left.</summary>
internal sealed class FrameLayout
{
    private readonly ChartPage _page;
    private readonly List<ChartText> _texts = [];

    private FrameLayout(ChartPage page) => _page = page;

    /// <summary>The area the curves are drawn in.</summary>
    internal LabelBox Area { get; private set; }

    /// <summary>The words, placed.</summary>
    internal IReadOnlyList<ChartText> Texts => _texts;

    /// <summary>Lays out words and ticks.</summary>
    /// <param name="page">Size of the drawing.</param>
    /// <param name="words">The words around it.</param>
    /// <param name="left">Words of the ticks at the left.</param>
    internal static FrameLayout Of(ChartPage page, FrameWords words, IEnumerable<string> left)
    {
        var layout = new FrameLayout(page);
        float line = ChartPage.LineHeight;
        float top = ChartPage.Rim;
        top = layout.Stack(words.Title, top, new TextLook(page.TitleSize, true, Ink.Text));
        top = layout.Stack(words.Answer, top, new TextLook(page.TextSize, words.Warns, words.Warns ? Ink.Stop : Ink.Text));
        float bottom = layout.Notes(words.Notes, page.Height - ChartPage.Rim);
        var axis = new TextLook(page.TextSize, false, Ink.Quiet);
        float gutter = ChartPage.Rim + Widest(left, page.TextSize) + 10;
        float margin = layout.Margin(words);
        top = layout.Stack(words.Up, top + 4, axis) + 0.4f * page.TextSize;
        if (words.Across.Length > 0)
        {
            float across = bottom - line * page.TextSize;
            layout._texts.Add(ChartText.Held(
                words.Across, new SKPoint((gutter + page.Width - margin) / 2, across), 0.5f, 0, axis));
            bottom = across - (line + 0.65f) * page.TextSize;
        }

        layout.Area = new LabelBox(gutter, top, page.Width - gutter - margin, bottom - top);
        return layout;
    }

    /// <summary>Room at the right for labels of up to two lines.</summary>
    private float Margin(FrameWords words)
    {
        float most = 0.27f * _page.Width;
        IEnumerable<string> lines = words.Ends.SelectMany(end => TextLines.Fit(end, most, _page.SmallSize, true));
        return ChartPage.Rim + (words.Ends.Count > 0 ? EndStack.Joint + Math.Min(most, Widest(lines, _page.SmallSize, true)) + 2 : 12);
    }

    private float Stack(string text, float top, TextLook look)
    {
        foreach (string line in TextLines.Fit(text, _page.Width - 2 * ChartPage.Rim, look.Size, look.Bold, cut: true))
        {
            _texts.Add(ChartText.At([line], new SKPoint(ChartPage.Rim, top), look));
            top += ChartPage.LineHeight * look.Size;
        }

        return top;
    }

    private float Notes(IReadOnlyList<string> notes, float bottom)
    {
        var look = new TextLook(_page.SmallSize, false, Ink.Quiet);
        var lines = notes.SelectMany(note => TextLines.Fit(note, _page.Width - 2 * ChartPage.Rim, look.Size, false, cut: true)).ToList();
        float top = bottom - lines.Count * ChartPage.LineHeight * look.Size;
        for (int i = 0; i < lines.Count; i++)
        {
            _texts.Add(ChartText.At([lines[i]], new SKPoint(ChartPage.Rim, top + i * ChartPage.LineHeight * look.Size), look));
        }

        return top - (lines.Count > 0 ? 4 : 0);
    }

    private static float Widest(IEnumerable<string> words, float size, bool bold = false) =>
        words.Select(word => ChartFonts.Width(word, size, bold)).DefaultIfEmpty(0).Max();
}
