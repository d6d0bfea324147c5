using Leverage.Probability;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Tests.BreakLoose;
using Leverage.Tests.Threads;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Outcomes;

/// <summary>A nut, a hand and some links, drawn by a seed so that all three end somewhere near each other.</summary>
internal sealed record RandomRace(Fastener Fastener, Strength Hand, Strength[] Links)
{
    internal static RandomRace Of(int seed)
    {
        var random = new Random(seed);
        double Log(double from, double to) => from * Math.Pow(to / from, random.NextDouble());
        double book = Log(20, 800);
        string condition = Nuts.Conditions[random.Next(Nuts.Conditions.Count)];
        bool threaded = Condition.Named(condition).LockerNm > 0 || random.NextDouble() < 0.7;
        Fastener fastener = Nuts.Of(
            condition, book, threaded ? AnyThread.All[random.Next(AnyThread.All.Count)].Designation : null, Log(0.08, 0.25)) with
        {
            Prevailing = Torque.FromNewtonMeters(random.NextDouble() < 0.3 ? book * Log(0.02, 0.4) : 0),
            Soaked = random.NextDouble() < 0.3,
            Heating = threaded && random.NextDouble() < 0.4 ? new Heating(HeatedPart.Stud, Log(20, 300)) : null,
        };
        double typical = BreakLooseSpread.Torque(fastener).Quantile(0.5);
        double hand = typical * Log(0.5, 2.5);
        return new RandomRace(
            fastener,
            new Strength(hand, Log(0.08, 0.4), random.NextDouble() < 0.5 ? hand * Log(0.8, 1.6) : double.PositiveInfinity),
            [.. Enumerable.Range(0, random.Next(6)).Select(_ => new Strength(typical * Log(0.6, 4), ToolScatter(random)))]);
    }

    /// <summary>Loosening over tightening torque from the flank angles themselves.</summary>
    internal static double Share(ScrewThread? thread, double friction)
    {
        if (thread is null)
        {
            return 0.8;
        }

        double phi = Math.Atan(thread.PitchMm / (Math.PI * thread.PitchDiameterMm));
        double rho = Math.Atan(friction / Math.Cos(Math.PI / 6));
        double face = friction * HexagonCatalog.Bearing(thread).BearingMm / thread.PitchDiameterMm;
        return Math.Max(0.01, (Math.Tan(rho - phi) + face) / (Math.Tan(rho + phi) + face));
    }

    /// <summary>Torque besides the joint's own, less what heat takes, N·mm.</summary>
    internal double ExtraNmm()
    {
        double ratio = (Fastener.Thread?.DiameterMm ?? 0) / 9.53;
        return Fastener.Prevailing.NewtonMillimeters + 1000 * Fastener.Condition.LockerNm * ratio * ratio - TakenByHeatNmm();
    }

    /// <summary>A scaled torque with the rest on it; heat leaves a hundredth of it at least.</summary>
    internal static double WithExtra(double scaledNmm, double extraNmm) => Math.Max(0.01 * scaledNmm, scaledNmm + extraNmm);

    /// <summary>The clamp's torque times the share of the preload that is gone, ΔT over σ·k/2.4219.</summary>
    private double TakenByHeatNmm()
    {
        if (Fastener is not { Heating: { } heating, Thread: { } thread })
        {
            return 0;
        }

        double book = Fastener.BookTorque.NewtonMillimeters;
        double mu = Fastener.Friction.Likely;
        double phi = Math.Atan(thread.PitchMm / (Math.PI * thread.PitchDiameterMm));
        double rho = Math.Atan(mu / Math.Cos(Math.PI / 6));
        double arm = thread.PitchDiameterMm / 2 * Math.Tan(rho + phi) + mu * HexagonCatalog.Bearing(thread).BearingMm / 2;
        double release = book / arm / thread.StressAreaMm2 * Compliance(thread) / 2.4219;
        return book * Share(thread, mu) * Math.Min(1, heating.ByK / release);
    }

    /// <summary>Growth as it is after the soak, if there was one.</summary>
    internal Growth Growth()
    {
        Growth clean = Condition.Named("clean").Growth;
        double basis = Fastener.Condition.Basis == GrowthBasis.Book ? 0.95 * Share(Fastener.Thread, Fastener.Friction.Likely) : 1;
        return Fastener.Soaked
            ? Fastener.Condition.Growth.Soaked(clean with { Median = clean.Median * basis })
            : Fastener.Condition.Growth;
    }

    private static double ToolScatter(Random random) => random.NextDouble() < 0.7 ? 0.08 : 0.05 + 0.2 * random.NextDouble();

    /// <summary>k of a grip of three diameters of steel: 1 + At/(3·d²·0.78715·e^(0.62873/3)).</summary>
    private static double Compliance(ScrewThread thread) =>
        1 + thread.StressAreaMm2 / (3 * thread.DiameterMm * thread.DiameterMm * 0.78715 * Math.Exp(0.62873 / 3));
}
