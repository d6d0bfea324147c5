using System.CommandLine;

namespace Leverage.Cli.Input;

/// <summary>An option with one value, whose text one of our own readers reads.</summary>
/// <remarks>
/// To the library every value is an object. Its generics over quantities and enumerations cannot be compiled ahead of
/// time where the program runs on the framework, and compiling them at every start took longer than the answer did.
/// </remarks>
internal abstract class AskedOption : Option<object?>
{
    private protected AskedOption(string name, string value, string description, Func<string, object?> read)
        : base(name)
    {
        HelpName = value;
        Description = description;
        Arity = ArgumentArity.ExactlyOne;
        CustomParser = result => ReadText.Of(result, read);
    }
}

/// <summary>An option that knows the type of its value.</summary>
/// <typeparam name="T">The type, one that has a nothing: the value of an option left out.</typeparam>
/// <param name="name">Its name, with the dashes.</param>
/// <param name="value">What the help calls its value.</param>
/// <param name="description">One line for the help: what it is, its unit, what happens when it is left out.</param>
/// <param name="read">Reads the text into a <typeparamref name="T"/>; refuses with <see cref="Reading.InputException"/>.</param>
internal sealed class Asked<T>(string name, string value, string description, Func<string, object?> read)
    : AskedOption(name, value, description, read);

/// <summary>An argument, in its place without a name, whose text one of our own readers reads.</summary>
internal abstract class AskedArgument : Argument<object?>
{
    private protected AskedArgument(string name, string description, bool required, Func<string, object?> read)
        : base(name)
    {
        HelpName = name;
        Description = description;
        Arity = required ? ArgumentArity.ExactlyOne : ArgumentArity.ZeroOrOne;
        CustomParser = result => ReadText.OfArgument(result, read);
    }
}

/// <summary>An argument that knows the type of its value.</summary>
/// <typeparam name="T">The type, one that has a nothing: the value of an argument left out.</typeparam>
/// <param name="name">What help and errors call it, in capitals.</param>
/// <param name="description">One line for the help.</param>
/// <param name="required">Whether it may not be left out.</param>
/// <param name="read">Reads the text into a <typeparamref name="T"/>; refuses with <see cref="Reading.InputException"/>.</param>
internal sealed class AskedArgument<T>(string name, string description, bool required, Func<string, object?> read)
    : AskedArgument(name, description, required, read);
