namespace Leverage.Hostile.Tests.Generated;

/// <summary>What an input is given to.</summary>
public enum Door
{
    /// <summary>A reader of one value: quantity, thread, tube, grade.</summary>
    Reader,

    /// <summary>A reader of a file: chest, job, fastener list.</summary>
    File,

    /// <summary>The command line.</summary>
    Command,

    /// <summary>The page.</summary>
    Page,
}

/// <summary>One hostile input.</summary>
/// <param name="Door">What it is given to.</param>
/// <param name="Words">Words of a command line; the reader's name and the text; method, path and query.</param>
/// <param name="Text">A chest's, job's or request's text, if any.</param>
/// <param name="Beside">A second file's text, if any.</param>
public sealed record HostileInput(Door Door, IReadOnlyList<string> Words, string? Text = null, string? Beside = null)
{
    /// <summary>Words that stand for the file of <see cref="Text"/>, of <see cref="Beside"/>, and for the folder it lies in.</summary>
    internal const string TextFile = "{text}";

    /// <summary>Stands for the folder of the run, where output may go.</summary>
    internal const string Folder = "{folder}";

    /// <summary>Name of the second file, as the first one calls it.</summary>
    internal const string BesideName = "beside.csv";

    /// <inheritdoc/>
    public override string ToString()
    {
        string words = string.Join(' ', Words.Select(word => System.Text.Json.JsonSerializer.Serialize(word)));
        return $"{Door.ToString()}: {words}{Block(Text)}{Block(Beside)}";
    }

    private static string Block(string? text) => text is null ? "" : $"\n----\n{text}\n----";
}
