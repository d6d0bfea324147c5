using Leverage.Assessments;
using Leverage.Wording;

namespace Leverage.Workshop.Picking;

/// <summary>Turns a picking into its answer record.</summary>
public static class PickAnswers
{
    /// <summary>The answer of a picking.</summary>
    /// <param name="pick">The picking.</param>
    /// <param name="style">Units of the sentences; the numbers stay metric.</param>
    /// <returns>The answer.</returns>
    public static PickAnswer Of(PickAssessment pick, UnitStyle style)
    {
        ArgumentNullException.ThrowIfNull(pick);
        NutFigures nut = pick.Nut.Nut;
        PickTally tally = pick.Tally;
        return new PickAnswer(
            pick.Nut.Setup.Fastener.BookTorque.NewtonMeters,
            new TorqueSpread(nut.LowNmm / 1000, nut.LikelyNmm / 1000, nut.HighNmm / 1000),
            pick.Request.Person?.Name,
            new TriedAnswer(tally.Sets, tally.Setups, tally.Go, tally.Care, tally.Short, tally.NotJudged, tally.Stop),
            VerdictWords.Word(pick.Verdict),
            [.. pick.SetUps.Select(setUp => SetUp(setUp, style))],
            MoveWords.Answers(pick.Moves, style),
            AssumedWords.Of(PickWords.Setup(pick).Assumed, style));
    }

    private static SetUpAnswer SetUp(PickedSetUp setUp, UnitStyle style)
    {
        Judgement judged = setUp.Assessment.Judgement;
        return new SetUpAnswer(
            setUp.Set.Tool.Name,
            [.. setUp.Set.Adapters.Select(adapter => adapter.Name)],
            setUp.Set.Bar?.Name,
            setUp.Set.Tube?.Name,
            setUp.Set.Tube is null ? null : setUp.Assessment.Setup.Overlap.Millimeters,
            setUp.Stance.Key,
            setUp.Assessment.Lever!.Value.ReachMm,
            VerdictWords.Word(judged.Verdict),
            judged.ComesLoose,
            judged.StaysTight,
            judged.Breaks,
            double.IsFinite(judged.Margin) ? judged.Margin : null,
            setUp.Assessment.Weakest is { } weakest ? PartWords.Name(weakest.Limit, style) : null,
            setUp.Effort);
    }
}
