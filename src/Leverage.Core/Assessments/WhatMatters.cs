using System.Runtime.InteropServices;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Probability;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>One input moved from its P10 to its P90, everything else as it was.</summary>
/// <param name="Input">The input, in words.</param>
/// <param name="Learn">How to learn it better.</param>
/// <param name="ReachLowMm">Reach needed with the input at its P10, mm.</param>
/// <param name="ReachHighMm">Reach needed with the input at its P90, mm.</param>
/// <param name="ComesLooseLow">Chance undone with the input at its P10.</param>
/// <param name="ComesLooseHigh">Chance undone with the input at its P90.</param>
public sealed record Swing(
    string Input, string Learn, double ReachLowMm, double ReachHighMm, double ComesLooseLow, double ComesLooseHigh)
{
    /// <summary>How far the chance undone moves.</summary>
    public double ComesLooseWidth => Math.Abs(ComesLooseHigh - ComesLooseLow);

    /// <summary>How far the needed reach moves, mm.</summary>
    public double ReachWidthMm => Math.Abs(ReachHighMm - ReachLowMm);
}

/// <summary>Which input moves the answer most: what to go and measure.</summary>
public static class WhatMatters
{
    /// <summary>Spread left in an input that is held, so that the integral stays smooth.</summary>
    private const double Held = 0.01;

    /// <summary>Least swing of the chance undone that is worth an order (judgement).</summary>
    private const double LeastWidth = 0.05;

    /// <summary>Book torque from P10 to P90: ±10 %, a torque wrench and a hand between them (judgement).</summary>
    private const double BookShare = 0.10;

    /// <summary>Place of the hands from P10 to P90: ±50 mm (judgement).</summary>
    private const double HandsMm = 50;

    /// <summary>Assumed bar diameter from P10 to P90: ±7 %, half the recalled range of a drive (judgement).</summary>
    private const double BarShare = 0.07;

    /// <summary>Every input's swing, the one that moves the answer most first.</summary>
    /// <param name="assessment">The assessment; it must have a bar.</param>
    /// <returns>The swings; none without a bar.</returns>
    public static IReadOnlyList<Swing> Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Lever is not { } lever)
        {
            return [];
        }

        LooseningSetup setup = assessment.Setup;
        Growth growth = setup.Fastener.Condition.Growth;
        var swings = new List<Swing>
        {
            Nut("how hard it has grown fast", "clean it, soak it, try it with a short bar first", assessment, share => setup.Fastener with
            {
                Condition = setup.Fastener.Condition with { Growth = new Growth(growth.Quantile(share), Held) },
            }),
            Nut("torque it was tightened to", "look it up in the maker's manual", assessment, share => setup.Fastener with
            {
                BookTorque = Book(setup.Fastener, share < 0.5 ? 1 - BookShare : 1 + BookShare),
            }),
            Hand(assessment, lever),
            Strength(assessment, lever),
            Place(assessment, lever),
        };
        if (setup.Fastener is { Thread: not null, Condition.Basis: GrowthBasis.Loosening })
        {
            swings.Add(Nut("friction when it was tightened", "find out how it was lubricated", assessment, share => setup.Fastener with
            {
                Friction = Fixed(share < 0.5 ? setup.Fastener.Friction.Low : setup.Fastener.Friction.High),
            }));
        }

        if (setup.BarAssumed)
        {
            swings.Add(Bar(assessment));
        }

        return Ordered(swings);
    }

    /// <summary>By the chance undone; where no input moves that, this lever is none for the job, and the reach needed decides.</summary>
    private static Swing[] Ordered(List<Swing> swings) => swings.Max(s => s.ComesLooseWidth) >= LeastWidth
        ? [.. swings.OrderByDescending(s => s.ComesLooseWidth).ThenByDescending(s => s.ReachWidthMm)]
        : [.. swings.OrderByDescending(s => s.ReachWidthMm).ThenByDescending(s => s.ComesLooseWidth)];

    /// <summary>The book torque times a share, no more than any friction explains.</summary>
    private static Torque Book(Fastener fastener, double share) => Torque.FromNewtonMillimeters(
        Math.Min(fastener.BookTorque.NewtonMillimeters * share, new JointAssembly(fastener).MostNmm));

    private static FrictionRange Fixed(double friction) => new(friction * (1 - Held), friction, friction * (1 + Held));

    private static Swing Nut(string input, string learn, LooseningAssessment now, Func<double, Fastener> at)
    {
        var low = NutFigures.Of(at(0.1));
        var high = NutFigures.Of(at(0.9));
        return new Swing(
            input, learn, Reach(low.LikelyNmm, now), Reach(high.LikelyNmm, now), ComesLoose(now, low), ComesLoose(now, high));
    }

    private static Swing Hand(LooseningAssessment now, LeverGeometry lever)
    {
        HandFigures At(double share) => new(new Spread(now.Hand.Quantile(share), Held), now.Hand.CapN);
        double Needed(double share) => Lever.NeededReach(now.Nut.LikelyNmm, now.Hand.Quantile(share), 0);
        return new Swing(
            "your own force", "push a bathroom scale in that stance: its reading is your force",
            Needed(0.1), Needed(0.9), ComesLoose(now, now.Nut, At(0.1), lever.ReachMm), ComesLoose(now, now.Nut, At(0.9), lever.ReachMm));
    }

    private static Swing Strength(LooseningAssessment now, LeverGeometry lever)
    {
        const double Deviate = LogNormalSpread.P90Deviate;
        double needed = now.NeededLikely.Millimeters;
        return new Swing(
            "what the tools really stand", "use the next size up, or tools with a test certificate", needed, needed,
            ComesLoose(now, now.Nut, now.Hand, lever.ReachMm, -Deviate), ComesLoose(now, now.Nut, now.Hand, lever.ReachMm, Deviate));
    }

    private static Swing Place(LooseningAssessment now, LeverGeometry lever)
    {
        double needed = now.NeededLikely.Millimeters;
        return new Swing(
            "where exactly your hands are", "mark the grip with tape", needed, needed,
            ComesLoose(now, now.Nut, now.Hand, Math.Max(1, lever.ReachMm - HandsMm)), ComesLoose(now, now.Nut, now.Hand, lever.ReachMm + HandsMm));
    }

    private static Swing Bar(LooseningAssessment now)
    {
        double needed = now.NeededLikely.Millimeters;
        double At(double factor)
        {
            Bar bar = now.Setup.Bar!;
            double diameter = bar.Diameter!.Value.Millimeters * factor;
            double most = now.Setup.Tube?.Bore.Millimeters ?? double.PositiveInfinity;
            var changed = bar with { Diameter = Length.FromMillimeters(Math.Min(most, diameter)) };
            return LooseningAssessor.WithoutAdvice(now.Setup with { Bar = changed }).Judgement.ComesLoose;
        }

        return new Swing("diameter of the bar", "measure it where the tube ends", needed, needed, At(1 - BarShare), At(1 + BarShare));
    }

    private static double Reach(double torqueNmm, LooseningAssessment now) =>
        Lever.NeededReach(torqueNmm, now.Hand.Quantile(0.5), 0);

    private static double ComesLoose(LooseningAssessment now, NutFigures nut) =>
        ComesLoose(now, nut, now.Hand, now.Lever!.Value.ReachMm);

    private static double ComesLoose(LooseningAssessment now, NutFigures nut, HandFigures hand, double reachMm, double deviate = 0)
    {
        List<LinkLimit> links = [.. now.Links.Select(link => link.Limit with { MedianOverLimit = link.Limit.MedianOverLimit * Math.Exp(deviate * link.Limit.Scatter) })];
        double[] gives = new double[links.Count];
        return Judgement.Of(nut, hand, reachMm, CollectionsMarshal.AsSpan(links), Circumstances.None, gives).ComesLoose;
    }
}
