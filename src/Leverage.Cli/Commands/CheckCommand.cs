using System.CommandLine;
using System.Text.Json;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Grades;
using Leverage.Reading;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage check</c>: is a quoted torque believable for this thread and grade.</summary>
internal sealed class CheckCommand : LeverageCommand
{
    private readonly AskedArgument<Torque?> _quoted = new AskedArgument<Torque?>(
        "TORQUE", "the torque quoted, such as 130Nm or 96ft-lb", required: true, text => QuantityReader.Torque(text));

    private readonly Asked<ScrewThread?> _thread = NameOption.Thread("size: M12x1.25, M12 (coarse), 1/2-20");
    private readonly Asked<string?> _grade = NameOption.Grade("of the bolt: 8.8, SAE 5, A2-70 (8.8; inch SAE 5)");
    private readonly JointOptions _joint = new();

    /// <inheritdoc/>
    internal override string Example => "check 130Nm --thread M12x1.25 --grade 10.9";

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [_quoted, _thread, _grade, .. _joint.Symbols];

    /// <inheritdoc/>
    internal override string Remarks =>
        """
        It fits when the likely share of yield is 45 to 90 % and the bolt does not yield
        at the low friction. With --strict: past yield exits 3, else not fitting 4.
        """;

    /// <inheritdoc/>
    internal override CommandAnswer Answer(Given given)
    {
        ScrewThread thread = given.Need(_thread, "write for example --thread M12x1.25.");
        Grade? grade = given.Get(_grade) is { } name ? Given.About(_grade, () => GradeCatalog.Bolt(name, thread)) : null;
        CheckingAssessment assessment = CheckingAssessor.Assess(new CheckingSetup
        {
            Quoted = given.Get(_quoted)!.Value,
            Thread = thread,
            Grade = grade,
            Friction = _joint.Friction(given),
            Face = _joint.Face(given, thread),
        });
        return new CommandAnswer(
            assessment.Verdict,
            () => JsonSerializer.Serialize(CheckingAnswer.Of(assessment), AnswerJson.Shared.CheckingAnswer),
            page => new CheckWords(assessment, given.Units).Write(page));
    }
}
