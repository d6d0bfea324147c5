using FsCheck;
using FsCheck.Fluent;

namespace Leverage.Tests;

/// <summary>
/// A place between two ends, so that a law is tried at any size, small ones as often as large: never NaN, never infinite,
/// the ends themselves often. It shrinks to fewer decimals.
/// </summary>
public readonly record struct Sized(double Share)
{
    /// <summary>The place on a logarithmic scale.</summary>
    public double Log(double from, double to) => Share switch
    {
        0 => from,
        1 => to,
        _ => from * Math.Pow(to / from, Share),
    };

    /// <summary>The place on an even scale.</summary>
    public double Even(double from, double to) => Share == 1 ? to : from + Share * (to - from);

    /// <summary>The item at the place.</summary>
    public T Of<T>(IReadOnlyList<T> items) => items[Math.Min(items.Count - 1, (int)(Share * items.Count))];

    /// <summary>Whether the place is in the upper part of the scale, a share of it.</summary>
    public bool Upper(double share) => Share > 1 - share;
}

/// <summary>As many draws as a whole set-up needs, read in order.</summary>
public sealed record Draws(IReadOnlyList<Sized> All)
{
    /// <summary>How many there are.</summary>
    public const int Count = 96;

    /// <summary>Reads them from the first on.</summary>
    public Func<Sized> Reader()
    {
        int next = 0;
        return () => All[next++];
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(" ", All.Select(place => place.Share.ToString("R", null)));
}

/// <summary>Makes draws; named in the <c>Properties</c> attribute of a class of laws.</summary>
public static class SizedValues
{
    private static readonly Gen<Sized> Place = Gen.Frequency(
        (1, Gen.Elements(new Sized(0), new Sized(1))),
        (12, Gen.Choose(0, 1_000_000).Select(i => new Sized(i / 1e6))));

    public static Arbitrary<Sized> Sized() => Arb.From(Place, Simpler);

    public static Arbitrary<Draws> Draws() => Arb.From(
        Gen.ArrayOf(Place, Tests.Draws.Count).Select(all => new Draws(all)),
        draws => draws.All.SelectMany((place, i) => Simpler(place).Select(simple => With(draws, i, simple))));

    private static IEnumerable<Sized> Simpler(Sized place) => Enumerable.Range(0, 6)
        .Select(decimals => new Sized(Math.Round(place.Share, decimals)))
        .Prepend(new Sized(0))
        .Where(simple => simple != place && place.Share != 0)
        .Distinct();

    private static Draws With(Draws draws, int at, Sized simple) =>
        new([.. draws.All.Select((place, i) => i == at ? simple : place)]);
}
