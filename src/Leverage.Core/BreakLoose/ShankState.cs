namespace Leverage.BreakLoose;

/// <summary>What decides how much of a torque twists the bolt or stud.</summary>
/// <param name="LooseningNmm">T_L now, N·mm.</param>
/// <param name="ThreadShare">s, share of T_L in the thread.</param>
/// <param name="GrownShare">w, share of what has grown in the thread.</param>
/// <param name="ExtraNmm">T_e of locknut or thread locker, N·mm.</param>
/// <param name="StandsShare">T_p'/T_p, what its tension leaves of the torque that twists it off; NaN where its strength is not known.</param>
public readonly record struct ShankState(
    double LooseningNmm, double ThreadShare, double GrownShare, double ExtraNmm, double StandsShare)
{
    /// <summary>Least share of its strength that tension leaves: past it the bolt would have broken already.</summary>
    private const double LeastStands = 1e-3;

    /// <summary>The state of a joint.</summary>
    /// <param name="joint">As it was made.</param>
    /// <param name="fastener">The fastener.</param>
    /// <param name="left">Share of the preload that has not been lost, 0 to 1.</param>
    /// <param name="extraNmm">T_e, N·mm.</param>
    internal static ShankState Of(AssembledJoint joint, Fastener fastener, double left, double extraNmm)
    {
        double clamp = left * joint.PreloadShare;
        double stands = fastener is { Thread: not null, Grade: { TensileMpa: var tensile } }
            ? Math.Max(LeastStands, Shank.Stands(1, Math.Min(tensile, joint.StressMpa * clamp), tensile))
            : double.NaN;
        return new ShankState(joint.LooseningNmm * clamp, joint.ThreadShare, fastener.Condition.StudShare, extraNmm, stands);
    }

    /// <summary>Torque in the shank, N·mm.</summary>
    /// <param name="torqueNmm">Torque at the nut, N·mm.</param>
    /// <returns>T_s.</returns>
    public double Torque(double torqueNmm) => Shank.Torque(torqueNmm, LooseningNmm, ThreadShare, GrownShare, ExtraNmm);

    /// <summary>Torque at the nut that twists it off, N·mm.</summary>
    /// <param name="plasticNmm">T_p, what it stands without tension, N·mm.</param>
    /// <returns>T.</returns>
    public double LimitAtNut(double plasticNmm) =>
        Shank.LimitAtNut(StandsShare * plasticNmm, LooseningNmm, ThreadShare, GrownShare, ExtraNmm);

    /// <summary>Slope of ln T_s over ln T.</summary>
    internal double LogSlope(double torqueNmm, double shankNmm)
    {
        double slope = torqueNmm < ExtraNmm ? 1 : torqueNmm < ExtraNmm + LooseningNmm ? ThreadShare : GrownShare;
        return slope * torqueNmm / shankNmm;
    }
}
