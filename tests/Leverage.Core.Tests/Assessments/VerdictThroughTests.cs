using Leverage.Reading;
using Leverage.Requests;
using Leverage.Assessments;
using Leverage.Holding;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>Each rule at both sides of its edge through the whole assessment: one thing of a set-up moved until it turns.</summary>
public sealed class VerdictThroughTests
{
    [Theory]
    [InlineData(1.001, false)]
    [InlineData(0.999, true)]
    public void Stop_when_a_link_is_below_the_likely_demand(double overDemand, bool fires) =>
        Rule(BarStanding(overDemand * Demand.DemandLikelyNmm), VerdictRules.LinkBelowLikely, fires, Verdict.Stop);

    [Theory]
    [InlineData(1.001, false)]
    [InlineData(0.999, true)]
    public void Care_when_a_link_is_below_the_hard_demand(double overDemand, bool fires) =>
        Rule(BarStanding(overDemand * Demand.DemandHighNmm), VerdictRules.LinkBelowHigh, fires, Verdict.Care);

    [Theory]
    [InlineData(1.001, false)]
    [InlineData(0.999, true)]
    public void Stop_when_the_hold_is_below_the_likely_demand(double overDemand, bool fires) =>
        Rule(Held(overDemand * Demand.DemandLikelyNmm), VerdictRules.HoldBelowLikely, fires, Verdict.Stop);

    [Theory]
    [InlineData(1.001, false)]
    [InlineData(0.999, true)]
    public void Care_when_the_hold_is_below_the_hard_demand(double overDemand, bool fires) =>
        Rule(Held(overDemand * Demand.DemandHighNmm), VerdictRules.HoldBelowHigh, fires, Verdict.Care);

    [Theory]
    [InlineData(-0.01, false)]
    [InlineData(0.01, true)]
    public void Stop_when_the_swing_goes_below_the_angle_that_holds(double beyondDeg, bool fires)
    {
        double held = double.RadiansToDegrees(Asked.Judged(Tubed).Tube!.Checked.HeldRad);
        Rule(Tubed with { PastSquare = Angle.FromDegrees(held + beyondDeg) }, VerdictRules.SlidesWhileHeld, fires, Verdict.Stop);
    }

    [Theory]
    [InlineData(-0.01, false)]
    [InlineData(0.01, true)]
    public void Care_when_the_swing_goes_below_the_angle_at_break_loose(double beyondDeg, bool fires)
    {
        double release = double.RadiansToDegrees(Asked.Judged(Tubed).Tube!.Checked.ReleaseRad);
        Rule(Tubed with { PastSquare = Angle.FromDegrees(release + beyondDeg) }, VerdictRules.SlidesAtRelease, fires, Verdict.Care);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Stop_when_the_vehicle_is_on_stands(bool onStands)
    {
        LooseningRequest held = Held(8e6);
        Rule(held with { OnStands = onStands, HeldBy = [Restraint.Bar], StudBarDiameter = Length.FromMillimeters(60) },
            VerdictRules.OnStands, onStands, Verdict.Stop);
    }

    [Theory]
    [InlineData(1.001, false)]
    [InlineData(0.999, true)]
    public void Care_when_something_gives_in_more_than_one_case_of_twenty(double beyond, bool fires)
    {
        double edge = Edge(mpa => Asked.Judged(Yielding(mpa)).Judgement.Gives - 0.05, 50, 2000);
        Rule(Yielding(beyond * edge), VerdictRules.MayGive, fires, Verdict.Care);
    }

    [Theory]
    [InlineData(1.001, false)]
    [InlineData(0.999, true)]
    public void Care_when_it_stays_stuck_in_more_than_half_of_all_cases(double beyond, bool fires)
    {
        double edge = Edge(n => Asked.Judged(Pulled(n)).Judgement.StaysTight - 0.5, 20, 2000);
        Rule(Pulled(beyond * edge), VerdictRules.MayStayStaysTight, fires, Verdict.Care);
    }

    private static Judgement Demand => Asked.Judged(Asked.BareBar).Judgement;

    /// <summary>A snug tube that nothing else speaks against.</summary>
    private static LooseningRequest Tubed { get; } = Asked.BareBar with
    {
        BarYield = Pressure.FromMegapascals(5000),
        Bar = Length.FromMillimeters(500),
        Tube = new TubeText(Length.FromMillimeters(700), Length.FromMillimeters(33.7), Length.FromMillimeters(6.3)),
        TubeYield = Pressure.FromMegapascals(900),
        Overlap = Length.FromMillimeters(250),
    };

    /// <summary>The rule fires or not; where it fires the verdict is at least its own, where not, nothing worse fires.</summary>
    private static void Rule(LooseningRequest request, VerdictRules rule, bool fires, Verdict verdict)
    {
        LooseningAssessment assessment = Asked.Judged(request);
        Assert.Equal(fires, assessment.Judgement.Rules.HasFlag(rule));
        Assert.True(fires ? assessment.Verdict == verdict : assessment.Verdict < verdict || verdict == Verdict.Care);
    }

    private static LooseningRequest Yielding(double mpa) => Asked.BareBar with { BarYield = Pressure.FromMegapascals(mpa) };

    /// <summary>A bar of the yield that folds at a torque, σ·d³/6 at 20 mm.</summary>
    private static LooseningRequest BarStanding(double torqueNmm) => Yielding(torqueNmm / (8000.0 / 6));

    private static LooseningRequest Pulled(double newtons) => Asked.BareBar with
    {
        BarYield = Pressure.FromMegapascals(5000),
        Force = Force.FromNewtons(newtons),
    };

    /// <summary>A helper on the foot brake of a rear wheel, the engine off: 2.44·m·r·0.4/2 with r 300 mm.</summary>
    private static LooseningRequest Held(double torqueNmm) => Asked.BareBar with
    {
        BarYield = Pressure.FromMegapascals(5000),
        HeldBy = [Restraint.Helper],
        VehicleMass = Mass.FromKilograms(torqueNmm / (0.488 * 300)),
    };

    private static double Edge(Func<double, double> excess, double low, double high)
    {
        for (int i = 0; i < 40; i++)
        {
            double middle = Math.Sqrt(low * high);
            (low, high) = excess(middle) > 0 ? (middle, high) : (low, middle);
        }

        return Math.Sqrt(low * high);
    }
}
