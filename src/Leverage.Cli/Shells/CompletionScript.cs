using System.CommandLine;
using System.CommandLine.Invocation;
using System.Text;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;

namespace Leverage.Cli.Shells;

/// <summary><c>leverage --completion</c>: the script that lets a shell complete commands, options and names.</summary>
/// <remarks>The scripts hold no list of anything: they ask the program by <c>[suggest:position]</c>.</remarks>
internal static class CompletionScript
{
    private static readonly string[] Shells = ["bash", "zsh", "fish", "powershell"];

    /// <summary>The option that names the shell.</summary>
    internal static Asked<string?> Option(Terminal terminal)
    {
        Asked<string?> option = NameOption.Choice<string?>(
            "--completion", "script for that shell", [.. Shells.Select(shell => (shell, (object)shell))]);
        option.Action = new Printing(result => terminal.Answers.Write(Of((string)result.GetValue(option)!)));
        return option;
    }

    /// <summary>The script of a shell.</summary>
    /// <param name="shell">One of the names the option takes.</param>
    internal static string Of(string shell)
    {
        using Stream script = typeof(CompletionScript).Assembly.GetManifestResourceStream($"completion/{shell}")!;
        using var reader = new StreamReader(script, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}

/// <summary>An option that prints something instead of asking the command.</summary>
internal sealed class Printing(Action<ParseResult> print) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    /// <exception cref="InputException">Something on the command line cannot be read.</exception>
    public override int Invoke(ParseResult parseResult)
    {
        if (parseResult.Errors.Count > 0)
        {
            throw new InputException(ErrorLine.Of(parseResult));
        }

        print(parseResult);
        return ExitCode.Answered;
    }
}
