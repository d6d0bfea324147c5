using Leverage.Assessments;
using Leverage.BreakLoose;
using Leverage.Requests;
using Leverage.Wording;
using UnitsNet;

namespace Leverage.Tests.Assessments;

public sealed class WhatMattersTests
{
    private static readonly LooseningRequest Fair = new()
    {
        BookTorque = Torque.FromNewtonMeters(200),
        Thread = Leverage.Threads.ThreadCatalog.Named("M16"),
        Condition = "used",
        Bar = Length.FromMillimeters(600),
        BarDiameter = Length.FromMillimeters(20),
        Drive = "3/4",
        AcrossFlats = Length.FromMillimeters(24),
    };

    [Fact]
    public void Without_a_bar_nothing_can_be_told()
    {
        Assert.Empty(Swings(Fair with { Bar = null, BarDiameter = null }));
    }

    [Fact]
    public void Each_input_stands_once_and_the_widest_first()
    {
        IReadOnlyList<Sensitivity> swings = Swings(Fair);
        Assert.Equal(swings.Count, swings.Select(s => s.Input).Distinct().Count());
        Assert.True(swings[0].ComesLooseWidth > 0.05);
        Assert.Equal(swings.OrderByDescending(s => s.ComesLooseWidth).Select(s => s.Input), swings.Select(s => s.Input));
        Assert.All(swings, s => Assert.NotEmpty(SensitivityWords.Learn(s.Input)));
    }

    [Fact]
    public void Where_no_input_moves_the_chance_the_reach_needed_decides()
    {
        IReadOnlyList<Sensitivity> swings = Swings(Fair with { Thread = null, Grade = null, BookTorque = Torque.FromNewtonMeters(800), Condition = "rusted" });
        Assert.True(swings.Max(s => s.ComesLooseWidth) < 0.05);
        Assert.Equal(swings.OrderByDescending(s => s.ReachWidthMm).Select(s => s.Input), swings.Select(s => s.Input));
    }

    [Fact]
    public void Reach_needed_moves_in_proportion_to_torque_and_against_force()
    {
        LooseningAssessment now = Assessed(Fair);
        Sensitivity book = Named(now, UncertainInput.StartTorque);
        Assert.Equal(1.1 / 0.9, book.ReachHighMm / book.ReachLowMm, 1e-9);
        Sensitivity force = Named(now, UncertainInput.HandForce);
        Assert.Equal(now.Hand.Quantile(0.9) / now.Hand.Quantile(0.1), force.ReachLowMm / force.ReachHighMm, 1e-9);
        Assert.Equal(now.Nut.LikelyNmm / now.Hand.Quantile(0.1), force.ReachLowMm, 1e-6);
        Sensitivity growth = Named(now, UncertainInput.Growth);
        Assert.Equal(1.82 / 1.0, growth.ReachHighMm / growth.ReachLowMm, 0.01);
    }

    [Fact]
    public void Each_input_moves_the_chance_the_way_a_mechanic_expects()
    {
        LooseningAssessment now = Assessed(Fair);
        Assert.All((UncertainInput[])[UncertainInput.Growth, UncertainInput.StartTorque], input =>
            Assert.True(Named(now, input).ComesLooseHigh < Named(now, input).ComesLooseLow, input.ToString()));
        Assert.All((UncertainInput[])[UncertainInput.HandForce, UncertainInput.ToolStrength, UncertainInput.HandPlace], input =>
            Assert.True(Named(now, input).ComesLooseHigh > Named(now, input).ComesLooseLow, input.ToString()));
    }

    [Fact]
    public void A_held_input_gives_what_a_set_up_without_its_spread_gives()
    {
        LooseningAssessment now = Assessed(Fair);
        Growth growth = now.Setup.Fastener.Condition.Growth;
        var held = now.Setup.Fastener with
        {
            Condition = now.Setup.Fastener.Condition with { Growth = new Growth(growth.Quantile(0.9), 0.01) },
        };
        LooseningAssessment changed = LooseningAssessor.Assess(now.Setup with { Fastener = held });
        Assert.Equal(changed.Judgement.ComesLoose, Named(now, UncertainInput.Growth).ComesLooseHigh, 1e-6);
    }

    [Fact]
    public void A_measured_force_matters_less_than_a_table_s()
    {
        LooseningAssessment table = Assessed(Fair);
        LooseningAssessment measured = Assessed(Fair with { Force = Force.FromNewtons(table.Hand.Quantile(0.5)) });
        Assert.True(Named(measured, UncertainInput.HandForce).ComesLooseWidth < 0.6 * Named(table, UncertainInput.HandForce).ComesLooseWidth);
    }

    [Fact]
    public void The_bar_s_diameter_and_the_friction_matter_only_where_they_are_not_known_or_used()
    {
        Assert.DoesNotContain(Swings(Fair), s => s.Input == UncertainInput.BarDiameter);
        Assert.Contains(Swings(Fair with { BarDiameter = null }), s => s.Input == UncertainInput.BarDiameter);
        Assert.Contains(Swings(Fair), s => s.Input == UncertainInput.Friction);
        Assert.DoesNotContain(Swings(Fair with { Condition = "rusted" }), s => s.Input == UncertainInput.Friction);
    }

    private static LooseningAssessment Assessed(LooseningRequest request) =>
        LooseningAssessor.Assess(LooseningDefaults.Complete(request));

    private static IReadOnlyList<Sensitivity> Swings(LooseningRequest request) => WhatMatters.Of(Assessed(request));

    private static Sensitivity Named(LooseningAssessment assessment, UncertainInput input) =>
        WhatMatters.Of(assessment).Single(s => s.Input == input);
}
