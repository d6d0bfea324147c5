using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>A label for the end of a curve, to stand beside the chart.</summary>
/// <param name="Text">The words.</param>
/// <param name="Height">Where the curve ends, pixels.</param>
/// <param name="Look">Looks of the words.</param>
internal sealed record EndLabel(string Text, float Height, TextLook Look);

/// <summary>
/// Stacks labels beside the ends of curves: in the curves' order, as near to them as the labels' own height allows, each
/// joined to its curve.
/// </summary>
internal static class EndStack
{
    private const float Gap = 3;

    /// <summary>Length of the line from curve to label.</summary>
    internal const float Joint = 26;

    /// <summary>The texts in their places; null where the column is too short for all of them.</summary>
    /// <param name="labels">The labels.</param>
    /// <param name="column">The column they stand in, its left edge at the ends of the curves.</param>
    internal static List<ChartText>? Place(IEnumerable<EndLabel> labels, LabelBox column)
    {
        EndLabel[] sorted = [.. labels.OrderBy(label => label.Height)];
        List<string>[] lines = [.. sorted.Select(label =>
            TextLines.Fit(label.Text, column.Width - Joint, label.Look.Size, label.Look.Bold))];
        float[] heights = [.. sorted.Select((label, i) => ChartText.Measure(lines[i], label.Look).Height + Gap)];
        if (heights.Sum() > column.Height)
        {
            return null;
        }

        float[] tops = Tops([.. sorted.Select((label, i) => label.Height - heights[i] / 2)], heights, column);
        var texts = new List<ChartText>();
        for (int i = 0; i < sorted.Length; i++)
        {
            float middle = tops[i] + (heights[i] - Gap) / 2;
            var joint = new Leader(
                new SKPoint(column.Left + Joint - 4, middle), new SKPoint(column.Left + 1, sorted[i].Height), false);
            texts.Add(ChartText.At(lines[i], new SKPoint(column.Left + Joint, tops[i]), sorted[i].Look, joint));
        }

        return texts;
    }

    /// <summary>Upper edges nearest the wished ones with no overlap: neighbours that would overlap move as one block.</summary>
    private static float[] Tops(float[] wished, float[] heights, LabelBox column)
    {
        var blocks = new List<(int First, int Count, float Top, float Height)>();
        for (int i = 0; i < wished.Length; i++)
        {
            blocks.Add((i, 1, Hold(wished[i], heights[i], column), heights[i]));
            while (blocks.Count > 1 && blocks[^2].Top + blocks[^2].Height > blocks[^1].Top)
            {
                var (upper, lower) = (blocks[^2], blocks[^1]);
                blocks.RemoveRange(blocks.Count - 2, 2);
                float height = upper.Height + lower.Height;
                float top = Mean(wished, heights, upper.First, upper.Count + lower.Count);
                blocks.Add((upper.First, upper.Count + lower.Count, Hold(top, height, column), height));
            }
        }

        return [.. blocks.SelectMany(block => Stacked(block.Top, heights.AsSpan(block.First, block.Count).ToArray()))];
    }

    private static IEnumerable<float> Stacked(float top, float[] heights)
    {
        foreach (float height in heights)
        {
            yield return top;
            top += height;
        }
    }

    /// <summary>Upper edge of a block that leaves its labels nearest their wishes on the whole.</summary>
    private static float Mean(float[] wished, float[] heights, int first, int count)
    {
        float sum = 0;
        float above = 0;
        for (int i = first; i < first + count; i++)
        {
            sum += wished[i] - above;
            above += heights[i];
        }

        return sum / count;
    }

    private static float Hold(float top, float height, LabelBox column) =>
        Math.Clamp(top, column.Top, Math.Max(column.Top, column.Bottom - height));
}
