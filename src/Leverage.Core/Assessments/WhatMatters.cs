using System.Runtime.InteropServices;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Levers;
using Leverage.LoadPath;
using Leverage.Probability;
using UnitsNet;

namespace Leverage.Assessments;

/// <summary>An input nobody knows exactly.</summary>
public enum UncertainInput
{
    /// <summary>What rust and time have added.</summary>
    Growth,

    /// <summary>The torque it was tightened to.</summary>
    StartTorque,

    /// <summary>The force of the hands.</summary>
    HandForce,

    /// <summary>The strength of the tools.</summary>
    ToolStrength,

    /// <summary>Where the hands are.</summary>
    HandPlace,

    /// <summary>Friction when it was tightened.</summary>
    Friction,

    /// <summary>The diameter of the bar.</summary>
    BarDiameter,
}

/// <summary>What one input moved from its P10 to its P90 does, everything else as it was.</summary>
/// <param name="Input">The input.</param>
/// <param name="ReachLowMm">Reach needed with the input at its P10, mm.</param>
/// <param name="ReachHighMm">Reach needed with the input at its P90, mm.</param>
/// <param name="ComesLooseLow">Chance that it comes loose with the input at its P10.</param>
/// <param name="ComesLooseHigh">Chance that it comes loose with the input at its P90.</param>
public sealed record Sensitivity(
    UncertainInput Input, double ReachLowMm, double ReachHighMm, double ComesLooseLow, double ComesLooseHigh)
{
    /// <summary>How far the chance that it comes loose moves.</summary>
    public double ComesLooseWidth => Math.Abs(ComesLooseHigh - ComesLooseLow);

    /// <summary>How far the needed reach moves, mm.</summary>
    public double ReachWidthMm => Math.Abs(ReachHighMm - ReachLowMm);
}

/// <summary>Which input moves the answer most: what to go and measure.</summary>
public static class WhatMatters
{
    /// <summary>Spread left in an input that is held, so that the integral stays smooth.</summary>
    private const double Held = 0.01;

    /// <summary>Least move of the chance that is worth an order (judgement).</summary>
    private const double LeastWidth = 0.05;

    /// <summary>Book torque from P10 to P90: ±10 %, a torque wrench and a hand between them (judgement).</summary>
    private const double BookShare = 0.10;

    /// <summary>Place of the hands from P10 to P90: ±50 mm (judgement).</summary>
    private const double HandsMm = 50;

    /// <summary>Assumed bar diameter from P10 to P90: ±7 %, half the recalled range of a drive (judgement).</summary>
    private const double BarShare = 0.07;

    /// <summary>What every input does, the one that moves the answer most first.</summary>
    /// <param name="assessment">The assessment; it must have a bar.</param>
    /// <returns>The effects; none without a bar.</returns>
    public static IReadOnlyList<Sensitivity> Of(LooseningAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        if (assessment.Lever is not { } lever)
        {
            return [];
        }

        LooseningSetup setup = assessment.Setup;
        Growth growth = setup.Fastener.Condition.Growth;
        var effects = new List<Sensitivity>
        {
            Nut(UncertainInput.Growth, assessment, share => setup.Fastener with
            {
                Condition = setup.Fastener.Condition with { Growth = new Growth(growth.Quantile(share), Held) },
            }),
            Nut(UncertainInput.StartTorque, assessment, share => setup.Fastener with
            {
                BookTorque = Book(setup.Fastener, share < 0.5 ? 1 - BookShare : 1 + BookShare),
            }),
            Hand(assessment, lever),
            Strength(assessment, lever),
            Place(assessment, lever),
        };
        if (setup.Fastener is { Thread: not null, Condition.Basis: GrowthBasis.Loosening })
        {
            effects.Add(Nut(UncertainInput.Friction, assessment, share => setup.Fastener with
            {
                Friction = Fixed(share < 0.5 ? setup.Fastener.Friction.Low : setup.Fastener.Friction.High),
            }));
        }

        if (setup.BarAssumed)
        {
            effects.Add(Bar(assessment));
        }

        return Ordered(effects);
    }

    /// <summary>By the chance that it comes loose; where no input moves that, this lever is none for the job, and the reach needed decides.</summary>
    private static Sensitivity[] Ordered(List<Sensitivity> effects) => effects.Max(s => s.ComesLooseWidth) >= LeastWidth
        ? [.. effects.OrderByDescending(s => s.ComesLooseWidth).ThenByDescending(s => s.ReachWidthMm)]
        : [.. effects.OrderByDescending(s => s.ReachWidthMm).ThenByDescending(s => s.ComesLooseWidth)];

    /// <summary>The book torque times a share, no more than any friction explains.</summary>
    private static Torque Book(Fastener fastener, double share) => Torque.FromNewtonMillimeters(
        Math.Min(fastener.BookTorque.NewtonMillimeters * share, new JointAssembly(fastener).MostNmm));

    private static FrictionRange Fixed(double friction) => new(friction * (1 - Held), friction, friction * (1 + Held));

    private static Sensitivity Nut(UncertainInput input, LooseningAssessment now, Func<double, Fastener> at)
    {
        var low = NutFigures.Of(at(0.1));
        var high = NutFigures.Of(at(0.9));
        return new Sensitivity(
            input, Reach(low.LikelyNmm, now), Reach(high.LikelyNmm, now), ComesLoose(now, low), ComesLoose(now, high));
    }

    private static Sensitivity Hand(LooseningAssessment now, LeverGeometry lever)
    {
        HandFigures At(double share) => new(new Spread(now.Hand.Quantile(share), Held), now.Hand.CapN);
        double Needed(double share) => Lever.NeededReach(now.Nut.LikelyNmm, now.Hand.Quantile(share), 0);
        return new Sensitivity(
            UncertainInput.HandForce,
            Needed(0.1), Needed(0.9), ComesLoose(now, now.Nut, At(0.1), lever.ReachMm), ComesLoose(now, now.Nut, At(0.9), lever.ReachMm));
    }

    private static Sensitivity Strength(LooseningAssessment now, LeverGeometry lever)
    {
        const double Deviate = LogNormalSpread.P90Deviate;
        double needed = now.NeededLikely.Millimeters;
        return new Sensitivity(
            UncertainInput.ToolStrength, needed, needed,
            ComesLoose(now, now.Nut, now.Hand, lever.ReachMm, -Deviate), ComesLoose(now, now.Nut, now.Hand, lever.ReachMm, Deviate));
    }

    private static Sensitivity Place(LooseningAssessment now, LeverGeometry lever)
    {
        double needed = now.NeededLikely.Millimeters;
        return new Sensitivity(
            UncertainInput.HandPlace, needed, needed,
            ComesLoose(now, now.Nut, now.Hand, Math.Max(1, lever.ReachMm - HandsMm)), ComesLoose(now, now.Nut, now.Hand, lever.ReachMm + HandsMm));
    }

    private static Sensitivity Bar(LooseningAssessment now)
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

        return new Sensitivity(UncertainInput.BarDiameter, needed, needed, At(1 - BarShare), At(1 + BarShare));
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
