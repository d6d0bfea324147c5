using System.CommandLine;
using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Workshop.Chest;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>Bar, tube and hands, for the commands that pull on a lever.</summary>
internal sealed class LeverOptions
{
    private readonly ChestOption _chest = new("your own tools; their names may stand for bar, tube, person, hold");
    private readonly Asked<string?> _bar = Named("--bar", "LENGTH", "bar, square to end (spanner or key: its length)");
    private readonly Asked<Length?> _diameter = QuantityOption.Length("--bar-diameter", "of its handle (by drive)");
    private readonly Asked<Pressure?> _yield = QuantityOption.Stress("--bar-yield", "yield of its steel (900MPa)");
    private readonly Asked<Angle?> _taper = QuantityOption.Angle("--bar-taper", "taper of the handle to its end (0deg)", 20);
    private readonly Asked<string?> _tube = Named("--tube", "TUBE", "outside x wall x length, 33.7x3.2x1000mm; jack:1100mm");
    private readonly Asked<Length?> _bore = QuantityOption.Length("--bore", "measured bore of tube or jack handle");
    private readonly Asked<Pressure?> _tubeYield = QuantityOption.Stress("--tube-yield", "yield of its steel (235MPa)");
    private readonly Asked<Length?> _overlap = QuantityOption.Length("--overlap", "how far it goes on (all the straight handle)");
    private readonly HandleOptions _handle = new();
    private readonly Asked<string?> _stance = NameOption.Row("--stance", "how you stand: table stances (stand-push)", "stances", "a stance");
    private readonly PersonOptions _person;

    /// <summary>The options.</summary>
    internal LeverOptions() => _person = new PersonOptions(_chest);

    /// <summary>The chest whose names may be used.</summary>
    internal ChestOption Chest => _chest;

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Option> Symbols =>
    [
        _bar, _diameter, _yield, _taper, _tube, _bore, _tubeYield, _overlap, .. _handle.Symbols,
        _stance, .. _person.Symbols, _chest.Symbol,
    ];

    /// <summary>Puts bar, tube and hands into a request.</summary>
    internal LooseningRequest Into(LooseningRequest request, Given given)
    {
        LooseningRequest said = _person.Into(_handle.Into(request, given), given) with
        {
            BarDiameter = given.Get(_diameter),
            BarYield = given.Get(_yield),
            Taper = given.Get(_taper),
            TubeYield = given.Get(_tubeYield),
            Overlap = Overlap(given),
            Stance = given.Get(_stance),
        };
        return Person(Tube(Bar(said, given), given), given);
    }

    private LooseningRequest Bar(LooseningRequest request, Given given) =>
        _chest.Piece(
            given, _bar, chest => chest.Bars, (chest, name) => chest.Bar(name), ChestOption.StartsAsNumber, "a length such as 600mm") is { } bar
            ? Given.Options(() => request.With(bar))
            : given.Get(_bar) is { } text
                ? request with { Bar = Given.About(_bar, () => QuantityReader.Length(text)) }
                : request;

    private LooseningRequest Tube(LooseningRequest request, Given given)
    {
        Length? bore = given.Get(_bore);
        if (_chest.Piece(
            given, _tube, chest => chest.Tubes, (chest, name) => chest.Tube(name), IsTube, "a tube such as 33.7x3.2x1000mm") is { } tube)
        {
            LooseningRequest with = request.With(tube);
            return bore is null ? with : with with { Tube = tube.Tube with { Bore = bore } };
        }

        if (given.Get(_tube) is { } text)
        {
            return request with { Tube = Given.About(_tube, () => TubeReader.Read(text)) with { Bore = bore } };
        }

        return bore is null
            ? request
            : throw new InputException(_bore.Name, "says nothing without --tube. Write for example --tube jack:1100mm.");
    }

    private LooseningRequest Person(LooseningRequest request, Given given) =>
        _person.Named(given) is { } person ? request.With(person) : request;

    private Length? Overlap(Given given) => given.Get(_overlap) is { } overlap
        ? given.Get(_tube) is not null
            ? overlap
            : throw new InputException(_overlap.Name, "says nothing without --tube. Write for example --tube 33.7x3.2x1000mm.")
        : null;

    private static bool IsTube(string text) =>
        ChestOption.StartsAsNumber(text) || text.TrimStart().StartsWith("jack:", StringComparison.OrdinalIgnoreCase);

    private static Asked<string?> Named(string name, string value, string description) =>
        new Asked<string?>(name, value, description, text => text);
}
