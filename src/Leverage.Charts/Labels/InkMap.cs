using SkiaSharp;

namespace Leverage.Charts.Labels;

/// <summary>How much is drawn where, in cells of a few pixels, so that a box's ink is four look-ups.</summary>
internal sealed class InkMap
{
    private const float Cell = 4;
    private readonly LabelBox _area;
    private readonly int _columns;
    private readonly int _rows;
    private readonly bool[] _ink;
    private int[]? _sums;

    /// <summary>A map of an empty area.</summary>
    internal InkMap(LabelBox area)
    {
        _area = area;
        _columns = (int)Math.Ceiling(area.Width / Cell) + 1;
        _rows = (int)Math.Ceiling(area.Height / Cell) + 1;
        _ink = new bool[_columns * _rows];
    }

    /// <summary>Adds a line through points.</summary>
    internal void Add(IReadOnlyList<SKPoint> path)
    {
        _sums = null;
        for (int i = 1; i < path.Count; i++)
        {
            SKPoint run = path[i] - path[i - 1];
            int steps = Math.Max(1, (int)(run.Length / 2));
            for (int k = 0; k <= steps; k++)
            {
                Mark(path[i - 1].X + run.X * k / steps, path[i - 1].Y + run.Y * k / steps);
            }
        }
    }

    /// <summary>Cells with ink in a box.</summary>
    internal int Count(LabelBox box)
    {
        int[] sums = _sums ??= Sum();
        int left = Column(box.Left);
        int right = Column(box.Right) + 1;
        int top = Row(box.Top);
        int bottom = Row(box.Bottom) + 1;
        int width = _columns + 1;
        return sums[bottom * width + right] - sums[top * width + right] - sums[bottom * width + left] + sums[top * width + left];
    }

    /// <summary>Steps of a cell along a line that meet ink.</summary>
    internal int Along(SKPoint from, SKPoint to)
    {
        int steps = Math.Max(1, (int)(SKPoint.Distance(from, to) / Cell));
        int met = 0;
        for (int k = 0; k <= steps; k++)
        {
            float x = from.X + (to.X - from.X) * k / steps;
            float y = from.Y + (to.Y - from.Y) * k / steps;
            met += Holds(x, y) && _ink[Row(y) * _columns + Column(x)] ? 1 : 0;
        }

        return met;
    }

    private bool Holds(float x, float y) => x >= _area.Left && x <= _area.Right && y >= _area.Top && y <= _area.Bottom;

    private void Mark(float x, float y)
    {
        if (Holds(x, y))
        {
            _ink[Row(y) * _columns + Column(x)] = true;
        }
    }

    private int[] Sum()
    {
        int width = _columns + 1;
        int[] sums = new int[width * (_rows + 1)];
        for (int row = 0; row < _rows; row++)
        {
            int line = 0;
            for (int column = 0; column < _columns; column++)
            {
                line += _ink[row * _columns + column] ? 1 : 0;
                sums[(row + 1) * width + column + 1] = sums[row * width + column + 1] + line;
            }
        }

        return sums;
    }

    private int Column(float x) => Math.Clamp((int)((x - _area.Left) / Cell), 0, _columns - 1);

    private int Row(float y) => Math.Clamp((int)((y - _area.Top) / Cell), 0, _rows - 1);
}
