using Leverage.Tables;

namespace Leverage.Friction;

/// <summary>The surface of a bar that a tube sits on, from the table <c>handle-friction</c> or as the person gives it.</summary>
/// <param name="Key">Its state: <c>dry</c>, <c>oily</c>; null where only a figure is given.</param>
/// <param name="Friction">Friction of a tube on it; the check uses its low value.</param>
/// <param name="Status">How far that may be trusted.</param>
public sealed record HandleSurface(string? Key, FrictionRange Friction, ValueStatus Status)
{
    /// <summary>The state taken where none is said.</summary>
    internal const string Usual = "dry";

    /// <summary>Low and high friction about a figure the person gives (judgement).</summary>
    private const double GivenLow = 0.75;
    private const double GivenHigh = 1.25;

    /// <summary>Its state in words.</summary>
    public string Words => Key ?? "as given";

    /// <summary>The surface of a state.</summary>
    /// <param name="name">Its key.</param>
    /// <returns>The surface.</returns>
    /// <exception cref="Reading.InputException">No such state; the message gives the nearest names.</exception>
    public static HandleSurface Named(string name)
    {
        TableRow row = RowLookup.Named("handle-friction", name, "a state of the handle");
        return new HandleSurface(row.Key, new FrictionRange(row.Number("low"), row.Number("typical"), row.Number("high")), row.Status);
    }

    /// <summary>The surface of a figure that a person gives.</summary>
    /// <param name="friction">Coefficient, above 0.</param>
    /// <returns>The surface, a quarter either way.</returns>
    public static HandleSurface Given(double friction) =>
        new(null, new FrictionRange(GivenLow * friction, friction, GivenHigh * friction), ValueStatus.Published);
}
