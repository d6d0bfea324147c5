using FsCheck.Xunit;
using Leverage.Levers;
using Leverage.Reading;

namespace Leverage.Tests.Levers;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class StanceTests
{
    [Property]
    public void Force_scales_with_a_power_of_the_body_mass(Sized stance, Sized mass, Sized scale, bool man)
    {
        Stance chosen = stance.Of(Stance.All());
        Person person = man ? Person.Man : Person.Woman;
        var (kg, k) = (mass.Log(30, 150), scale.Log(0.5, 2));
        var (light, _) = chosen.Force(person, kg);
        var (heavy, _) = chosen.Force(person, k * kg);
        Near.Equal(Math.Pow(k, chosen.MassExponent), heavy.Median / light.Median);
        Near.Equal(light.Sigma, heavy.Sigma);
    }

    [Fact]
    public void At_the_reference_mass_the_median_is_the_table_s() => Assert.All(Stance.All(), stance =>
    {
        Near.Equal(stance.Men.Median, stance.Force(Person.Man, 84.6).Force.Median);
        Near.Equal(stance.Women.Median, stance.Force(Person.Woman, 66.8).Force.Median);
        Assert.True(stance.Women.Median < stance.Men.Median);
    });

    [Property]
    public void Repeated_pulls_keep_their_share_whatever_the_force(Sized force, Sized scale)
    {
        var (n, k) = (force.Log(1, 2000), scale.Log(0.1, 10));
        Near.Equal(k * HandForce.Repeated(n), HandForce.Repeated(k * n));
        Assert.True(HandForce.Repeated(n) < n);
    }

    [Property]
    public void Two_do_four_thirds_of_one_whatever_the_force(Sized force, Sized scale)
    {
        var (n, k) = (force.Log(1, 2000), scale.Log(0.1, 10));
        Near.Equal(k * HandForce.Together(n), HandForce.Together(k * n));
        Near.Equal(4 * n, 3 * HandForce.Together(n));
    }

    [Theory]
    [InlineData("stand-push", false)]
    [InlineData("kneel-pull", false)]
    [InlineData("one-hand", false)]
    [InlineData("lie-push", true)]
    [InlineData("lie-pull", true)]
    [InlineData("reach-one-hand", true)]
    public void On_one_s_back_and_at_arm_s_length_there_is_no_room_for_a_long_lever(string name, bool cramped) =>
        Assert.Equal(cramped, Stance.Named(name).IsCramped);

    [Theory]
    [InlineData("stand-push", Posture.Standing, Push.Down)]
    [InlineData("stand-pull", Posture.Standing, Push.Across)]
    [InlineData("lift-legs", Posture.Standing, Push.Up)]
    [InlineData("one-hand", Posture.Standing, Push.Across)]
    [InlineData("kneel-pull", Posture.Kneeling, Push.Across)]
    [InlineData("kneel-push", Posture.Kneeling, Push.Down)]
    [InlineData("lie-push", Posture.Lying, Push.Up)]
    [InlineData("lie-pull", Posture.Lying, Push.Down)]
    [InlineData("reach-one-hand", Posture.Standing, Push.Across)]
    public void A_stance_has_its_posture_and_its_way_to_push(string name, Posture posture, Push push) =>
        Assert.Equal((posture, push), (Stance.Named(name).Posture, Stance.Named(name).Push));

    [Theory]
    [InlineData(299.9, "one-hand")]
    [InlineData(300.0, "stand-push")]
    [InlineData(null, "stand-push")]
    public void A_short_lever_is_one_hand_work(double? toolMm, string stance) => Assert.Equal(stance, Stance.Usual(toolMm).Key);

    [Property]
    public void A_push_down_is_capped_by_body_weight_unless_the_floor_reacts(Sized stance, Sized mass, bool man)
    {
        Stance chosen = stance.Of(Stance.All());
        double kg = mass.Log(30, 150);
        var (_, cap) = chosen.Force(man ? Person.Man : Person.Woman, kg);
        if (chosen.Key is "stand-push" or "kneel-push")
        {
            Near.Equal(9.80665 * kg, cap);
        }
        else
        {
            Assert.Equal(double.PositiveInfinity, cap);
        }
    }

    /// <summary>500 N at 84.6 kg, straight in the mass: 484.6 N at 82 kg; P5 310 and P95 790 give σ = ln(790/310)/3.29 = 0.2844.</summary>
    [Theory]
    [InlineData(0.5, 484.6)]
    [InlineData(0.1, 336.6)]
    [InlineData(0.9, 697.7)]
    public void A_man_of_82_kg_pushing_down_gives_these_forces(double share, double newtons) =>
        Near.Equal(newtons, Stance.Named("stand-push").Force(Person.Man, 82).Force.Quantile(share), 5e-4);

    [Fact]
    public void A_name_of_no_stance_gets_the_nearest() => Assert.Contains(
        "Nearest: stand-push", Assert.Throws<InputException>(() => Stance.Named("stand-pusch")).Line, StringComparison.Ordinal);

    [Property]
    public void Scaling_by_the_reference_itself_changes_nothing(Sized table, Sized mass, Sized exponent)
    {
        var (n, kg) = (table.Log(10, 2000), mass.Log(30, 150));
        Near.Equal(n, HandForce.Scaled(n, kg, kg, exponent.Even(0, 1)));
        Near.Equal(n, HandForce.Scaled(n, kg, 70, 0));
    }
}
