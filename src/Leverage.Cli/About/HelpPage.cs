using System.CommandLine;
using System.CommandLine.Invocation;
using Leverage.Cli.Commands;
using Leverage.Cli.Input;
using Leverage.Cli.Output;

namespace Leverage.Cli.About;

/// <summary>The help: of the program on one screen, of a command with examples, units and what happens when left out.</summary>
internal sealed class HelpPage : SynchronousCommandLineAction
{
    private readonly Terminal _terminal;
    private readonly Dictionary<Command, LeverageCommand> _commands = [];

    private const int MostWidth = 28;

    /// <summary>What the program is for.</summary>
    internal const string Purpose = "loosen and refit big nuts without breaking anything";

    /// <summary>How values are written.</summary>
    internal const string Values = "Numbers carry their unit: 460Nm 340ft-lb 600mm 24in 82kg 450N 640MPa 30deg 75%";

    /// <summary>How it may end.</summary>
    internal const string Exits = "Exit: 0 answered, 1 the program failed, 2 bad input";

    /// <summary>What comes before any answer.</summary>
    internal const string Caution = "Big torques hurt people. The maker's manual and local rules come before any answer here.";

    /// <summary>Command lines to start from; a test runs them.</summary>
    internal static readonly string[] Examples =
    [
        "leverage loosen 460Nm --thread M24x1.5 --condition rusted --bar 600mm",
        "leverage tighten --thread M12x1.25 --grade 10.9 --friction 0.12",
        "leverage check 130Nm --thread M12x1.25 --grade 10.9",
    ];

    /// <summary>Help that is written to a terminal.</summary>
    internal HelpPage(Terminal terminal) => _terminal = terminal;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <summary>The option that asks for help. A shell that completes is offered <c>--help</c> and <c>-h</c>, not its other spellings.</summary>
    internal Flag Option(bool completing)
    {
        var option = new Flag("--help", "show help and usage") { Action = this, Recursive = true };
        foreach (string alias in completing ? (string[])["-h"] : ["-h", "/h", "-?", "/?"])
        {
            option.Aliases.Add(alias);
        }

        return option;
    }

    /// <summary>Lets the help of a command know the command behind it.</summary>
    internal void Knows(Command command, LeverageCommand built) => _commands[command] = built;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        Command command = parseResult.CommandResult.Command;
        if (_commands.TryGetValue(command, out LeverageCommand? built))
        {
            OfCommand(command, built);
        }
        else
        {
            OfProgram();
        }

        return ExitCode.Answered;
    }

    private void OfProgram()
    {
        TextWriter text = _terminal.Answers;
        text.Write($"leverage: {Purpose}\n\n");
        var commands = new Columns("ll");
        foreach (CommandEntry entry in CommandList.All)
        {
            commands.Row(entry.Name, entry.Purpose);
        }

        new TextPage(text, _terminal.Colour).Table(commands);
        text.Write($"""

            Examples:
              {string.Join("\n  ", Examples)}

            {Values}
            Every command: --json  --units metric|us  --force-write
                           --help (its options, units, what is left out)
                           --strict (stop exits 3, care 4, short 5, not judged 6)
            On its own:    --completion bash|zsh|fish|powershell  --man  --version
                           --schema COMMAND (JSON Schema of its --json)
            {Exits}

            """);
    }

    private void OfCommand(Command command, LeverageCommand built)
    {
        TextWriter text = _terminal.Answers;
        text.Write($"leverage {command.Name}: {command.Description}\n\nExamples:\n  leverage {string.Join("\n  leverage ", built.Examples)}\n\n");
        var page = new TextPage(text, _terminal.Colour);
        int width = built.Symbols.Max(symbol => Start(symbol).Length);
        foreach (Symbol symbol in built.Symbols)
        {
            page.Explained(Start(symbol), Math.Min(width, MostWidth), symbol.Description ?? "");
        }

        if (built.Remarks.Length > 0)
        {
            text.Write($"\n{built.Remarks}\n");
        }

        text.Write("\nIn brackets: what is taken when it is left out.\n");
        text.Write("Every command: --json  --units metric|us  --strict  --force-write  --help\n");
    }

    /// <summary>An option or argument as the help begins its line.</summary>
    internal static string Start(Symbol symbol) =>
        symbol is Option option ? $"{option.Name} {option.HelpName}".TrimEnd() : symbol.Name;
}
