using System.Globalization;

namespace Leverage.Tables;

/// <summary>A table holds something that cannot be read: says file, line, column, what was found and what is accepted.</summary>
public sealed class TableFormatException : FormatException
{
    /// <summary>Builds the error from its parts.</summary>
    /// <param name="file">The file, as the project writes it: <c>tables/friction.csv</c>.</param>
    /// <param name="line">Line of the file, counted from 1.</param>
    /// <param name="column">Name of the column, or null when the whole line is at fault.</param>
    /// <param name="found">What stands there.</param>
    /// <param name="accepted">What may stand there.</param>
    public TableFormatException(string file, int line, string? column, string found, string accepted)
        : base(Compose(file, line, column, found, accepted)) =>
        (File, Line, Column, Found, Accepted) = (file, line, column, found, accepted);

    /// <summary>The file, as the project writes it.</summary>
    public string File { get; }

    /// <summary>Line of the file, counted from 1.</summary>
    public int Line { get; }

    /// <summary>Name of the column, or null when the whole line is at fault.</summary>
    public string? Column { get; }

    /// <summary>What stands there.</summary>
    public string Found { get; }

    /// <summary>What may stand there.</summary>
    public string Accepted { get; }

    private static string Compose(string file, int line, string? column, string found, string accepted) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{file}({line}){(column is null ? "" : $", column {column}")}: found {found}; accepted: {accepted}.");
}
