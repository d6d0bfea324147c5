using Leverage.Requests;
using Leverage.Workshop.Files;
using UnitsNet;

namespace Leverage.Workshop.Chest;

/// <summary>A key of a piece that no question is asked with: its name, what its values are, one line of help.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
internal sealed record PieceKey<T>(string Name, FieldKind<T> Values, string Help)
    where T : struct
{
    /// <summary>Its value, or null.</summary>
    internal T? Of(TomlSection section) => section.Quantity(Name, Values);

    /// <summary>Its value, which must be there.</summary>
    internal T Need(TomlSection section) => section.NeedQuantity(Name, Values);
}

/// <summary>The keys of a chest's pieces that are no fields of a question: reader and schema are both made of them.</summary>
internal static class PieceKeys
{
    internal static readonly PieceKey<Length> TubeLength = new("length", Kinds.Length("1000mm"), "its length");
    internal static readonly PieceKey<Length> Outside = new("outside", Kinds.Length("33.7mm"), "its outside");
    internal static readonly PieceKey<Length> Wall = new("wall", Kinds.Length("3.2mm"), "its wall");
    internal static readonly PieceKey<Length> AdapterLength = new("length", Kinds.Length("40mm"), "square to square");
    internal static readonly PieceKey<Torque> From = new("from", Kinds.Torque("40Nm"), "the lowest it can be set to");
    internal static readonly PieceKey<Torque> To = new("to", Kinds.Torque("200Nm"), "the highest it can be set to");
    internal static readonly PieceKey<double> Accuracy = new("accuracy", Kinds.Share("4%"), "its scatter each way");
    internal static readonly PieceKey<ToolKind> Spanner = new("kind", Kinds.Choice(("ring", ToolKind.Ring), ("open", ToolKind.Open)), "ring or open");
    internal static readonly PieceKey<Holding.Restraint> Hold = new("kind", Kinds.Choice(Kinds.RestraintWords) with { Example = "chock" }, "how it holds");
}
