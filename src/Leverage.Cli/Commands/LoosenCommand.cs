using System.CommandLine;
using Leverage.Answers;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Friction;
using Leverage.Loosening;
using Leverage.Outcomes;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage loosen</c>: what it takes to undo this one.</summary>
internal sealed class LoosenCommand : LeverageCommand
{
    private readonly Argument<Torque?> _book = ReadOption.Argument<Torque?>(
        "BOOK_TORQUE", "what it was tightened to (75 % of proof load)", false, text => QuantityReader.Torque(text));

    private readonly Option<ScrewThread?> _thread = NameOption.Thread("size: M24x1.5, M24 (coarse), 1/2-20");
    private readonly Option<string?> _grade = NameOption.Grade("of bolt or stud: 8.8, SAE 5 (8.8; inch SAE 5)");
    private readonly Option<double?> _friction = QuantityOption.Number("--friction", "at assembly (0.14, and 1.4 each way)", 0.02, 1);
    private readonly Option<string?> _condition = NameOption.Row(
        "--condition", "clean, used, rusted, salted, … : table conditions (used)", "conditions", "a condition");

    private readonly Option<Torque?> _prevailing = QuantityOption.Torque("--prevailing", "a locknut's own grip");
    private readonly Option<bool> _leftHand = Flag("--left-hand", "left-hand thread: turn clockwise to undo");
    private readonly Option<bool> _soaked = Flag("--soaked", "soaked in penetrant for a day");
    private readonly Option<HeatedPart?> _heat = NameOption.Choice<HeatedPart?>(
        "--heat", "part heated", ("stud", HeatedPart.Stud), ("nut", HeatedPart.Nut), ("housing", HeatedPart.Housing));

    private readonly Option<TemperatureDelta?> _by = ReadOption.Of<TemperatureDelta?>(
        "--by", "KELVIN", "how much hotter than the rest: 150K", text => QuantityReader.Warming(text));

    private readonly Option<Length?> _hex = QuantityOption.Length("--hex", "width across flats (standard nut of the thread)");
    private readonly Option<ToolKind?> _tool = NameOption.Choice<ToolKind?>(
        "--tool", "what turns it (socket)",
        ("socket", ToolKind.Socket), ("ring", ToolKind.Ring), ("open", ToolKind.Open), ("key", ToolKind.Key));

    private readonly Option<string?> _drive = NameOption.Row("--drive", "square, inches: 1/4 3/8 1/2 3/4 1", "drive-squares", "a drive square");
    private readonly LeverOptions _lever = new();
    private readonly HoldOptions _hold = new();
    private readonly Picture _chart = new("--chart", "force against length");
    private readonly Picture _sketch = new("--sketch", "side view to scale with forces");

    private readonly Option<double?> _samples = QuantityOption.Number("--samples", "cross-check the chances by this many draws", 1, MonteCarlo.MostSamples);
    private readonly Option<double?> _seed = QuantityOption.Number("--seed", "of the draws (1)", 0, 1e15);

    private readonly Option<bool> _whatMatters = Flag("--what-matters", "which input moves the answer most: what to go and measure");

    /// <inheritdoc/>
    internal override string Example =>
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm";

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols =>
    [
        _book, _thread, _grade, _friction, _condition, _prevailing, _leftHand, _soaked, _heat, _by, _hex, _tool, _drive,
        .. _lever.Symbols, .. _hold.Symbols, _chart.Option, _sketch.Option, _samples, _seed, _whatMatters,
    ];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(Given given)
    {
        _chart.Check(given);
        _sketch.Check(given);
        LooseningSetup setup = Given.Options(() => LooseningDefaults.Complete(Request(given)));
        LooseningAssessment assessment = Given.Options(() => LooseningAssessor.Assess(setup));
        CrossCheck? drawn = Drawn(assessment, given);
        IReadOnlyList<Swing>? swings = given.Get(_whatMatters) ? WhatMatters.Of(assessment) : null;
        _chart.Write(given, () => WindowChart.Draw(
            WindowMaker.Of(assessment), LooseningTitle.Of(setup, given.Units), given.Units));
        return new CommandAnswer(
            assessment.Verdict,
            () => LooseningAnswers.ToJson(LooseningAnswers.Of(assessment, given.Units) with
            {
                CrossCheck = LooseningAnswers.Of(drawn),
                WhatMatters = LooseningAnswers.Of(swings),
            }),
            page =>
            {
                new LoosenWords(assessment, drawn, given.Units).Write(page);
                SwingWords.Write(page, swings, given.Units);
            });
    }

    private CrossCheck? Drawn(LooseningAssessment assessment, Given given) => given.Get(_samples) is { } samples
        ? CrossCheck.Of(assessment, (int)samples, (ulong)(given.Get(_seed) ?? 1))
        : given.Get(_seed) is null
            ? null
            : throw new InputException(_seed.Name, "says nothing without --samples. Write for example --samples 1000000 --seed 1.");

    private LooseningRequest Request(Given given) => _lever.Into(
        new LooseningRequest
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
            Tool = given.Get(_tool) ?? ToolKind.Socket,
            Drive = given.Get(_drive),
            Hold = _hold.Read(given),
        },
        given);

    private Heating? Heating(Given given) => (given.Get(_heat), given.Get(_by), given.Get(_thread)) switch
    {
        (null, null, _) => null,
        ({ } part, { } by, not null) => new Heating(part, by.Kelvins),
        (null, _, _) => throw new InputException(_by.Name, "says nothing without --heat. Write for example --heat nut --by 150K."),
        (_, null, _) => throw new InputException(_heat.Name, "needs --by, how much hotter than the rest, such as --by 150K."),
        _ => throw new InputException(_heat.Name, "needs the thread. Give --thread too, such as M24x1.5."),
    };

    private static Option<bool> Flag(string name, string description) =>
        new(name) { Description = description, Arity = ArgumentArity.Zero };
}
