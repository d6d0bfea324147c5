using BenchmarkDotNet.Attributes;
using Leverage.Assessments;
using Leverage.Preload;
using Leverage.Threads;

namespace Leverage.Benchmarks;

/// <summary>One thread, one grade, one friction: preload, torque, its parts, loosening torque and share of yield.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class TighteningBenchmark
{
    private BoltedJoint _joint;

    /// <summary>Looks the thread up once; that is not what is timed.</summary>
    [GlobalSetup]
    public void Build()
    {
        ScrewThread thread = ThreadCatalog.Named("M12x1.25");
        _joint = BoltedJoint.Of(thread, HexagonCatalog.Bearing(thread).BearingMm, 940);
    }

    /// <summary>The whole state at 90 % of yield.</summary>
    [Benchmark]
    public double AtYieldShare() => _joint.AtYieldShare(0.9, 0.12).TorqueNmm;
}
