using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tests.BreakLoose;
using Leverage.Tests.Threads;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Outcomes;

/// <summary>A nut, a hand, what else can end a pull and a tube, drawn by a seed so that all end somewhere near each other.</summary>
internal sealed record RandomPull(Fastener Fastener, Strength Hand, Risk[] Risks, Sliding? Tube)
{
    private static readonly ScrewThread[] Metric = [.. AnyThread.All.Where(thread => thread is { Family: ThreadFamily.Metric, DiameterMm: >= 5 and <= 36 })];

    internal static RandomPull Of(int seed)
    {
        var random = new Random(seed);
        double Log(double from, double to) => from * Math.Pow(to / from, random.NextDouble());
        bool Now(double share) => random.NextDouble() < share;
        string condition = Nuts.Conditions[random.Next(Nuts.Conditions.Count)];
        bool threaded = Condition.Named(condition).LockerNm > 0 || Now(0.8);
        ScrewThread thread = Metric[random.Next(Metric.Length)];
        string? grade = threaded && Now(0.8) ? thread.DiameterMm > 16 || Now(0.5) ? "8.8" : "10.9" : null;
        double typicalNm = 0.25 * Math.Pow(thread.DiameterMm, 3) / 12 * (grade == "10.9" ? 1.4 : 1);
        Fastener fastener = Nuts.Of(condition, typicalNm * Log(0.3, 1.3), threaded ? thread.Designation : null, Log(0.08, 0.25), grade) with
        {
            BookTorqueSigma = Now(0.3) ? Log(0.05, 0.4) : 0,
            Paste = Now(0.3),
            Prevailing = Torque.FromNewtonMeters(Now(0.3) ? typicalNm * Log(0.02, 0.3) : 0),
            Soaked = Now(0.3),
            Heating = threaded && Now(0.3) ? new Heating(HeatedPart.Stud, Log(20, 300)) : null,
        };
        double typical = BreakLooseSpread.Torque(fastener).Quantile(0.5);
        double hand = typical * Log(0.5, 2.5);
        var risks = new List<Risk>();
        for (int i = random.Next(5); i > 0; i--)
        {
            risks.Add(new Risk(RiskKind.ToolGives, new Strength(typical * Log(0.6, 4), Now(0.7) ? 0.08 : Log(0.05, 0.25))));
        }

        if (BreakLooseSpread.Stud(fastener) is { } stud)
        {
            risks.Insert(random.Next(risks.Count + 1), new Risk(RiskKind.StudTwistsOff, stud with { MedianNmm = stud.MedianNmm * Log(0.3, 1) }));
        }

        if (Now(0.5))
        {
            double tight = typical * Log(0.8, 5);
            double spins = Log(0.3, 1.5);
            risks.Add(new Risk(RiskKind.CornersRound, new Strength(tight, 0.2465), play => tight * Math.Max(0, 1 - spins * play)));
        }

        if (Now(0.5))
        {
            risks.Add(new Risk(RiskKind.WheelTurns, new Strength(typical * Log(0.6, 4), 0.15)));
        }

        return new RandomPull(
            fastener,
            new Strength(hand, Log(0.08, 0.4), Now(0.5) ? hand * Log(0.8, 1.6) : double.PositiveInfinity),
            [.. risks],
            Now(0.5) ? AnyTube(Log, fastener) : null);
    }

    private static Sliding AnyTube(Func<double, double, double> log, Fastener fastener)
    {
        double median = log(0.08, 0.4);
        double least = median * log(0.3, 1);
        double loosening = BreakLooseSpread.Joint(fastener).LooseningNmm;
        double turned = log(0.1, 1);
        return new Sliding(
            new SplitLogNormal(median, log(0.1, 0.4), log(0.1, 0.4)), least, torque => least / TorqueLeft.Share(0.8, loosening / torque, turned, 1));
    }

    /// <summary>The chances by the integral, and each risk's own.</summary>
    internal (OutcomeShares Shares, double[] Each) Integral()
    {
        double[] each = new double[Risks.Length];
        return (CompetingRisks.Split(BreakLooseSpread.Torque(Fastener), Hand, Risks, Tube, each), each);
    }

    /// <summary>The same by drawing.</summary>
    internal (OutcomeShares Shares, double[] Each) Drawn(int samples, int seed)
    {
        double[] each = new double[Risks.Length];
        return (MonteCarlo.Split(new BreakLooseSampler(Fastener), Hand, Risks, Tube, samples, seed, each), each);
    }

    /// <summary>All that goes wrong: something gives, slides or turns.</summary>
    internal static double Wrong(OutcomeShares shares) => shares.Gives + shares.SlidesOff + shares.WheelTurns;

    /// <summary>All of what happens first.</summary>
    internal static double[] Ends(OutcomeShares shares) =>
        [shares.ComesLoose, shares.StaysTight, shares.ToolGives, shares.StudTwistsOff, shares.CornersRound, shares.SlidesOff, shares.WheelTurns];
}
