using System.Globalization;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Files;

namespace Leverage.Page.Opening;

/// <summary>A piece of an opened file: picking it writes these fields, an empty text clears one.</summary>
internal sealed record OpenedPiece(string Group, string Name, IReadOnlyDictionary<string, string> Fields);

/// <summary>The pieces of an opened file.</summary>
internal sealed record OpenedPieces(string File, string Kind, IReadOnlyList<OpenedPiece> Pieces);

/// <summary>A file as the browser sends it.</summary>
internal sealed record OpenedText(string? Name, string? Text);

/// <summary>Reads files the browser opened; they are read and forgotten.</summary>
internal static class OpenedFile
{
    private const int MostFiles = 4;
    private const int MostNameLetters = 100;

    /// <summary>Their pieces.</summary>
    /// <param name="texts">The files: a chest, or a job and what it names.</param>
    /// <exception cref="InputException">There is no chest and no job among them; the error says where.</exception>
    internal static OpenedPieces Read(OpenedText[]? texts) => Read(Named(texts));

    /// <summary>The files under plain names.</summary>
    /// <exception cref="InputException">There are none, or too many.</exception>
    internal static (string Name, string Text)[] Named(OpenedText[]? texts)
    {
        (string Name, string Text)[] files = [.. (texts ?? []).Take(MostFiles + 1).Select(file => (Plain(file?.Name ?? ""), file?.Text ?? ""))];
        return files.Length is > 0 and <= MostFiles
            ? files
            : throw new InputException("file", string.Create(CultureInfo.InvariantCulture, $"open one file, or a job with what it names: at most {MostFiles}."));
    }

    private static OpenedPieces Read((string Name, string Text)[] files)
    {
        OpenedPieces opened = JobAmong(files) is { } job
            ? OpenedJob.Read(job.Name, job.Text, Others(files, job.Name))
            : new(files[0].Name, "chest", [.. ChestPieceFields.Of(ToolChest.Parse(files[0].Name, files[0].Text))]);
        return opened.Pieces.Count > 0
            ? opened
            : throw new InputException(files[0].Name, "has nothing in it that a set-up is made of. Is it the right file?");
    }

    /// <summary>The file that holds tasks or fasteners, if one does.</summary>
    internal static (string Name, string Text)? JobAmong((string Name, string Text)[] files)
    {
        foreach (var file in files)
        {
            if (file.Name.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) && TomlFile.Parse(file.Name, file.Text) is var toml
                && (toml.Has("fasteners") || toml.Has("fastener_list") || toml.Has("tasks")))
            {
                return file;
            }
        }

        return null;
    }

    /// <summary>The files beside the job.</summary>
    internal static Dictionary<string, string> Others((string Name, string Text)[] files, string job)
    {
        var others = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, text) in files)
        {
            if (name != job)
            {
                others[name] = text;
            }
        }

        return others;
    }

    /// <summary>The name without a folder or anything that is no letter.</summary>
    private static string Plain(string name)
    {
        string plain = Path.GetFileName(new string([.. name.Where(letter => !char.IsControl(letter))]));
        return plain.Length is > 0 and <= MostNameLetters ? plain : "file.toml";
    }
}
