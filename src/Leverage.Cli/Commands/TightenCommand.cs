using System.CommandLine;
using System.Text.Json;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage tighten</c>: what torque for this thread and grade, and what preload it makes.</summary>
internal sealed class TightenCommand : LeverageCommand
{
    private readonly FieldOptions<TighteningRequest> _fields = new(TighteningFields.All);
    private readonly Picture _chart = new("--chart", "preload against torque and turn");
    private readonly Flag _more = new("--more", "every line, and every assumption");

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "tighten --thread M12x1.25 --grade 10.9 --friction 0.12",
        "tighten --thread M24x1.5 --torque 380Nm --by-weight 82kg",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [.. _fields.Symbols, _more, _chart.Option];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        _chart.Check(parsed);
        TighteningAssessment assessment = Tightening.Assess(_fields.Read(parsed, new TighteningRequest()));
        _chart.Write(parsed, () => PreloadChart.Draw(
            PreloadCurve.Of(assessment), TighteningTitle.Of(assessment), parsed.Units));
        return new CommandAnswer(
            assessment.Verdict,
            () => JsonSerializer.Serialize(TighteningAnswer.Of(assessment), AnswerJson.Shared.TighteningAnswer),
            page => new TightenWords(assessment, parsed.Units, parsed.Get(_more)).Write(page));
    }
}
