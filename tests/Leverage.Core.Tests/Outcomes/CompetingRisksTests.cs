using Leverage.Requests;
using Leverage.Probability;
using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Threads;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Leverage.Tests.Outcomes;

public sealed class CompetingRisksTests
{
    /// <summary>Nuts whose spread is wide, narrow, shifted up by a locknut and shifted down by heat.</summary>
    public static TheoryData<string, double, double> Nuts => new()
    {
        { "used", 0, 0 }, { "rusted", 0, 0 }, { "salted", 0, 0 }, { "clean", 80, 0 }, { "rusted", 0, 60 }, { "used", 0, 180 },
    };

    [Theory]
    [MemberData(nameof(Nuts))]
    public void The_chances_agree_with_a_plain_sum_over_a_fine_grid(string condition, double prevailingNm, double heatK)
    {
        BreakLooseTorque nut = Nut(condition, prevailingNm, heatK);
        var hand = new Strength(480e3, 0.28, 720e3);
        Strength[] links = [new(530e3, 0.08), new(700e3, 0.08), new(640e3, 0.1), new(5000e3, 0.08)];
        double[] gives = new double[links.Length];
        var (undone, stuck) = CompetingRisks.Split(nut, hand, links, gives);
        double[] plain = Plain(nut, hand, links);
        Assert.Equal(plain[0], undone, 2e-6);
        Assert.Equal(plain[1], stuck, 2e-6);
        for (int i = 0; i < links.Length; i++)
        {
            Assert.Equal(plain[2 + i], gives[i], 2e-6);
        }
    }

    [Theory]
    [MemberData(nameof(Nuts))]
    public void The_chances_sum_to_one(string condition, double prevailingNm, double heatK)
    {
        double[] gives = new double[2];
        var (undone, stuck) = CompetingRisks.Split(
            Nut(condition, prevailingNm, heatK), new Strength(300e3, 0.3), [new(350e3, 0.08), new(300e3, 0.08)], gives);
        Assert.Equal(1, undone + stuck + gives.Sum(), 1e-8);
    }

    [Theory]
    [MemberData(nameof(Nuts))]
    public void A_tabulated_nut_gives_the_same_chances(string condition, double prevailingNm, double heatK)
    {
        BreakLooseTorque nut = Nut(condition, prevailingNm, heatK);
        BreakLooseTorque tabulated = nut.Tabulated();
        double[] gives = new double[1];
        for (double median = 50e3; median < 3000e3; median *= 1.3)
        {
            var hand = new Strength(median, 0.25);
            Strength[] links = [new(600e3, 0.08)];
            var exact = CompetingRisks.Split(nut, hand, links, gives);
            var quick = CompetingRisks.Split(tabulated, hand, links, gives);
            Assert.Equal(exact.ComesLoose, quick.ComesLoose, 1e-7);
            Assert.Equal(exact.StaysTight, quick.StaysTight, 1e-7);
        }
    }

    [Fact]
    public void Hand_against_nut_alone_is_the_normal_of_their_log_difference()
    {
        // Two independent lognormals: P(nut < hand) = Φ((ln h − ln n)/√(σh² + σn²)); a ratio of the book torque is one lognormal.
        var condition = Condition.Named("rusted");
        Assert.Equal(GrowthBasis.Book, condition.Basis);
        BreakLooseTorque nut = Nut("rusted", 0, 0);
        double median = 460e3 * condition.Growth.Median;
        var hand = new Strength(0.8 * median, 0.3);
        var (undone, stuck) = CompetingRisks.Split(nut, hand, [], []);
        double expected = Normal.CDF(0, 1, Math.Log(0.8) / Math.Sqrt(0.3 * 0.3 + condition.Growth.Sigma * condition.Growth.Sigma));
        Assert.Equal(expected, undone, 1e-7);
        Assert.Equal(1 - expected, stuck, 1e-7);
    }

    [Fact]
    public void A_heated_stud_still_has_a_median()
    {
        BreakLooseTorque nut = Nut("clean", 0, 250);
        Assert.InRange(nut.Quantile(0.5), 1, 460e3);
        Assert.Equal(0.5, nut.Survival(nut.Quantile(0.5)), 1e-6);
    }

    private static BreakLooseTorque Nut(string condition, double prevailingNm, double heatK)
    {
        LooseningSetup setup = LooseningDefaults.Complete(new LooseningRequest
        {
            BookTorque = Torque.FromNewtonMeters(460),
            Thread = ThreadCatalog.Named("M24x1.5"),
            Condition = condition,
            Prevailing = Torque.FromNewtonMeters(prevailingNm),
            Heat = heatK > 0 ? HeatedPart.Stud : null,
            HeatedBy = heatK > 0 ? TemperatureDelta.FromKelvins(heatK) : null,
        });
        return BreakLooseSpread.Torque(setup.Fastener);
    }

    /// <summary>Each chance as a sum of small steps of the log torque, with the exact normal and no cleverness.</summary>
    private static double[] Plain(BreakLooseTorque nut, Strength hand, Strength[] links)
    {
        const double Step = 1e-4;
        double[] sums = new double[2 + links.Length];
        double low = Math.Log(hand.MedianNmm) - 8 * hand.Sigma;
        double high = Math.Log(hand.CapNmm);
        sums[0] = 1 - nut.Survival(Math.Exp(low));
        for (double u = low; u < high; u += Step)
        {
            double to = Math.Min(u + Step, high);
            double nutMid = nut.Survival(Math.Exp((u + to) / 2));
            double handMid = Holds(hand, (u + to) / 2);
            double all = links.Aggregate(1.0, (product, link) => product * Holds(link, (u + to) / 2));
            sums[0] += (nut.Survival(Math.Exp(u)) - nut.Survival(Math.Exp(to))) * handMid * all;
            sums[1] += (Holds(hand, u) - Holds(hand, to)) * nutMid * all;
            for (int i = 0; i < links.Length; i++)
            {
                double own = Holds(links[i], (u + to) / 2);
                sums[2 + i] += own > 0 ? (Holds(links[i], u) - Holds(links[i], to)) * nutMid * handMid * all / own : 0;
            }
        }

        sums[1] += nut.Survival(hand.CapNmm) * Holds(hand, high) * links.Aggregate(1.0, (p, link) => p * Holds(link, high));
        return sums;
    }

    private static double Holds(Strength strength, double log) =>
        Normal.CDF(0, 1, -(log - Math.Log(strength.MedianNmm)) / strength.Sigma);
}
