using Leverage.Assessments;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Ordering;
using Leverage.Workshop.Picking;

namespace Leverage.Workshop.Sheets;

/// <summary>Turns a planned job into its answer record.</summary>
public static class JobAnswers
{
    /// <summary>The answer of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">Units of the sentences; the numbers stay metric.</param>
    /// <returns>The answer.</returns>
    public static JobAnswer Of(JobPlan plan, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        IReadOnlyList<TaskRules> rules = plan.Left.Rules;
        return new JobAnswer(
            plan.Job.Title,
            plan.Left.AtStart,
            [.. plan.Tasks.Select(task => Task(task, plan.Job, rules))],
            [.. plan.Loosening.Select(planned => Loosening(planned, style))],
            [.. plan.Refit.Select(Refit)],
            [.. plan.RefitSteps.Select(Step)],
            [.. plan.Parts.Select(part => new PartAnswer(part.Part, part.Count, part.For))],
            [.. Preparation.Lines(plan, style).Select(line => new PreparationAnswer(line.Label, line.Words))],
            plan.Gaps.Watch,
            VerdictWords.Word(plan.Verdict));
    }

    private static TaskAnswer Task(PlannedTask task, Job job, IReadOnlyList<TaskRules> rules) => new(
        task.Number,
        task.Task.Name,
        task.Task.Rules.Needs,
        task.Before,
        task.Task.Rules.Ends,
        task.Task.Rules.Gives,
        [.. task.Task.Loosens.Select(i => job.Fasteners[i].Name)],
        [.. task.Task.TakesOff.Select(i => job.Fasteners[i].Name)],
        task.Task.Photograph,
        task.Task.Note,
        task.Moved is { } rule ? OrderWords.WhyMoved(rule, rules) : null);

    private static RefitStepAnswer Step(RefitStep step) => new(
        step.Number,
        step.Title,
        step.Reverses?.Name,
        [.. step.Fits.Select(fit => new RefitFitAnswer(fit.Tightening.Fastener.Name, fit.Stage == RefitStage.Snug ? "snug" : "full"))],
        step.Then);

    private static FastenerLooseningAnswer Loosening(PlannedLoosening planned, UnitStyle style)
    {
        LooseningAssessment a = planned.Assessment;
        bool chosen = planned.Choice is not null;
        return new FastenerLooseningAnswer(
            planned.Fastener.Name,
            planned.Fastener.Count,
            planned.Task?.Number,
            new TorqueSpread(a.Nut.LowNmm / 1000, a.Nut.LikelyNmm / 1000, a.Nut.HighNmm / 1000),
            planned.Choice is { } choice ? Pieces(choice.SetUp.Set) : null,
            planned.Choice?.Person,
            chosen ? a.Setup.Hands.Stance.Key : null,
            a.Lever?.ReachMm,
            a.Setup.Tube is null ? null : a.Setup.Overlap.Millimeters,
            chosen ? LooseningAnswers.Outcomes(a) : null,
            LooseningAnswers.Hold(a),
            planned.Hold?.Lost ?? [],
            VerdictWords.Word(planned.Verdict),
            chosen ? Reasons.Of(a, style) : ["Nothing in the chest fits it."],
            MoveWords.Answers(a.Moves, style),
            chosen ? WatchWords.Of(a, style) : [],
            planned.History.Held?.NewtonMeters,
            [.. planned.History.Came.Select(torque => torque.NewtonMeters)],
            planned.Fastener.Note,
            [.. a.Setup.Assumed.Select(assumption => AssumedWords.Brief([assumption], style))]);
    }

    /// <summary>The pieces by their names in the chest, from the nut outwards.</summary>
    internal static IReadOnlyList<string> Pieces(ToolSet set) =>
    [
        set.Tool.Name, .. set.Adapters.Select(adapter => adapter.Name).Reverse(),
        .. set.Bar is { } bar ? (string[])[bar.Name] : [], .. set.Tube is { } tube ? (string[])[tube.Name] : [],
    ];

    private static FastenerRefitAnswer Refit(PlannedTightening planned) => new(
        planned.Fastener.Name,
        planned.Fastener.Count,
        planned.Torque.NewtonMeters,
        planned.Fastener.Then?.Degrees,
        planned.Basis == TorqueBasis.Book ? "book" : "thread and grade",
        planned.Fastener.Lubricant,
        [.. planned.Stages.Select(stage => stage.NewtonMeters)],
        planned.Sequence,
        planned.Check is { } check ? CheckingAnswer.Word(check.Quote!.Value) : null,
        planned.Check is { } quoted ? RangeAnswer.Of(quoted.End.YieldShare) : null,
        planned.Wrench?.Wrench.Name,
        planned.Wrench?.Setting.NewtonMeters,
        planned.Wrench?.Scatter.NewtonMeters,
        planned.Hang?.Mass.Kilograms,
        planned.Hang?.Distance.Millimeters,
        planned.Fastener.NewPart,
        planned.Fastener.RetorqueAfter,
        planned.Fastener.RefitNote);
}
