using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Levers;
using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Page.Asking;

/// <summary>
/// The fields of an address and how each is read: the names of the command line's options, and for a bar out of a chest
/// what only a chest says of it. One row a field; a field of two parts is read with its last part.
/// </summary>
internal static class LooseningFields
{
    private static readonly (string Name, Func<LooseningRequest, string, LooseningRequest> Into)[] Table =
    [
        ("book-torque", (r, text) => r with { BookTorque = QuantityReader.Torque(text) }),
        ("thread", (r, text) => r with { Thread = ThreadCatalog.Named(text) }),
        ("grade", (r, text) => r with { Grade = text }),
        ("friction", (r, text) => r with { Friction = FrictionRange.About(QuantityReader.Number(text, 0.02, 1)) }),
        ("condition", (r, text) => r with { Condition = Row("conditions", text, "a condition") }),
        ("prevailing", (r, text) => r with { Prevailing = QuantityReader.Torque(text) }),
        ("left-hand", (r, text) => r with { LeftHand = Words.Flag(text) }),
        ("soaked", (r, text) => r with { Soaked = Words.Flag(text) }),
        ("heat", (r, text) => r with { Heating = new Heating(Words.Heated(text), 0) }),
        ("by", (r, text) => r with { Heating = Heated(r, QuantityReader.Warming(text)) }),
        ("hex", (r, text) => r with { AcrossFlats = QuantityReader.Length(text) }),
        ("tool", (r, text) => r with { Tool = Words.Tool(text) }),
        ("drive", (r, text) => r with { Drive = Row("drive-squares", text, "a drive square") }),
        ("bar", (r, text) => r with { Bar = QuantityReader.Length(text) }),
        ("bar-diameter", (r, text) => r with { BarDiameter = QuantityReader.Length(text) }),
        ("bar-yield", (r, text) => r with { BarYield = QuantityReader.Stress(text) }),
        ("bar-taper", (r, text) => r with { Taper = QuantityReader.Angle(text, 20) }),
        ("bar-straight", (r, text) => r with { StraightHandle = QuantityReader.Length(text) }),
        ("bar-pin", (r, text) => r with { Pin = new FlexPin(QuantityReader.Length(text), Length.Zero) }),
        ("bar-pin-planes", (r, text) => r with { Pin = Pin(r, QuantityReader.Length(text)) }),
        ("tube", (r, text) => r with { Tube = TubeReader.Read(text) }),
        ("bore", (r, text) => r with { Tube = Needed(r.Tube, "tube", "jack:1100mm") with { Bore = QuantityReader.Length(text) } }),
        ("tube-yield", (r, text) => r with { TubeYield = QuantityReader.Stress(text) }),
        ("overlap", (r, text) => r with { Overlap = Needed(r.Tube, "tube", "33.7x3.2x1000mm") is null ? null : QuantityReader.Length(text) }),
        ("handle", (r, text) => r with { Handle = Row("handle-friction", text, "a state of the handle") }),
        ("grip-friction", (r, text) => r with { GripFriction = QuantityReader.Number(text, 0.01, 1) }),
        ("below-level", (r, text) => r with { BelowLevel = QuantityReader.Angle(text, 80) }),
        ("stance", (r, text) => r with { Stance = Row("stances", text, "a stance") }),
        ("person", (r, text) => r with { Person = Words.Person(text) }),
        ("body", (r, text) => r with { Body = QuantityReader.Mass(text, 250) }),
        ("force", (r, text) => r with { Force = QuantityReader.Force(text) }),
    ];

    /// <summary>Every field's name, in the order of the command line's help.</summary>
    internal static IReadOnlyList<string> Names { get; } = [.. Table.Select(row => row.Name), .. HoldFields.Names];

    /// <summary>The request an address makes.</summary>
    /// <exception cref="InputException">A field cannot be read; the error is about it.</exception>
    internal static LooseningRequest Read(Said said)
    {
        var request = new LooseningRequest();
        foreach (var (name, into) in Table)
        {
            if (said.Text(name) is { } text)
            {
                request = About(name, () => into(request, text));
            }
        }

        Whole(request);
        return request with { Hold = HoldFields.Read(said) };
    }

    /// <summary>Runs a reader whose refusal is about a field.</summary>
    internal static T About<T>(string field, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InputException e)
        {
            throw e.About(field);
        }
    }

    /// <summary>The key of a row, checked against its table.</summary>
    internal static string Row(string table, string text, string what) => RowLookup.Named(table, text, what).Key;

    private static Heating Heated(LooseningRequest request, TemperatureDelta by) =>
        (request.Heating ?? throw new InputException("says nothing without --heat. Write for example --heat nut --by 150K.")) with
        {
            ByK = by.Kelvins,
        };

    private static FlexPin Pin(LooseningRequest request, Length apart) => Needed(request.Pin, "bar-pin", "8mm") with { PlanesApart = apart };

    private static T Needed<T>(T? part, string field, string example)
        where T : class =>
        part ?? throw new InputException($"says nothing without --{field}. Write for example --{field} {example}.");

    /// <summary>Refuses a field of two parts whose last part is missing.</summary>
    private static void Whole(LooseningRequest request)
    {
        if (request.Heating is { } heating)
        {
            _ = heating.ByK > 0 ? true : throw new InputException("heat", "needs --by, how much hotter than the rest, such as --by 150K.");
            _ = request.Thread is not null ? true : throw new InputException("heat", "needs the thread. Give --thread too, such as M24x1.5.");
        }

        if (request.Pin is { } pin && pin.PlanesApart <= Length.Zero)
        {
            throw new InputException("bar-pin", "needs --bar-pin-planes, the thickness of the tang it runs through, such as 14mm.");
        }
    }
}
