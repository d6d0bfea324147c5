using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;

namespace Leverage.Page.Lesson;

/// <summary>A small SVG drawing, written as text; words are encoded, and nothing carries a style of its own.</summary>
internal sealed class SvgSheet
{
    private const double TextSize = 27;
    private readonly StringBuilder _svg = new();

    /// <summary>A white sheet of a size, with a title and a description to be read aloud.</summary>
    internal SvgSheet(double width, double height, string title, string description)
    {
        Add($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" role=\"img\">");
        _svg.Append("<title>").Append(Encoded(title)).Append("</title><desc>").Append(Encoded(description)).Append("</desc>");
        Add($"<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>");
    }

    /// <summary>The whole document.</summary>
    internal string Whole() => $"{_svg}</svg>";

    /// <summary>A box.</summary>
    internal void Box(double x, double y, double width, double height, string fill, string edge) =>
        Add($"<rect x=\"{x:0.#}\" y=\"{y:0.#}\" width=\"{Math.Max(0, width):0.#}\" height=\"{height:0.#}\" fill=\"{fill}\" stroke=\"{edge}\" stroke-width=\"2.5\"/>");

    /// <summary>A circle.</summary>
    internal void Circle(double x, double y, double radius, string fill, string edge) =>
        Add($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"{radius:0.#}\" fill=\"{fill}\" stroke=\"{edge}\" stroke-width=\"2.5\"/>");

    /// <summary>A line from a point at an angle below level.</summary>
    internal void Ray(double x, double y, double length, double angleRad, string color, double width, string dashes)
    {
        string dash = dashes.Length > 0 ? $" stroke-dasharray=\"{dashes}\"" : "";
        Add($"<line x1=\"{x:0.#}\" y1=\"{y:0.#}\" x2=\"{x + length * Math.Cos(angleRad):0.#}\" y2=\"{y + length * Math.Sin(angleRad):0.#}\" stroke=\"{color}\" stroke-width=\"{width:0.#}\" stroke-linecap=\"round\"{dash}/>");
    }

    /// <summary>An upright arrow, its head at its end.</summary>
    internal void Arrow(double x, double y, double toX, double toY, string color)
    {
        double back = toY > y ? -18 : 18;
        Add($"<line x1=\"{x:0.#}\" y1=\"{y:0.#}\" x2=\"{toX:0.#}\" y2=\"{toY + back:0.#}\" stroke=\"{color}\" stroke-width=\"6\"/>");
        Add($"<path d=\"M{toX:0.#} {toY:0.#}l-11 {back:0.#}h22Z\" fill=\"{color}\"/>");
    }

    /// <summary>Words.</summary>
    internal void Text(double x, double y, string words, string color, string anchor = "start")
    {
        Add($"<text x=\"{x:0.#}\" y=\"{y:0.#}\" fill=\"{color}\" font-size=\"{TextSize}\" font-weight=\"700\" font-family=\"DejaVu Sans Condensed, DejaVu Sans, Arial Narrow, Arial, sans-serif\" text-anchor=\"{anchor}\">");
        _svg.Append(Encoded(words)).Append("</text>");
    }

    private void Add(FormattableString markup) => _svg.Append(markup.ToString(CultureInfo.InvariantCulture));

    private static string Encoded(string words) => HtmlEncoder.Create(System.Text.Unicode.UnicodeRanges.All).Encode(words);
}
