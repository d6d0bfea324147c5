using System.Text.Json;
using Leverage.Cli.Output;

namespace Leverage.Page.Tests;

/// <summary>The command line, to compare with.</summary>
internal static class CommandLine
{
    /// <summary>Exit code, answer and errors of a command line, in this process.</summary>
    internal static (int Code, string Answer, string Errors) Run(params IEnumerable<string> args)
    {
        using var answers = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        using var terminal = new Terminal(answers, errors, colour: false);
        int code = Leverage.Cli.CommandLine.Run([.. args], terminal);
        return (code, answers.ToString(), errors.ToString());
    }

    /// <summary>Words of a command as the page writes it; a value with a blank stands in quotes.</summary>
    internal static IEnumerable<string> Words(string command) =>
        command.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Every value of a JSON tree with its path, as written to the last digit.</summary>
    internal static IEnumerable<string> Values(JsonElement element, string path = "$") => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(each => Values(each.Value, $"{path}.{each.Name}")),
        JsonValueKind.Array => element.EnumerateArray().SelectMany((each, i) => Values(each, $"{path}[{i.ToString(System.Globalization.CultureInfo.InvariantCulture)}]")).Append($"{path}: {element.GetArrayLength().ToString(System.Globalization.CultureInfo.InvariantCulture)}"),
        JsonValueKind.String => [$"{path}: {element.GetString()}"],
        JsonValueKind.Number => [$"{path}: {element.GetDouble().ToString("R", System.Globalization.CultureInfo.InvariantCulture)}"],
        _ => [$"{path}: {element.GetRawText()}"],
    };

    /// <summary>
    /// Whether two lists of values say the same: words to the letter, numbers to nine digits, as sine and logarithm of browser
    /// and processor differ in their last digits.
    /// </summary>
    internal static string? Difference(IReadOnlyList<string> expected, IReadOnlyList<string> actual)
    {
        for (int i = 0; i < Math.Max(expected.Count, actual.Count); i++)
        {
            string one = i < expected.Count ? expected[i] : "nothing";
            string other = i < actual.Count ? actual[i] : "nothing";
            if (one != other && !Close(one, other))
            {
                return $"{one} against {other}";
            }
        }

        return null;
    }

    private static bool Close(string one, string other)
    {
        string[] first = one.Split(": ", 2);
        string[] second = other.Split(": ", 2);
        return first.Length == 2 && second.Length == 2 && first[0] == second[0] && Number(first[1]) is { } a && Number(second[1]) is { } b
            && Math.Abs(a - b) <= 1e-9 * Math.Max(Math.Abs(a), 1e-3);
    }

    private static double? Number(string text) =>
        double.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out double number) ? number : null;
}
