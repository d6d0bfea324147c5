using System.CommandLine;
using System.CommandLine.Parsing;
using Leverage.Reading;

namespace Leverage.Cli.Input;

/// <summary>
/// Options and arguments whose text one of our own readers reads; a refusal becomes the one line of the error. The
/// library's own conversions are never used: they follow the machine's language and take 1,5 for 15.
/// </summary>
internal static class ReadOption
{
    /// <summary>An option with one value.</summary>
    /// <param name="name">Its name, with the dashes.</param>
    /// <param name="value">What the help calls its value.</param>
    /// <param name="description">One line for the help: what it is, its unit, what happens when it is left out.</param>
    /// <param name="read">Reads the text; refuses with <see cref="InputException"/>.</param>
    /// <returns>The option.</returns>
    internal static Option<T> Of<T>(string name, string value, string description, Func<string, T> read) => new(name)
    {
        HelpName = value,
        Description = description,
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result => Read(result, read),
    };

    /// <summary>An argument, in its place without a name.</summary>
    /// <param name="name">What help and errors call it, in capitals.</param>
    /// <param name="description">One line for the help.</param>
    /// <param name="required">Whether it may be left out.</param>
    /// <param name="read">Reads the text; refuses with <see cref="InputException"/>.</param>
    /// <returns>The argument.</returns>
    internal static Argument<T> Argument<T>(string name, string description, bool required, Func<string, T> read) => new(name)
    {
        HelpName = name,
        Description = description,
        Arity = required ? ArgumentArity.ExactlyOne : ArgumentArity.ZeroOrOne,
        CustomParser = result => Read(result, text => ErrorLine.LooksLikeOption(text)
            ? throw new InputException($"'{text}' is not an option here.")
            : read(text)),
    };

    private static T? Read<T>(ArgumentResult result, Func<string, T> read)
    {
        if (result.Tokens.Count == 0)
        {
            return default;
        }

        try
        {
            return read(result.Tokens[0].Value);
        }
        catch (InputException e)
        {
            result.AddError(e.Line);
            return default;
        }
    }
}
