using System.CommandLine;
using System.CommandLine.Invocation;
using System.Globalization;
using Leverage.Cli.About;
using Leverage.Cli.Commands;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;

namespace Leverage.Cli;

/// <summary>From the words of a command line to an answer and an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Errors of one file that are told one by one; a person mends no more before trying again.</summary>
    private const int MostErrors = 20;

    private static readonly ParserConfiguration Plain = new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };

    /// <summary>Answers a command line.</summary>
    /// <param name="args">Its words.</param>
    /// <param name="terminal">Where answer and errors go.</param>
    /// <returns>The exit code; see <see cref="ExitCode"/>.</returns>
    internal static int Run(string[] args, Terminal terminal) => Run(args, terminal, CommandList.All);

    /// <summary>Answers a command line with any commands.</summary>
    internal static int Run(string[] args, Terminal terminal, IReadOnlyList<CommandEntry> commands)
    {
        try
        {
            ParseResult result = Root(args, terminal, commands).Parse(args, Plain);
            if (result.Action is ParseErrorAction)
            {
                return Refuse(terminal, [ErrorLine.Of(result)]);
            }

            return result.Invoke(new InvocationConfiguration
            {
                Output = terminal.Answers,
                Error = terminal.Errors,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            });
        }
        catch (InputException e)
        {
            return Refuse(terminal, e.Lines);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            terminal.Errors.Write($"leverage: the program failed ({e.GetType().Name}): {ErrorLine.Single(e.Message)}\n");
            return ExitCode.Failed;
        }
    }

    /// <summary>Tells each error on a line of its own; of a great many the first, and how many more there are.</summary>
    private static int Refuse(Terminal terminal, IReadOnlyList<string> lines)
    {
        foreach (string line in lines.Take(MostErrors))
        {
            terminal.Errors.Write($"leverage: {ErrorLine.Single(line)}\n");
        }

        if (lines.Count > MostErrors)
        {
            terminal.Errors.Write(string.Create(CultureInfo.InvariantCulture, $"leverage: and {lines.Count - MostErrors} more like these\n"));
        }

        return ExitCode.BadInput;
    }

    /// <summary>The root with every command's name, but with the options of the asked one only: they cost time to build.</summary>
    /// <remarks>
    /// A shell that completes asks by a directive, which only a RootCommand knows. An ordinary start does without one: it looks its own
    /// name and the words of its help up by reflection, a tenth of the whole start.
    /// </remarks>
    private static Command Root(string[] args, Terminal terminal, IReadOnlyList<CommandEntry> commands)
    {
        var common = new CommonOptions();
        bool all = args.Length > 0 && args[0].StartsWith('[');
        Command root = all ? new RootCommand(HelpPage.Purpose) : new Command("leverage", HelpPage.Purpose);
        root.Options.Clear();
        var help = new HelpPage(terminal);
        foreach (CommandEntry entry in commands)
        {
            var command = new Command(entry.Name, entry.Purpose);
            if (all || Array.IndexOf(args, entry.Name) >= 0)
            {
                Fill(command, entry.Build(), common, terminal, help);
            }

            root.Add(command);
        }

        root.Add(help.Option(completing: all));
        root.Add(VersionLine.Option(terminal));
        foreach (Option option in common.All)
        {
            root.Add(option);
        }

        if (args.Length > 0 && args[0] is ['-' or '[', ..])
        {
            root.Add(CompletionScript.Option(terminal));
            root.Add(ManPage.Option(terminal));
            root.Add(AnswerSchema.Option(terminal));
        }

        root.SetAction(help.Invoke);
        return root;
    }

    private static void Fill(
        Command command, LeverageCommand built, CommonOptions common, Terminal terminal, HelpPage help)
    {
        foreach (Symbol symbol in built.Symbols)
        {
            if (symbol is Option option)
            {
                command.Add(option);
            }
            else
            {
                command.Add((Argument)symbol);
            }
        }

        help.Knows(command, built);
        command.SetAction(result => Answer(built, result, common, terminal));
    }

    /// <summary>The whole answer, before any of it is written: half an answer and an error would pass for a whole one.</summary>
    private static string Text(CommandAnswer answer, bool json, bool colour)
    {
        if (json)
        {
            return answer.Json() + "\n";
        }

        using var text = new StringWriter { NewLine = "\n" };
        answer.Words(new TextPage(text, colour));
        return text.ToString();
    }

    private static int Answer(LeverageCommand command, ParseResult result, CommonOptions common, Terminal terminal)
    {
        CommandAnswer answer;
        try
        {
            answer = command.Answer(new ParsedLine(result, common));
        }
        catch (InputException e) when (!e.IsPlaced)
        {
            throw new InputException(ErrorLine.Of(e, result.CommandResult.Command));
        }

        terminal.Answers.Write(Text(answer, common.Json.IsIn(result), terminal.Colour));
        return answer.Failed ? ExitCode.Failed
            : common.Strict.IsIn(result) ? ExitCode.Strict(answer.Verdict) : ExitCode.Answered;
    }
}
