using Leverage.Friction;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tubes;

namespace Leverage.Assessments;

/// <summary>What is judged besides the links.</summary>
public sealed record Circumstances
{
    /// <summary>Nothing besides the links is judged.</summary>
    public static Circumstances None { get; } = new();

    /// <summary>What holds the wheel; null where it is not judged.</summary>
    public Strength? Hold { get; init; }

    /// <summary>The tube that may slide; null for none.</summary>
    public Sliding? Sliding { get; init; }

    /// <summary>What the strong pull means to a vehicle on stands.</summary>
    public Safe Stands { get; init; }

    /// <summary>Whether the tube stands what the stance pushes.</summary>
    public Safe Tube { get; init; }

    /// <summary>Whether how well the tool grips has no figure.</summary>
    public bool GripUnknown { get; init; }

    /// <summary>Speed of the hands when the nut turns, m/s; 0 where not known.</summary>
    public double HandsMs { get; init; }

    /// <summary>The circumstances of a set-up's tools at any overlap.</summary>
    /// <param name="setup">The set-up; its overlap and hands are not looked at.</param>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="lever">The lever's lengths; null with no bar.</param>
    /// <param name="hold">What holds the wheel; null where not judged.</param>
    /// <returns>The circumstances.</returns>
    public static Circumstances Of(LooseningSetup setup, NutFigures nut, HandFigures hand, LeverGeometry? lever, HoldCapacity? hold)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(nut);
        double strong = Judgement.StrongPull(nut, hand, lever?.ReachMm);
        var around = new Circumstances
        {
            Hold = hold is { } holds && setup.Hold is { OnStands: false } ? holds.Strength : null,
            Stands = StandsOf(setup, nut, hand, lever)?.Risk switch
            {
                StandRisk.Stop => Safe.No,
                StandRisk.Care => Safe.Care,
                _ => Safe.Yes,
            },
            GripUnknown = setup.RecessWorn,
            HandsMs = ReleaseAssessor.Assess(setup, nut, strong, lever)?.Turns.MetersPerSecond ?? 0,
        };
        return setup is { Tube: { } tube, Bar: { } bar } && lever is { } geometry
            ? around with
            {
                Sliding = SlidingOf(setup.Surface.Friction, bar, tube, geometry, setup.StartPastSquare.Radians, setup.PastSquare.Radians, nut.ShareLeft),
                Tube = Against(TubeLimits.Of(tube), geometry, nut.HighNmm, hand),
            }
            : around;
    }

    /// <summary>What the strong pull means to a vehicle on stands; null with its wheels on the ground.</summary>
    /// <param name="setup">The set-up.</param>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="lever">The lever's lengths; null with no bar.</param>
    /// <returns>The stands, or null.</returns>
    public static Stands? StandsOf(LooseningSetup setup, NutFigures nut, HandFigures hand, LeverGeometry? lever)
    {
        ArgumentNullException.ThrowIfNull(setup);
        if (setup.Hold is not { OnStands: true } hold)
        {
            return null;
        }

        double pull = lever is { } known ? Judgement.StrongPull(nut, hand, known.ReachMm) / known.ReachMm : hand.Quantile(0.9);

        // A flange is locked by a bar or in gear up there too: nobody gets at it with the wheels down.
        bool turnsWheel = setup.Place is { TurnsWheel: true } || hold.By.Count > 0;
        return Leverage.Holding.Stands.Of(hold.VehicleMass.Kilograms, pull, turnsWheel && !hold.OnFlange);
    }

    /// <summary>What holds the wheel while these hands pull: lifting takes load off it.</summary>
    /// <param name="setup">The set-up: how it is held, and whether a wheel turns with the fastener at all.</param>
    /// <param name="push">Way the hands push.</param>
    /// <param name="nut">What the nut takes.</param>
    /// <param name="hand">What the hands give.</param>
    /// <param name="lever">The lever's lengths; null with no bar.</param>
    /// <returns>The capacity, or null where it is not judged.</returns>
    public static HoldCapacity? HoldOf(LooseningSetup setup, Push push, NutFigures nut, HandFigures hand, LeverGeometry? lever)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(nut);
        if (setup is not { Hold: { } hold, Place: null or { TurnsWheel: true } })
        {
            return null;
        }

        double force = lever is { } known ? Math.Min(nut.LikelyNmm / known.ReachMm, hand.Quantile(0.9)) : hand.Quantile(0.5);
        return HoldCapacity.Of(hold, push == Push.Up ? force : 0);
    }

    /// <summary>The tube as something that may slide: at the start of the pull, and at the end of the swing with what torque is left there.</summary>
    internal static Sliding SlidingOf(
        FrictionRange friction, Bar bar, Tube tube, LeverGeometry lever, double start, double end, Func<double, double, double> shareLeft)
    {
        double tilt = SlipAngles.Tilt(bar, tube, lever.OverlapMm);
        double lean = tilt + bar.Taper.Radians;
        double Needed(double pastSquare, double share) =>
            Math.Tan(Math.Min(pastSquare + tilt, Steepest)) / share is var tangent && double.IsFinite(tangent)
                ? SlipLimit.NeededFriction(tangent, lever.HandToTipMm, lever.OverlapMm, lean)
                : double.PositiveInfinity;
        return new Sliding(
            SplitLogNormal.Through(friction.Low, friction.Likely, friction.High),
            Needed(start, 1),
            end > start ? torque => Needed(end, shareLeft(end - start, torque)) : null);
    }

    /// <summary>Steepest angle that has a tangent worth speaking of, rad.</summary>
    private const double Steepest = 1.5;

    /// <summary>Whether a tube stands what the stance pushes, or what the nut takes where that is less.</summary>
    internal static Safe Against(TubeLimits limits, LeverGeometry lever, double nutNmm, HandFigures hand)
    {
        double stands = limits.BreakingTorque(lever);
        return stands < Math.Min(nutNmm, hand.Quantile(0.5) * lever.ReachMm) ? Safe.No
            : stands < Math.Min(nutNmm, hand.Quantile(0.9) * lever.ReachMm) ? Safe.Care
            : Safe.Yes;
    }
}
