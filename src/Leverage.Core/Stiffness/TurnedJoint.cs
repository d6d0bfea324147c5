using Leverage.Preload;

namespace Leverage.Stiffness;

/// <summary>A joint tightened by a first torque and then by an angle, as far as it goes: elastic, then past yield.</summary>
/// <param name="PreloadN">F, N: never above what yields the bolt with the torsion it then carries.</param>
/// <param name="YieldShare">Share of yield it would use if nothing yielded; above 1 it has yielded.</param>
/// <param name="ElasticRad">The part of the turn before yield, rad.</param>
/// <param name="StretchMm">Lasting stretch: the rest of the turn along the thread, mm; 0 while elastic.</param>
/// <param name="StretchShare">That over the length of bolt in the grip.</param>
/// <param name="LooseningNmm">Torque that loosens it at the same friction, N·mm.</param>
public readonly record struct TurnedJoint(
    double PreloadN, double YieldShare, double ElasticRad, double StretchMm, double StretchShare, double LooseningNmm)
{
    /// <summary>Preload of a joint run up by hand over its usual one, or under it, by which a snug joint differs (judgement).</summary>
    public static readonly double SnugFactor = Math.Sqrt(6);

    /// <summary>Whether the bolt has yielded.</summary>
    public bool Yields => YieldShare > 1;

    /// <summary>The joint after a first preload and a turn.</summary>
    /// <param name="joint">Thread, face and strength.</param>
    /// <param name="grip">The bolt's length in the grip and what it clamps.</param>
    /// <param name="firstPreloadN">F1, preload of the first stage, N, 0 or more.</param>
    /// <param name="angleRad">α, the turn after it, rad, 0 or more.</param>
    /// <param name="friction">μ of thread and face, 0 to 2.</param>
    /// <returns>The joint as it then is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TurnedJoint After(
        BoltedJoint joint, BoltedGrip grip, double firstPreloadN, double angleRad, double friction)
    {
        double elasticN = TurnOfNut.Preload(firstPreloadN, angleRad, grip.PitchMm, grip.BoltNPerMm, grip.ClampedNPerMm);
        double mostN = joint.AtYieldShare(1, friction).PreloadN;
        double toYieldRad = grip.AngleRad(Math.Max(0, mostN - firstPreloadN));
        double elasticRad = Math.Min(angleRad, toYieldRad);
        double stretchMm = TurnOfNut.Advance(angleRad - elasticRad, grip.PitchMm);
        TighteningPoint end = joint.AtPreload(Math.Min(elasticN, mostN), friction);
        return new TurnedJoint(
            end.PreloadN, elasticN / mostN, elasticRad, stretchMm, stretchMm / grip.GripMm, end.LooseningNmm);
    }
}
