using System.CommandLine;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage slip</c>: when a slipped-over tube comes off, and why.</summary>
internal sealed class SlipCommand : LeverageCommand
{
    private readonly NutOptions _fields = new(LooseningFields.Slip, "your own tools; their names may stand for bar, tube, person");
    private readonly Picture _chart = new("--chart", "safe angle against overlap");
    private readonly Picture _sketch = new("--sketch", "side view to scale with forces");
    private readonly Flag _more = new("--more", "every state, overlap and assumption");

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm",
        "slip --bar 600mm --drive 3/4 --tube jack:1100mm --bore 30mm",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [.. _fields.Symbols, _more, _chart.Option, _sketch.Option];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        _chart.Check(parsed);
        _sketch.Check(parsed);
        SlipAssessment assessment = Slip.Assess(_fields.Read(parsed, _fields.Chest(parsed)));
        string title = SlipWords.Title(assessment, parsed.Units);
        _chart.Write(parsed, () => SlipChart.Draw(assessment, title, parsed.Units));
        _sketch.Write(parsed, () => SideView.Draw(LeverSketcher.Of(assessment), title, parsed.Units));
        return new CommandAnswer(
            assessment.Verdict,
            () => SlipAnswer.Of(assessment, parsed.Units).ToJson(),
            page => new SlipPage(assessment, parsed.Units, parsed.Get(_more)).Write(page));
    }
}
