using Leverage.Tables;

namespace Leverage.Corners;

/// <summary>How worn the corners are, from the table <c>corner-wear</c>.</summary>
/// <param name="Key">Its name: new, worn, rounded.</param>
/// <param name="Words">What to look for.</param>
/// <param name="Share">Share of the width across corners that is gone.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record CornerWear(string Key, string Words, double Share, ValueStatus Status)
{
    /// <summary>The wear of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The wear.</returns>
    /// <exception cref="Reading.InputException">No such wear; the message gives the nearest names.</exception>
    public static CornerWear Named(string name)
    {
        TableRow row = RowLookup.Named("corner-wear", name, "a wear of corners");
        return new CornerWear(row.Key, row.Text("words"), row.Number("wear_share"), row.Status);
    }
}

/// <summary>Strength of a nut's corners by what is stamped on it, from the table <c>nut-classes</c>.</summary>
/// <param name="Key">Its class, or <c>unknown</c>, or <c>head</c> for the head of a bolt.</param>
/// <param name="Words">What it is.</param>
/// <param name="YieldMpa">Yield the corners round off at, MPa; null for a head, which has its bolt's.</param>
/// <param name="Source">Where it is from.</param>
/// <param name="Status">How far it may be trusted.</param>
public sealed record NutClass(string Key, string Words, double? YieldMpa, string Source, ValueStatus Status)
{
    /// <summary>What is taken where nothing is known of the nut.</summary>
    public const string Unknown = "unknown";

    /// <summary>The class of a name.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The class.</returns>
    /// <exception cref="Reading.InputException">No such class; the message gives the nearest names.</exception>
    public static NutClass Named(string name)
    {
        TableRow row = RowLookup.Named("nut-classes", name, "a class of nut");
        return new NutClass(row.Key, row.Text("words"), row.OptionalNumber("yield_mpa"), row.Source, row.Status);
    }
}
