using System.Globalization;
using System.Xml.Linq;
using Leverage.Charts.Labels;

namespace Leverage.Charts.Tests;

/// <summary>What must hold for every chart, whatever it shows.</summary>
internal static class ChartChecks
{
    internal static void Sound(Chart chart)
    {
        Assert.Empty(chart.Crowded);
        Assert.All(chart.Texts, text => Assert.DoesNotContain('…', text.Text));
        WordsStandApart(chart);
        WordsLieOnThePage(chart);
        SvgHoldsTheWords(chart);
        var pixels = new Pixels(chart.Bytes(ChartFormat.Png));
        WordsAreInked(chart, pixels);
        NothingTouchesTheRim(chart, pixels);
    }

    internal static void WordsStandApart(Chart chart)
    {
        for (int i = 0; i < chart.Texts.Count; i++)
        {
            for (int k = i + 1; k < chart.Texts.Count; k++)
            {
                Assert.False(
                    chart.Texts[i].Box.Intersects(chart.Texts[k].Box),
                    $"'{chart.Texts[i].Text}' and '{chart.Texts[k].Text}' overlap on '{chart.Title}'.");
            }
        }
    }

    /// <summary>Drawn anew, after another drawing and under a German culture, the bytes are the same.</summary>
    internal static void SameInGerman(Func<Chart> draw)
    {
        Chart first = draw();
        byte[][] before = [first.Bytes(ChartFormat.Png), first.Bytes(ChartFormat.Svg)];
        CultureInfo culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            Chart second = draw();
            Assert.Equal(before[0], second.Bytes(ChartFormat.Png));
            Assert.Equal(before[1], second.Bytes(ChartFormat.Svg));
            Assert.Equal(before[0], first.Bytes(ChartFormat.Png));
            Assert.Equal(before[1], first.Bytes(ChartFormat.Svg));
            Assert.Equal(before[1], draw().Bytes(ChartFormat.Svg));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    private static void WordsLieOnThePage(Chart chart)
    {
        var page = new LabelBox(0, 0, chart.Page.Width, chart.Page.Height);
        Assert.All(chart.Texts, text => Assert.True(page.Contains(text.Box), $"'{text.Text}' leaves '{chart.Title}'."));
    }

    /// <summary>Every text has dark pixels in its box: a missing font would leave them white.</summary>
    private static void WordsAreInked(Chart chart, Pixels pixels) => Assert.All(
        chart.Texts, text => Assert.True(pixels.Darkest(text.Box) < 150, $"'{text.Text}' is not drawn on '{chart.Title}'."));

    private static void SvgHoldsTheWords(Chart chart)
    {
        XElement root = XElement.Parse(chart.Svg());
        XNamespace space = "http://www.w3.org/2000/svg";
        string[] drawn = [.. root.Descendants(space + "text").Select(text => text.Value)];
        Assert.All(chart.Texts.SelectMany(text => text.Lines), line => Assert.Contains(line, drawn, StringComparer.Ordinal));
        Assert.Equal(chart.Title, root.Element(space + "title")?.Value);
        Assert.NotEmpty(root.Element(space + "desc")?.Value ?? string.Empty);
        Assert.NotNull(root.Attribute("viewBox"));
    }

    private static void NothingTouchesTheRim(Chart chart, Pixels pixels)
    {
        Assert.Equal((chart.Page.Width, chart.Page.Height), (pixels.Width, pixels.Height));
        Assert.Equal(255, pixels.Darkest(new LabelBox(0, 0, pixels.Width, 3)));
        Assert.Equal(255, pixels.Darkest(new LabelBox(0, pixels.Height - 3, pixels.Width, 3)));
        Assert.Equal(255, pixels.Darkest(new LabelBox(0, 0, 3, pixels.Height)));
        Assert.Equal(255, pixels.Darkest(new LabelBox(pixels.Width - 3, 0, 3, pixels.Height)));
    }
}
