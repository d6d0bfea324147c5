using System.CommandLine;
using Leverage.Requests;

namespace Leverage.Cli.Input;

/// <summary>
/// An option with a value that stays text until a command reads it with our own readers: the library's conversions follow the
/// machine's language and take 1,5 for 15.
/// </summary>
internal sealed class TextOption : Option<string?>
{
    /// <summary>An option.</summary>
    /// <param name="name">Its name, with the dashes.</param>
    /// <param name="value">What the help calls its value.</param>
    /// <param name="description">One line for the help: what it is, what is taken when it is left out.</param>
    internal TextOption(string name, string value, string description)
        : base(name) => (HelpName, Description, Arity) = (value, description, ArgumentArity.ExactlyOne);

    /// <summary>An option whose values are of a kind.</summary>
    internal TextOption(string name, FieldKind kind, string description)
        : this(name, kind.Value, description) => CompletionSources.Add(_ => kind.Names());
}

/// <summary>An argument, in its place without a name, that stays text until a command reads it.</summary>
internal sealed class TextArgument : Argument<string?>
{
    /// <summary>An argument.</summary>
    /// <param name="name">What help and errors call it, in capitals.</param>
    /// <param name="description">One line for the help.</param>
    /// <param name="required">Whether it may not be left out.</param>
    internal TextArgument(string name, string description, bool required)
        : base(name) =>
        (HelpName, Description, Arity) = (name, description, required ? ArgumentArity.ExactlyOne : ArgumentArity.ZeroOrOne);
}

/// <summary>An option without a value: it is there or it is not.</summary>
internal sealed class Flag : Option<bool>
{
    /// <summary>A flag.</summary>
    /// <param name="name">Its name, with the dashes.</param>
    /// <param name="description">One line for the help: what it says.</param>
    internal Flag(string name, string description)
        : base(name) => (Description, Arity) = (description, ArgumentArity.Zero);

    /// <summary>Whether it was given.</summary>
    internal bool IsIn(ParseResult result) => result.GetResult(this) is { Implicit: false };
}
