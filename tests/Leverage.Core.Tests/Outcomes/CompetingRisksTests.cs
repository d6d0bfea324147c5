using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using Leverage.Tests.BreakLoose;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

public sealed class CompetingRisksTests
{
    [Fact]
    public void Hand_against_nut_alone_is_the_normal_of_their_log_difference()
    {
        // Two independent lognormals: P(nut < hand) = Φ((ln h − ln n)/√(σh² + σn²)); a ratio of the book torque is one lognormal.
        var condition = Condition.Named("rusted");
        double median = 460e3 * condition.Growth.Median;
        OutcomeShares shares = CompetingRisks.Split(Nut("rusted"), new Strength(0.8 * median, 0.3), [], null, []);
        double expected = Normal.CDF(0, 1, Math.Log(0.8) / Math.Sqrt(0.3 * 0.3 + condition.Growth.Sigma * condition.Growth.Sigma));
        Assert.Equal(expected, shares.ComesLoose, 1e-7);
        Assert.Equal(1 - expected, shares.StaysTight, 1e-7);
    }

    [Fact]
    public void A_part_against_a_hand_that_never_stops_is_the_normal_of_their_log_difference()
    {
        var condition = Condition.Named("rusted");
        double median = 460e3 * condition.Growth.Median;
        foreach (RiskKind kind in new[] { RiskKind.ToolGives, RiskKind.WheelTurns, RiskKind.CornersRound })
        {
            double[] each = new double[1];
            CompetingRisks.Split(Nut("rusted"), new Strength(1e12, 0.1), [new Risk(kind, new Strength(1.1 * median, 0.15))], null, each);
            double spread = Math.Sqrt(0.15 * 0.15 + condition.Growth.Sigma * condition.Growth.Sigma);
            Assert.Equal(Normal.CDF(0, 1, -Math.Log(1.1) / spread), each[0], 1e-7);
        }
    }

    [Fact]
    public void A_nut_that_has_held_more_than_the_tools_stand_breaks_them()
    {
        BreakLooseTorque shown = Nut("rusted").HavingHeld(700e3);
        var shares = CompetingRisks.Split(
            shown, new Strength(1e12, 0.1), [new Risk(RiskKind.ToolGives, new Strength(500e3, 0.05))], null, new double[1]);
        Assert.Equal(1, shares.ToolGives, 1e-6);
    }

    /// <summary>Cut off below what it held: P(nut &lt; hand | nut &gt; H) by sums over small steps of the exact normal.</summary>
    [Fact]
    public void A_nut_that_has_held_is_judged_by_what_is_left_of_it()
    {
        Growth growth = Condition.Named("rusted").Growth;
        var (median, held) = (460e3 * growth.Median, 600e3);
        var hand = new Strength(700e3, 0.2);
        double Nut1(double torque) => Normal.CDF(0, 1, -Math.Log(torque / median) / growth.Sigma);
        double sum = 0;
        for (double u = Math.Log(held), step = 1e-4; u < Math.Log(5e6); u += step)
        {
            double reaches = Normal.CDF(0, 1, -(u + step / 2 - Math.Log(hand.MedianNmm)) / hand.Sigma);
            sum += (Nut1(Math.Exp(u)) - Nut1(Math.Exp(u + step))) * reaches;
        }

        Assert.Equal(sum / Nut1(held), CompetingRisks.Split(Nut("rusted").HavingHeld(held), hand, [], null, []).ComesLoose, 2e-6);
    }

    /// <summary>What stays on at the start needs more than 0.15, what stays to the end more than 0.25: shares of one normal of the logarithm.</summary>
    [Fact]
    public void A_tube_that_needs_more_friction_as_it_turns_slides_by_what_lies_between()
    {
        var tube = new Sliding(new SplitLogNormal(0.2, 0.2, 0.2), 0.15, _ => 0.25);
        OutcomeShares shares = CompetingRisks.Split(Nut("rusted"), new Strength(1e12, 0.1), [], tube, []);
        double start = Normal.CDF(0, 1, Math.Log(0.15 / 0.2) / 0.2);
        double end = Normal.CDF(0, 1, Math.Log(0.25 / 0.2) / 0.2);
        Assert.Equal(start, shares.SlidesOff, 1e-9);
        Assert.Equal(1 - start, shares.ComesLoose, 1e-6);
        Assert.Equal((end - start) / (1 - start), shares.SlidesAsItTurns, 1e-6);
        Assert.Equal(0, CompetingRisks.Split(Nut("rusted"), new Strength(1e3, 0.1), [], tube, []).SlidesAsItTurns);
    }

    /// <summary>Past a bend the need falls from all to little within a hundredth of the nut's scatter: the share is what lies below the bend.</summary>
    [Fact]
    public void A_need_that_falls_off_at_one_torque_is_found_however_far_the_nut_scatters()
    {
        var condition = Condition.Named("rusted");
        double bend = 460e3 * condition.Growth.Median * 1.1;
        var tube = new Sliding(new SplitLogNormal(0.2, 0.2, 0.2), 0.01, torque => 0.01 * bend / Math.Max(1e-9, torque - bend));
        double expected = 0;
        const double Step = 1e-5;
        for (double z = -6 + Step / 2; z < 6; z += Step)
        {
            double need = tube.LeastAsItTurns!(460e3 * condition.Growth.Median * Math.Exp(condition.Growth.Sigma * z));
            expected += Step * Normal.PDF(0, 1, z) * tube.Friction.Below(need);
        }

        OutcomeShares shares = CompetingRisks.Split(Nut("rusted"), new Strength(1e12, 0.1), [], tube, []);
        Assert.InRange(expected, 0.5, 0.7);
        Assert.Equal(expected, shares.SlidesAsItTurns, 1e-5);
    }

    [Fact]
    public void What_does_not_fit_together_is_refused()
    {
        var stud = new Risk(RiskKind.StudTwistsOff, new Strength(1e6, 0.08));
        var hand = new Strength(1e6, 0.1);
        Assert.Throws<ArgumentException>(() => CompetingRisks.Split(Nut("used"), hand, [stud], null, new double[1]));
        BreakLooseTorque graded = BreakLooseSpread.Torque(Nuts.Of("used", 460, "M24x1.5", 0.14, "8.8"));
        Assert.Throws<ArgumentException>(() => CompetingRisks.Split(graded, hand, [stud, stud], null, new double[2]));
        Assert.Throws<ArgumentException>(() => CompetingRisks.Split(graded, hand, [stud], null, []));
    }

    /// <summary>Half of it on either side of its median, each side a normal of the logarithm with its own σ.</summary>
    [Fact]
    public void A_split_spread_passes_through_its_three_percentiles()
    {
        var friction = SplitLogNormal.Through(0.1, 0.2, 0.28);
        Assert.Equal(0.05, friction.Below(0.1), 1e-9);
        Assert.Equal(0.5, friction.Below(0.2), 1e-12);
        Assert.Equal(0.95, friction.Below(0.28), 1e-9);
        Assert.Equal((0, 1), (friction.Below(0), friction.Below(double.PositiveInfinity)));
        var random = new Random(1);
        double[] drawn = [.. Enumerable.Range(0, 40_000).Select(_ => friction.Draw(random))];
        Assert.Equal(0.05, drawn.Count(mu => mu < 0.1) / 40_000.0, 0.005);
        Assert.Equal(0.95, drawn.Count(mu => mu < 0.28) / 40_000.0, 0.005);
        Assert.Throws<ArgumentOutOfRangeException>(() => SplitLogNormal.Through(0.2, 0.2, 0.3));
    }

    private static BreakLooseTorque Nut(string condition) => BreakLooseSpread.Torque(Nuts.Of(condition, 460, "M24x1.5"));
}
