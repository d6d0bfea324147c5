namespace Leverage.Tables;

/// <summary>How far a row of a table may be trusted; written in its <c>status</c> column.</summary>
public enum ValueStatus
{
    /// <summary>Seen in print: the source column names where.</summary>
    Published,

    /// <summary>Recalled, not seen in a readable source: usable, and always shown as such.</summary>
    Memory,

    /// <summary>Our own estimate within the evidence the source column gives.</summary>
    Judgement,

    /// <summary>Worked out from other values; the source column says from which.</summary>
    Derived,

    /// <summary>Computed by another, independent engine; the source column says which.</summary>
    Engine,
}

/// <summary>The words of the <c>status</c> column.</summary>
public static class ValueStatusWords
{
    /// <summary>The accepted words, in the order errors list them.</summary>
    public const string Accepted = "published, memory, judgement, derived or engine";

    /// <summary>The word for a status, as the tables write it.</summary>
    /// <param name="status">The status.</param>
    /// <returns>One of the accepted words.</returns>
    public static string Word(this ValueStatus status) => status switch
    {
        ValueStatus.Published => "published",
        ValueStatus.Memory => "memory",
        ValueStatus.Judgement => "judgement",
        ValueStatus.Engine => "engine",
        _ => "derived",
    };

    /// <summary>Whether an answer must mark a value: it is recalled or our own judgement.</summary>
    /// <param name="status">The status.</param>
    /// <returns>True for memory and judgement.</returns>
    public static bool IsUnconfirmed(this ValueStatus status) => status is ValueStatus.Memory or ValueStatus.Judgement;

    /// <summary>Reads a word of the status column; case matters.</summary>
    /// <param name="word">The word.</param>
    /// <returns>The status, or null when the word is none of the accepted five.</returns>
    public static ValueStatus? Read(ReadOnlySpan<char> word) => word switch
    {
        "published" => ValueStatus.Published,
        "memory" => ValueStatus.Memory,
        "judgement" => ValueStatus.Judgement,
        "derived" => ValueStatus.Derived,
        "engine" => ValueStatus.Engine,
        _ => null,
    };
}
