using Leverage.Holding;
using Leverage.Levers;

namespace Leverage.Assessments;

/// <summary>What is judged besides torque; infinite where it is not judged.</summary>
/// <param name="HoldNmm">What holds the wheel, N·mm.</param>
/// <param name="HeldRad">Last safe angle of the tube while the nut holds, rad.</param>
/// <param name="ReleaseRad">Last safe angle at break-loose, rad.</param>
/// <param name="BelowLevelRad">Lowest angle of the swing, rad.</param>
/// <param name="OnStands">The vehicle is on stands.</param>
public readonly record struct Surroundings(
    double HoldNmm, double HeldRad, double ReleaseRad, double BelowLevelRad, bool OnStands)
{
    /// <summary>Nothing besides torque is judged.</summary>
    public static Surroundings None => new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, 0, false);

    /// <summary>What is judged besides torque for a set-up's tools at any overlap.</summary>
    /// <param name="setup">The set-up; its overlap and hands are not looked at.</param>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="lever">The lever's lengths; null with no bar.</param>
    /// <param name="holdNmm">What holds the wheel, N·mm; null where not judged.</param>
    /// <returns>The surroundings.</returns>
    public static Surroundings Of(LooseningSetup setup, NutFigures nut, HandFigures hand, LeverGeometry? lever, double? holdNmm)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(nut);
        Surroundings around = None with
        {
            HoldNmm = holdNmm ?? double.PositiveInfinity,
            OnStands = Stands(setup.Hold, nut, hand, lever) is { Risk: StandRisk.Stop },
            BelowLevelRad = setup.BelowLevel.Radians,
        };
        if (setup is not { Tube: { } tube, Bar: { } bar } || lever is not { } geometry)
        {
            return around;
        }

        SlipAngles slip = SlipAngles.Of(bar, tube, geometry, setup.GripFriction.Low, nut.RunningShare);
        return around with { HeldRad = slip.HeldRad, ReleaseRad = slip.ReleaseRad };
    }

    /// <summary>What the strong pull means to a vehicle on stands; null with its wheels on the ground.</summary>
    /// <param name="hold">How the wheel is held; a restraint named says that the fastener turns a wheel.</param>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="lever">The lever's lengths; null with no bar.</param>
    /// <returns>What it means.</returns>
    public static Stands? Stands(Hold? hold, NutFigures nut, HandFigures hand, LeverGeometry? lever)
    {
        ArgumentNullException.ThrowIfNull(nut);
        if (hold is not { OnStands: true })
        {
            return null;
        }

        double strong = hand.Quantile(0.9);
        double pull = lever is { } known ? Math.Min(nut.HighNmm / known.ReachMm, strong) : strong;
        double mass = hold.VehicleMass.Kilograms;
        return Leverage.Holding.Stands.Of(mass > 0 ? mass : null, pull, hold.By.Count > 0);
    }

    /// <summary>What holds the wheel while these hands pull: lifting takes load off it.</summary>
    /// <param name="hold">How it is held; null where that is not judged.</param>
    /// <param name="push">Way the hands push.</param>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="lever">The lever's lengths; null with no bar.</param>
    /// <returns>The capacity, or null where it is not judged.</returns>
    public static HoldCapacity? Hold(Hold? hold, Push push, NutFigures nut, HandFigures hand, LeverGeometry? lever)
    {
        ArgumentNullException.ThrowIfNull(nut);
        if (hold is null)
        {
            return null;
        }

        double force = lever is { } known ? Math.Min(nut.LikelyNmm / known.ReachMm, hand.Quantile(0.9)) : hand.Quantile(0.5);
        return HoldCapacity.Of(hold, push == Push.Up ? force : 0);
    }
}
