using System.CommandLine;

namespace Leverage.Cli.Input;

/// <summary>An option without a value: it is there or it is not.</summary>
internal sealed class Flag : Option<object?>
{
    /// <summary>A flag.</summary>
    /// <param name="name">Its name, with the dashes.</param>
    /// <param name="description">One line for the help: what it says.</param>
    internal Flag(string name, string description)
        : base(name)
    {
        Description = description;
        Arity = ArgumentArity.Zero;
        CustomParser = _ => null;
    }

    /// <summary>Whether it was given.</summary>
    internal bool IsIn(ParseResult result) => result.GetResult(this) is { Implicit: false };
}
