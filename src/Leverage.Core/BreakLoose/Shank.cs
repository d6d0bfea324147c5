namespace Leverage.BreakLoose;

/// <summary>The part of a loosening torque that twists the bolt or stud: friction under nut or head never does.</summary>
public static class Shank
{
    /// <summary>Torque in the shank, T_s = s·min(T_L, T − T_e) + w·max(0, T − T_e − T_L) + T_e; all of the torque up to T_e.</summary>
    /// <param name="torqueNmm">T, torque at the nut, N·mm, 0 or more.</param>
    /// <param name="looseningNmm">T_L, loosening torque of the joint without rust, N·mm, 0 or more.</param>
    /// <param name="threadShare">s, share of T_L that sits in the thread, 0 to 1.</param>
    /// <param name="grownShare">w, share of what has grown since that sits in the thread, 0 to 1.</param>
    /// <param name="extraNmm">T_e, torque of locknut or thread locker, N·mm, 0 or more.</param>
    /// <returns>T_s, N·mm.</returns>
    /// <remarks>
    /// Valid for: a nut or head turned while the other end is held; w is not measured.
    /// Source: VDI 2230-1, thread torque apart from the torque of the bearing face.
    /// Checked by: shared/checks/breaking-loose.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Torque(double torqueNmm, double looseningNmm, double threadShare, double grownShare, double extraNmm)
    {
        double extra = Math.Min(Require.NotNegative(extraNmm, nameof(extraNmm)), Require.NotNegative(torqueNmm, nameof(torqueNmm)));
        double clean = Math.Min(Require.NotNegative(looseningNmm, nameof(looseningNmm)), torqueNmm - extra);
        return Require.Between(threadShare, 0, 1, nameof(threadShare)) * clean
            + Require.Between(grownShare, 0, 1, nameof(grownShare)) * (torqueNmm - extra - clean) + extra;
    }

    /// <summary>Torque a shank stands while it is still in tension, T_p' = T_p·√(1 − (σ/Rm)²).</summary>
    /// <param name="plasticNmm">T_p, torque that twists it off without tension, N·mm, 0 or more.</param>
    /// <param name="stressMpa">σ, stress of the preload still there, MPa, 0 to Rm.</param>
    /// <param name="tensileMpa">Rm, tensile strength, MPa, above 0.</param>
    /// <returns>T_p', N·mm.</returns>
    /// <remarks>
    /// Valid for: a solid section, fully plastic.
    /// Source: lower bound of plasticity for tension and torsion by the shear strain energy (von Mises).
    /// Checked by: shared/checks/breaking-loose.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double Stands(double plasticNmm, double stressMpa, double tensileMpa)
    {
        double ratio = Require.Between(stressMpa, 0, Require.Positive(tensileMpa, nameof(tensileMpa)), nameof(stressMpa)) / tensileMpa;
        return Require.NotNegative(plasticNmm, nameof(plasticNmm)) * Math.Sqrt(1 - ratio * ratio);
    }

    /// <summary>Torque at the nut that twists the shank off: <see cref="Torque"/> solved for T.</summary>
    /// <param name="standsNmm">T_p', torque the shank stands, N·mm, 0 or more.</param>
    /// <param name="looseningNmm">T_L, loosening torque of the joint without rust, N·mm, 0 or more.</param>
    /// <param name="threadShare">s, share of T_L that sits in the thread, above 0 to 1.</param>
    /// <param name="grownShare">w, share of what has grown since that sits in the thread, above 0 to 1.</param>
    /// <param name="extraNmm">T_e, torque of locknut or thread locker, N·mm, 0 or more.</param>
    /// <returns>T, N·mm: T_e + T_L + (T_p' − T_e − s·T_L)/w, or T_e + (T_p' − T_e)/s, or T_p' where that is below T_e.</returns>
    /// <remarks>
    /// Valid for: as <see cref="Torque"/>.
    /// Source: VDI 2230-1, thread torque apart from the torque of the bearing face.
    /// Checked by: shared/checks/breaking-loose.csv.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double LimitAtNut(double standsNmm, double looseningNmm, double threadShare, double grownShare, double extraNmm)
    {
        double left = Require.NotNegative(standsNmm, nameof(standsNmm)) - Require.NotNegative(extraNmm, nameof(extraNmm));
        double clean = Require.Between(Require.Positive(threadShare, nameof(threadShare)), 0, 1, nameof(threadShare))
            * Require.NotNegative(looseningNmm, nameof(looseningNmm));
        double grown = Require.Between(Require.Positive(grownShare, nameof(grownShare)), 0, 1, nameof(grownShare));
        return standsNmm <= extraNmm ? standsNmm
            : left <= clean ? extraNmm + left / threadShare
            : extraNmm + looseningNmm + (left - clean) / grown;
    }
}
