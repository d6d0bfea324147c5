using Leverage.Reading;

namespace Leverage.Requests;

/// <summary>What the values of a field are, apart from their type.</summary>
/// <param name="Value">What help calls a value: <c>LENGTH</c>, <c>man|woman</c>.</param>
/// <param name="Example">A value that is accepted.</param>
internal abstract record FieldKind(string Value, string Example)
{
    /// <summary>What is accepted of a quantity; null of a name.</summary>
    internal AcceptedRange? Range { get; init; }

    /// <summary>The names that may be given, for completion, forms and schemas; none for a quantity.</summary>
    internal Func<IEnumerable<string>> Names { get; init; } = () => [];

    /// <summary>The table that tells the names apart; null where there is none.</summary>
    internal string? Table { get; init; }

    /// <summary>Whether the field is there or not, without a value.</summary>
    internal bool IsFlag { get; init; }

    /// <summary>Whether several values may be given.</summary>
    internal bool IsList { get; init; }

    /// <summary>Whether a text is a value of its own and not the name of a piece of a chest.</summary>
    internal virtual bool Takes(string text) => true;
}

/// <summary>What the values of a field are.</summary>
/// <param name="Value">What help calls a value.</param>
/// <param name="Example">A value that is accepted.</param>
/// <param name="Parse">From text to value, whatever its size.</param>
/// <param name="Write">From value to a text that is read back the same.</param>
/// <param name="Check">Refuses a value that cannot be; its second argument is the text to quote.</param>
/// <typeparam name="T">Type of the value.</typeparam>
internal sealed record FieldKind<T>(string Value, string Example, Func<string, T> Parse, Func<T, string> Write, Action<T, string>? Check = null)
    : FieldKind(Value, Example)
{
    /// <summary>The value of a text.</summary>
    /// <exception cref="InputException">It cannot be read, or is not accepted.</exception>
    internal T Read(string text)
    {
        T value = Parse(text);
        Check?.Invoke(value, text);
        return value;
    }

    /// <summary>Refuses a value that did not come as text.</summary>
    internal void CheckValue(T value) => Check?.Invoke(value, Write(value));

    /// <inheritdoc/>
    internal override bool Takes(string text)
    {
        try
        {
            _ = Parse(text);
            return true;
        }
        catch (InputException)
        {
            return false;
        }
    }
}
