using BenchmarkDotNet.Attributes;
using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.LoadPath;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Benchmarks;

/// <summary>The outcome split: one integral, and Monte Carlo by the sample.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class OutcomeBenchmark
{
    internal const int Samples = 100_000;
    private BreakLooseTorque _nut = null!;
    private BreakLooseSampler _sampler = null!;
    private Strength _hand;
    private Risk[] _risks = [];
    private double[] _gives = [];

    /// <summary>State of the joint: on its book torque, or on the theoretical loosening torque.</summary>
    [Params("rusted", "used")]
    public string Condition { get; set; } = "rusted";

    /// <summary>Builds the set-up of the README's second example.</summary>
    [GlobalSetup]
    public void Build()
    {
        var assessment = LooseningAssessor.WithoutAdvice(LooseningDefaults.Complete(new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(460),
            Thread = ThreadCatalog.Named("M24x1.5"),
            Condition = Condition,
            AcrossFlats = Length.FromMillimeters(36),
            Drive = "3/4",
            Bar = Length.FromMillimeters(600),
            Tube = new TubeText(Length.FromMillimeters(1000), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
            Overlap = Length.FromMillimeters(250),
            Body = Mass.FromKilograms(82),
        }));
        _nut = assessment.Nut.Spread;
        _sampler = new BreakLooseSampler(assessment.Setup.Fastener);
        _hand = assessment.Hand.Torque(assessment.Lever!.Value.ReachMm);
        _risks = [.. assessment.Links.Select(link => link.Limit.Kind == LinkKind.Stud
            ? new Risk(RiskKind.StudTwistsOff, assessment.Nut.Stud!.Value)
            : new Risk(RiskKind.ToolGives, link.Limit.Strength))];
        _gives = new double[_risks.Length];
    }

    /// <summary>The integral.</summary>
    [Benchmark(Baseline = true)]
    public double Integral() => CompetingRisks.Split(_nut, _hand, _risks, null, _gives).ComesLoose;

    /// <summary>Monte Carlo; the figure is for one sample.</summary>
    [Benchmark(OperationsPerInvoke = Samples)]
    public double MonteCarloSample() => MonteCarlo.Split(_sampler, _hand, _risks, null, Samples, 1, _gives).ComesLoose;
}
