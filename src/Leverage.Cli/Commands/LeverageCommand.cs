// How to add a command, in three steps.
//  1. A file here, XxxCommand.cs: a class that derives from LeverageCommand. What is asked of the core are fields: FieldOptions makes
//     options and arguments of a list of them. Options of the command line's own (a file to draw into) are TextOption, Flag, Picture.
//     Symbols lists them in the order the help shows them. Answer reads a request, has Core assess it, and returns a CommandAnswer.
//     It computes no mechanics and formats nothing.
//  2. A file in Output/, XxxWords.cs: lays the assessment out on a TextPage.
//  3. A line in CommandList.All.
// Refusals: throw InputException("field", "what, why", cure): one line, exit 2. Options are built only for the
// command that is asked for, so keep work out of constructors; nothing may be static that reads a table.
using System.CommandLine;
using Leverage.Cli.Input;
using Leverage.Cli.Output;

namespace Leverage.Cli.Commands;

/// <summary>One command of the program.</summary>
internal abstract class LeverageCommand
{
    /// <summary>The examples the help shows, without <c>leverage</c>; a test runs them.</summary>
    internal abstract string[] Examples { get; }

    /// <summary>Its arguments and options, in the order the help shows them.</summary>
    internal abstract IEnumerable<Symbol> Symbols { get; }

    /// <summary>What else the help says below the options; may be empty.</summary>
    internal virtual string Remarks => "";

    /// <summary>Answers.</summary>
    /// <param name="parsed">What was given on the command line.</param>
    /// <returns>The answer, in words and as JSON.</returns>
    /// <exception cref="Reading.InputException">What was given cannot be used.</exception>
    internal abstract CommandAnswer Answer(ParsedLine parsed);
}
