using System.CommandLine;
using Leverage.Assessments;
using Leverage.Friction;
using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Cli.Input;

/// <summary>The nut or bolt to undo, for the commands that break one loose.</summary>
internal sealed class NutOptions
{
    private readonly AskedArgument<Torque?> _book = new AskedArgument<Torque?>(
        "BOOK_TORQUE", "what it was tightened to (75 % of proof load)", false, text => QuantityReader.Torque(text));

    private readonly Asked<ScrewThread?> _thread = NameOption.Thread("size: M24x1.5, M24 (coarse), 1/2-20");
    private readonly Asked<string?> _grade = NameOption.Grade("of bolt or stud: 8.8, SAE 5 (8.8; inch SAE 5)");
    private readonly Asked<double?> _friction = QuantityOption.Number("--friction", "at assembly (0.14, and 1.4 each way)", 0.02, 1);
    private readonly Asked<string?> _condition = NameOption.Row(
        "--condition", "clean, used, rusted, salted, … : table conditions (used)", "conditions", "a condition");

    private readonly Asked<Torque?> _prevailing = QuantityOption.Torque("--prevailing", "a locknut's own grip");
    private readonly Flag _leftHand = new("--left-hand", "left-hand thread: turn clockwise to undo");
    private readonly Flag _soaked = new("--soaked", "soaked in penetrant for a day");
    private readonly Asked<HeatedPart?> _heat = NameOption.Choice<HeatedPart?>(
        "--heat", "part heated", ("stud", HeatedPart.Stud), ("nut", HeatedPart.Nut), ("housing", HeatedPart.Housing));

    private readonly Asked<TemperatureDelta?> _by = new Asked<TemperatureDelta?>(
        "--by", "KELVIN", "how much hotter than the rest: 150K", text => QuantityReader.Warming(text));

    private readonly Asked<Length?> _hex = QuantityOption.Length("--hex", "width across flats (standard nut of the thread)");
    private readonly Asked<ToolKind?> _tool;

    /// <summary>The options.</summary>
    /// <param name="tool">What the help says of <c>--tool</c>.</param>
    internal NutOptions(string tool) => _tool = NameOption.Choice<ToolKind?>(
        "--tool", tool, ("socket", ToolKind.Socket), ("ring", ToolKind.Ring), ("open", ToolKind.Open), ("key", ToolKind.Key));

    /// <summary>The argument and the options, in the order the help shows them.</summary>
    internal IEnumerable<Symbol> Symbols =>
        [_book, _thread, _grade, _friction, _condition, _prevailing, _leftHand, _soaked, _heat, _by, _hex, _tool];

    /// <summary>What turns it; null when that was left open.</summary>
    internal ToolKind? Tool(Given given) => given.Get(_tool);

    /// <summary>What was said of the nut.</summary>
    internal LooseningRequest Read(Given given) => new()
    {
        BookTorque = given.Get(_book),
        Thread = given.Get(_thread),
        Grade = given.Get(_grade),
        Friction = given.Get(_friction) is { } friction ? FrictionRange.About(friction) : null,
        Condition = given.Get(_condition),
        Prevailing = given.Get(_prevailing),
        LeftHand = given.Get(_leftHand),
        Soaked = given.Get(_soaked),
        Heating = Heating(given),
        AcrossFlats = given.Get(_hex),
        Tool = Tool(given) ?? ToolKind.Socket,
    };

    private Heating? Heating(Given given) => (given.Get(_heat), given.Get(_by), given.Get(_thread)) switch
    {
        (null, null, _) => null,
        ({ } part, { } by, not null) => new Heating(part, by.Kelvins),
        (null, _, _) => throw new InputException(_by.Name, "says nothing without --heat. Write for example --heat nut --by 150K."),
        (_, null, _) => throw new InputException(_heat.Name, "needs --by, how much hotter than the rest, such as --by 150K."),
        _ => throw new InputException(_heat.Name, "needs the thread. Give --thread too, such as M24x1.5."),
    };
}
