using Leverage.Tables;

namespace Leverage.BreakLoose;

/// <summary>What turns when a fastener is pulled on.</summary>
public enum TurnsWith
{
    /// <summary>Nothing but the fastener.</summary>
    Nothing,

    /// <summary>The road wheel.</summary>
    Wheel,

    /// <summary>The crankshaft.</summary>
    Crank,
}

/// <summary>Where a fastener sits, from the table <c>places</c>.</summary>
/// <param name="Key">Its name: <c>hub</c>.</param>
/// <param name="Words">The place in words.</param>
/// <param name="Turns">What turns with the fastener.</param>
/// <param name="Near">What stands near it that a move can harm: <c>seal</c>, <c>tyre</c>.</param>
/// <param name="Source">Where the row is from.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record Place(
    string Key, string Words, TurnsWith Turns, IReadOnlyList<string> Near, string Source, ValueStatus Status)
{
    /// <summary>All places, in the order of the table.</summary>
    public static IEnumerable<Place> All => TableCatalog.Tables["places"].Rows.Select(Read);

    /// <summary>The place of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The place.</returns>
    /// <exception cref="Reading.InputException">No such place; the message gives the nearest names.</exception>
    public static Place Named(string name) => Read(RowLookup.Named("places", name, "a place"));

    private static Place Read(TableRow row) => new(
        row.Key,
        row.Text("words"),
        row.Text("turns") switch
        {
            "nothing" => TurnsWith.Nothing,
            "wheel" => TurnsWith.Wheel,
            "crank" => TurnsWith.Crank,
            _ => throw row.Error("turns", "wheel, crank or nothing"),
        },
        row.OptionalText("near")?.Split(' ') ?? [],
        row.Source,
        row.Status);
}
