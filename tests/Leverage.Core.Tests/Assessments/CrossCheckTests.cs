using Leverage.Assessments;
using Leverage.Holding;
using Leverage.Outcomes;
using Leverage.Reading;
using Leverage.Requests;
using Leverage.Tests.Outcomes;
using Leverage.Threads;
using UnitsNet;

namespace Leverage.Tests.Assessments;

/// <summary>The draws a person can ask for draw all that was judged: tube, hold, corners and stud too.</summary>
public static class CrossCheckTests
{
    private const int Draws = 100_000;

    public static TheoryData<string> SetUps => ["tube and hold", "short and oily", "corners", "by sight", "stud"];

    [Theory]
    [MemberData(nameof(SetUps))]
    public static void Every_chance_drawn_is_the_one_judged(string name)
    {
        LooseningAssessment assessment = SampleRequests.Judged(name switch
        {
            "tube and hold" => SampleRequests.AxleNut with { HeldBy = [Restraint.Brake] },
            "short and oily" => SampleRequests.AxleNut with
            {
                HeldBy = null,
                VehicleMass = null,
                WheelLoad = null,
                TyreRadius = null,
                ChockHeight = null,
                Overlap = Length.FromMillimeters(400),
                Surface = "oily",
            },
            "corners" => SampleRequests.BareBar with
            {
                Thread = ThreadCatalog.Named("M12"),
                AcrossFlats = Length.FromMillimeters(18),
                Tool = ToolKind.Open,
                Engaged = 0.5,
            },
            "by sight" => new LooseningRequest
            {
                AcrossFlats = Length.FromMillimeters(32),
                On = "hub",
                Condition = "rusted",
                Drive = "1/2",
                Bar = Length.FromMillimeters(600),
            },
            _ => SampleRequests.BareBar with { Thread = ThreadCatalog.Named("M10"), Grade = "8.8", BookTorque = Torque.FromNewtonMeters(70) },
        });
        CrossCheck drawn = CrossCheck.Of(assessment, Draws, 3)!;
        double[] judged = RandomPull.Ends(assessment.Judgement.Shares);
        double[] found = RandomPull.Ends(drawn.Shares);
        Assert.All(judged.Zip(found), pair => Assert.Equal(pair.First, pair.Second, 4 * drawn.Error(Math.Min(1, pair.First)) + 5e-5));
        Assert.True(judged.Count(one => one > 0.005) > 1);
        Assert.Equal(1, drawn.Shares.ComesLoose + drawn.Shares.StaysTight + drawn.Breaks, 1e-9);
        int loose = (int)(found[0] * Draws);
        double turning = assessment.Judgement.Shares.SlidesAsItTurns;
        Assert.Equal(turning, drawn.Shares.SlidesAsItTurns, 4 * Math.Sqrt(turning * (1 - turning) / loose) + 5e-5);
    }

    [Fact]
    public static void A_nut_that_has_shown_something_is_not_drawn()
    {
        LooseningAssessment held = SampleRequests.Judged(SampleRequests.AxleNut with { Held = Torque.FromNewtonMeters(500) });
        Assert.Contains("leave out", Assert.Throws<InputException>(() => CrossCheck.Of(held, 10, 1)).Message, StringComparison.Ordinal);
        Assert.Null(CrossCheck.Of(SampleRequests.Judged(SampleRequests.AxleNut with { Tube = null, Overlap = null, Bar = null, BarDiameter = null }), 10, 1));
    }
}
