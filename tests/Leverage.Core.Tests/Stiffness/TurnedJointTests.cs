using Leverage.Preload;
using Leverage.Reading;
using Leverage.Stiffness;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Stiffness;

/// <summary>M12 of 640 MPa, face 16.63 on 13.5 mm, in 40 mm of steel, all of it thread, friction 0.14; worked out apart in Python.</summary>
public static class TurnedJointTests
{
    private static readonly ScrewThread M12 = ThreadCatalog.Named("M12");
    private static readonly BoltedJoint Joint = BoltedJoint.Of(M12, (16.63 + 13.5) / 2, 640);
    private static readonly BoltedGrip Grip = BoltedGrip.Of(M12, Length.FromMillimeters(40), null);

    [Theory]
    [InlineData(18_000, 10, 35_893.56, 0.7710885, 10, 0, 59_194.70)]
    [InlineData(18_000, 20, 46_549.21, 1.1554894, 15.955019, 0.01966310, 76_767.72)]
    [InlineData(18_000, 90, 46_549.21, 3.8462961, 15.955019, 0.35994088, 76_767.72)]
    [InlineData(50_000, 10, 46_549.21, 1.4585330, 0, 0.04861111, 76_767.72)]
    public static void It_turns_elastic_up_to_yield_and_stretches_for_good_past_it(
        double firstN, double degrees, double preloadN, double share, double elasticDegrees, double stretchMm, double looseningNmm)
    {
        TurnedJoint turned = TurnedJoint.After(Joint, Grip, firstN, degrees * Math.PI / 180, 0.14);
        Near.Equal(preloadN, turned.PreloadN, 1e-5);
        Near.Equal(share, turned.YieldShare, 1e-5);
        Near.Equal(elasticDegrees * Math.PI / 180, turned.ElasticRad, 1e-4);
        Near.Equal(stretchMm, turned.StretchMm, 1e-4);
        Near.Equal(stretchMm / 40, turned.StretchShare, 1e-4);
        Near.Equal(looseningNmm, turned.LooseningNmm, 1e-5);
        Assert.Equal(share > 1, turned.Yields);
    }

    [Fact]
    public static void A_joint_has_the_stress_diameter_of_its_thread_and_a_grip_the_bolt_s_thread_all_through()
    {
        Near.Equal(10.35816017, Joint.StressDiameterMm, 1e-5);
        Near.Equal(436_079.308, Grip.BoltNPerMm, 1e-5);
        Near.Equal(2_361_159.265, Grip.ClampedNPerMm, 1e-5);
    }

    [Fact]
    public static void The_shortest_grip_is_a_fifth_of_the_diameter_and_is_told_so()
    {
        ScrewThread m30 = ThreadCatalog.Named("M30");
        Assert.Equal(6, BoltedGrip.Of(m30, Length.FromMillimeters(6), null).GripMm);
        var refusal = Assert.Throws<InputException>(() => BoltedGrip.Of(m30, Length.FromMillimeters(5.9), null));
        Assert.EndsWith("clamps 6 to 1500 mm. Write: 90mm", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public static void What_is_no_number_is_refused(double wrong)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedJoint.After(Joint, Grip, wrong, 1, 0.14));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedJoint.After(Joint, Grip, 1000, wrong, 0.14));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedJoint.After(Joint, Grip, 1000, 1, wrong));
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.AtTorque(wrong, 0.14));
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.AtPreload(wrong, 0.14));
        Assert.Throws<ArgumentOutOfRangeException>(() => Joint.AtYieldShare(wrong, 0.14));
        Assert.Throws<ArgumentOutOfRangeException>(() => Grip.AngleRad(wrong));
    }
}
