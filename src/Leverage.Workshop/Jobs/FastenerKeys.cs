using Leverage.Requests;

namespace Leverage.Workshop.Jobs;

/// <summary>How the value of a key is written.</summary>
public enum KeyKind
{
    /// <summary>Words.</summary>
    Words,

    /// <summary>One or several names of a table.</summary>
    Names,

    /// <summary>A name of the trade with a number in it: a thread, a grade.</summary>
    Designation,

    /// <summary>A number with its unit.</summary>
    Quantity,

    /// <summary>One or several numbers with their units.</summary>
    Quantities,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Yes or no.</summary>
    Flag,
}

/// <summary>A key of a fastener, in a job file or as the name of a column.</summary>
/// <param name="Name">The key.</param>
/// <param name="Kind">How its value is written.</param>
/// <param name="Help">What it says.</param>
/// <param name="Unit">For a quantity, a unit it may have.</param>
public sealed record FastenerKey(string Name, KeyKind Kind, string Help, string? Unit = null)
{
    /// <summary>Every key of a fastener.</summary>
    public static IReadOnlyList<FastenerKey> All { get; } =
    [
        new("name", KeyKind.Words, "its name, unlike any other's"),
        new("place", KeyKind.Words, "where it is"),
        Of(LooseningFields.Thread, KeyKind.Designation),
        Of(LooseningFields.Grade, KeyKind.Designation),
        Of(LooseningFields.Hex),
        Of(LooseningFields.Torque),
        Of(LooseningFields.ClampedLength),
        Of(LooseningFields.Clamped),
        Of(LooseningFields.Condition),
        Of(LooseningFields.On),
        Of(LooseningFields.Prevailing),
        new("count", KeyKind.Count, "how many alike, in one place"),
        new("new_part", KeyKind.Words, "what to fit new"),
        new("new_part_count", KeyKind.Count, "how many of it"),
        Of(TighteningFields.Lubrication),
        Of(LooseningFields.LeftHand),
        Of(LooseningFields.Soaked),
        Of(LooseningFields.Tool),
        Of(LooseningFields.Worn),
        Of(LooseningFields.Engaged),
        Of(LooseningFields.NutClass),
        new("stances", KeyKind.Names, "ways to stand there is room for: table stances"),
        new("recess", KeyKind.Quantity, "how far it sits back", "mm"),
        new("room", KeyKind.Quantity, "the longest lever there is room for", "mm"),
        new("wheel", KeyKind.Names, "the wheel its torque turns: rear left, …"),
        new("held_by", KeyKind.Words, "what holds the other end"),
        Of(TighteningFields.Adapter),
        new("pattern", KeyKind.Names, "how several alike stand: circle, row, two-rows, none"),
        new("castle", KeyKind.Flag, "a castle nut with a split pin"),
        new("staked", KeyKind.Flag, "a nut whose collar is staked into a groove"),
        Of(TighteningFields.Adjustable),
        new("ride_height", KeyKind.Flag, "full torque only with the vehicle on its wheels"),
        new("retorque_after", KeyKind.Words, "when to check the torque again, such as 50 km"),
        new("refit_note", KeyKind.Words, "what to remember when it goes back"),
        new("note", KeyKind.Words, "what to remember when it comes off"),
        new("done", KeyKind.Flag, "it is loose already"),
        new("held", KeyKind.Quantity, "it has stood this much and not moved", "Nm"),
        new("came_loose", KeyKind.Quantities, "it came loose at this; several where there are several", "Nm"),
        new("rounded", KeyKind.Flag, "its corners are rounded off"),
        new("sheared", KeyKind.Flag, "it has twisted off"),
    ];

    /// <summary>The key of a field that is asked at every door.</summary>
    private static FastenerKey Of(Field field, KeyKind? kind = null) => new(
        field.Key,
        kind ?? (field.Kind.IsFlag ? KeyKind.Flag : field.Kind.Range is null ? KeyKind.Names : KeyKind.Quantity),
        field.Help,
        field.Kind.Range?.Unit);

    /// <summary>The key of a name, or null.</summary>
    /// <param name="name">The name, as a key is written.</param>
    /// <returns>The key.</returns>
    public static FastenerKey? Named(string name) => All.FirstOrDefault(key => key.Name == name);
}
