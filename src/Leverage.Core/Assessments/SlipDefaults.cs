using Leverage.BreakLoose;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Fills the blanks of a question about a tube.</summary>
public static class SlipDefaults
{
    /// <summary>The complete question.</summary>
    /// <param name="request">What the person said of bar, tube, hands and surface, and of the nut where it is known.</param>
    /// <returns>The set-up, with everything it took for granted.</returns>
    /// <exception cref="InputException">Bar or tube is missing, or they do not fit.</exception>
    public static SlipSetup Complete(LooseningRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        LooseningFields.Slip.Check(request);
        var assumed = new List<Assumption>();
        Hands hands = LooseningDefaults.Stand(request, assumed);
        var lever = LeverDefaults.Complete(request, hands.Stance, assumed);
        if (lever is not { Bar: { } bar, Tube: { } tube })
        {
            throw new InputException("tube", "this question needs a bar and a tube.", LooseningFields.Bar.Cure, LooseningFields.Tube.Cure);
        }

        Condition condition = Condition.Named(request.Condition ?? Condition.Usual);
        bool known = request.BookTorque is not null || request.Thread is not null;
        if (request.Condition is null && !known)
        {
            assumed.Add(new Assumption(AssumptionKind.TorqueLeft, null, condition.Status) { Name = condition.Key, Share = condition.RunningShare });
        }

        return new SlipSetup
        {
            Bar = bar,
            Tube = tube,
            Overlap = lever.Overlap,
            Hands = hands,
            Surface = GripDefaults.Surface(request, true, assumed),
            Condition = condition,
            Fastener = known ? FastenerDefaults.Complete(request, null, assumed).Fastener : null,
            StartPastSquare = request.StartPastSquare ?? Angle.Zero,
            PastSquare = GripDefaults.Swing(request, true, assumed),
            StandOff = request.StandOff,
            Engagement = request.Engagement,
            Assumed = assumed,
        };
    }
}
