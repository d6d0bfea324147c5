using ScottPlot;
using SkiaSharp;

namespace Leverage.Charts;

/// <summary>The few colours of all drawings, chosen to differ in lightness so that a grey print says the same.</summary>
internal static class Ink
{
    /// <summary>Words and frames, almost black.</summary>
    internal static readonly SKColor Text = new(0x1B, 0x1B, 0x1B);

    /// <summary>Notes and ticks.</summary>
    internal static readonly SKColor Quiet = new(0x4A, 0x4A, 0x4A);

    /// <summary>Grid lines.</summary>
    internal static readonly SKColor Grid = new(0xE3, 0xE3, 0xE3);

    /// <summary>What the nut needs: dark line, medium band.</summary>
    internal static readonly SKColor Need = new(0x9A, 0x3B, 0x0B);

    /// <summary>Band of what the nut needs.</summary>
    internal static readonly SKColor NeedBand = new(0xE6, 0xB0, 0x80, 0xB0);

    /// <summary>What the hands give: dark line, light band.</summary>
    internal static readonly SKColor Hand = new(0x1F, 0x4E, 0x8C);

    /// <summary>Band of what the hands give.</summary>
    internal static readonly SKColor HandBand = new(0xDD, 0xE9, 0xF7);

    /// <summary>Where it works: hatched.</summary>
    internal static readonly SKColor Works = new(0x1D, 0x6B, 0x2C);

    /// <summary>Ground of where it works.</summary>
    internal static readonly SKColor WorksBand = new(0xC3, 0xE3, 0xBE);

    /// <summary>Limits of parts.</summary>
    internal static readonly SKColor Limit = new(0x2B, 0x2B, 0x2B);

    /// <summary>What must not be done.</summary>
    internal static readonly SKColor Stop = new(0xA8, 0x12, 0x12);

    /// <summary>Hatching of where something gives.</summary>
    internal static readonly SKColor Hatch = new(0xA0, 0x90, 0x90);

    /// <summary>Steel of bars and tubes.</summary>
    internal static readonly SKColor Steel = new(0xB9, 0xC0, 0xC7);

    /// <summary>Hands.</summary>
    internal static readonly SKColor Skin = new(0xF0, 0xC8, 0xA0, 0xE0);

    /// <summary>A colour as ScottPlot takes it.</summary>
    internal static Color Plot(SKColor color) => Color.FromSKColor(color);
}
