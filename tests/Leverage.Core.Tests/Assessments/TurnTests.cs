using Leverage.Assessments;
using Leverage.Friction;
using Leverage.Grades;
using Leverage.Preload;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Stiffness;
using Leverage.Tables;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>A torque and then a turn, castle slots, strip and the lines of odd joints.</summary>
public sealed class TurnTests
{
    public static TheoryData<string> Standards => [.. TableCatalog.Tables["turn-angles"].Rows.Select(row => row.Key)];

    /// <summary>M12 8.8, 40 N·m at a stated 0.14, 40 mm of steel, F1 18 011.4 N, yield at 46 549.2 N.</summary>
    [Theory]
    [InlineData(10, 35905.0, 10, 0)]
    [InlineData(20, 46549.2, 15.9486, 0.019694)]
    [InlineData(90, 46549.2, 15.9486, 0.359972)]
    public void Torque_and_turn_have_the_preload_worked_out_by_hand(double degrees, double newtons, double elastic, double stretchMm)
    {
        AngleFigures turn = Assess(40, degrees).Result.Angle!;
        Near.Equal(newtons, turn.Preload.Newtons, 1e-4);
        Near.Equal(elastic, turn.Elastic.Degrees, 1e-4);
        Near.Equal(stretchMm, turn.Stretch.Millimeters, 1e-3);
        Assert.Equal(stretchMm > 0, turn.Yields);
        Near.Equal(turn.Stretch.Millimeters / 40, turn.StretchShare);
    }

    [Fact]
    public void What_it_takes_to_loosen_follows_the_preload_at_the_end()
    {
        JointAssessment turned = Assess(40, 90).Result;
        var joint = BoltedJoint.Of(ThreadCatalog.Named("M12"), turned.Bearing.Diameter.Millimeters, 640);
        Near.Equal(
            JointTorque.Loosening(turned.End.Likely.Newtons, joint.Joint, JointFriction.Same(0.14)), turned.Loosening.NewtonMillimeters);
        Assert.True(turned.Loosening > Assess(40, null).Result.Loosening * 2);
    }

    [Theory]
    [MemberData(nameof(Standards))]
    public void A_turn_of_the_standards_takes_a_structural_bolt_past_yield_and_past_the_preload_they_ask_for(string key)
    {
        TableRow row = TableCatalog.Tables["turn-angles"].Rows.Single(one => one.Key == key);
        foreach (string size in (string[])["M16", "M20", "M24", "M30"])
        {
            ScrewThread thread = ThreadCatalog.Named(size);
            Grade grade = GradeCatalog.Bolt(row.Text("standard") == "RCSC" ? "8.8" : "10.9", thread);
            double wanted = 0.7 * grade.TensileMpa * thread.StressAreaMm2;
            double first = row.Text("standard") == "RCSC" ? 0 : 0.75 * wanted;
            var joint = BoltedJoint.Of(thread, JointAssessor.Bearing(thread, null).Diameter.Millimeters, grade.YieldMpa);
            var grip = BoltedGrip.Of(thread, Length.FromMillimeters(row.Number("to_d") * thread.DiameterMm), null);
            TurnedJoint turned = TurnedJoint.After(joint, grip, first, row.Number("angle_deg") * Math.PI / 180, 0.14);
            Assert.True(turned.Yields, $"{key} {size}");
            Assert.InRange(turned.StretchShare, 0.0005, 0.1);
        }
    }

    [Fact]
    public void A_snug_pull_by_hand_scatters_by_root_six_either_way()
    {
        TighteningAssessment wrench = Assess(10, 5);
        TighteningAssessment hand = TighteningAssessor.Assess(wrench.Setup with { Request = wrench.Setup.Request with { SnugByHand = true } });
        double first = wrench.Result.FirstStage.Likely.Newtons;
        double turned = wrench.Result.End.Likely.Newtons - first;
        Near.Equal(first / Math.Sqrt(6) + turned, hand.Result.End.Low.Newtons);
        Near.Equal(first * Math.Sqrt(6) + turned, hand.Result.End.High.Newtons);
        Assert.Equal(wrench.Result.End.Likely, hand.Result.End.Likely);
    }

    [Fact]
    public void A_turn_past_yield_is_care_and_a_torque_past_yield_is_a_stop()
    {
        Assert.Equal((TorqueVerdict.Yields, Verdict.Care), (Assess(40, 90).Result.Quote, Assess(40, 90).Verdict));
        Assert.Equal((TorqueVerdict.Yields, Verdict.Stop), (Assess(120, 90).Result.Quote, Assess(120, 90).Verdict));
        Assert.Equal("angle", Assess(40, 90).Result.Method.Name);
        Assert.Equal("wrench", Assess(40, null).Result.Method.Name);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-90)]
    [InlineData(721)]
    public void A_turn_that_is_none_is_refused(double degrees) => Assert.Throws<InputException>(() => Assess(40, degrees));

    [Fact]
    public void A_turn_without_a_first_torque_is_refused() => Assert.Throws<InputException>(
        () => TighteningAssessor.Assess(new JointSetup(new() { Then = Angle.FromDegrees(90) }, ThreadCatalog.Named("M12"))));

    /// <summary>A sixth of a turn on 40 mm of steel: 1.75/6 over both springs is 107 kN, more than the bolt has left.</summary>
    [Fact]
    public void The_next_slot_of_a_castle_nut_adds_its_turn_and_no_more_than_yield()
    {
        JointSetup setup = With(r => r with { CastleSlots = 24, Grip = Length.FromMillimeters(300) });
        JointAssessment result = TighteningAssessor.Assess(setup).Result;
        var grip = BoltedGrip.Of(setup.Thread, setup.Request.Grip, null);
        Near.Equal(1.75 / 24 / (1 / grip.BoltNPerMm + 1 / grip.ClampedNPerMm), result.Castle!.Adds.Newtons);
        Assert.Equal(15, result.Castle.Step.Degrees, 9);
        CastleFigures short40 = TighteningAssessor.Assess(With(r => r with { CastleSlots = 6, Grip = Length.FromMillimeters(40) })).Result.Castle!;
        Assert.True(short40.YieldShare > 1);
        Assert.Throws<InputException>(() => TighteningAssessor.Assess(With(r => r with { CastleSlots = 2 })));
    }

    [Fact]
    public void The_nut_of_an_adjustable_bearing_is_not_judged()
    {
        foreach (Angle? then in (Angle?[])[null, Angle.FromDegrees(720)])
        {
            JointAssessment result = TighteningAssessor.Assess(With(r => r with { AdjustableBearing = true, Then = then, Grip = Length.FromMillimeters(20) })).Result;
            Assert.Null(result.Quote);
            Assert.Equal(Verdict.NotJudged, result.Verdict);
        }
    }

    [Theory]
    [InlineData("aluminium", "cast-aluminium", "6061-t6")]
    [InlineData("Iron", "grey-iron-soft", "grey-iron")]
    [InlineData("steel", "mild-steel", "medium-steel")]
    public void A_plain_name_is_enough_and_the_choice_is_told(string plain, string taken, string other)
    {
        TappedMaterial material = TappedMaterial.Named(plain);
        Assert.Equal((taken, other), (material.Name, material.Else!.Name));
        Assert.Equal(TappedMaterial.Named(taken).Shear, material.Shear);
        Assert.Null(TappedMaterial.Named(taken).Else);
    }

    [Fact]
    public void A_thread_is_judged_at_the_preload_of_the_low_friction()
    {
        JointAssessment result = TighteningAssessor.Assess(new JointSetup(new(), ThreadCatalog.Named("M10"))
        {
            Tapped = new TappedHole(Length.FromMillimeters(15), TappedMaterial.Named("grey-iron")),
        }).Result;
        Near.Equal(result.Strip!.StripLoad / result.End.High, result.StripMargin!.Value);
        Near.Equal(0.9 * 207, TappedMaterial.Named("grey-iron").Shear.Megapascals, 2e-3);
    }

    private static JointSetup With(Func<TighteningRequest, TighteningRequest> more) =>
        Assess(20, null).Setup is var setup ? setup with { Request = more(setup.Request) } : setup;

    private static TighteningAssessment Assess(double torqueNm, double? degrees) => TighteningAssessor.Assess(new JointSetup(
        new()
        {
            Torque = Torque.FromNewtonMeters(torqueNm),
            Then = degrees is { } turn ? Angle.FromDegrees(turn) : null,
            Grip = Length.FromMillimeters(40),
        },
        ThreadCatalog.Named("M12"))
    {
        Friction = FrictionRange.Stated(0.14),
    });
}
