using System.CommandLine;
using System.CommandLine.Invocation;
using System.Text;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;
using Leverage.Requests;

namespace Leverage.Cli.About;

/// <summary><c>leverage --completion</c>: the script that lets a shell complete commands, options and names.</summary>
/// <remarks>The scripts hold no list of anything: they ask the program by <c>[suggest:position]</c>.</remarks>
internal static class CompletionScript
{
    private static readonly string[] Shells = ["bash", "zsh", "fish", "powershell"];

    /// <summary>The option that names the shell.</summary>
    internal static TextOption Option(Terminal terminal)
    {
        FieldKind<string> kind = Kinds.Choice([.. Shells.Select(shell => (shell, shell))]);
        return Printing.Option("--completion", kind, "script for that shell", shell => terminal.Answers.Write(Of(shell)));
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
    /// <summary>An option that prints what its value names.</summary>
    internal static TextOption Option(string name, FieldKind<string> kind, string description, Action<string> print)
    {
        var option = new TextOption(name, kind, description);
        option.Action = new Printing(result => print(InputException.About(name, () => kind.Read(result.GetValue(option)!))));
        return option;
    }

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
