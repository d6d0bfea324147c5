using Leverage.Friction;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>Changes of the tube and of the way it is used.</summary>
internal static class TubeChanges
{
    private static readonly Length OneWallUp = Length.FromMillimeters(0.8);

    internal static IEnumerable<Change> Of(LooseningAssessment now)
    {
        if (now is not { Tube: { } fit, Setup: { Tube: { } tube } setup })
        {
            yield break;
        }

        if (tube.Wall is { } wall)
        {
            Length thicker = wall + OneWallUp;
            yield return new Change(AdviceKind.ThickerTube, thicker, null, setup with { Tube = tube with { Wall = thicker } });
        }

        if ((fit.BestOverlap - setup.Overlap).Abs() > Length.FromMillimeters(10))
        {
            yield return new Change(AdviceKind.Overlap, fit.BestOverlap, null, setup with { Overlap = fit.BestOverlap });
        }

        if (setup.GripWords is "oily" or "greasy")
        {
            yield return new Change(AdviceKind.Degrease, null, null, setup with { GripFriction = FrictionRange.OnHandle("dry"), GripWords = "dry" });
        }

        double last = double.RadiansToDegrees(fit.Checked.ReleaseRad);
        if (last < setup.BelowLevel.Degrees && last > 2)
        {
            var lowest = Angle.FromDegrees(Math.Floor(last) - 1);
            yield return new Change(AdviceKind.StartAboveLevel, lowest, null, setup with { BelowLevel = lowest });
        }
    }
}
