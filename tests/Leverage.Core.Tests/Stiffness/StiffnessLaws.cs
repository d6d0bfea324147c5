using FsCheck.Xunit;
using Leverage.Reading;
using Leverage.Stiffness;
using Leverage.Tests.Threads;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Stiffness;

[Properties(Arbitrary = [typeof(SizedValues)])]
public sealed class StiffnessLaws
{
    [Property]
    public void A_bolt_is_its_two_lengths_in_series(Sized diameter, Sized area, Sized threaded, Sized shank)
    {
        var (d, lt, ld) = (diameter.Log(2, 60), threaded.Log(1, 200), shank.Log(0.1, 200));
        double at = area.Even(0.5, 0.9) * Math.PI / 4 * d * d;
        double thread = BoltStiffness.InGrip(d, at, lt, 0, 207e3);
        Near.Equal(at * 207e3 / lt, thread);
        double plain = Math.PI / 4 * d * d * 207e3 / ld;
        Near.Equal(1 / (1 / thread + 1 / plain), BoltStiffness.InGrip(d, at, lt, ld, 207e3));
    }

    [Property]
    public void Clamped_parts_give_more_the_longer_the_grip_and_in_step_with_their_modulus(Sized diameter, Sized slender, Sized longer)
    {
        double d = diameter.Log(2, 60);
        double l = slender.Log(0.5, 12) * d;
        double k = ClampedParts.Stiffness(d, l, 207e3, 0.78715, 0.62873);
        Near.Equal(207e3 * d * 0.78715 * Math.Pow(Math.E, 0.62873 * d / l), k);
        Assert.True(ClampedParts.Stiffness(d, l * longer.Log(1.01, 8), 207e3, 0.78715, 0.62873) < k);
        Near.Equal(k / 2, ClampedParts.Stiffness(d, l, 103.5e3, 0.78715, 0.62873));
        Near.Equal(k * 3, ClampedParts.Stiffness(3 * d, 3 * l, 207e3, 0.78715, 0.62873));
    }

    /// <summary>What stands in the comment of <see cref="ClampedParts.Stiffness"/>: ends worked out by hand.</summary>
    [Theory]
    [InlineData(1, 1.0974)]
    [InlineData(2, 1.0298)]
    [InlineData(4, 0.9186)]
    [InlineData(10, 0.8119)]
    public void Frusta_stand_as_far_from_the_exponential_form_as_is_told(double diameters, double ratio) => Near.Equal(
        ratio,
        ClampedParts.FrustaStiffness(12, 12 * diameters, 207e3) / ClampedParts.Stiffness(12, 12 * diameters, 207e3, 0.78715, 0.62873),
        1e-4);

    [Property]
    public void Frusta_of_one_shape_are_stiffer_in_step_with_their_size(Sized diameter, Sized slender)
    {
        double d = diameter.Log(2, 60);
        double l = slender.Log(0.5, 12) * d;
        Near.Equal(2 * ClampedParts.FrustaStiffness(d, l, 207e3), ClampedParts.FrustaStiffness(2 * d, 2 * l, 207e3));
        Assert.True(ClampedParts.FrustaStiffness(d, 1.1 * l, 207e3) < ClampedParts.FrustaStiffness(d, l, 207e3));
    }

    [Property]
    public void Turn_and_preload_undo_each_other_and_both_springs_share_the_way(Sized preload, Sized first, Sized bolt, Sized parts, Sized pitch)
    {
        var (f, p, kb, km) = (preload.Log(10, 1e6), pitch.Log(0.3, 6), bolt.Log(1e4, 1e7), parts.Log(1e4, 1e7));
        double turn = TurnOfNut.Angle(f, p, kb, km);
        double way = TurnOfNut.Advance(turn, p);
        Near.Equal(f / kb + f / km, way);
        double f1 = first.Log(1, 1e6);
        Near.Equal(f1 + f, TurnOfNut.Preload(f1, turn, p, kb, km));
        Near.Equal(f / kb * JointStiffness.ComplianceRatio(kb, km), way);
    }

    [Property]
    public void A_grip_left_open_is_three_diameters_of_steel(Sized at)
    {
        ScrewThread thread = at.Of(AnyThread.All);
        BoltedGrip grip = BoltedGrip.Of(thread, null, null);
        Assert.Equal(grip, BoltedGrip.Of(thread, Length.FromMillimeters(3 * thread.DiameterMm), ClampedMaterial.Named("STEEL")));
        Assert.InRange(grip.ComplianceRatio, 1.1, 1.5);
        Near.Equal(TurnOfNut.Angle(1000, thread.PitchMm, grip.BoltNPerMm, grip.ClampedNPerMm), grip.AngleRad(1000));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(3.19)]
    [InlineData(801)]
    public void A_grip_that_is_none_is_refused_with_one_that_can_be(double gripMm)
    {
        ScrewThread thread = ThreadCatalog.Named("M16");
        var refusal = Assert.Throws<InputException>(() => BoltedGrip.Of(thread, Length.FromMillimeters(gripMm), null));
        Assert.EndsWith("clamps 3.2 to 800 mm. Write: 48mm", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 1)]
    [InlineData(1, 0)]
    [InlineData(1, -1)]
    public void A_spring_without_stiffness_is_refused(double bolt, double parts)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => JointStiffness.ComplianceRatio(bolt, parts));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnOfNut.Angle(1, 1, bolt, parts));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnOfNut.Preload(1, 1, 1, bolt, parts));
    }
}
