using System.CommandLine;
using System.CommandLine.Parsing;
using Leverage.Reading;

namespace Leverage.Cli.Input;

/// <summary>One line for what is wrong with a command line: what it is about, what, why, cure.</summary>
internal static class ErrorLine
{
    /// <summary>The line for the first thing wrong; the others wait until it is put right.</summary>
    internal static string Of(ParseResult result)
    {
        string? unknown = result.CommandResult.Parent is null && result.UnmatchedTokens.Count > 0
            ? result.UnmatchedTokens[0]
            : Words(result).FirstOrDefault(LooksLikeOption);
        if (unknown is not null)
        {
            return Unknown(result, unknown);
        }

        ParseError? own = result.Errors.FirstOrDefault(
            error => error.SymbolResult is OptionResult or ArgumentResult && !IsLeftOver(error, result));
        return own is not null
            ? About(own)
            : result.UnmatchedTokens.Count > 0 ? Unknown(result, result.UnmatchedTokens[0]) : result.Errors[0].Message;
    }

    /// <summary>A refusal in the dress of the command line: a field is an option, or an argument in capitals.</summary>
    internal static string Of(InputException refusal, Command command)
    {
        string message = refusal.MessageIn(cure => Dressed(cure.Field, command) is ['-', ..] option ? $"{option} {cure.Example}".TrimEnd() : cure.Example);
        return refusal.Subject is not { } subject ? message : $"{(refusal.IsPlaced ? subject : Dressed(subject, command))}: {message}";
    }

    private static string Dressed(string field, Command command) =>
        field.StartsWith('-') ? field
        : command.Options.Any(option => option.Name == $"--{field}") ? $"--{field}"
        : command.Arguments.FirstOrDefault(argument => argument.Name.Equals(field, StringComparison.OrdinalIgnoreCase))?.Name ?? $"--{field}";

    /// <summary>Whether a word was meant as an option: a dash, and no number behind it.</summary>
    internal static bool LooksLikeOption(string word) =>
        word.Length > 1 && word[0] == '-' && !char.IsAsciiDigit(word[1]) && word[1] is not ('.' or '∞');

    /// <summary>A text on one line, without anything a terminal would act on.</summary>
    internal static string Single(string text) => PlainText.OneLine(text).Trim();

    /// <summary>Words that no option took: those left over, and those an argument took for want of better.</summary>
    private static IEnumerable<string> Words(ParseResult result) => result.UnmatchedTokens.Concat(
        result.CommandResult.Children.OfType<ArgumentResult>().SelectMany(child => child.Tokens).Select(token => token.Value));

    private static bool IsLeftOver(ParseError error, ParseResult result) =>
        error.SymbolResult is ArgumentResult { Tokens.Count: 0 } && result.UnmatchedTokens.Count > 0;

    private static string About(ParseError error)
    {
        SymbolResult? symbol = error.SymbolResult;
        if (symbol is ArgumentResult { Parent: OptionResult parent })
        {
            symbol = parent;
        }

        string name = symbol switch
        {
            OptionResult option => option.Option.Name,
            ArgumentResult argument => argument.Argument.Name,
            _ => "",
        };
        return $"{name}: {Problem(symbol, error.Message)}";
    }

    private static string Problem(SymbolResult? symbol, string message) => symbol switch
    {
        OptionResult { Tokens.Count: 0 } option => $"its value is missing: write {option.Option.Name} {option.Option.HelpName}.",
        OptionResult { Tokens.Count: > 1 } option => $"given more than once ({Listed(option)}): give one.",
        ArgumentResult { Tokens.Count: 0 } argument => $"is missing: {argument.Argument.Description}.",
        _ => message,
    };

    private static string Listed(SymbolResult result) => string.Join(", ", result.Tokens.Select(token => token.Value));

    private static string Unknown(ParseResult result, string token)
    {
        Command command = result.CommandResult.Command;
        bool root = result.CommandResult.Parent is null;
        if (root && !token.StartsWith('-'))
        {
            string near = Near(token, command.Subcommands.Select(sub => sub.Name));
            return $"there is no command '{token}'. {near}All of them: leverage --help.";
        }

        string help = root ? "leverage --help" : $"leverage {command.Name} --help";
        return token.StartsWith('-')
            ? $"there is no option '{token}' here. {Near(token, Options(result))}All of them: {help}."
            : $"'{token}' is one word too many: an option before it is missing, or a space stands in a value. See {help}.";
    }

    private static IEnumerable<string> Options(ParseResult result) =>
        result.CommandResult.Command.Options.Concat(result.RootCommandResult.Command.Options.Where(option => option.Recursive)).Select(option => option.Name);

    private static string Near(string token, IEnumerable<string> names)
    {
        IReadOnlyList<string> near = NearestNames.Of(token, names, 3);
        return near.Count > 0 ? $"Nearest: {string.Join(", ", near)}. " : "";
    }
}
