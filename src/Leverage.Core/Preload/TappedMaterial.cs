using Leverage.Tables;
using UnitsNet;

namespace Leverage.Preload;

/// <summary>What a thread is tapped into, from the table <c>tapped-materials</c>.</summary>
/// <param name="Name">Its key: <c>cast-aluminium</c>.</param>
/// <param name="Words">What it is.</param>
/// <param name="Shear">Ultimate shear strength.</param>
public sealed record TappedMaterial(string Name, string Words, Pressure Shear)
{
    /// <summary>What a plain name stands for: of its usual kinds the one that strips first, or the usual casting.</summary>
    private static readonly (string[] Names, string Key, string Else)[] Plain =
    [
        (["aluminium", "aluminum", "alloy", "alu"], "cast-aluminium", "6061-t6"),
        (["iron", "cast-iron"], "grey-iron-soft", "grey-iron"),
        (["steel"], "mild-steel", "medium-steel"),
    ];

    /// <summary>Another kind the plain name could have meant, which holds more; null where the name said which.</summary>
    public TappedMaterial? Else { get; private init; }

    /// <summary>The material of a name.</summary>
    /// <param name="name">Its key, or plainly aluminium, iron or steel.</param>
    /// <returns>The material.</returns>
    /// <exception cref="Reading.InputException">No such material; the message gives the nearest names.</exception>
    public static TappedMaterial Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (var (names, key, other) in Plain)
        {
            if (names.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase))
            {
                return Row(key) with { Else = Row(other) };
            }
        }

        return Row(name);
    }

    private static TappedMaterial Row(string name)
    {
        TableRow row = RowLookup.Named("tapped-materials", name, "a tapped material");
        return new TappedMaterial(row.Key, row.Text("words"), Pressure.FromMegapascals(row.Number("shear_mpa")));
    }
}
