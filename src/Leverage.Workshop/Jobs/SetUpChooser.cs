using Leverage.Assessments;
using Leverage.Requests;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Picking;

namespace Leverage.Workshop.Jobs;

/// <summary>The set-up chosen for a fastener.</summary>
/// <param name="SetUp">The best use of the best set of tools.</param>
/// <param name="Person">Who pulls; null where the chest names nobody.</param>
public sealed record SetUpChoice(PickedSetUp SetUp, string? Person);

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
    private readonly Dictionary<FastenerLikeness, (SetUpChoice? Choice, LooseningAssessment Assessment)> _known = [];

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
        var likeness = FastenerLikeness.Of(fastener, hold, history);
        if (!_known.TryGetValue(likeness, out var known))
        {
            _known[likeness] = known = Chosen(fastener, Nut(fastener, hold, history));
        }

        return known;
    }

    private (SetUpChoice?, LooseningAssessment) Chosen(JobFastener fastener, LooseningRequest nut)
    {
        LooseningAssessment alone = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(nut));
        if (alone.Setup.Fastener.AcrossFlats is null || _job.Chest is { Bars.Count: 0, NutTools.Count: 0 }
            || Best(fastener, nut) is not var (pick, person))
        {
            return (null, alone);
        }

        PickedSetUp setUp = pick.SetUps[0];
        return (new SetUpChoice(setUp, person?.Name), setUp.Assessment.IsSure && nut.Joints is [] ? setUp.Assessment : setUp.Assessment with { Moves = pick.Advised().Moves });
    }

    /// <summary>
    /// The best set-up over all people: who is least often too weak, within five points who is named first, and never somebody
    /// because they are too weak to break it; then the same person with tubes, if need be.
    /// </summary>
    private (PickAssessment Pick, ChestPerson? Person)? Best(JobFastener fastener, LooseningRequest nut)
    {
        (PickAssessment Pick, ChestPerson? Person)[] all =
        [
            .. _people.Select(person => (Pick: Picker.Pick(Request(fastener, nut, person)), Person: person)).Where(one => one.Pick.SetUps.Count > 0),
        ];
        if (all.Length == 0)
        {
            return null;
        }

        double weakest = all.Min(one => First(one.Pick).Judgement.StaysTight);
        var (bare, puller) = all.First(one => First(one.Pick).Judgement.StaysTight <= weakest + LadderRank.LeastGain);
        return (First(bare).Judgement.StaysTight > StaysTightShare && WithTube(bare) is { SetUps.Count: > 0 } tubed ? tubed : bare, puller);
    }

    private static LooseningAssessment First(PickAssessment pick) => pick.SetUps[0].Assessment;

    /// <summary>The best set-ups with tubes too, in the stances that rank highest without.</summary>
    private PickAssessment WithTube(PickAssessment bare) => Picker.Pick(bare.Request with
    {
        Chest = _job.Chest,
        Stances = [.. bare.SetUps.Select(setUp => setUp.Stance.Key).Distinct(StringComparer.Ordinal)],
    });

    private PickRequest Request(JobFastener fastener, LooseningRequest nut, ChestPerson? person) => new()
    {
        Nut = nut,
        Chest = _bare,
        Stances = fastener.Stances,
        Person = person,
        Recess = fastener.Recess,
        Advise = false,
    };

    private static LooseningRequest Nut(JobFastener fastener, WheelHold? hold, NutHistory history) => (hold?.Request ?? new LooseningRequest()) with
    {
        BookTorque = fastener.BookTorque,
        Then = fastener.Then,
        Grip = fastener.Grip,
        Clamped = fastener.Clamped,
        Thread = fastener.Thread,
        Grade = fastener.Grade,
        Condition = fastener.Condition,
        On = fastener.On,
        Prevailing = fastener.Prevailing,
        LeftHand = fastener.LeftHand,
        Soaked = fastener.Soaked,
        AcrossFlats = fastener.AcrossFlats,
        Tool = fastener.Tool,
        Worn = fastener.Rounded ? "rounded" : fastener.Worn,
        Engaged = fastener.Engaged,
        NutClass = fastener.NutClass,
        Room = fastener.Room,
        Joints = fastener.Castle ? [SpecialJoint.Castle] : [],
        Held = history.Held,
        Came = history.Came,
    };
}
