namespace Leverage.Charts.Frames;

/// <summary>The words around a chart.</summary>
/// <param name="Title">The case.</param>
/// <param name="Answer">What the chart says, in a line.</param>
/// <param name="Across">Name of the x axis with its unit.</param>
/// <param name="Up">Name of the y axis with its unit.</param>
internal sealed record FrameWords(string Title, string Answer, string Across, string Up)
{
    /// <summary>Labels that are to stand at the ends of curves, beside the chart.</summary>
    internal IReadOnlyList<string> Ends { get; init; } = [];

    /// <summary>Whether the answer warns.</summary>
    internal bool Warns { get; init; }

    /// <summary>Notes below the chart.</summary>
    internal IReadOnlyList<string> Notes { get; init; } = [];
}
