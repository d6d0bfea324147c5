using System.CommandLine;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Outcomes;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage loosen</c>: what it takes to loosen this one.</summary>
internal sealed class LoosenCommand : LeverageCommand
{
    private static readonly FieldKind<int> DrawCounts = Kinds.Count("100000", new AcceptedRange(1, MonteCarlo.MostSamples, ""));
    private static readonly FieldKind<int> Starts = Kinds.Count("1", new AcceptedRange(0, int.MaxValue, ""));

    private readonly NutOptions _fields = new(LooseningFields.All, "your own tools; their names may stand for bar, tube, person, hold");
    private readonly Picture _chart = new("--chart", "force against length");
    private readonly Picture _sketch = new("--sketch", "side view to scale with forces");

    private readonly TextOption _draws = new("--draws", DrawCounts, "work the chances out a second way, by this many random pulls");
    private readonly TextOption _start = new("--start-number", Starts, "where the random pulls begin: same number, same answer (1)");
    private readonly Picture _whatMattersChart = new("--what-matters-chart", "what matters, as bars");
    private readonly Flag _more = new("--more", "every part, source and assumption");
    private readonly Flag _whatMatters = new("--what-matters", "which of your figures matters most: what to go and measure");

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm",
        "loosen --hex 32mm --on hub --condition rusted --drive 1/2 --bar 450mm",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols =>
    [
        .. _fields.Symbols, _more, _chart.Option, _sketch.Option, _draws, _start, _whatMatters, _whatMattersChart.Option,
    ];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        _chart.Check(parsed);
        _sketch.Check(parsed);
        _whatMattersChart.Check(parsed);
        LooseningAssessment assessment = Loosening.Assess(_fields.Read(parsed, _fields.Chest(parsed)));
        CrossCheck? drawn = Drawn(assessment, parsed);
        IReadOnlyList<Sensitivity>? effects = parsed.Get(_whatMatters) ? WhatMatters.Of(assessment) : null;
        Draw(assessment, parsed);
        return new CommandAnswer(
            assessment.Verdict,
            () => LooseningAnswers.ToJson(LooseningAnswers.Of(assessment, parsed.Units) with
            {
                CrossCheck = LooseningAnswers.Of(drawn),
                WhatMatters = LooseningAnswers.Of(effects),
            }),
            page =>
            {
                new LoosenWords(assessment, drawn, parsed.Units, parsed.Get(_more)).Write(page);
                WhatMattersWords.Write(page, effects, parsed.Units);
            });
    }

    private void Draw(LooseningAssessment assessment, ParsedLine parsed)
    {
        string title = LooseningTitle.Of(assessment.Setup, parsed.Units);
        _whatMattersChart.Write(parsed, () => TornadoChart.Draw(
            Tornado.OfComesLoose(assessment.Judgement.ComesLoose, WhatMatters.Of(assessment) is { Count: > 0 } effects ? effects : throw NoBar(_whatMattersChart)),
            title));
        _sketch.Write(parsed, () => SideView.Draw(LeverSketcher.Of(assessment) ?? throw NoBar(_sketch), title, parsed.Units));
        _chart.Write(parsed, () => WindowChart.Draw(WindowMaker.Of(assessment), title, parsed.Units));
    }

    private static InputException NoBar(Picture picture) =>
        new(picture.Option.Name, "needs a bar to draw.", LooseningFields.Bar.Cure);

    private CrossCheck? Drawn(LooseningAssessment assessment, ParsedLine parsed) => parsed.Read(_draws, DrawCounts, 0) is var draws and > 0
        ? CrossCheck.Of(assessment, draws, parsed.Read(_start, Starts, 1))
        : parsed.Text(_start) is null
            ? null
            : throw new InputException(_start.Name, "is of no use without draws.", new Cure("draws", "100000"));
}
