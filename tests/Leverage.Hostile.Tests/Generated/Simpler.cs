namespace Leverage.Hostile.Tests.Generated;

/// <summary>Simpler inputs than one that fails: fewer words, fewer lines, shorter texts.</summary>
internal static class Simpler
{
    internal static IEnumerable<HostileInput> Of(HostileInput input) =>
    [
        .. Words(input.Words, input.Door == Door.Command).Select(words => input with { Words = words }),
        .. Lines(input.Text).Select(text => input with { Text = text }),
        .. Lines(input.Beside).Select(text => input with { Beside = text }),
    ];

    private static IEnumerable<IReadOnlyList<string>> Words(IReadOnlyList<string> words, bool fewer)
    {
        for (int i = 0; fewer && i < words.Count; i++)
        {
            yield return [.. words.Where((_, at) => at != i)];
        }

        for (int i = fewer ? 0 : 1; i < words.Count; i++)
        {
            foreach (string shorter in Shorter(words[i]))
            {
                yield return [.. words.Select((word, at) => at == i ? shorter : word)];
            }
        }
    }

    private static IEnumerable<string> Shorter(string word) => word.Length == 0 ? [] : [word[..(word.Length / 2)], word[..^1], word[1..]];

    private static IEnumerable<string> Lines(string? text)
    {
        string[] lines = text?.Split('\n') ?? [];
        for (int half = lines.Length / 2; half > 0; half /= 2)
        {
            for (int at = 0; at < lines.Length; at += half)
            {
                yield return string.Join('\n', lines.Where((_, i) => i < at || i >= at + half));
            }
        }
    }
}
