using System.Buffers;

namespace Leverage.Tables;

/// <summary>Where a cell stands in the text of its table.</summary>
internal readonly record struct TextPart(int Start, int Length);

/// <summary>
/// The text of a table's cells, one behind the other. It grows in a borrowed piece of memory while the table is read and
/// is cut to length in the end: a table of many cells is one object and not a string a cell.
/// </summary>
internal sealed class TableText
{
    /// <summary>Room for the cells of all but the longest tables; what is not used of it is never touched.</summary>
    private const int Room = 65536;

    private char[] _chars = ArrayPool<char>.Shared.Rent(Room);
    private int _length;

    /// <summary>A cell's text.</summary>
    internal ReadOnlySpan<char> this[TextPart part] => _chars.AsSpan(part.Start, part.Length);

    /// <summary>Adds a cell's text.</summary>
    internal TextPart Add(ReadOnlySpan<char> cell)
    {
        if (_length + cell.Length > _chars.Length)
        {
            char[] more = ArrayPool<char>.Shared.Rent(Math.Max(2 * _chars.Length, _length + cell.Length));
            _chars.AsSpan(0, _length).CopyTo(more);
            ArrayPool<char>.Shared.Return(_chars);
            _chars = more;
        }

        cell.CopyTo(_chars.AsSpan(_length));
        var part = new TextPart(_length, cell.Length);
        _length += cell.Length;
        return part;
    }

    /// <summary>Nothing more will be added: gives the borrowed memory back.</summary>
    internal void Close()
    {
        char[] borrowed = _chars;
        _chars = borrowed.AsSpan(0, _length).ToArray();
        ArrayPool<char>.Shared.Return(borrowed);
    }
}
