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
    internal static StanceHands[] Of(PickRequest request, NutFigures nut) => [.. request.Ways().Select(stance => Of(request, stance, nut))];

    private static StanceHands Of(PickRequest request, Stance stance, NutFigures nut)
    {
        LooseningSetup setup = LooseningDefaults.Complete(request.InStance(stance.Key));
        var figures = HandFigures.Of(setup.Hands);
        HoldCapacity? held = stance.Push == Push.Up ? null : Circumstances.HoldOf(setup, stance.Push, nut, figures, null);
        return new StanceHands(stance, figures, held);
    }
}
