namespace Leverage.Threads;

/// <summary>Friction on a sloping thread flank.</summary>
public static class ThreadFriction
{
    /// <summary>Half the angle between the flanks of ISO and Unified threads, 30°, rad.</summary>
    public const double HalfAngle60Rad = Math.PI / 6;

    /// <summary>Half the angle between the flanks of an Acme thread, 14.5°, rad.</summary>
    public const double HalfAngleAcmeRad = 14.5 * Math.PI / 180;

    /// <summary>Apparent friction angle on the flank, tan ρ' = μ/cos β.</summary>
    /// <param name="friction">μ, friction of the thread, 0 to 2.</param>
    /// <param name="halfAngleRad">β, half the angle between the flanks, rad: π/6 for 60° threads, 0 square.</param>
    /// <returns>ρ', rad.</returns>
    /// <remarks>
    /// Valid for: flank angle taken in the axial section; the section square to the helix differs by under 0.1 %.
    /// Source: VDI 2230-1; ISO 16047.
    /// Checked by: shared/checks/power-screws.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Friction outside 0 to 2, or a right angle or more.</exception>
    public static double Angle(double friction, double halfAngleRad) =>
        Math.Atan(Require.Between(friction, 0, 2, nameof(friction))
            / Math.Cos(Require.Slope(halfAngleRad, nameof(halfAngleRad))));
}
