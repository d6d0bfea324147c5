using Leverage.Wording;
using Leverage.Assessments;

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
            [.. pick.Places.Select((place, i) => Place(pick, i, style))],
            [.. pick.Changes.Select(change => PickWords.Change(change, style))],
            [.. pick.ToGet.Select(get => new ToGetAnswer(
                [.. get.Pieces.Select(piece => PickWords.Piece(piece, style))], get.Mass.Kilograms, Place(get.Then, 1, null, style)))],
            AssumedWords.Of(PickWords.Setup(pick).Assumed, style));
    }

    private static PlaceAnswer Place(PickAssessment pick, int i, UnitStyle style) =>
        Place(pick.Places[i], i + 1, i == 0 ? null : PickWords.Loss(pick.Places[i], pick.Places[i - 1], style), style);

    private static PlaceAnswer Place(Place place, int number, string? reason, UnitStyle style)
    {
        Judgement judged = place.Assessment.Judgement;
        return new PlaceAnswer(
            number,
            place.Set.Tool.Name,
            [.. place.Set.Adapters.Select(adapter => adapter.Name)],
            place.Set.Bar?.Name,
            place.Set.Tube?.Name,
            place.Set.Tube is null ? null : place.Assessment.Setup.Overlap.Millimeters,
            place.Stance.Key,
            place.Assessment.Lever!.Value.ReachMm,
            VerdictWords.Word(judged.Verdict),
            judged.ComesLoose,
            judged.StaysTight,
            judged.Breaks,
            double.IsFinite(judged.Margin) ? judged.Margin : null,
            place.Assessment.Weakest is { } weakest ? PartWords.Name(weakest.Limit, style) : null,
            place.Effort,
            place.LosesBy is { } lead ? PickWords.Word(lead) : null,
            reason);
    }
}
