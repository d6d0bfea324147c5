using System.CommandLine;
using Leverage.Reading;
using Leverage.Workshop.Chest;

namespace Leverage.Cli.Input;

/// <summary>The chest whose pieces' names may stand for quantities.</summary>
internal sealed class ChestOption
{
    private readonly Asked<ToolChest?> _chest;

    /// <summary>The option.</summary>
    /// <param name="description">One line for the help.</param>
    internal ChestOption(string description) =>
        _chest = new Asked<ToolChest?>("--chest", "F.toml", description, ToolChest.Read);

    /// <summary>The option, for the help.</summary>
    internal Asked<ToolChest?> Symbol => _chest;

    /// <summary>The chest, or null when none was given.</summary>
    internal ToolChest? Read(Given given) => given.Get(_chest);

    /// <summary>The piece an option's text names, or null where the text is written out or was left out.</summary>
    /// <param name="given">What was given.</param>
    /// <param name="option">The option.</param>
    /// <param name="shelf">Where in the chest such pieces lie.</param>
    /// <param name="find">Finds it or says which names come nearest.</param>
    /// <param name="isWritten">Whether a text can be a value of its own.</param>
    /// <param name="example">Such a value, for the refusal: "a length such as 600mm".</param>
    /// <exception cref="InputException">A name of no piece, or a name and no chest.</exception>
    internal T? Piece<T>(
        Given given,
        Asked<string?> option,
        Func<ToolChest, IReadOnlyList<T>> shelf,
        Func<ToolChest, string, T> find,
        Func<string, bool> isWritten,
        string example)
        where T : class, IPiece
    {
        if (given.Get(option) is not { } text)
        {
            return null;
        }

        ToolChest? chest = Read(given);
        if (chest is not null && shelf(chest).Named(text) is { } piece)
        {
            return piece;
        }

        return isWritten(text) ? null
            : chest is not null ? Given.About(option, () => find(chest, text))
            : throw new InputException(option.Name, $"'{text}' looks like a name. Give --chest, the file it stands in, or write {example}.");
    }

    /// <summary>Whether a text starts as a quantity does.</summary>
    internal static bool StartsAsNumber(string text) =>
        text.TrimStart() is [var first, ..] && (char.IsAsciiDigit(first) || first is '.' or '-' or '+' or '−');
}
