using BenchmarkDotNet.Attributes;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Proof;
using Leverage.Tables;

namespace Leverage.Benchmarks;

/// <summary>The chances of what happens first: one integral, and Monte Carlo by the sample.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class OutcomeBenchmark
{
    internal const int Samples = 100_000;
    private ChanceSetup _setup = null!;
    private BreakLooseTorque _nut = null!;
    private double[] _each = [];

    /// <summary>
    /// A set-up of <c>shared/checks/chances.csv</c>: a hub nut whose wheel is held; a loose tube on the bar; a bolt known by sight
    /// alone, its start torque scattered, with stud, corners, hold and tube.
    /// </summary>
    [Params("held-hub", "loose-tube", "by-sight")]
    public string SetUp { get; set; } = "held-hub";

    /// <summary>Reads the set-up.</summary>
    [GlobalSetup]
    public void Build()
    {
        TableRow row = TableCatalog.Checks["chances"].Rows.First(one => one.Key == $"{SetUp}-comesloose");
        _setup = ChanceInputs.Setup(new CheckReader().Read(row).Inputs);
        _nut = BreakLooseSpread.Torque(_setup.Fastener);
        _each = new double[_setup.Risks.Length];
    }

    /// <summary>The integral.</summary>
    [Benchmark(Baseline = true)]
    public double Integral() => All().ComesLoose;

    /// <summary>Monte Carlo; the figure is for one sample.</summary>
    [Benchmark(OperationsPerInvoke = Samples)]
    public double MonteCarloSample() => _setup.Drawn(Samples, 1).ComesLoose;

    internal OutcomeShares All() => CompetingRisks.Split(_nut, _setup.Hand, _setup.Risks, _setup.Tube, _each);
}
