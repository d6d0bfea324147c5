using System.CommandLine;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using UnitsNet;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage slip</c>: when a slipped-over extension comes off, and why.</summary>
internal sealed class SlipCommand : LeverageCommand
{
    private readonly LeverOptions _lever = new();
    private readonly Asked<string?> _drive = NameOption.Row("--drive", "square, for the usual bar of it", "drive-squares", "a drive square");
    private readonly Asked<string?> _condition = NameOption.Row(
        "--condition", "state of the joint: torque left at break-loose (used)", "conditions", "a condition");

    private readonly Asked<Length?> _standOff = QuantityOption.Length("--stand-off", "lever's plane to the nut's: socket depth, extension", true);
    private readonly Asked<Length?> _engagement = QuantityOption.Length("--engagement", "how deep the socket sits on the nut");
    private readonly Picture _chart = new("--chart", "safe angle against overlap");
    private readonly Picture _sketch = new("--sketch", "side view to scale with forces");

    /// <inheritdoc/>
    internal override string Example => "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm";

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [.. _lever.Symbols, _drive, _condition, _standOff, _engagement, _chart.Option, _sketch.Option];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(Given given)
    {
        _chart.Check(given);
        _sketch.Check(given);
        LooseningRequest request = _lever.Into(
            new LooseningRequest { Drive = given.Get(_drive), Condition = given.Get(_condition), StandOff = given.Get(_standOff) },
            given);
        SlipAssessment assessment = Given.Options(
            () => SlipAssessor.Assess(SlipDefaults.Complete(request, given.Get(_engagement))));
        string title = SlipWords.Title(assessment, given.Units);
        _chart.Write(given, () => SlipChart.Draw(assessment, title, given.Units));
        _sketch.Write(given, () => SideView.Draw(LeverSketcher.Of(assessment), title, given.Units));
        return new CommandAnswer(
            Verdict(assessment),
            () => SlipAnswer.Of(assessment, given.Units).ToJson(),
            page => new SlipPage(assessment, given.Units).Write(page));
    }

    private static Verdict Verdict(SlipAssessment assessment) =>
        assessment.SlidesWhileHeld ? Assessments.Verdict.Stop
            : assessment.SlidesAtRelease ? Assessments.Verdict.Care : Assessments.Verdict.Go;
}
