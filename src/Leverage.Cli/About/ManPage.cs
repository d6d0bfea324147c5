using System.CommandLine;
using Leverage.Cli.Commands;
using Leverage.Cli.Input;
using Leverage.Cli.Output;

namespace Leverage.Cli.About;

/// <summary><c>leverage --man</c>: the manual page, made of the same words as the help.</summary>
internal sealed class ManPage
{
    private readonly Roff _roff;

    private ManPage(TextWriter text) => _roff = new Roff(text);

    /// <summary>The option that asks for it.</summary>
    internal static Flag Option(Terminal terminal) => new("--man", "the manual page")
    {
        Action = new Printing(_ => new ManPage(terminal.Answers).Write()),
    };

    private void Write()
    {
        _roff.Title("leverage", VersionLine.Text);
        _roff.Section("NAME");
        _roff.Text($"leverage - {HelpPage.Purpose}");
        _roff.Section("SYNOPSIS");
        _roff.Text("leverage COMMAND [VALUE] [OPTION]...");
        _roff.Text("leverage COMMAND --help");
        _roff.Section("COMMANDS");
        foreach (CommandEntry entry in CommandList.All)
        {
            Command(entry);
        }

        _roff.Section("EVERY COMMAND");
        Explain(new CommonOptions().All);
        _roff.Section("THE PROGRAM");
        var terminal = new Terminal(TextWriter.Null, TextWriter.Null, colour: false);
        Explain([CompletionScript.Option(terminal), Option(terminal), AnswerSchema.Option(terminal)]);
        _roff.Section("VALUES");
        _roff.Text(HelpPage.Values);
        _roff.Section("EXIT STATUS");
        _roff.Text(HelpPage.Exits);
        _roff.Section("EXAMPLES");
        _roff.Lines(HelpPage.Examples);
        _roff.Section("CAUTION");
        _roff.Text(HelpPage.Caution);
    }

    private void Command(CommandEntry entry)
    {
        LeverageCommand command = entry.Build();
        _roff.Heading($"leverage {entry.Name}");
        _roff.Text(entry.Purpose);
        _roff.Lines([.. command.Examples.Select(example => $"leverage {example}")]);
        Explain(command.Symbols);
        if (command.Remarks.Length > 0)
        {
            _roff.Lines(command.Remarks.Split('\n'));
        }
    }

    private void Explain(IEnumerable<Symbol> symbols)
    {
        foreach (Symbol symbol in symbols)
        {
            _roff.Tagged(HelpPage.Start(symbol), symbol.Description ?? "");
        }
    }
}
