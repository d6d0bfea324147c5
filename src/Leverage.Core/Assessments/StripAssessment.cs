using Leverage.Grades;
using Leverage.Preload;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>A hole with a thread cut into it.</summary>
/// <param name="Engagement">Length of thread engaged.</param>
/// <param name="Material">What it is cut into.</param>
public sealed record TappedHole(Length Engagement, TappedMaterial Material);

/// <summary>Will the bolt break or the thread strip, at the loosest medium fit (6g in 6H).</summary>
/// <param name="InternalShearArea">Area the hole's thread shears over.</param>
/// <param name="ExternalShearArea">Area the bolt's thread shears over.</param>
/// <param name="StripLoad">Load at which the weaker of the two strips.</param>
/// <param name="HoleStrips">Whether the hole's thread is the weaker one.</param>
/// <param name="BreakLoad">Load at which the bolt breaks.</param>
/// <param name="EngagementToBreak">Engagement from which on the bolt breaks first.</param>
public sealed record StripAssessment(
    Area InternalShearArea,
    Area ExternalShearArea,
    Force StripLoad,
    bool HoleStrips,
    Force BreakLoad,
    Length EngagementToBreak)
{
    /// <summary>Shear strength over tensile strength of a bolt (shear strain energy), as for its shank.</summary>
    public const double ShearOverTensile = 0.577;

    /// <summary>Assesses a bolt in a tapped hole.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="grade">The bolt's grade.</param>
    /// <param name="hole">The hole.</param>
    /// <returns>The assessment.</returns>
    public static StripAssessment Of(ScrewThread thread, Grade grade, TappedHole hole)
    {
        ArgumentNullException.ThrowIfNull(thread);
        ArgumentNullException.ThrowIfNull(grade);
        ArgumentNullException.ThrowIfNull(hole);
        var (d, p) = (thread.DiameterMm, thread.PitchMm);
        double inside = ThreadStrip.InternalShearArea(
            1, p, ThreadTolerance.LeastMajorExternal(d, p), ThreadTolerance.MostPitchInternal(d, p));
        double outside = ThreadStrip.ExternalShearArea(
            1, p, ThreadTolerance.MostMinorInternal(d, p), ThreadTolerance.LeastPitchExternal(d, p));
        double insideN = inside * hole.Material.Shear.Megapascals;
        double outsideN = outside * ShearOverTensile * grade.TensileMpa;
        double weaker = Math.Min(insideN, outsideN);
        double engaged = hole.Engagement.Millimeters;
        double breakN = ProofLoad.Force(grade.TensileMpa, thread.StressAreaMm2);
        return new StripAssessment(
            Area.FromSquareMillimeters(inside * engaged),
            Area.FromSquareMillimeters(outside * engaged),
            Force.FromNewtons(weaker * engaged),
            insideN < outsideN,
            Force.FromNewtons(breakN),
            Length.FromMillimeters(ThreadStrip.EngagementToBreak(breakN, weaker, 1)));
    }
}
