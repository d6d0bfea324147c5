using System.CommandLine;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Workshop.Chest;

namespace Leverage.Cli.Input;

/// <summary>The options of a question about a nut or a lever; names of a chest may stand for bar, tube, person and what holds.</summary>
internal sealed class NutOptions(IReadOnlyList<Field<LooseningRequest>> fields, string chest)
{
    private readonly FieldOptions<LooseningRequest> _fields = new(fields);
    private readonly TextOption _chest = new("--chest", "F.toml", chest);

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Symbol> Symbols => [.. _fields.Symbols, _chest];

    /// <summary>The chest, or null when none was given.</summary>
    internal ToolChest? Chest(ParsedLine parsed) => parsed.Text(_chest) is { } path ? ToolChest.Read(path) : null;

    /// <summary>The request, with what the chest says of the pieces that are called by name.</summary>
    internal LooseningRequest Read(ParsedLine parsed, ToolChest? chest) => Read(parsed, chest, (request, person) => request.With(person));

    /// <summary>The request; what is done with a person of the chest who is called by name is left to the caller.</summary>
    internal LooseningRequest Read(ParsedLine parsed, ToolChest? chest, Func<LooseningRequest, ChestPerson, LooseningRequest> called) =>
        _fields.Read(parsed, new LooseningRequest(), (request, field, text) =>
            field == LooseningFields.Bar ? Piece(chest, field, text, all => all.Bars, (all, name) => all.Bar(name)) is { } bar ? request.With(bar) : null
            : field == LooseningFields.Tube ? Piece(chest, field, text, all => all.Tubes, (all, name) => all.Tube(name)) is { } tube ? request.With(tube) : null
            : field == LooseningFields.Person ? Piece(chest, field, text, all => all.People, (all, name) => all.Person(name)) is { } person ? called(request, person) : null
            : field == LooseningFields.HeldBy && chest is not null ? Held(request, chest, text)
            : null);

    /// <summary>The piece a text names; null where the text is a value of its own.</summary>
    /// <exception cref="InputException">A name of no piece, or a name and no chest.</exception>
    private static T? Piece<T>(
        ToolChest? chest, Field field, string text, Func<ToolChest, IReadOnlyList<T>> shelf, Func<ToolChest, string, T> find)
        where T : class, IPiece
    {
        if (chest is not null && shelf(chest).Named(text) is { } piece)
        {
            return piece;
        }

        if (field.Kind.Takes(text) || StartsAsValue(text))
        {
            return null;
        }

        return chest is not null
            ? InputException.About(field.Name, () => find(chest, text))
            : throw new InputException(field.Name, $"'{text}' looks like a name out of a chest, and no chest is named.", new Cure("chest", "chest.toml"), field.Cure);
    }

    /// <summary>Whether a text was meant as a value, however wrong: its own reader says best what is wrong with it.</summary>
    private static bool StartsAsValue(string text) =>
        text.TrimStart() is [var first, ..] && (char.IsAsciiDigit(first) || first is '.' or '-' or '+' or '−')
        || text.TrimStart().StartsWith("jack:", StringComparison.OrdinalIgnoreCase);

    private static LooseningRequest Held(LooseningRequest request, ToolChest chest, string text)
    {
        string[] words = text.Split(',', StringSplitOptions.TrimEntries);
        ChestHold?[] pieces = [.. words.Select(word => Array.Exists(Kinds.RestraintWords, known => known.Word.Equals(word, StringComparison.OrdinalIgnoreCase))
            ? null
            : chest.Holds.Named(word))];
        string plain = string.Join(',', words.Select((word, i) => pieces[i] is { } piece ? Array.Find(Kinds.RestraintWords, known => known.Value == piece.Kind).Word : word));
        return LooseningFields.HeldBy.Read(request, plain).With(pieces.OfType<ChestHold>().Concat(chest.Holds));
    }
}
