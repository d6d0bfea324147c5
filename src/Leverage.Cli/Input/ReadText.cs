using System.CommandLine.Parsing;
using Leverage.Reading;

namespace Leverage.Cli.Input;

/// <summary>
/// From the text of an option or an argument to its value; a refusal becomes the one line of the error. The library's
/// own conversions are never used: they follow the machine's language and take 1,5 for 15.
/// </summary>
internal static class ReadText
{
    /// <summary>The value of an option's text, or null where it has none or is refused.</summary>
    internal static object? Of(ArgumentResult result, Func<string, object?> read)
    {
        if (result.Tokens.Count == 0)
        {
            return null;
        }

        try
        {
            return read(result.Tokens[0].Value);
        }
        catch (InputException e)
        {
            result.AddError(e.Line);
            return null;
        }
    }

    /// <summary>The same of an argument, which is never meant to be an option.</summary>
    internal static object? OfArgument(ArgumentResult result, Func<string, object?> read) =>
        Of(result, text => ErrorLine.LooksLikeOption(text)
            ? throw new InputException($"'{text}' is not an option here.")
            : read(text));
}
