using Leverage.Reading;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Leverage.Workshop.Files;

/// <summary>
/// Reads a TOML file into tables that know where everything stands. The library parses and checks the grammar, and its
/// syntax tree needs no reflection; values stay text here, because our own readers read quantities.
/// </summary>
public static class TomlFile
{
    /// <summary>The largest file read, bytes: a job of ten thousand fasteners stays below it.</summary>
    public const long MostBytes = 4_000_000;

    private const string Cure = "Texts and quantities stand in quotes, such as length = \"600mm\".";

    /// <summary>The tables of a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The whole file as one table.</returns>
    /// <exception cref="InputException">It cannot be read or is no TOML.</exception>
    public static TomlSection Read(string path) => Parse(path, TextFile.Read(path, MostBytes));

    /// <summary>The tables of a text.</summary>
    /// <param name="path">What errors call the file.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The whole text as one table.</returns>
    /// <exception cref="InputException">It is no TOML.</exception>
    public static TomlSection Parse(string path, string text) => new SyntaxReader(path).Read(Tree(path, text));

    /// <summary>The library's tree of a text, checked: for whoever writes into it.</summary>
    /// <exception cref="InputException">It is no TOML.</exception>
    internal static DocumentSyntax Tree(string path, string text)
    {
        DocumentSyntax document = Parsed(path, text);
        foreach (DiagnosticMessage diagnostic in document.Diagnostics)
        {
            if (diagnostic.Kind == DiagnosticMessageKind.Error)
            {
                throw Place(path, diagnostic.Span).Error($"{diagnostic.Message.Trim().TrimEnd('.')}. {Cure}");
            }
        }

        return document;
    }

    /// <summary>The library's tree; its reader falls over a file that ends behind a backslash, which is told as any other end too soon.</summary>
    private static DocumentSyntax Parsed(string path, string text)
    {
        try
        {
            return SyntaxParser.Parse(text, path, validate: true);
        }
        catch (ArgumentOutOfRangeException)
        {
            int line = text.AsSpan().Count('\n') + 1;
            throw new FilePlace(path, line, text.Length - text.LastIndexOf('\n')).Error($"the file ends within a text: a quotation mark is missing. {Cure}");
        }
    }

    internal static FilePlace Place(string path, SourceSpan span) =>
        new(path, span.Start.Line + 1, span.Start.Column + 1);
}
