using Leverage.Friction;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Changes of the sleeve and of the way it is used.</summary>
internal static class SleeveChanges
{
    private static readonly Length OneWallUp = Length.FromMillimeters(0.8);

    internal static IEnumerable<(AdviceKind, IQuantity?, string?, LooseningSetup)> Of(LooseningAssessment now)
    {
        if (now is not { Sleeve: { } sleeve, Setup: { Sleeve: { } tube } setup })
        {
            yield break;
        }

        if (tube.Wall is { } wall)
        {
            Length thicker = wall + OneWallUp;
            yield return (AdviceKind.ThickerSleeve, thicker, null, setup with { Sleeve = tube with { Wall = thicker } });
        }

        if ((sleeve.BestOverlap - setup.Overlap).Abs() > Length.FromMillimeters(10))
        {
            yield return (AdviceKind.Overlap, sleeve.BestOverlap, null, setup with { Overlap = sleeve.BestOverlap });
        }

        if (setup.GripWords is "oily" or "greasy")
        {
            yield return (AdviceKind.Degrease, null, null, setup with { GripFriction = FrictionRange.OnHandle("dry"), GripWords = "dry" });
        }

        double last = double.RadiansToDegrees(sleeve.Checked.ReleaseRad);
        if (last < setup.BelowLevel.Degrees && last > 2)
        {
            var lowest = Angle.FromDegrees(Math.Floor(last) - 1);
            yield return (AdviceKind.StartAboveLevel, lowest, null, setup with { BelowLevel = lowest });
        }
    }
}
