using Leverage.Charts.Labels;
using SkiaSharp;

namespace Leverage.Charts.Tests;

/// <summary>The pixels of a PNG.</summary>
internal sealed class Pixels
{
    private readonly byte[] _bytes;

    internal Pixels(byte[] png)
    {
        using SKBitmap decoded = SKBitmap.Decode(png);
        (Width, Height, _bytes) = (decoded.Width, decoded.Height, decoded.Bytes);
    }

    internal int Width { get; }

    internal int Height { get; }

    /// <summary>The darkest channel of any pixel in a box: 255 where all is white.</summary>
    internal int Darkest(LabelBox box)
    {
        int darkest = 255;
        for (int y = Math.Max(0, (int)box.Top); y < Math.Min(Height, box.Bottom); y++)
        {
            for (int x = Math.Max(0, (int)box.Left); x < Math.Min(Width, box.Right); x++)
            {
                int at = 4 * (y * Width + x);
                darkest = Math.Min(darkest, Math.Min(_bytes[at], Math.Min(_bytes[at + 1], _bytes[at + 2])));
            }
        }

        return darkest;
    }
}
