using FsCheck.Xunit;
using Leverage.Preload;
using Leverage.Tests.Threads;
using Leverage.Threads;

namespace Leverage.Tests.Preload;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class ThreadStripLaws
{
    [Property]
    public void Shear_areas_grow_in_step_with_the_engagement(Sized size, Sized engagement)
    {
        ScrewThread thread = size.Of(AnyThread.All);
        double length = engagement.Log(1, 100);
        var (inside, outside) = (Internal(thread, length), External(thread, length));
        Near.Equal(length * Internal(thread, 1), inside);
        Near.Equal(length * External(thread, 1), outside);
    }

    [Property]
    public void The_hole_s_thread_shears_over_more_than_the_bolt_s(Sized size)
    {
        ScrewThread thread = size.Of(AnyThread.All);
        Assert.InRange(Internal(thread, 1) / External(thread, 1), 1.1, 1.7);
        Assert.InRange(Internal(thread, 1), 0.5 * Math.PI * thread.DiameterMm, Math.PI * thread.DiameterMm);
    }

    [Property]
    public void At_the_engagement_told_the_thread_strips_as_the_bolt_breaks(Sized size, Sized strength, Sized shear)
    {
        ScrewThread thread = size.Of(AnyThread.All);
        double breaks = ProofLoad.Force(strength.Log(300, 1400), thread.StressAreaMm2);
        double tau = shear.Log(80, 600);
        double length = ThreadStrip.EngagementToBreak(breaks, tau, Internal(thread, 1));
        Near.Equal(breaks, tau * Internal(thread, length));
    }

    [Fact]
    public void A_flank_that_is_not_engaged_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadStrip.InternalShearArea(10, 1, 10, 12));

    private static double Internal(ScrewThread thread, double engagementMm) => ThreadStrip.InternalShearArea(
        engagementMm, thread.PitchMm,
        ThreadTolerance.LeastMajorExternal(thread.DiameterMm, thread.PitchMm),
        ThreadTolerance.MostPitchInternal(thread.DiameterMm, thread.PitchMm));

    private static double External(ScrewThread thread, double engagementMm) => ThreadStrip.ExternalShearArea(
        engagementMm, thread.PitchMm,
        ThreadTolerance.MostMinorInternal(thread.DiameterMm, thread.PitchMm),
        ThreadTolerance.LeastPitchExternal(thread.DiameterMm, thread.PitchMm));
}
