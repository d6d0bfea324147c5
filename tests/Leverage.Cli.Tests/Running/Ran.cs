using System.Diagnostics;
using System.Text.Json;
using Leverage.Cli.Output;

namespace Leverage.Cli.Tests.Running;

/// <summary>How a run of the program ended.</summary>
internal sealed record Ran(int Code, string Answer, string Errors)
{
    /// <summary>Runs the command line in this process.</summary>
    public static Ran Here(params string[] args) => Here(colour: false, args);

    public static Ran Here(bool colour, params string[] args)
    {
        using var answers = new StringWriter();
        using var errors = new StringWriter();
        using var terminal = new Terminal(answers, errors, colour);
        int code = CommandLine.Run(args, terminal);
        return new Ran(code, answers.ToString(), errors.ToString());
    }

    /// <summary>Runs the real program as a person would, in a folder and with extra environment.</summary>
    public static Ran ForReal(string[] args, string? folder = null, params (string Name, string Value)[] environment)
    {
        using Process process = Start(args, folder, environment);
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string answer = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Ran(process.ExitCode, answer, errors.GetAwaiter().GetResult());
    }

    public static Process Start(string[] args, string? folder = null, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            UseShellExecute = false,
            WorkingDirectory = folder ?? AppContext.BaseDirectory,
        };
        foreach (string arg in (string[])[Path.Combine(AppContext.BaseDirectory, "leverage.dll"), .. args])
        {
            start.ArgumentList.Add(arg);
        }

        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    /// <summary>The answer as JSON; the run must have answered.</summary>
    public JsonElement Json()
    {
        Assert.Equal((0, ""), (Code, Errors));
        return JsonDocument.Parse(Answer).RootElement;
    }

    /// <summary>Names of a JSON object's fields, in order.</summary>
    public static string[] Names(JsonElement element) => [.. element.EnumerateObject().Select(field => field.Name)];

    /// <summary>Words of a command line, split at blanks; a value with a blank stands in quotes.</summary>
    public static string[] Words(string line) =>
        [.. line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
}
