using Leverage.Preload;
using Leverage.Threads;

namespace Leverage.Tests.Preload;

public sealed class BoltedJointTests
{
    private static readonly BoltedJoint Joint = BoltedJoint.Of(ThreadCatalog.Named("M12x1.25"), 15.065, 940);

    [Fact]
    public void Tightening_one_joint_allocates_nothing()
    {
        double sum = Joint.AtYieldShare(0.9, 0.12).TorqueNmm;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += Joint.AtYieldShare(0.9, 0.10 + i * 1e-4).TorqueNmm + Joint.AtTorque(100_000, 0.12).YieldShare;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(double.IsFinite(sum));
    }

    [Theory]
    [InlineData(0.06)]
    [InlineData(0.12)]
    [InlineData(0.3)]
    public void Torque_and_preload_are_each_others_inverse(double friction)
    {
        TighteningPoint point = Joint.AtYieldShare(0.8, friction);
        TighteningPoint back = Joint.AtTorque(point.TorqueNmm, friction);
        Assert.Equal(point.PreloadN, back.PreloadN, 6);
        Assert.Equal(0.8, back.YieldShare, 12);
        Assert.Equal(point.TorqueNmm, point.PitchPartNmm + point.ThreadPartNmm + point.FacePartNmm, 6);
        Assert.True(point.LooseningNmm < point.TorqueNmm);
    }

    [Fact]
    public void The_slipperier_the_joint_the_more_of_its_yield_a_torque_uses()
    {
        double[] shares = [.. Enumerable.Range(2, 40).Select(i => Joint.AtTorque(100_000, i * 0.01).YieldShare)];
        Assert.Equal(shares.OrderDescending(), shares);
        Assert.True(shares[0] > 2 * shares[^1]);
    }
}
