using ScottPlot;
using SkiaSharp;

namespace Leverage.Charts;

/// <summary>The program's own two fonts, from its own bytes: a machine without fonts would draw no text and say nothing.</summary>
internal static class ChartFonts
{
    /// <summary>Family of both.</summary>
    internal const string Family = "DejaVu Sans Condensed";

    private static readonly Lazy<SKTypeface> Plain = new(() => Load("DejaVuSansCondensed.ttf"));
    private static readonly Lazy<SKTypeface> Heavy = new(() => Load("DejaVuSansCondensed-Bold.ttf"));
    private static readonly Lazy<bool> Registered = new(Register);

    /// <summary>Makes these the fonts of every plot; to be called before the first one.</summary>
    internal static void Use() => _ = Registered.Value;

    /// <summary>A font of a size, to be disposed of.</summary>
    internal static SKFont Sized(float size, bool bold) => new(Face(bold), size)
    {
        Subpixel = true,
        Hinting = SKFontHinting.None,
        Edging = SKFontEdging.Antialias,
    };

    /// <summary>Width of a line of text.</summary>
    internal static float Width(string text, float size, bool bold)
    {
        using SKFont font = Sized(size, bold);
        return font.MeasureText(text);
    }

    private static SKTypeface Face(bool bold) => bold ? Heavy.Value : Plain.Value;

    private static bool Register()
    {
        Fonts.FontResolvers.Insert(0, new Resolver());
        Fonts.Default = Family;
        Fonts.Sans = Family;
        return true;
    }

    private static SKTypeface Load(string file)
    {
        using Stream stream = typeof(ChartFonts).Assembly.GetManifestResourceStream($"fonts/{file}")
            ?? throw new InvalidOperationException($"The font {file} is not in the program.");
        return SKTypeface.FromStream(stream);
    }

    private sealed class Resolver : IFontResolver
    {
        public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) =>
            fontName == Family ? Face(bold) : null;

        public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
            CreateTypeface(fontName, weight >= FontWeight.SemiBold, false);
    }
}
