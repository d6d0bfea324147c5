using System.CommandLine;
using Leverage.Assessments;
using Leverage.Levers;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>Bar, sleeve and hands, for the commands that pull on a lever.</summary>
internal sealed class LeverOptions
{
    private readonly Option<Length?> _bar = QuantityOption.Length("--bar", "bar, square to end (spanner or key: its length)");
    private readonly Option<Length?> _diameter = QuantityOption.Length("--bar-diameter", "of its handle (by drive)");
    private readonly Option<Pressure?> _yield = QuantityOption.Stress("--bar-yield", "yield of its steel (900MPa)");
    private readonly Option<Angle?> _taper = QuantityOption.Angle("--bar-taper", "taper of the handle to its end (0deg)", 20);
    private readonly Option<SleeveText?> _sleeve = ReadOption.Of<SleeveText?>(
        "--sleeve", "TUBE", "outside x wall x length, 33.7x3.2x1000mm; jack:1100mm", SleeveReader.Read);

    private readonly Option<Length?> _bore = QuantityOption.Length("--bore", "measured bore of sleeve or jack handle");
    private readonly Option<Pressure?> _sleeveYield = QuantityOption.Stress("--sleeve-yield", "yield of its steel (235MPa)");
    private readonly Option<Length?> _overlap = QuantityOption.Length("--overlap", "how far it goes on (all the straight handle)");
    private readonly Option<string?> _handle = NameOption.Row(
        "--handle", "dry, chrome, rusty, oily, greasy (dry)", "handle-friction", "a state of the handle");

    private readonly Option<double?> _grip = QuantityOption.Number("--grip-friction", "of sleeve on bar, instead of --handle", 0.01, 1);
    private readonly Option<Angle?> _below = QuantityOption.Angle("--below-level", "lowest angle of the swing (30deg)", 80);
    private readonly Option<string?> _stance = NameOption.Row("--stance", "how you stand: table stances (stand-push)", "stances", "a stance");
    private readonly Option<Person?> _person = NameOption.Choice<Person?>(
        "--person", "column of the stance table (man)", ("man", Person.Man), ("woman", Person.Woman));

    private readonly Option<Mass?> _body = QuantityOption.Mass("--body", "your mass (84.6kg; woman 66.8kg)", 250);
    private readonly Option<Force?> _force = QuantityOption.Force("--force", "your own, read off a bathroom scale pushed so");

    /// <summary>The options, in the order the help shows them.</summary>
    internal IEnumerable<Option> Symbols =>
    [
        _bar, _diameter, _yield, _taper, _sleeve, _bore, _sleeveYield, _overlap, _handle, _grip, _below,
        _stance, _person, _body, _force,
    ];

    /// <summary>Puts bar, sleeve and hands into a request.</summary>
    internal LooseningRequest Into(LooseningRequest request, Given given) => request with
    {
        Bar = given.Get(_bar),
        BarDiameter = given.Get(_diameter),
        BarYield = given.Get(_yield),
        Taper = given.Get(_taper),
        Sleeve = Sleeve(given),
        SleeveYield = given.Get(_sleeveYield),
        Overlap = Overlap(given),
        Handle = given.Get(_handle),
        GripFriction = given.Get(_grip),
        BelowLevel = given.Get(_below),
        Stance = given.Get(_stance),
        Person = given.Get(_person),
        Body = given.Get(_body),
        Force = given.Get(_force),
    };

    private SleeveText? Sleeve(Given given)
    {
        if (given.Get(_sleeve) is { } sleeve)
        {
            return sleeve with { Bore = given.Get(_bore) };
        }

        return given.Get(_bore) is null
            ? null
            : throw new InputException(_bore.Name, "says nothing without --sleeve. Write for example --sleeve jack:1100mm.");
    }

    private Length? Overlap(Given given) => given.Get(_overlap) is { } overlap
        ? given.Get(_sleeve) is not null
            ? overlap
            : throw new InputException(_overlap.Name, "says nothing without --sleeve. Write for example --sleeve 33.7x3.2x1000mm.")
        : null;
}
