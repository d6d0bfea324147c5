using System.Text.Json;
using System.Text.RegularExpressions;

namespace Leverage.Hostile.Tests.Running;

/// <summary>What must hold of every answer and every refusal.</summary>
internal static partial class Manners
{
    private const int Answered = 0;
    private const int BadInput = 2;

    /// <summary>The first thing a run of the command line did that it must not; null for none.</summary>
    internal static string? Broken(int code, string answer, string errors, bool json)
    {
        bool refused = code == BadInput;
        return code is not (Answered or BadInput or 3 or 4 or 5 or 6) ? $"exit {Number(code)}: {errors}"
            : refused && answer.Length > 0 ? $"answer beside an error: {errors}{answer}"
            : refused != errors.Length > 0 ? $"exit {Number(code)}, yet standard error says '{errors}'"
            : errors.Length > 0 && BrokenLines(errors) is { } line ? line
            : json && code != BadInput && answer.StartsWith('{') ? BrokenJson(answer)
            : BrokenWords(answer);
    }

    /// <summary>What is wrong with a refusal: one line, or all that is wrong with a file, each line with its place.</summary>
    private static string? BrokenLines(string errors)
    {
        string[] lines = errors.Split('\n');
        return lines.Length < 3 || !lines[..^1].All(line => InFile().IsMatch(line)) ? BrokenLine(errors)
            : lines[..^1].Select(line => BrokenLine(line + "\n")).FirstOrDefault(broken => broken is not null) ?? (lines[^1].Length > 0 ? $"no line feed: {errors}" : null);
    }

    /// <summary>What is wrong with a refusal, with its line feed.</summary>
    internal static string? BrokenLine(string errors) =>
        !errors.EndsWith('\n') || errors.AsSpan(0, errors.Length - 1).ContainsAny('\n', '\r') ? $"not one line: {errors}"
        : errors.Any(letter => letter != '\n' && char.IsControl(letter)) ? $"control characters in: {errors}"
        : IsTrace(errors) ? $"a stack trace: {errors}"
        : null;

    /// <summary>What is wrong with an answer in words.</summary>
    internal static string? BrokenWords(string answer) =>
        IsTrace(answer) ? $"a stack trace: {answer}"
        : answer.Any(letter => letter is not ('\n' or '\t') && char.IsControl(letter)) ? $"control characters in: {answer}"
        : NoNumber().Match(answer) is { Success: true } found ? $"'{found.Value}' in: {answer}"
        : null;

    /// <summary>What is wrong with an answer as JSON.</summary>
    internal static string? BrokenJson(string answer)
    {
        try
        {
            using JsonDocument parsed = JsonDocument.Parse(answer);
            return parsed.RootElement.ValueKind is JsonValueKind.Object or JsonValueKind.Array ? null : $"no object: {answer}";
        }
        catch (JsonException e)
        {
            return $"no JSON ({e.Message}): {answer}";
        }
    }

    /// <summary>The runtime's own words; "at" behind blanks alone may be what somebody wrote.</summary>
    private static bool IsTrace(string text) =>
        text.Contains("Exception", StringComparison.Ordinal)
            || text.Contains("   at Leverage.", StringComparison.Ordinal) || text.Contains("   at System.", StringComparison.Ordinal);

    private static string Number(int code) => code.ToString(System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^leverage: .+\([0-9]+,[0-9]+\): ", RegexOptions.None, matchTimeoutMilliseconds: 2000)]
    private static partial Regex InFile();

    /// <summary>Not a number, or no end, where a figure should stand: a word of its own, or beside a unit.</summary>
    [GeneratedRegex(@"(?<![\p{L}'""])(NaN|[-−]?Infinity|[-−]?∞)(?![\p{L}'""])", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 2000)]
    private static partial Regex NoNumber();
}
