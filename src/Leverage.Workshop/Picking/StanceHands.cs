using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Levers;

namespace Leverage.Workshop.Picking;

/// <summary>The person in one stance, worked out once for all set-ups.</summary>
/// <param name="Stance">The stance.</param>
/// <param name="Figures">What the hands give.</param>
/// <param name="Hold">What holds the wheel meanwhile; null where lifting makes it a matter of the lever, or it is not judged.</param>
internal sealed record StanceHands(Stance Stance, HandFigures Figures, HoldCapacity? Hold)
{
    /// <summary>The stances of a request.</summary>
    internal static StanceHands[] Of(PickRequest request, NutFigures nut, Hold? hold) =>
        [.. request.Ways().Select(stance => Of(request, stance, nut, hold))];

    private static StanceHands Of(PickRequest request, Stance stance, NutFigures nut, Hold? hold)
    {
        Hands hands = LooseningDefaults.Complete(request.Standing(stance.Key)).Hands;
        var figures = HandFigures.Of(hands);
        HoldCapacity? held = stance.Push == Push.Up ? null : Circumstances.HoldOf(hold, stance.Push, nut, figures, null);
        return new StanceHands(stance, figures, held);
    }
}
