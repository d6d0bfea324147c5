using System.Globalization;
using Leverage.Reading;

namespace Leverage.Workshop.Files;

/// <summary>A place in a file a person wrote, for errors that say where.</summary>
/// <param name="Path">The file, as the person named it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column, counted from 1.</param>
public readonly record struct FilePlace(string Path, int Line, int Column)
{
    /// <summary>A refusal of what stands here.</summary>
    /// <param name="key">The key it is about.</param>
    /// <param name="message">What is wrong, why, and what to write instead.</param>
    /// <returns>The error: <c>chest.toml(12,3): length: cannot read …</c>.</returns>
    public InputException Error(string key, string message) => InputException.At($"{this}: {key}", message);

    /// <summary>A refusal of what stands here, about no key of its own.</summary>
    /// <param name="message">What is wrong, why, and what to write instead.</param>
    /// <returns>The error: <c>chest.toml(12,3): …</c>.</returns>
    public InputException Error(string message) => InputException.At(ToString(), message);

    /// <summary>A refusal as a file says it: the field as a key, its cure as a line of the file.</summary>
    internal static string Told(InputException refusal) =>
        refusal.MessageIn(cure => $"{cure.Field.Replace('-', '_')} = \"{cure.Example}\"");

    /// <summary>The place as errors write it.</summary>
    /// <returns><c>chest.toml(12,3)</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Path}({Line},{Column})");
}
