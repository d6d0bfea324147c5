using System.Diagnostics;
using System.Text.Json;

namespace Leverage.Page.Tests;

/// <summary>The command line, to compare with.</summary>
internal static class CommandLine
{
    /// <summary>The answer of <c>leverage loosen … --json</c> for a query of the page.</summary>
    internal static JsonElement Loosen(string query)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "leverage.dll"));
        start.ArgumentList.Add("loosen");
        foreach (string pair in query.Split('&'))
        {
            (string name, string value) = (pair[..pair.IndexOf('=', StringComparison.Ordinal)], Uri.UnescapeDataString(pair[(pair.IndexOf('=', StringComparison.Ordinal) + 1)..]));
            string[] words = name == "book-torque" ? [value] : name is "left-hand" or "soaked" or "on-stands" ? [$"--{name}"] : [$"--{name}", value];
            Array.ForEach(words, start.ArgumentList.Add);
        }

        start.ArgumentList.Add("--json");
        using Process process = Process.Start(start)!;
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return JsonDocument.Parse(text).RootElement.Clone();
    }

    /// <summary>Every value of a JSON tree with its path, as written to the last digit.</summary>
    internal static IEnumerable<string> Values(JsonElement element, string path = "$") => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(each => Values(each.Value, $"{path}.{each.Name}")),
        JsonValueKind.Array => element.EnumerateArray().SelectMany((each, i) => Values(each, $"{path}[{i.ToString(System.Globalization.CultureInfo.InvariantCulture)}]")).Append($"{path}: {element.GetArrayLength().ToString(System.Globalization.CultureInfo.InvariantCulture)}"),
        JsonValueKind.String => [$"{path}: {element.GetString()}"],
        _ => [$"{path}: {element.GetRawText()}"],
    };
}
