using UnitsNet;

namespace Leverage.Tubes;

/// <summary>A tube slipped over a bar.</summary>
/// <param name="Bore">Inside diameter.</param>
/// <param name="Wall">Wall; null for a jack handle, whose wall cannot be seen.</param>
/// <param name="Length">Whole length.</param>
/// <param name="Yield">Yield strength of its steel.</param>
public sealed record Tube(Length Bore, Length? Wall, Length Length, Pressure Yield)
{
    /// <summary>Force a trolley jack's handle carries at its end by its own standard, N (AS 2615:2016).</summary>
    public const double JackHandleForceN = 450;

    /// <summary>The standard that says so.</summary>
    internal const string JackHandleStandard = "AS 2615:2016";

    /// <summary>Play over the bar's diameter above which the fit is called loose (judgement).</summary>
    public const double LoosePlayShare = 0.15;

    /// <summary>Whether the yield is the least of all tube steels, because this one is not known.</summary>
    public bool UnknownSteel { get; init; }

    /// <summary>Outside diameter, where the wall is known.</summary>
    public Length? Outside => Wall is { } wall ? Bore + 2 * wall : null;

    /// <summary>A tube of known section.</summary>
    /// <param name="outside">Outside diameter.</param>
    /// <param name="wall">Wall.</param>
    /// <param name="length">Whole length.</param>
    /// <param name="yield">Yield strength.</param>
    /// <returns>The tube.</returns>
    public static Tube OfSection(Length outside, Length wall, Length length, Pressure yield) =>
        new(outside - 2 * wall, wall, length, yield);
}
