using Leverage.BreakLoose;
using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.BreakLoose;

/// <summary>A start torque that scatters, and what is lost of the preload, against sums over small steps of the exact normal.</summary>
public static class StartTorqueSpreadTests
{
    /// <summary>Up to a tenth of the preload may be lost, evenly: the mean over ten thousand steps of the exact normal.</summary>
    [Theory]
    [InlineData("used", null)]
    [InlineData("clean", "M16")]
    public static void Preload_lost_shows_where_the_growth_multiplies_the_loosening_torque(string condition, string? thread)
    {
        Fastener fastener = Nuts.Of(condition, 100, thread);
        Growth growth = fastener.Condition.Growth;
        double scale = BreakLooseSpread.Joint(fastener).LooseningNmm * growth.Median;
        BreakLooseTorque nut = BreakLooseSpread.Torque(fastener);
        foreach (double torque in (double[])[0.7 * scale, scale, 1.3 * scale])
        {
            double mean = Enumerable.Range(0, 10_000).Average(i => Normal.CDF(0, 1, Math.Log(scale * (1 - (i + 0.5) * 1e-5) / torque) / growth.Sigma));
            Assert.Equal(mean, nut.Survival(torque), 3e-7);
        }
    }

    /// <summary>Start torque and growth are both lognormal: with nothing that bends between, so is their product.</summary>
    [Theory]
    [InlineData(0.15)]
    [InlineData(0.35)]
    [InlineData(0.6)]
    public static void With_no_thread_the_spread_is_one_lognormal_of_both(double sigma)
    {
        Fastener fastener = Nuts.Of("rusted", 260, null) with { BookTorqueSigma = sigma };
        Growth growth = fastener.Condition.Growth;
        BreakLooseTorque nut = BreakLooseSpread.Torque(fastener);
        foreach (double torque in (double[])[120e3, 250e3, 400e3, 900e3])
        {
            double exact = Normal.CDF(0, 1, Math.Log(260e3 * growth.Median / torque) / Math.Sqrt(sigma * sigma + growth.Sigma * growth.Sigma));
            Assert.Equal(exact, nut.Survival(torque), 2e-5);
        }
    }

    /// <summary>Rust multiplies the book torque, yet what is lost of the clamp frees and loads the stud: the mean over ten thousand steps.</summary>
    [Fact]
    public static void Preload_lost_shows_in_the_stud_of_a_rusted_nut()
    {
        Fastener fastener = Nuts.Of("rusted", 100, "M12", 0.14, "8.8");
        AssembledJoint joint = BreakLooseSpread.Joint(fastener);
        double sigma = BreakLooseSpread.Stud(fastener)!.Value.Sigma;
        double plastic = BreakLooseSpread.Stud(fastener)!.Value.MedianNmm;
        BreakLooseTorque nut = BreakLooseSpread.Torque(fastener);
        foreach (double torque in (double[])[120e3, 150e3, 200e3])
        {
            double mean = Enumerable.Range(0, 10_000).Average(i =>
            {
                double left = 1 - (i + 0.5) * 1e-5;
                double stress = joint.StressMpa * left / fastener.Grade!.TensileMpa;
                double clean = joint.LooseningNmm * left;
                double twist = joint.ThreadShare * clean + fastener.Condition.StudShare * (torque - clean);
                return Normal.CDF(0, 1, Math.Log(plastic * Math.Sqrt(1 - stress * stress) / twist) / sigma);
            });
            double stands = nut.Cases.ToArray().Sum(
                one => one.Weight * Normal.CDF(0, 1, Math.Log(plastic * one.Shank.StandsShare / one.Shank.Torque(torque)) / sigma));
            Assert.Equal(mean, stands, 1e-6);
        }
    }

    /// <summary>
    /// A start torque that scatters over the bends where friction is believed higher and no bolt takes more: the nut's survival and the share of
    /// studs that stand a torque, by three thousand steps of the exact normal.
    /// </summary>
    [Theory]
    [InlineData("used", 0.12)]
    [InlineData("rusted", 0.10)]
    public static void A_start_torque_that_scatters_is_the_mean_over_its_normal(string condition, double friction)
    {
        Fastener fastener = Nuts.Of(condition, 260, "M16", friction, "8.8") with { BookTorqueSigma = 0.35 };
        Fastener One(double bookNm) => fastener with { BookTorque = UnitsNet.Torque.FromNewtonMeters(bookNm), BookTorqueSigma = 0 };
        double most = new JointAssembly(fastener).MostNmm / 1000;
        BreakLooseTorque nut = BreakLooseSpread.Torque(fastener);
        Strength plastic = BreakLooseSpread.Stud(fastener)!.Value;
        double[] torques = [200e3, 350e3, 600e3];
        double[] holds = new double[3], stands = new double[3];
        const int Steps = 3000;
        const double Step = 9.0 / Steps;
        double whole = 0;
        for (int i = 0; i < Steps; i++)
        {
            double deviate = (i + 0.5) * Step - 4.5;
            double weight = Normal.PDF(0, 1, deviate) * Step;
            whole += weight;
            BreakLooseTorque exact = BreakLooseSpread.Torque(One(Math.Min(most * (1 - 1e-12), 260 * Math.Exp(0.35 * deviate))));
            for (int j = 0; j < torques.Length; j++)
            {
                holds[j] += weight * exact.Survival(torques[j]);
                stands[j] += weight * Stands(exact, torques[j]);
            }
        }

        for (int j = 0; j < torques.Length; j++)
        {
            Assert.Equal(holds[j] / whole, nut.Survival(torques[j]), 2e-6);
            Assert.Equal(stands[j] / whole, Stands(nut, torques[j]), 2e-6);
        }

        double Stands(BreakLooseTorque spread, double torque) => spread.Cases.ToArray().Sum(
            one => one.Weight * Normal.CDF(0, 1, Math.Log(plastic.MedianNmm * one.Shank.StandsShare / one.Shank.Torque(torque)) / plastic.Sigma));
    }

    [Fact]
    public static void Where_the_start_torque_scatters_the_middle_is_never_above_what_a_bolt_takes()
    {
        Fastener tight = Nuts.Of("used", 900, "M16", 0.14, "8.8");
        Assert.Throws<Leverage.Reading.InputException>(() => BreakLooseSpread.Joint(tight));
        AssembledJoint joint = BreakLooseSpread.Joint(tight with { BookTorqueSigma = 0.2 });
        Near.Equal(BreakLooseSpread.Joint(tight with { BookTorque = UnitsNet.Torque.FromNewtonMillimeters(new JointAssembly(tight).MostNmm) }).PreloadN, joint.PreloadN, 1e-6);
    }
}
