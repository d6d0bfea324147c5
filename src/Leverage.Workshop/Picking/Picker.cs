using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Reading;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Finds which set-up of a chest is best for a nut.</summary>
public static class Picker
{
    /// <summary>The best set-ups, and what would make a better one where none is a go.</summary>
    /// <param name="request">The nut and the chest.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="InputException">The chest is empty, or the nut says too little.</exception>
    public static PickAssessment Pick(PickRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        RefuseEmpty(request);
        LooseningAssessment nut = Nut(request);
        NutFigures figures = nut.Nut;
        StanceHands[] stances = StanceHands.Of(request, figures, nut.Setup.Hold);
        Length acrossFlats = AcrossFlats(nut.Setup);
        Contest contest = new Contest(request, figures, stances).Judge(ToolSets.Of(request, acrossFlats));
        List<Entrant> ranked = contest.Ranked(PickAssessment.MostPlaces);
        var places = new List<Place>(ranked.Count);
        for (int i = 0; i < ranked.Count; i++)
        {
            places.Add(contest.Seat(ranked[i], i > 0 ? ranked[i - 1] : null));
        }

        bool better = request.Advise && !(ranked.Count > 0 && ranked[0].Standing.Verdict == Verdict.Go);
        return new PickAssessment
        {
            Request = request,
            Nut = nut,
            Tally = contest.Tally,
            Places = places,
            Changes = better ? new Changer(request, contest).Search() : [],
            ToGet = better ? new Buyer(request, figures, contest, acrossFlats).Search() : [],
        };
    }

    /// <summary>The nut alone: what it takes, with nothing to turn it.</summary>
    private static LooseningAssessment Nut(PickRequest request)
    {
        LooseningRequest nut = request.Standing(request.Ways()[0].Key);
        return LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(nut));
    }

    private static Length AcrossFlats(LooseningSetup nut) => nut.Fastener.AcrossFlats
        ?? throw new InputException("hex", "nothing says which of the tools fits.", LooseningFields.Hex.Cure);

    private static void RefuseEmpty(PickRequest request)
    {
        if (request.Chest is { Bars.Count: 0, NutTools.Count: 0 })
        {
            throw new InputException(
                "chest",
                $"{request.Chest.Path} holds no bar, socket, key or spanner: nothing to pick from.");
        }
    }
}
