using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;

namespace Leverage.Workshop.Jobs;

/// <summary>The set-up chosen for a fastener.</summary>
/// <param name="Place">The best use of the best set of tools.</param>
/// <param name="Person">Who pulls; null where the chest names nobody.</param>
public sealed record SetUpChoice(Place Place, string? Person);

/// <summary>
/// Chooses the best set-up of the chest, and who pulls, for each fastener. A tube adds nothing but reach, so tubes
/// are tried only where the nut may stay tight without one. Fasteners that are alike cost once.
/// </summary>
internal sealed class SetUpChooser
{
    /// <summary>Chance to stay tight above which a tube is tried (judgement).</summary>
    private const double StaysTightShare = 0.1;

    private readonly Job _job;
    private readonly ToolChest _bare;
    private readonly IReadOnlyList<ChestPerson?> _people;
    private readonly Dictionary<Alike, (SetUpChoice? Choice, LooseningAssessment Assessment)> _known = [];

    internal SetUpChooser(Job job)
    {
        _job = job;
        _bare = job.Chest with { Tubes = [] };
        IReadOnlyList<ChestPerson> people = job.People.Count > 0 ? job.People : job.Chest.People;
        _people = people.Count > 0 ? [.. people] : new ChestPerson?[1];
    }

    /// <summary>The choice for a fastener, and what it means; with no tool for it, what the nut takes.</summary>
    internal (SetUpChoice? Choice, LooseningAssessment Assessment) For(JobFastener fastener, WheelHold? hold, NutHistory history)
    {
        var alike = Alike.Of(fastener, hold, history);
        if (!_known.TryGetValue(alike, out var known))
        {
            _known[alike] = known = Chosen(fastener, Nut(fastener, hold));
        }

        return known;
    }

    private (SetUpChoice?, LooseningAssessment) Chosen(JobFastener fastener, LooseningRequest nut)
    {
        LooseningAssessment alone = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(nut));
        if (alone.Setup.Fastener.AcrossFlats is null || _job.Chest is { Bars.Count: 0, NutTools.Count: 0 }
            || Best(fastener, nut) is not var (place, person))
        {
            return (null, alone);
        }

        LooseningAssessment assessment = place.Standing.Verdict == Verdict.Go
            ? place.Assessment
            : LooseningAssessor.Assess(place.Assessment.Setup);
        return (new SetUpChoice(place, person?.Name), assessment);
    }

    /// <summary>The best place over all people, of equals the person named first; then the same person with tubes, if need be.</summary>
    private (Place Place, ChestPerson? Person)? Best(JobFastener fastener, LooseningRequest nut)
    {
        (PickAssessment Pick, Place Place, ChestPerson? Person)? best = null;
        foreach (ChestPerson? person in _people)
        {
            PickAssessment pick = Picker.Pick(Request(fastener, nut, person));
            if (pick.Places is [var first, ..] && !(first.Standing >= best?.Place.Standing))
            {
                best = (pick, first, person);
            }
        }

        if (best is not var (asked, bare, puller))
        {
            return null;
        }

        return bare.Assessment.Judgement.StaysTight > StaysTightShare && WithTube(asked) is { } tubed && tubed.Standing < bare.Standing
            ? (tubed, puller)
            : (bare, puller);
    }

    /// <summary>The best place with tubes too, in the stances that stand highest without.</summary>
    private Place? WithTube(PickAssessment bare) => Picker.Pick(bare.Request with
    {
        Chest = _job.Chest,
        Stances = [.. bare.Places.Select(place => place.Stance.Key).Distinct(StringComparer.Ordinal)],
    }).Places is [var first, ..] ? first : null;

    private PickRequest Request(JobFastener fastener, LooseningRequest nut, ChestPerson? person) => new()
    {
        Nut = nut,
        Chest = _bare,
        Stances = fastener.Stances,
        Person = person,
        Recess = fastener.Recess,
        Room = fastener.Room,
        Advise = false,
    };

    private static LooseningRequest Nut(JobFastener fastener, WheelHold? hold) => (hold?.Request ?? new LooseningRequest()) with
    {
        BookTorque = fastener.BookTorque,
        Thread = fastener.Thread,
        Grade = fastener.Grade,
        Condition = fastener.Condition,
        Prevailing = fastener.Prevailing,
        LeftHand = fastener.LeftHand,
        Soaked = fastener.Soaked,
        AcrossFlats = fastener.AcrossFlats,
        Tool = fastener.Tool,
    };
}
