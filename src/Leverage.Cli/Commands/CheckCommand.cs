using System.CommandLine;
using System.Text.Json;
using Leverage.Assessments;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Requests;
using Leverage.Wording;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage check</c>: is a quoted torque believable for this thread and grade.</summary>
internal sealed class CheckCommand : LeverageCommand
{
    private readonly FieldOptions<TighteningRequest> _fields = new(TighteningFields.Check, required: TighteningFields.Quoted);
    private readonly Flag _more = new("--more", "every line, and every assumption");

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "check 130Nm --thread M12x1.25 --grade 10.9",
        "check 90Nm --then 90deg --thread M12x1.25 --grade 10.9",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [.. _fields.Symbols, _more];

    /// <inheritdoc/>
    internal override string Remarks =>
        """
        It fits when the likely share of yield is 45 to 95 % and at the low friction at
        most 105 %. With --strict: what yields, breaks or strips exits 3; what does
        not fit, or wants care, 4.
        """;

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        CheckingAssessment assessment = Checking.Assess(_fields.Read(parsed, new TighteningRequest()));
        return new CommandAnswer(
            assessment.Verdict,
            () => JsonSerializer.Serialize(CheckingAnswer.Of(assessment), AnswerJson.Shared.CheckingAnswer),
            page => new CheckWords(assessment, parsed.Units, parsed.Get(_more)).Write(page));
    }
}
