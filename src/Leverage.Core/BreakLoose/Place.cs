using Leverage.Grades;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Threads;

namespace Leverage.BreakLoose;

/// <summary>What turns when a fastener is pulled on.</summary>
public enum TurnsWith
{
    /// <summary>Nothing but the fastener.</summary>
    Nothing,

    /// <summary>The road wheel.</summary>
    Wheel,

    /// <summary>A flange of the drive line: the wheels through the final drive, or the engine in gear.</summary>
    Flange,

    /// <summary>The crankshaft.</summary>
    Crank,
}

/// <summary>Where a fastener sits, from the table <c>places</c>.</summary>
/// <param name="Key">Its name: <c>hub</c>.</param>
/// <param name="Words">The place in words.</param>
/// <param name="Turns">What turns with the fastener.</param>
/// <param name="Near">What stands near it that a move can harm: <c>seal</c>, <c>tyre</c>.</param>
/// <param name="Condition">The state it is usually in, a name of the table <c>conditions</c>.</param>
/// <param name="Grade">What its metric bolts and studs usually are; null for the usual grade.</param>
/// <param name="GradeInch">The same of inch ones.</param>
/// <param name="Source">Where the row is from.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record Place(
    string Key, string Words, TurnsWith Turns, IReadOnlyList<string> Near, string Condition, string? Grade, string? GradeInch, string Source, ValueStatus Status)
{
    /// <summary>Shortest word worth looking for in the rows.</summary>
    private const int LeastLetters = 3;

    /// <summary>All places, in the order of the table.</summary>
    public static IEnumerable<Place> All => TableCatalog.Tables["places"].Rows.Select(Read);

    /// <summary>The place of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The place.</returns>
    /// <exception cref="InputException">No such place; the message gives the nearest names.</exception>
    public static Place Named(string name) => Read(RowLookup.Named("places", name, "a place"));

    /// <summary>The grade a bolt or stud of a thread is taken for here when none is known; a place not known changes nothing.</summary>
    internal static string UsualGrade(Place? place, ScrewThread thread) =>
        (thread.Family == ThreadFamily.Unified ? place?.GradeInch : place?.Grade) ?? GradeCatalog.Usual(thread);

    /// <summary>Whether it is a plug: its torque follows from its seal, not from the strength of its thread, and oil stands behind it.</summary>
    public bool IsPlug => Key == "drain-plug";

    /// <summary>Whether a wheel turns with it, straight or through the final drive.</summary>
    public bool TurnsWheel => Turns is TurnsWith.Wheel or TurnsWith.Flange;

    /// <summary>The key of a place by its name.</summary>
    /// <param name="name">What the person wrote.</param>
    /// <returns>The key.</returns>
    /// <exception cref="InputException">No such place; where its words stand in a row, that place and its nearest torques are told.</exception>
    internal static string KeyOf(string name)
    {
        string wanted = name.Trim();
        bool Says(string words) => wanted.Length >= LeastLetters && words.Contains(wanted, StringComparison.OrdinalIgnoreCase);
        if (All.Any(place => place.Key.Equals(wanted, StringComparison.OrdinalIgnoreCase))
            || All.FirstOrDefault(place => Says(place.Words) || LargeNut.All.Any(row => row.On == place.Key && Says(row.Application))) is not { } meant)
        {
            return Named(name).Key;
        }

        string rows = string.Join("; ", LargeNut.All.Where(row => row.On == meant.Key).OrderBy(row => !Says(row.Application)).Take(2).Select(row => row.Application));
        throw new InputException("on", $"'{wanted}' is not a place known here. It is of {meant.Key}: {(rows is "" ? meant.Words : rows)}.", new Cure("on", meant.Key));
    }

    private static Place Read(TableRow row) => new(
        row.Key,
        row.Text("words"),
        row.Text("turns") switch
        {
            "nothing" => TurnsWith.Nothing,
            "wheel" => TurnsWith.Wheel,
            "flange" => TurnsWith.Flange,
            "crank" => TurnsWith.Crank,
            _ => throw row.Error("turns", "wheel, flange, crank or nothing"),
        },
        row.OptionalText("near")?.Split(' ') ?? [],
        row.Text("condition"),
        row.OptionalText("grade"),
        row.OptionalText("grade_inch"),
        row.Source,
        row.Status);
}
