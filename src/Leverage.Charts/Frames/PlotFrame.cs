using Leverage.Charts.Labels;
using SkiaSharp;

namespace Leverage.Charts.Frames;

/// <summary>A chart in the making: the words around it and one or more pairs of axes.</summary>
internal sealed class PlotFrame
{
    private readonly ChartPage _page;
    private readonly FrameWords _words;
    private readonly List<ChartText> _texts;
    private readonly List<PlotPanel> _panels = [];

    /// <summary>The words around a chart, laid out with room for the ticks of its y axes.</summary>
    internal PlotFrame(ChartPage page, FrameWords words, params Scale[] up)
    {
        ChartFonts.Use();
        (_page, _words) = (page, words);
        var layout = FrameLayout.Of(page, words, up.SelectMany(scale => scale.Ticks().Select(scale.Words)));
        Area = layout.Area;
        _texts = [.. layout.Texts];
    }

    /// <summary>Room for the axes.</summary>
    internal LabelBox Area { get; }

    /// <summary>Adds a pair of axes that takes all the room.</summary>
    internal PlotPanel Add(Scale across, Scale up) => Add(Area, across, up);

    /// <summary>Adds a pair of axes.</summary>
    /// <param name="area">Its place.</param>
    /// <param name="across">The x axis.</param>
    /// <param name="up">The y axis.</param>
    /// <param name="wordsBelow">Whether the x axis has words.</param>
    internal PlotPanel Add(LabelBox area, Scale across, Scale up, bool wordsBelow = true)
    {
        var panel = new PlotPanel(_page, area, across, up);
        _panels.Add(panel);
        _texts.AddRange(FrameTicks.Left(area, _page.TextSize, up));
        _texts.AddRange(wordsBelow ? FrameTicks.Below(area, _page.TextSize, across) : []);
        return panel;
    }

    /// <summary>Adds a line of text.</summary>
    internal void Say(ChartText text) => _texts.Add(text);

    /// <summary>Places the labels and closes the chart.</summary>
    internal Chart Finish(string description)
    {
        var crowded = new List<string>();
        _panels.ForEach(panel => panel.Place(_texts, crowded));
        return new Chart(_page, _words.Title, description, _texts, Draw) { Crowded = crowded };
    }

    private void Draw(SKCanvas canvas)
    {
        _panels.ForEach(panel => panel.Draw(canvas));
        _texts.ForEach(text => text.Draw(canvas));
    }
}
