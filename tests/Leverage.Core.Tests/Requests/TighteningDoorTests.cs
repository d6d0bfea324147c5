using Leverage.Assessments;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Tests.Requests;

/// <summary>What the door of tightening carries through to the set-up, by text as a person types it.</summary>
public sealed class TighteningDoorTests
{
    [Theory]
    [InlineData("then", "90deg")]
    [InlineData("with", "impact")]
    [InlineData("castle", "8")]
    [InlineData("left-hand", "true")]
    [InlineData("staked", "true")]
    [InlineData("locker", "true")]
    [InlineData("adjustable", "true")]
    [InlineData("rough-thread", "true")]
    public void Both_commands_take_it(string name, string text)
    {
        JointSetup set = Tightening.Assess(Read(TighteningFields.All, Torqued(TighteningFields.All), name, text)).Setup;
        JointSetup quoted = Checking.Assess(Read(TighteningFields.Check, Torqued(TighteningFields.Check), name, text)).Setup;
        Assert.Equal(Carried(set), Carried(quoted));
        Assert.NotEqual(Carried(new JointSetup(new(), set.Thread)), Carried(set));
    }

    [Theory]
    [InlineData("grip", "45mm", "then, 90deg")]
    [InlineData("clamped", "aluminium", "castle, 6")]
    [InlineData("snug-by-hand", "true", "then, 90deg")]
    public void What_only_a_turn_reads_is_refused_without_one(string name, string text, string cure)
    {
        string[] with = cure.Split(", ");
        TighteningRequest alone = Read(TighteningFields.Check, Torqued(TighteningFields.Check), name, text);
        Assert.Equal(name, Assert.Throws<InputException>(() => Checking.Assess(alone)).Subject);
        Assert.NotEqual(
            Checking.Assess(Read(TighteningFields.Check, alone, with[0], with[1])).Result,
            Checking.Assess(Read(TighteningFields.Check, Torqued(TighteningFields.Check), with[0], with[1])).Result);
    }

    [Theory]
    [InlineData("aluminium", "cast-aluminium", true)]
    [InlineData("Iron", "grey-iron-soft", true)]
    [InlineData("cast-aluminium", "cast-aluminium", false)]
    public void A_plain_name_of_what_it_is_tapped_into_is_enough_and_the_choice_is_kept(string said, string row, bool chosen)
    {
        TighteningRequest request = Read(TighteningFields.Check, Torqued(TighteningFields.Check), "tapped", said) with { Engagement = Length.FromMillimeters(18) };
        TappedMaterial material = Checking.Assess(request).Setup.Tapped!.Material;
        Assert.Equal((row, chosen), (material.Name, material.Else is not null));
    }

    [Fact]
    public void A_name_of_nothing_is_refused_with_the_nearest() => Assert.Contains(
        "cast-aluminium",
        Assert.Throws<InputException>(() => TighteningFields.Tapped.Value("cast-aluminum")).Line,
        StringComparison.Ordinal);

    private static TighteningRequest Torqued(IReadOnlyList<Field<TighteningRequest>> fields) =>
        Read(fields, Read(fields, new TighteningRequest(), "thread", "M12"), "torque", "60Nm");

    private static TighteningRequest Read(IReadOnlyList<Field<TighteningRequest>> fields, TighteningRequest request, string name, string text) =>
        fields.Named(name).Read(request, text);

    private static object Carried(JointSetup s) =>
        (s.Request.Then?.Degrees, s.With, s.Request.CastleSlots, s.Request.LeftHand, s.Request.Staked, s.Request.Locker, (s.Request.AdjustableBearing, s.Request.RoughThread));
}
