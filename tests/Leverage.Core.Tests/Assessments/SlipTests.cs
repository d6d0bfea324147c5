using Leverage.Assessments;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Threads;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class SlipTests
{
    private const double Share = 1e-3;

    private static readonly LooseningRequest Good = new()
    {
        Bar = Length.FromMillimeters(600),
        BarDiameter = Length.FromMillimeters(20),
        Tube = new TubeText(Length.FromMillimeters(1000), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
        Overlap = Length.FromMillimeters(250),
        Stance = "stand-push",
        Body = Mass.FromKilograms(82),
    };

    private static readonly LooseningRequest Weak = new()
    {
        Bar = Length.FromMillimeters(250),
        BarDiameter = Length.FromMillimeters(15),
        Tube = new TubeText(Length.FromMillimeters(800), Length.FromMillimeters(26.9), Length.FromMillimeters(2.6)),
        Overlap = Length.FromMillimeters(80),
        Surface = "greasy",
        Stance = "stand-push",
    };

    [Theory]
    [InlineData("lift-legs", "above level", "below level")]
    [InlineData("stand-pull", "past square", "before square")]
    public void A_lift_and_a_pull_across_are_a_push_down_turned_round(string stance, string past, string before)
    {
        LooseningRequest asked = Good with { Force = Force.FromNewtons(400), StartPastSquare = Angle.FromDegrees(20), Surface = "oily" };
        SlipAssessment push = Slip.Assess(asked);
        SlipAssessment turned = Slip.Assess(asked with { Stance = stance });
        Assert.Equal(push.Here, turned.Here);
        Assert.Equal((push.SlidesOff, push.SlidesAsItTurns, push.Verdict), (turned.SlidesOff, turned.SlidesAsItTurns, turned.Verdict));
        foreach (var (down, other) in SlipWords.States(push).Zip(SlipWords.States(turned)))
        {
            string size = down.Angle.Split(' ')[0];
            Assert.Equal($"{size} {(down.Angle.EndsWith("below level", StringComparison.Ordinal) ? past : before)}", other.Angle);
        }
    }

    [Fact]
    public void A_tube_that_breaks_below_the_push_is_a_stop_in_slip_as_in_loosen()
    {
        SlipAssessment slip = Slip.Assess(Weak);

        // 0.7·195·2.6²/4·√(26.9/2.6)·22·0.01^0.55·80/(800 - 80 - 95) = 166.0 N at the mouth; the stance likely pushes 500.
        Near.Equal(165.98, slip.Here.GivesAtN, Share);
        Assert.Equal((Verdict.Stop, VerdictRules.TubeBelowPush), (slip.Verdict, slip.Ruling.Stops));
        Assert.Equal(["The tube dents at its mouth at 166 N of your hands. Your likely force is 500 N."], SlipWords.Reasons(slip, UnitStyle.Metric));
        Assert.Equal(Verdict.Stop, Loosening.Assess(Weak with { BookTorque = Torque.FromNewtonMeters(460) }).Verdict);
    }

    [Fact]
    public void Between_the_likely_and_the_strong_force_a_tube_is_care()
    {
        // The mouth dents at 0.7·2830.98·c/(905 - c): 562.2 N at 200 mm, above 500·82/84.6 = 484.6 N and below 697.7 N.
        SlipAssessment slip = Slip.Assess(Good with { Overlap = Length.FromMillimeters(200) });
        Near.Equal(562.2, slip.Here.GivesAtN, Share);
        Assert.Equal((Verdict.Care, VerdictRules.TubeBelowPush), (slip.Verdict, slip.Ruling.Cares));
        Assert.Equal("The tube breaks below a strong pull.", SlipWords.Verdict(slip));
    }

    [Fact]
    public void The_least_overlap_takes_a_strong_pull_and_stays_on_where_the_pull_begins()
    {
        // 0.7·2830.98·c/(905 - c) = 697.7 N at 235.7 mm, as above; the next of the table's steps of 5 mm.
        SlipAssessment slip = Slip.Assess(Good);
        Assert.Equal(240, slip.Least!.Value.OverlapMm);
        Assert.Equal("240 mm: shorter, the tube dents at its mouth below a strong pull.", SlipWords.Least(slip, UnitStyle.Metric));
        SlipAssessment steep = Slip.Assess(Good with { StartPastSquare = Angle.FromDegrees(75), PastSquare = Angle.FromDegrees(80) });
        Assert.Null(steep.Least);
        Assert.Equal("none: at any overlap the tube slides off as the pull begins.", SlipWords.Least(steep, UnitStyle.Metric));
        Assert.StartsWith("none: at no overlap", SlipWords.Least(Slip.Assess(Weak), UnitStyle.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void A_nut_asks_less_of_the_hands_at_the_longer_lever_of_the_best_overlap()
    {
        // The nut's hard torque over each lever's own reach: 450 N at the jack handle's end is enough at 60 mm on, not at 450 mm.
        SlipAssessment slip = Slip.Assess(Nut with
        {
            Condition = null,
            BarDiameter = null,
            Drive = "3/4",
            Overlap = null,
            Stance = "lift-legs",
            Tube = new TubeText(Length.FromMillimeters(1100), Bore: Length.FromMillimeters(30)),
        });
        Assert.True(slip.Best.GivesAtN < slip.StrongN && slip.Best.TakesStrongPull);
        Assert.EndsWith("and takes a strong pull.", SlipWords.Best(slip, UnitStyle.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pull_that_begins_at_the_last_safe_angle_slides_off_in_five_of_a_hundred_and_at_the_typical_one_in_half()
    {
        SlipAngles low = Slip.Assess(Good).Here.Checked;
        SlipAngles typical = Slip.Assess(Good).Typical;
        SlipAssessment At(double rad) => Slip.Assess(Good with { StartPastSquare = Angle.FromRadians(rad), PastSquare = Angle.FromDegrees(70) });
        Near.Equal(0.05, At(low.HeldRad).SlidesOff, Share);
        Near.Equal(0.5, At(typical.HeldRad).SlidesOff, Share);
        Assert.Equal(Verdict.Stop, At(typical.HeldRad).Verdict);
        Assert.Equal(VerdictRules.SlidesOff, At(typical.HeldRad).Ruling.Stops);
    }

    [Fact]
    public void What_is_left_at_the_end_of_the_swing_decides_whether_it_slides_as_the_nut_turns()
    {
        SlipAssessment free = Slip.Assess(Good with { PastSquare = Angle.FromDegrees(40), Condition = "used" });
        Assert.Equal(0.7, free.EndShare);

        // tan θ 1.16908 of the close figures below; atan(0.7·1.16908) - 1.67256.
        Near.Equal(37.623, double.RadiansToDegrees(free.Here.Checked.EndRad), Share);
        Assert.Equal((Verdict.Care, VerdictRules.SlidesAsItTurns), (free.Verdict, free.Ruling.Cares));
        Assert.Null(SlipAnswer.Of(free, UnitStyle.Metric).Tube.ClampGoneDeg);
        Assert.Equal(Verdict.Go, Slip.Assess(Good).Verdict);
    }

    [Fact]
    public void A_known_nut_tells_when_its_clamp_is_gone_and_what_is_left_then()
    {
        SlipAssessment slip = Slip.Assess(Nut);

        // F 109.69 kN; 72 mm of grip: 72/(400.9·207000) + 1/(207000·24·0.78715·exp(0.62873/3)) mm/N; 0.11792 mm of 1.5 mm pitch.
        Near.Equal(28.30, double.RadiansToDegrees(slip.ClampGoneRad!.Value), Share);
        Assert.True(slip.ClampGone);
        Assert.Contains("The clamp is gone: only your grip holds the tube.", SlipWords.States(slip)[1].What, StringComparison.Ordinal);

        // 0.6·(1 - 406.3/630.2); tan θ = 0.2·905/250 + tan(atan 0.2 - δ)·655/250 = 1.16908; atan of both less 1.67256.
        Near.Equal(0.21317, slip.EndShare, Share);
        Near.Equal(12.32, double.RadiansToDegrees(slip.Here.Checked.EndRad), Share);
        TubeAssessment same = Loosening.Assess(Nut).Tube!;
        Assert.Equal(same.Checked, slip.Here.Checked);
        Assert.Equal(same.EndShare, slip.EndShare);
        Assert.Equal(same.TipReaction.Newtons, SlipAnswer.Of(slip, UnitStyle.Metric).Tube.TipReactionN, 6);
    }

    [Theory]
    [InlineData("dry", 250)]
    [InlineData("greasy", 100)]
    [InlineData("oily", 400)]
    public void The_best_overlap_is_the_same_as_in_loosen(string surface, double overlapMm)
    {
        LooseningRequest asked = Nut with { Surface = surface, Overlap = Length.FromMillimeters(overlapMm) };
        Assert.Equal(Loosening.Assess(asked).Tube!.BestOverlap.Millimeters, Slip.Assess(asked).Best.OverlapMm);
        SlipAssessment alone = Slip.Assess(asked with { BookTorque = null, Thread = null });
        Assert.True(alone.Best.GivesAtN >= alone.StrongN);
        Assert.DoesNotContain(
            alone.Rows, row => row.GivesAtN >= alone.StrongN && row.Checked.HeldRad > alone.Best.Checked.HeldRad);
    }

    private static LooseningRequest Nut => Good with
    {
        BookTorque = Torque.FromNewtonMeters(460),
        Thread = ThreadCatalog.Named("M24x1.5"),
        Condition = "rusted",
    };
}
