using System.CommandLine;
using System.CommandLine.Invocation;
using Leverage.Cli.Commands;

namespace Leverage.Cli.Output;

/// <summary>The help: of the program on one screen, of a command with an example, units and what happens when left out.</summary>
internal sealed class HelpPage : SynchronousCommandLineAction
{
    private readonly Terminal _terminal;
    private readonly Dictionary<Command, LeverageCommand> _commands = [];

    /// <summary>Help that is written to a terminal.</summary>
    internal HelpPage(Terminal terminal) => _terminal = terminal;

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

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
        text.Write("leverage: undo and refit big nuts without breaking anything\n\n");
        var commands = new Columns("ll");
        foreach (CommandEntry entry in CommandList.All)
        {
            commands.Row(entry.Name, entry.Purpose);
        }

        Indented(commands);
        text.Write(Examples);
    }

    private const string Examples = """

        Examples:
          leverage tighten --thread M12x1.25 --grade 10.9 --friction 0.12

        Every number has its unit: 460Nm 340ft-lb 600mm 24in 82kg 450N 640MPa 30deg 75%
        Every command: --json  --units metric|us  --strict (stop exits 3, care 4)
                       --force-write  --help; options: leverage COMMAND --help
        Exit: 0 answered, 1 the program failed, 2 bad input

        """;

    private void OfCommand(Command command, LeverageCommand built)
    {
        TextWriter text = _terminal.Answers;
        text.Write($"leverage {command.Name}: {command.Description}\n\n  leverage {built.Example}\n\n");
        var options = new Columns("ll");
        foreach (Symbol symbol in built.Symbols)
        {
            string start = symbol is Option option ? $"{option.Name} {option.HelpName}".TrimEnd() : symbol.Name;
            options.Row(start, symbol.Description ?? "");
        }

        Indented(options);
        if (built.Remarks.Length > 0)
        {
            text.Write($"\n{built.Remarks}\n");
        }

        text.Write("\nEvery command: --json  --units metric|us  --strict  --force-write  --help\n");
    }

    private void Indented(Columns columns)
    {
        foreach (string line in columns.Lines())
        {
            _terminal.Answers.Write($"  {line}\n");
        }
    }
}
