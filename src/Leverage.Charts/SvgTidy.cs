using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Leverage.Charts;

/// <summary>
/// Makes a drawn SVG fit to publish: names that do not depend on what was drawn before it, a size that scales, a title
/// and a description to be read aloud, and fonts to fall back on.
/// </summary>
internal static partial class SvgTidy
{
    private static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    /// <summary>The tidied document.</summary>
    internal static string Tidy(string svg, Chart chart)
    {
        XElement root = XElement.Parse(Renamed(svg));
        root.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {chart.Page.Width} {chart.Page.Height}"));
        root.SetAttributeValue("role", "img");
        foreach (XElement text in root.Descendants(Space + "text"))
        {
            text.Value = text.Value.Trim();
            text.SetAttributeValue("font-family", $"{ChartFonts.Family}, DejaVu Sans, Arial Narrow, Arial, sans-serif");
            Shorten(text, "x");
            Shorten(text, "y");
        }

        root.AddFirst(new XElement(Space + "title", chart.Title), new XElement(Space + "desc", chart.Description));
        return root.ToString(SaveOptions.None).ReplaceLineEndings("\n") + "\n";
    }

    /// <summary>Lists of glyph positions without the comma left at their end.</summary>
    private static void Shorten(XElement text, string name)
    {
        if (text.Attribute(name) is { } list)
        {
            list.Value = list.Value.TrimEnd(' ', ',');
        }
    }

    /// <summary>Names counted from one in this document, whatever was drawn before.</summary>
    private static string Renamed(string svg)
    {
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (Match match in Id().Matches(svg))
        {
            names.TryAdd(match.Groups["name"].Value, string.Create(CultureInfo.InvariantCulture, $"p{names.Count + 1}"));
        }

        string named = Id().Replace(svg, match => $"id=\"{names[match.Groups["name"].Value]}\"");
        return Reference().Replace(named, match => names.TryGetValue(match.Groups["name"].Value, out string? name) ? $"#{name}" : match.Value);
    }

    // Both go once over the text whatever it is, so they need no time limit; one would fail where a clock jumps.
    [GeneratedRegex("\\bid=\"(?<name>[^\"]+)\"", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: Timeout.Infinite)]
    private static partial Regex Id();

    [GeneratedRegex("#(?<name>[A-Za-z]+_[0-9A-Za-z]+)", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: Timeout.Infinite)]
    private static partial Regex Reference();
}
