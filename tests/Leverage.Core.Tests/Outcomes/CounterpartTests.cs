using Leverage.BreakLoose;
using Leverage.Outcomes;
using Leverage.Probability;
using MathNet.Numerics.Distributions;

namespace Leverage.Tests.Outcomes;

/// <summary>What was done to a nut changes its cases, never which nut it is: each meets the one of its own place.</summary>
public sealed class CounterpartTests
{
    /// <summary>Each case is split in two alike, or has held as much: what follows must not depend on how the same nut is written.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(250e3)]
    public void A_nut_of_twice_as_many_cases_is_the_same_nut(double held)
    {
        (double Weight, double Nmm)[] parts = [(0.3, 300e3), (0.5, 600e3), (0.2, 1500e3)];
        BreakLooseTorque few = PullSequenceLaws.Cases(held, parts);
        BreakLooseTorque many = PullSequenceLaws.Cases(held, [.. parts.SelectMany(part => Enumerable.Repeat((part.Weight / 2, part.Nmm), 2))]);
        (string, Risk)[] risks = [("square", new Risk(RiskKind.ToolGives, new Strength(800e3, 0.1)))];
        ByThen[] Of(BreakLooseTorque first, BreakLooseTorque second) =>
            [.. PullSequence.Run([new Pull(first, new Strength(400e3, 0.2), risks), new Pull(second, new Strength(900e3, 0.2), risks)])];
        ByThen alike = Of(few, few)[1];
        Assert.InRange(alike.ComesLoose, 0.5, 0.9);
        Assert.InRange(alike.Breaks, 0.05, 0.4);
        foreach (ByThen other in (ByThen[])[Of(few, many)[1], Of(many, few)[1], Of(many, many)[1]])
        {
            Assert.Equal(alike.ComesLoose, other.ComesLoose, 1e-6);
            Assert.Equal(alike.Breaks, other.Breaks, 1e-6);
        }
    }

    /// <summary>Half of the nuts are easy, half hard; soaked they are a little easier, and written in more cases. The hard ones stay the hard ones.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(250e3)]
    public void A_case_meets_its_own_kind_in_a_nut_of_more_cases(double held)
    {
        BreakLooseTorque dry = PullSequenceLaws.Cases(held, (0.5, 300e3), (0.5, 3000e3));
        BreakLooseTorque soaked = PullSequenceLaws.Cases(held, (0.1, 200e3), (0.4, 200e3), (0.25, 2000e3), (0.25, 2000e3));
        ByThen[] states = [.. PullSequence.Run([new Pull(dry, new Strength(900e3, 0.01), []), new Pull(soaked, new Strength(900e3, 0.01), [])])];

        // The first pull takes all of the easy cases; those that are left are the hard ones, and take 2000.
        Assert.Equal(states[0].ComesLoose, states[1].ComesLoose, 1e-6);
        states = [.. PullSequence.Run([new Pull(soaked, new Strength(900e3, 0.01), []), new Pull(dry, new Strength(900e3, 0.01), [])])];
        Assert.Equal(states[0].ComesLoose, states[1].ComesLoose, 1e-6);
    }

    /// <summary>Of two halves the first has its middle at a quarter of all: that is the hard part of a nut of which a fifth is easy.</summary>
    [Fact]
    public void A_case_meets_the_one_at_the_middle_of_its_own_place()
    {
        BreakLooseTorque first = PullSequenceLaws.Cases(0, (0.5, 300e3), (0.5, 300e3)), other = PullSequenceLaws.Cases(0, (0.2, 100e3), (0.3, 3000e3), (0.5, 3000e3));
        ByThen then = PullSequence.Run([new Pull(first, new Strength(1e3, 0.01), []), new Pull(other, new Strength(900e3, 0.01), [])])[1];
        Assert.Equal(0, then.ComesLoose, 1e-6);
    }

    /// <summary>Nine in ten were easy, and most of those have come: by hand, of what has held 400 N·m the easy part comes and the hard part stays.</summary>
    [Fact]
    public void What_has_held_is_weighed_by_what_is_left_when_it_meets_a_nut_of_more_cases()
    {
        BreakLooseTorque dry = PullSequenceLaws.Cases(400e3, (0.9, 300e3), (0.1, 3000e3));
        BreakLooseTorque split = PullSequenceLaws.Cases(400e3, (0.2, 300e3), (0.3, 300e3), (0.4, 300e3), (0.1, 3000e3));
        double easy = 0.9 * Normal.CDF(0, 1, -Math.Log(400.0 / 300) / 0.15);
        foreach (var (first, second) in ((BreakLooseTorque, BreakLooseTorque)[])[(dry, split), (split, dry), (dry, dry), (split, split)])
        {
            ByThen then = PullSequence.Run([new Pull(first, new Strength(1e3, 0.01), []), new Pull(second, new Strength(900e3, 0.01), [])])[1];
            Assert.Equal(easy / (easy + 0.1), then.ComesLoose, 1e-4);
        }
    }
}
