using System.CommandLine;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Outcomes;
using Leverage.Reading;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage loosen</c>: what it takes to undo this one.</summary>
internal sealed class LoosenCommand : LeverageCommand
{
    private readonly NutOptions _nut = new("what turns it (socket)");
    private readonly Asked<string?> _drive = NameOption.Row("--drive", "square, inches: 1/4 3/8 1/2 3/4 1", "drive-squares", "a drive square");
    private readonly LeverOptions _lever = new();
    private readonly HoldOptions _hold;
    private readonly Picture _chart = new("--chart", "force against length");
    private readonly Picture _sketch = new("--sketch", "side view to scale with forces");

    private readonly Asked<double?> _samples = QuantityOption.Number("--samples", "cross-check the chances by this many draws", 1, MonteCarlo.MostSamples);
    private readonly Asked<double?> _seed = QuantityOption.Number("--seed", "of the draws (1)", 0, 1e15);

    private readonly Picture _tornado = new("--tornado", "what matters, as bars");
    private readonly Flag _whatMatters = new("--what-matters", "which input moves the answer most: what to go and measure");

    /// <summary>The command with its options.</summary>
    internal LoosenCommand() => _hold = new HoldOptions(_lever.Chest);

    /// <inheritdoc/>
    internal override string Example =>
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm";

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols =>
    [
        .. _nut.Symbols, _drive,
        .. _lever.Symbols, .. _hold.Symbols, _chart.Option, _sketch.Option, _samples, _seed, _whatMatters, _tornado.Option,
    ];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(Given given)
    {
        _chart.Check(given);
        _sketch.Check(given);
        _tornado.Check(given);
        LooseningSetup setup = Given.Options(() => LooseningDefaults.Complete(Request(given)));
        LooseningAssessment assessment = Given.Options(() => LooseningAssessor.Assess(setup));
        CrossCheck? drawn = Drawn(assessment, given);
        IReadOnlyList<Swing>? swings = given.Get(_whatMatters) ? WhatMatters.Of(assessment) : null;
        Draw(assessment, given);
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

    private void Draw(LooseningAssessment assessment, Given given)
    {
        string title = LooseningTitle.Of(assessment.Setup, given.Units);
        _tornado.Write(given, () => TornadoChart.Draw(
            Tornado.OfComesLoose(assessment.Judgement.ComesLoose, WhatMatters.Of(assessment) is { Count: > 0 } swings ? swings : throw NoBar(_tornado)),
            title));
        _sketch.Write(given, () => SideView.Draw(LeverSketcher.Of(assessment) ?? throw NoBar(_sketch), title, given.Units));
        _chart.Write(given, () => WindowChart.Draw(WindowMaker.Of(assessment), title, given.Units));
    }

    private static InputException NoBar(Picture picture) =>
        new(picture.Option.Name, "needs a bar to draw. Give --bar, such as 600mm.");

    private CrossCheck? Drawn(LooseningAssessment assessment, Given given) => given.Get(_samples) is { } samples
        ? CrossCheck.Of(assessment, (int)samples, (ulong)(given.Get(_seed) ?? 1))
        : given.Get(_seed) is null
            ? null
            : throw new InputException(_seed.Name, "says nothing without --samples. Write for example --samples 1000000 --seed 1.");

    private LooseningRequest Request(Given given) =>
        _lever.Into(_nut.Read(given) with { Drive = given.Get(_drive), Hold = _hold.Read(given) }, given);
}
