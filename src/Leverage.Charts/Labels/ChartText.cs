using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>Looks of a piece of text.</summary>
/// <param name="Size">Size of the type, pixels.</param>
/// <param name="Bold">Whether bold.</param>
/// <param name="Color">Its colour.</param>
/// <param name="Backed">Whether the ground behind it is lightened, over lines and fills.</param>
internal readonly record struct TextLook(float Size, bool Bold, SKColor Color, bool Backed = false);

/// <summary>A piece of text on a drawing, of one or more lines.</summary>
public sealed class ChartText
{
    /// <summary>Height of capitals and depth of tails over the size: the box of a line reaches that far.</summary>
    private const float Ascent = 0.80f;
    private const float Descent = 0.24f;
    private const float Line = Ascent + Descent + 0.06f;

    private readonly TextLook _look;

    private ChartText(IReadOnlyList<string> lines, LabelBox box, TextLook look)
    {
        Lines = lines;
        Box = box;
        _look = look;
    }

    /// <summary>The words, line by line.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>The words.</summary>
    public string Text => string.Join(' ', Lines);

    /// <summary>The box they fill.</summary>
    public LabelBox Box { get; }

    /// <summary>A line pointing from the text to what it names, where it could not stand beside it; null otherwise.</summary>
    internal Leader? Leader { get; init; }

    /// <summary>Size of a text.</summary>
    internal static SKSize Measure(IReadOnlyList<string> lines, TextLook look) => new(
        lines.Max(line => ChartFonts.Width(line, look.Size, look.Bold)),
        ((lines.Count - 1) * Line + Ascent + Descent) * look.Size);

    /// <summary>Text whose box's upper left corner is at a point.</summary>
    internal static ChartText At(IReadOnlyList<string> lines, SKPoint corner, TextLook look, Leader? leader = null)
    {
        SKSize size = Measure(lines, look);
        return new ChartText(lines, new LabelBox(corner.X, corner.Y, size.Width, size.Height), look) { Leader = leader };
    }

    /// <summary>A line held at a point by a place in its box: 0 left or top, 0.5 middle, 1 right or bottom.</summary>
    internal static ChartText Held(string line, SKPoint at, float across, float down, TextLook look)
    {
        SKSize size = Measure([line], look);
        return At([line], new SKPoint(at.X - across * size.Width, at.Y - down * size.Height), look);
    }

    /// <summary>Draws it.</summary>
    internal void Draw(SKCanvas canvas)
    {
        Leader?.Draw(canvas, _look.Color);
        if (_look.Backed)
        {
            using var ground = new SKPaint { IsAntialias = true, Color = SKColors.White.WithAlpha(205) };
            LabelBox rim = Box.Grown(2);
            canvas.DrawRect(rim.Left, rim.Top, rim.Width, rim.Height, ground);
        }

        using var paint = new SKPaint { IsAntialias = true, Color = _look.Color };
        using SKFont font = ChartFonts.Sized(_look.Size, _look.Bold);
        for (int i = 0; i < Lines.Count; i++)
        {
            canvas.DrawText(Lines[i], Box.Left, Box.Top + (i * Line + Ascent) * _look.Size, SKTextAlign.Left, font, paint);
        }
    }
}
