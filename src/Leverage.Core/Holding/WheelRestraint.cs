using Leverage.Preload;

namespace Leverage.Holding;

/// <summary>A parking brake that just meets type approval.</summary>
public static class ParkingBrake
{
    /// <summary>Sine of the slope of a 20 % gradient, sin(atan 0.20) = 0.196.</summary>
    private const double GradientSine = 0.196;

    /// <summary>Torque it holds at one wheel, T = 0.196·m·g·r/n.</summary>
    /// <param name="massKg">m, laden mass of the vehicle, kg, above 0.</param>
    /// <param name="wheelRadiusMm">r, loaded wheel radius, mm, above 0.</param>
    /// <param name="brakedWheels">n, wheels it acts on, 1 or more; 2 for an axle.</param>
    /// <returns>T, N·mm a wheel.</returns>
    /// <remarks>
    /// Valid for: a brake in order, at the regulation's hand force; an old cable holds about 0.7 of it (judgement).
    /// Source: UN Regulation No. 13-H, Annex 3: 20 % gradient, laden.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double WheelTorque(double massKg, double wheelRadiusMm, double brakedWheels) =>
        GradientSine * Require.Positive(massKg, nameof(massKg)) * HangingWeight.StandardGravity
            * Require.Positive(wheelRadiusMm, nameof(wheelRadiusMm))
            / Require.Between(brakedWheels, 1, 8, nameof(brakedWheels));
}

/// <summary>A helper on the foot brake with the engine off: no servo helps.</summary>
public static class FootBrake
{
    /// <summary>Share of the braking that the front axle takes (common practice).</summary>
    public const double FrontShare = 0.6;

    /// <summary>Torque it holds at one wheel, T = 2.44 m/s²·m·r·s/2.</summary>
    /// <param name="massKg">m, laden mass of the vehicle, kg, above 0.</param>
    /// <param name="wheelRadiusMm">r, loaded wheel radius, mm, above 0.</param>
    /// <param name="axleShare">s, share of the braking that this wheel's axle takes, 0 to 1: 0.6 front, 0.4 rear.</param>
    /// <returns>T, N·mm a wheel.</returns>
    /// <remarks>
    /// Valid for: hydraulic brakes in order, a foot pushing with 500 N; with the servo charged the tyre slips first.
    /// Source: UN Regulation No. 13-H, secondary performance, 2.44 m/s².
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double WheelTorque(double massKg, double wheelRadiusMm, double axleShare) =>
        2.44 * Require.Positive(massKg, nameof(massKg)) * Require.Positive(wheelRadiusMm, nameof(wheelRadiusMm))
            * Require.Between(axleShare, 0, 1, nameof(axleShare)) / 2;
}

/// <summary>A stopped engine in gear.</summary>
public static class StoppedEngine
{
    /// <summary>Torque it resists at the wheels, T = 60 N·m·i.</summary>
    /// <param name="wholeRatio">i, turns of the engine for one of the wheels in the gear engaged, above 0; 13 when unknown.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: a car's engine of usual size, warm, not running.
    /// Source: judgement; what compression and friction resist at the crank.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not finite and above 0.</exception>
    public static double Torque(double wholeRatio) => 60_000 * Require.Positive(wholeRatio, nameof(wholeRatio));
}

/// <summary>Grip of a tyre on the ground: the ceiling of every route through the ground.</summary>
public static class TyreGrip
{
    /// <summary>Torque at which the wheel slips, T = μ·W·r.</summary>
    /// <param name="friction">μ, tyre on ground, 0 to 2.</param>
    /// <param name="wheelLoadN">W, load on the wheel, N, 0 or more.</param>
    /// <param name="wheelRadiusMm">r, loaded wheel radius, mm, above 0.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: sliding friction; the first grip is a little higher.
    /// Source: statics; friction values of Noon, Engineering Analysis of Vehicular Accidents.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double friction, double wheelLoadN, double wheelRadiusMm) =>
        Require.Between(friction, 0, 2, nameof(friction)) * Require.NotNegative(wheelLoadN, nameof(wheelLoadN))
            * Require.Positive(wheelRadiusMm, nameof(wheelRadiusMm));
}

/// <summary>In gear with the gearbox locked: an open differential sends half the torque to the other wheel.</summary>
public static class OpenDifferential
{
    /// <summary>Torque it holds at one wheel, T = 2·μ·W·r with both half shafts in and both wheels down.</summary>
    /// <param name="friction">μ, tyre on ground, 0 to 2.</param>
    /// <param name="wheelLoadN">W, load on each wheel of the axle, N, 0 or more.</param>
    /// <param name="wheelRadiusMm">r, loaded wheel radius, mm, above 0.</param>
    /// <returns>T, N·mm; nothing at all once a half shaft is out.</returns>
    /// <remarks>
    /// Valid for: even load on the axle; each contact takes T/(2r), opposite ways.
    /// Source: torque balance of an open differential.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double friction, double wheelLoadN, double wheelRadiusMm) =>
        2 * TyreGrip.Torque(friction, wheelLoadN, wheelRadiusMm);
}

/// <summary>A chock against the wheel that turns.</summary>
public static class WheelChock
{
    /// <summary>Torque to climb it, T = W·√(2·r·h − h²).</summary>
    /// <param name="wheelLoadN">W, load on the wheel, N, 0 or more.</param>
    /// <param name="wheelRadiusMm">r, loaded wheel radius, mm, above 0.</param>
    /// <param name="heightMm">h, height of the chock, mm, 0 to r.</param>
    /// <returns>T, N·mm, for a rigid wheel; a soft tyre is taken at 0.8 of it (judgement).</returns>
    /// <remarks>
    /// Valid for: a chock that does not slide, the wheel pivoting over its edge.
    /// Source: statics of a wheel at a step.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double wheelLoadN, double wheelRadiusMm, double heightMm)
    {
        Require.Positive(wheelRadiusMm, nameof(wheelRadiusMm));
        Require.Between(heightMm, 0, wheelRadiusMm, nameof(heightMm));
        return Require.NotNegative(wheelLoadN, nameof(wheelLoadN))
            * Math.Sqrt(2 * wheelRadiusMm * heightMm - heightMm * heightMm);
    }

    /// <summary>Torque at which the wheel slips against chock and ground, T = μ·W·r·(1 + μ·tan(α/2))/(1 + μ²), cos α = 1 − h/r.</summary>
    /// <param name="friction">μ, tyre on ground and on chock, 0 to 2.</param>
    /// <param name="wheelLoadN">W, load on the wheel, N, 0 or more.</param>
    /// <param name="wheelRadiusMm">r, loaded wheel radius, mm, above 0.</param>
    /// <param name="heightMm">h, height of the chock, mm, 0 to r.</param>
    /// <returns>T, N·mm.</returns>
    /// <remarks>
    /// Valid for: a chock that does not slide itself, touching the tyre at its top edge.
    /// Source: equilibrium of a wheel that slips at both contacts.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double SlippingTorque(double friction, double wheelLoadN, double wheelRadiusMm, double heightMm)
    {
        double grip = TyreGrip.Torque(friction, wheelLoadN, wheelRadiusMm);
        double angle = Math.Acos(1 - Require.Between(heightMm, 0, wheelRadiusMm, nameof(heightMm)) / wheelRadiusMm);
        return grip * (1 + friction * Math.Tan(angle / 2)) / (1 + friction * friction);
    }
}

/// <summary>A support stand pushed sideways.</summary>
public static class SupportStand
{
    /// <summary>Sideways force at which it tips, F = W·b/H.</summary>
    /// <param name="loadN">W, load on the stand, N, 0 or more.</param>
    /// <param name="halfBaseMm">b, half the base in the direction of the push, mm, above 0.</param>
    /// <param name="heightMm">H, height of the saddle, mm, above 0.</param>
    /// <returns>F, N: one strong pull can reach it.</returns>
    /// <remarks>
    /// Valid for: a stand on firm ground.
    /// Source: statics.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double TippingForce(double loadN, double halfBaseMm, double heightMm) =>
        Require.NotNegative(loadN, nameof(loadN)) * Require.Positive(halfBaseMm, nameof(halfBaseMm))
            / Require.Positive(heightMm, nameof(heightMm));
}

/// <summary>Load that a torque moves between the axles of a braked vehicle.</summary>
public static class LoadShift
{
    /// <summary>Force moved from one axle to the other, ΔW = T/wheelbase.</summary>
    /// <param name="torqueNmm">T, torque at the nut, N·mm, 0 or more.</param>
    /// <param name="wheelbaseMm">Distance between the axles, mm, above 0.</param>
    /// <returns>ΔW, N.</returns>
    /// <remarks>
    /// Valid for: the wheel held to the body by its brake, the push on the bar vertical.
    /// Source: statics.
    /// Checked by: shared/checks/holding.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Force(double torqueNmm, double wheelbaseMm) =>
        Require.NotNegative(torqueNmm, nameof(torqueNmm)) / Require.Positive(wheelbaseMm, nameof(wheelbaseMm));
}
