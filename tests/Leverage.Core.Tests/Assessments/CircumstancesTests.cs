using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Friction;
using Leverage.Holding;
using Leverage.Levers;
using Leverage.Outcomes;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tubes;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>What is judged besides the parts: stands, hold, what is let loose, each worked a second time by hand.</summary>
public static class CircumstancesTests
{
    private static readonly LooseningRequest Bar = SampleRequests.AxleNut with { Tube = null, Overlap = null };
    private static readonly LooseningRequest Up = Bar with
    {
        HeldBy = [],
        VehicleMass = Mass.FromKilograms(1250),
        WheelLoad = null,
        TyreRadius = null,
        ChockHeight = null,
        OnStands = true,
        On = "brake",
    };

    [Fact]
    public static void A_stand_feels_the_strong_pull_or_with_no_bar_a_strong_hand()
    {
        LooseningAssessment bar = SampleRequests.Judged(Up), none = SampleRequests.Judged(Up with { Bar = null, BarDiameter = null });
        Assert.Equal(bar.Judgement.StrongPullNmm / bar.Lever!.Value.ReachMm, bar.Stands!.Value.PullN, 1e-9);
        Assert.Equal(none.Hand.Quantile(0.9), none.Stands!.Value.PullN, 1e-9);
        Assert.Equal(1250 / 1400.0, bar.Stands.Value.TipsAtN / SampleRequests.Judged(Up with { VehicleMass = null }).Stands!.Value.TipsAtN, 1e-9);
    }

    /// <summary>What a stand carries follows from the mass: where nobody says it, the answer says what was taken. In the air no ground and no tyre counts.</summary>
    [Fact]
    public static void On_stands_the_mass_is_told_where_it_was_assumed_and_nothing_of_the_ground_is()
    {
        static IEnumerable<AssumptionKind> Taken(LooseningRequest request) => SampleRequests.Judged(request).Setup.Assumed.Select(one => one.Kind)
            .Where(kind => kind is AssumptionKind.VehicleMass or AssumptionKind.Ground or AssumptionKind.TyreRadius or AssumptionKind.WheelLoad);
        Assert.Empty(Taken(Up));
        Assert.Equal([AssumptionKind.VehicleMass], Taken(Up with { VehicleMass = null }));
        Assert.Equal([AssumptionKind.TyreRadius], Taken(Up with { HeldBy = [Restraint.Brake] }));
        Assert.Equal([AssumptionKind.Ground, AssumptionKind.WheelLoad, AssumptionKind.TyreRadius], Taken(Up with { OnStands = false, HeldBy = [Restraint.Brake] }));
    }

    /// <summary>15 N·m at half a metre is 30 N: far less than a stand feels.</summary>
    [Theory]
    [InlineData("brake", null, StandRisk.Small)]
    [InlineData("hub", null, StandRisk.Stop)]
    [InlineData("brake", Restraint.Helper, StandRisk.Stop)]
    [InlineData(null, null, StandRisk.Small)]
    [InlineData("flange", null, StandRisk.Small)]
    [InlineData("flange", Restraint.Gear, StandRisk.Small)]
    public static void A_wheel_that_turns_in_the_air_is_a_stop_however_small_the_pull(string? on, Restraint? by, StandRisk risk)
    {
        LooseningRequest small = Up with { On = on, BookTorque = Torque.FromNewtonMeters(15), Condition = "clean", Thread = null, HeldBy = by is { } one ? [one] : null };
        Assert.Equal(risk, SampleRequests.Judged(small).Stands!.Value.Risk);
    }

    /// <summary>Hands that lift take that much off the wheel, never more than the nut likely takes; any other push takes nothing.</summary>
    [Fact]
    public static void Lifting_takes_load_off_the_wheel()
    {
        LooseningAssessment lift = SampleRequests.Judged(Bar with { Stance = "lift-legs" }), push = SampleRequests.Judged(Bar);
        LooseningAssessment easy = SampleRequests.Judged(Bar with { Stance = "lift-legs", BookTorque = Torque.FromNewtonMeters(40) });
        LooseningAssessment none = SampleRequests.Judged(Bar with { Stance = "lift-legs", Bar = null, BarDiameter = null });
        Assert.Equal(Total(lift, lift.Hand.Quantile(0.9)), lift.Hold!.Capacity.TotalNmm, 1e-6);
        Assert.Equal(Total(easy, easy.Nut.LikelyNmm / easy.Lever!.Value.ReachMm), easy.Hold!.Capacity.TotalNmm, 1e-6);
        Assert.Equal(Total(none, none.Hand.Quantile(0.5)), none.Hold!.Capacity.TotalNmm, 1e-6);
        Assert.Equal(Total(push, 0), push.Hold!.Capacity.TotalNmm, 1e-6);

        static double Total(LooseningAssessment of, double liftN) => HoldCapacity.Of(of.Setup.Hold!, liftN).TotalNmm;
    }

    /// <summary>A bar is a cantilever, E 205 GPa and I π·d⁴/64; energy F·δ/2. Two arms are a tenth of the body; a push goes on for a quarter of a second.</summary>
    [Fact]
    public static void What_is_let_loose_is_the_bar_s_spring_or_the_push_whichever_is_faster()
    {
        LooseningAssessment a = SampleRequests.Judged(Bar);
        double reach = a.Lever!.Value.ReachMm, force = a.Judgement.StrongPullNmm / reach, share = a.Nut.RunningShare;
        double joules = force * force * Math.Pow(reach, 3) / (6 * 205_000 * Math.PI * Math.Pow(20, 4) / 64) / 1000;
        Near.Equal(joules, a.Release!.Energy!.Value.Joules, 1e-9);
        Near.Equal(Math.Max(Math.Sqrt(2 * joules * (1 - share * share) / 8.2), force * (1 - share) * 0.25 / 82), a.Release.Turns.MetersPerSecond, 1e-9);
        Near.Equal(Math.Max(Math.Sqrt(2 * joules / 8.2), force * 0.25 / 82), a.Release.Snaps.MetersPerSecond, 1e-9);
    }

    /// <summary>A tube no one knows the wall of stores nothing: only the bar up to its mouth bends.</summary>
    [Fact]
    public static void A_tube_stores_what_its_own_section_bends()
    {
        LooseningAssessment thick = SampleRequests.Judged(SampleRequests.AxleNut);
        LooseningAssessment bore = SampleRequests.Judged(SampleRequests.AxleNut with { Tube = new TubeText(Length.FromMillimeters(1000), null, null, Length.FromMillimeters(27.3)) });
        Assert.True(thick.Release!.Energy > bore.Release!.Energy && bore.Release.Energy > Energy.Zero);
    }

    /// <summary>33.7 × 3.2 mm tube, 20 mm bar, E 205 GPa: the energy is F·δ/2 of the two as one beam; both overlap from the mouth to the tip.</summary>
    [Fact]
    public static void Tube_and_bar_bend_as_one_beam()
    {
        LooseningAssessment a = SampleRequests.Judged(SampleRequests.AxleNut);
        LeverGeometry lever = a.Lever!.Value;
        double force = a.Judgement.StrongPullNmm / lever.ReachMm;
        double tube = 205_000 * Math.PI * (Math.Pow(33.7, 4) - Math.Pow(27.3, 4)) / 64, bar = 205_000 * Math.PI * Math.Pow(20, 4) / 64;
        double bends = LeverDeflection.AtHand(force, new LeverBeam(lever.ReachMm, lever.HandToTipMm, 250, tube, bar));
        Near.Equal(force * bends / 2 / 1000, a.Release!.Energy!.Value.Joules, 1e-9);
    }

    /// <summary>160 mm of tube, 145 of them over a stub of 150: the hands stand 110 mm out, on the overlap, and what lies behind them bends nothing.</summary>
    [Fact]
    public static void Hands_on_the_overlap_bend_the_bar_up_to_them()
    {
        LooseningAssessment a = SampleRequests.Judged(SampleRequests.AxleNut with
        {
            Bar = Length.FromMillimeters(150),
            StraightHandle = Length.FromMillimeters(145),
            HandsIn = Length.FromMillimeters(55),
            Tube = new TubeText(Length.FromMillimeters(160), Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)),
            Overlap = Length.FromMillimeters(145),
        });
        Assert.Equal((110.0, 0.0), (Math.Round(a.Lever!.Value.ReachMm, 9), a.Lever.Value.HandToTipMm));
        double force = a.Judgement.StrongPullNmm / 110, bar = 205_000 * Math.PI * Math.Pow(20, 4) / 64;
        Near.Equal(force * LeverDeflection.AtHand(force, new LeverBeam(110, 0, 110, 1e9, bar)) / 2 / 1000, a.Release!.Energy!.Value.Joules, 1e-9);
    }

    /// <summary>A tube that must stay on to the end of the swing needs there what a pull that began there needs, with the torque then left.</summary>
    [Fact]
    public static void The_end_of_the_swing_is_reached_by_the_way_from_its_start()
    {
        LooseningSetup setup = SampleRequests.Judged(SampleRequests.AxleNut).Setup;
        LeverGeometry lever = SampleRequests.Judged(SampleRequests.AxleNut).Lever!.Value;
        var way = new List<double>();
        Sliding Of(double start, double end) => Circumstances.SlidingOf(FrictionRange.About(0.3), setup.Bar!, setup.Tube!, lever, start, end, (turn, _) =>
        {
            way.Add(turn);
            return 1;
        });
        Near.Equal(Of(0.5, 0.5).LeastToStay, Of(0.2, 0.5).LeastAsItTurns!(300e3), 1e-12);
        Assert.Equal(0.3, Assert.Single(way), 1e-12);
        Assert.Null(Of(0.5, 0.5).LeastAsItTurns);
    }

    [Fact]
    public static void The_nut_s_figures_are_its_quantiles_and_an_effort_is_by_the_likely_force()
    {
        LooseningAssessment a = SampleRequests.Judged(Bar);
        Assert.Equal((0.1, 0.5, 0.9), (Below(a.Nut.LowNmm), Below(a.Nut.LikelyNmm), Below(a.Nut.HighNmm)));
        Near.Equal(2, a.Hand.Effort(2 * a.Hand.Quantile(0.5) * 700, 700), 1e-12);

        double Below(double torque) => Math.Round(1 - a.Nut.Spread.Survival(torque), 9);
    }

    /// <summary>A locknut's own grip is taken off what like nuts came at, and put on again: oil does nothing to it.</summary>
    [Fact]
    public static void A_soak_leaves_a_locknut_s_grip_as_it_is()
    {
        Fastener dry = SampleRequests.Judged(Bar).Setup.Fastener;
        NutFigures plain = NutFigures.Soaked(dry with { CameNmm = [900e3, 700e3] });
        NutFigures gripped = NutFigures.Soaked(dry with { CameNmm = [940e3, 740e3], Prevailing = Torque.FromNewtonMeters(40) });
        Near.Equal(plain.LikelyNmm + 40e3, gripped.LikelyNmm, 1e-6);
        Near.Equal(plain.HighNmm + 40e3, gripped.HighNmm, 1e-6);
    }

    /// <summary>What the ladder ranks by is what the integral gives where nothing breaks and no weight caps the hands.</summary>
    [Theory]
    [InlineData("rusted", 600)]
    [InlineData("used", 450)]
    [InlineData("clean", 900)]
    public static void A_rank_s_chance_is_that_of_the_pull_with_nothing_that_breaks(string condition, double barMm)
    {
        LooseningRequest request = Bar with { Condition = condition, Bar = Length.FromMillimeters(barMm), Stance = "stand-pull" };
        LooseningAssessment a = SampleRequests.Judged(request);
        OutcomeShares alone = CompetingRisks.Split(a.Nut.Spread, a.Hand.Torque(a.Lever!.Value.ReachMm), [], null, []);
        Assert.Equal(alone.ComesLoose, LadderRank.Reaches(a.Nut, request), 0.003);
        Assert.Equal(0, LadderRank.Reaches(a.Nut, request with { Bar = Length.FromMillimeters(95) }));
        Assert.Equal(0, LadderRank.Reaches(a.Nut, request with { Bar = null, BarDiameter = null }));
    }
}
