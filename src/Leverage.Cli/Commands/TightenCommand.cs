using System.CommandLine;
using System.Text.Json;
using Leverage.Wording;
using Leverage.Assessments;
using Leverage.Charts;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Reading;
using Leverage.Threads;
using Leverage.Preload;
using UnitsNet;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage tighten</c>: what torque for this thread and grade, and what preload it buys.</summary>
internal sealed class TightenCommand : LeverageCommand
{
    private readonly Asked<ScrewThread?> _thread = NameOption.Thread("size: M12x1.25, M12 (coarse), 1/2-20");
    private readonly Asked<string?> _grade = NameOption.Grade("of the bolt: 8.8, SAE 5, A2-70 (8.8; inch SAE 5)");
    private readonly JointOptions _joint = new();
    private readonly Asked<double?> _yieldShare = QuantityOption.Share("--yield-share", "share of yield to tighten to (90%)");
    private readonly Asked<double?> _torsion = NameOption.Choice<double?>(
        "--torsion",
        "how torsion counts (plastic; older tables elastic)",
        ("plastic", TensionAndTorsion.Plastic),
        ("elastic", TensionAndTorsion.Elastic));

    private readonly Asked<Torque?> _torque = QuantityOption.Torque("--torque", "what does this torque buy?");
    private readonly Asked<Mass?> _byWeight = QuantityOption.Mass("--by-weight", "where on a level bar to hang this mass?", 500);
    private readonly Asked<Length?> _adapter = QuantityOption.Length("--adapter", "wrench square to nut: what to set?", orZero: true);
    private readonly Asked<Length?> _wrench = QuantityOption.Length("--wrench", "wrench square to middle of its grip");
    private readonly Asked<Angle?> _angle = QuantityOption.Angle("--angle", "adapter against the wrench (0deg)", 180);

    private readonly Asked<Length?> _engagement = QuantityOption.Length("--engagement", "thread engaged in a tapped hole: will it strip?");
    private readonly Asked<string?> _tapped = NameOption.Row(
        "--tapped", "what it is tapped into: table tapped-materials", "tapped-materials", "a tapped material");

    private readonly Picture _chart = new("--chart", "torque against friction");

    /// <inheritdoc/>
    internal override string Example => "tighten --thread M12x1.25 --grade 10.9 --friction 0.12";

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols =>
    [
        _thread, _grade, .. _joint.Symbols, _yieldShare, _torsion, _torque, _byWeight, _adapter, _wrench, _angle,
        _engagement, _tapped, _chart.Option,
    ];

    /// <inheritdoc/>
    internal override CommandAnswer Answer(Given given)
    {
        _chart.Check(given);
        TighteningAssessment assessment = TighteningAssessor.Assess(Setup(given));
        _chart.Write(given, () => FrictionChart.Draw(
            FrictionCurveMaker.Of(assessment), TighteningTitle.Of(assessment), given.Units));
        return new CommandAnswer(
            assessment.Verdict,
            () => JsonSerializer.Serialize(TighteningAnswer.Of(assessment), AnswerJson.Shared.TighteningAnswer),
            page => new TightenWords(assessment, given.Units).Write(page));
    }

    private TighteningSetup Setup(Given given)
    {
        ScrewThread thread = given.Need(_thread, "write for example --thread M12x1.25.");
        Grade? grade = given.Get(_grade) is { } name ? Given.About(_grade, () => GradeCatalog.Bolt(name, thread)) : null;
        return new TighteningSetup
        {
            Thread = thread,
            Grade = grade,
            Friction = _joint.Friction(given),
            Face = _joint.Face(given, thread),
            YieldShare = given.Get(_yieldShare) ?? TighteningSetup.UsualYieldShare,
            TorsionFactor = given.Get(_torsion) ?? TensionAndTorsion.Plastic,
            Torque = given.Get(_torque),
            HungMass = given.Get(_byWeight),
            Adapter = Adapter(given),
            Tapped = Tapped(given),
        };
    }

    private AdapterFitting? Adapter(Given given)
    {
        if (given.Get(_adapter) is not { } adapter)
        {
            Option? stray = given.Get(_wrench) is not null ? _wrench : given.Get(_angle) is not null ? _angle : null;
            return stray is null
                ? null
                : throw new InputException(stray.Name, "says nothing without --adapter. Write for example --adapter 60mm.");
        }

        Length wrench = given.Get(_wrench) ?? throw new InputException(
            _wrench.Name, "is needed with --adapter: from its square to the middle of its grip, such as 450mm.");
        Angle angle = given.Get(_angle) ?? Angle.Zero;
        return wrench + adapter * Math.Cos(angle.Radians) > Length.Zero
            ? new AdapterFitting(adapter, wrench, angle)
            : throw new InputException(_adapter.Name, "folded back it reaches past the hand: no lever is left.");
    }

    private TappedHole? Tapped(Given given) => (given.Get(_engagement), given.Get(_tapped)) switch
    {
        (null, null) => null,
        ({ } engagement, { } material) => new TappedHole(engagement, TappedMaterial.Named(material)),
        (null, _) => throw new InputException(_engagement.Name, "is needed with --tapped: thread engaged, such as 18mm."),
        _ => throw new InputException(_tapped.Name, "is needed with --engagement, such as cast-aluminium. "
            + "All of them: leverage table tapped-materials."),
    };
}
