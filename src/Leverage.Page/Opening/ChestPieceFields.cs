using Leverage.Reading;
using Leverage.Wording;
using Leverage.Workshop.Chest;

namespace Leverage.Page.Opening;

/// <summary>
/// What picking a piece of a chest writes into the fields: all that is said of it, so that the address holds the whole
/// set-up and needs no chest when it is opened again.
/// </summary>
internal static class ChestPieceFields
{
    /// <summary>The pieces of a chest that a set-up is made of.</summary>
    internal static IEnumerable<OpenedPiece> Of(ToolChest chest) =>
    [
        .. chest.NutTools.SelectMany(Tools),
        .. chest.Bars.Select(Bar),
        .. chest.Tubes.Select(Tube),
        .. chest.People.SelectMany(People),
        .. chest.Holds.Select(Hold),
    ];

    /// <summary>A piece and its fields.</summary>
    internal static OpenedPiece Piece(string group, string name, params (string Field, string Text)[] fields) =>
        new(group, name, fields.ToDictionary(field => field.Field, field => field.Text, StringComparer.Ordinal));

    private static IEnumerable<OpenedPiece> Tools(NutTool tool) => tool.Sizes.Select(size => Piece(
        "tool",
        tool.Sizes.Count > 1 ? $"{tool.Name}, {QuantityWriter.Text(size)}" : tool.Name,
        [
            ("hex", QuantityWriter.Text(size)),
            ("tool", tool.Kind.ToString().ToLowerInvariant()),
            ("drive", tool.Drive ?? ""),
            .. tool.Length is { } length ? [("bar", QuantityWriter.Text(length))] : Array.Empty<(string, string)>(),
        ]));

    private static OpenedPiece Bar(ChestBar bar) => Piece(
        "bar",
        bar.Name,
        ("drive", bar.Drive),
        ("bar", QuantityWriter.Text(bar.Length)),
        ("bar-diameter", QuantityWriter.Text(bar.Diameter)),
        ("bar-yield", QuantityWriter.Text(bar.Yield)),
        ("bar-taper", QuantityWriter.Text(bar.Taper)),
        ("bar-straight", QuantityWriter.Text(bar.StraightHandle)),
        ("bar-pin", QuantityWriter.Text(bar.Pin?.Diameter)),
        ("bar-pin-planes", QuantityWriter.Text(bar.Pin?.PlanesApart)));

    private static OpenedPiece Tube(ChestTube tube) => Piece(
        "tube",
        tube.Name,
        ("tube", tube.Tube is { Outside: { } outside, Wall: { } wall }
            ? $"{QuantityWriter.Text(outside)}x{QuantityWriter.Text(wall)}x{QuantityWriter.Text(tube.Tube.Length)}"
            : $"jack:{QuantityWriter.Text(tube.Tube.Length)}"),
        ("bore", QuantityWriter.Text(tube.Tube.Bore)),
        ("tube-yield", QuantityWriter.Text(tube.Yield)),
        ("overlap", ""));

    private static IEnumerable<OpenedPiece> People(ChestPerson person) => person.Forces
        .Select(force => Person(person, $"{person.Name}, {force.Key} as measured", QuantityWriter.Text(force.Value), force.Key))
        .Append(Person(person, person.Name, "", null));

    private static OpenedPiece Person(ChestPerson person, string name, string force, string? stance)
    {
        (string, string)[] fields =
        [
            ("person", person.Column.ToString().ToLowerInvariant()), ("body", QuantityWriter.Text(person.Body)), ("force", force),
        ];
        return Piece("person", name, stance is null ? fields : [.. fields, ("stance", stance)]);
    }

    private static OpenedPiece Hold(ChestHold hold) => Piece(
        "hold",
        hold.Name,
        ("held-by", VerdictWords.Word(hold.Kind)),
        ("chock", QuantityWriter.Text(hold.Height)),
        ("hold-bar", QuantityWriter.Text(hold.Diameter)));
}
