using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Workshop.Picking;

/// <summary>Finds which set-up of a chest is best for a nut.</summary>
public static class Picker
{
    /// <summary>The best set-ups, and what to do if the first leaves it tight.</summary>
    /// <param name="request">The nut and the chest.</param>
    /// <returns>The assessment.</returns>
    /// <exception cref="InputException">The chest is empty, or the nut says too little.</exception>
    public static PickAssessment Pick(PickRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        RefuseEmpty(request);
        LooseningAssessment nut = Nut(request);
        SetUpSearch search = new SetUpSearch(request, nut.Nut).Judge(ToolSets.Of(request, AcrossFlats(nut.Setup)));
        PickTally tally = search.Tally;
        foreach (LooseningRequest held in search.IsHeld ? [] : Held(search, Holds(request)))
        {
            PickRequest cured = request with { Nut = LadderCures.Carried(held, request.Nut) };
            search = new SetUpSearch(cured, nut.Nut).Judge(ToolSets.Of(cured, AcrossFlats(nut.Setup)));
            if (search.IsHeld)
            {
                break;
            }
        }

        PickedSetUp[] best = [.. search.Ranked(PickAssessment.Most).Select(use => search.Describe(use, request.Nut))];
        var pick = new PickAssessment { Request = request, Nut = nut, Tally = tally, SetUps = best, Options = [.. search.Options()] };
        return request.Advise ? pick.Advised() : pick;
    }

    /// <summary>What clears the stop of a set-up that turns the wheel: down on its wheels, held with more and more.</summary>
    private static IEnumerable<LooseningRequest> Held(SetUpSearch search, HoldOption[] holds)
    {
        PickedSetUp turns = search.Describe(search.Turning);
        return LadderCures.Of(turns.Request, turns.Assessment, holds).Select(cure => cure.Request);
    }

    /// <summary>What to do: out of the chest, and where that likely leaves it tight out of a shop too.</summary>
    internal static IReadOnlyList<LadderStep> Moves(PickAssessment pick)
    {
        PickedSetUp? first = pick.SetUps.Count > 0 ? pick.SetUps[0] : null;
        LooseningRequest start = first?.Request ?? pick.Request.InStance(pick.Request.Ways()[0].Key);
        LooseningAssessment assessment = first?.Assessment ?? pick.Nut;
        IReadOnlyList<ToolOption> chest = pick.Options;
        HoldOption[] holds = Holds(pick.Request);
        IReadOnlyList<LadderStep> own = Ladder.Of(start, assessment, chest, holds, first?.Set.Name);
        return own.Max(step => step.ComesLooseBy) >= VerdictOf.LikelyShare
            ? own
            : Ladder.Of(start, assessment, [.. chest, .. ShopTools.For(start).Select(option => option with { ToGet = true })], holds, first?.Set.Name);
    }

    /// <summary>What the chest has to hold the wheel with.</summary>
    private static HoldOption[] Holds(PickRequest request) =>
        [.. request.Chest.Holds.Select(hold => new HoldOption(hold.Kind, hold.Height, hold.Diameter, hold.Name))];

    /// <summary>The nut alone: what it takes, with nothing to turn it.</summary>
    private static LooseningAssessment Nut(PickRequest request)
    {
        LooseningRequest nut = request.InStance(request.Ways()[0].Key);
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
