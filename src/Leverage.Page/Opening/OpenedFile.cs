using System.Globalization;
using System.Text.Json;
using Leverage.Page.Answering;
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

    /// <summary>Their pieces as JSON.</summary>
    /// <param name="texts">The files: a chest, or a job and what it names.</param>
    /// <exception cref="InputException">There is no chest and no job among them; the error says where.</exception>
    internal static byte[] Json(OpenedText[]? texts)
    {
        (string Name, string Text)[] files = [.. (texts ?? []).Take(MostFiles + 1).Select(file => (Plain(file?.Name ?? ""), file?.Text ?? ""))];
        return files.Length is > 0 and <= MostFiles
            ? JsonSerializer.SerializeToUtf8Bytes(Read(files), PageJson.Shared.OpenedPieces)
            : throw new InputException("file", string.Create(CultureInfo.InvariantCulture, $"open one file, or a job with what it names: at most {MostFiles}."));
    }

    private static OpenedPieces Read((string Name, string Text)[] files)
    {
        var (name, text) = files[0];
        return new(name, "chest", [.. ChestPieceFields.Of(ChestReader.Read(name, TomlFile.Parse(name, text)))]);
    }

    /// <summary>The name without a folder or anything that is no letter.</summary>
    private static string Plain(string name)
    {
        string plain = Path.GetFileName(new string([.. name.Where(letter => !char.IsControl(letter))]));
        return plain.Length is > 0 and <= MostNameLetters ? plain : "file.toml";
    }
}
