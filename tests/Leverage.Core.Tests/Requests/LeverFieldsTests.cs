using Leverage.Assessments;
using Leverage.LoadPath;
using Leverage.Reading;
using Leverage.Requests;
using UnitsNet;

namespace Leverage.Tests.Requests;

/// <summary>What stands between bar and socket, and the room there is.</summary>
public sealed class LeverFieldsTests
{
    private static readonly LooseningRequest Nut = new()
    {
        BookTorque = Torque.FromNewtonMeters(100),
        Drive = "3/4",
        Bar = Length.FromMillimeters(600),
        AcrossFlats = Length.FromMillimeters(21),
    };

    [Theory]
    [InlineData("3/4-1/2", "1/2")]
    [InlineData("3/4-1/2, 1/2-3/8", "1/2,3/8")]
    [InlineData("20mm-12.5mm", "1/2")]
    public void Adapters_are_read_from_the_bar_on(string text, string socketSides)
    {
        LooseningRequest request = LooseningFields.Adapters.Read(Nut, text);
        Assert.Equal(socketSides, string.Join(',', request.Adapters));
        Assert.Equal(request.Adapters.Count, Loosening.Assess(request).Links.Count(link => link.Limit.Kind == LinkKind.Adapter));
        Assert.Equal("3/4", LooseningFields.Adapters.Read(Nut with { Drive = null }, text).Drive);
    }

    [Theory]
    [InlineData("1/2-3/8")]
    [InlineData("3/4-1/2,3/4-1/2")]
    [InlineData("3/4")]
    [InlineData("3/4-5/8")]
    [InlineData("3/4-1/2-3/8")]
    public void Adapters_that_do_not_go_together_are_refused(string text) =>
        Assert.Equal("adapters", Assert.Throws<InputException>(() => LooseningFields.Adapters.Read(Nut, text)).Subject);

    [Fact]
    public void An_extension_is_a_square_more_and_stands_the_lever_off()
    {
        LooseningAssessment asked = Loosening.Assess(Nut with { Extension = Length.FromMillimeters(125), StandOff = Length.FromMillimeters(40) });
        Assert.Equal(165, asked.Setup.StandOff!.Value.Millimeters, 9);
        Assert.Equal(
            asked.Links.Single(link => link.Limit.Kind == LinkKind.Square).Limit.LimitNmm, asked.Links.Single(link => link.Limit.Kind == LinkKind.Extension).Limit.LimitNmm);
        LooseningAssessment without = Loosening.Assess(Nut with { StandOff = Length.FromMillimeters(40) });
        Assert.Equal(40, without.Setup.StandOff!.Value.Millimeters, 9);
        Assert.DoesNotContain(without.Links, link => link.Limit.Kind == LinkKind.Extension);
        Assert.Equal("extension", Assert.Throws<InputException>(() => Loosening.Assess(Nut with { Drive = null, Extension = Length.FromMillimeters(125) })).Subject);
    }

    [Fact]
    public void Too_little_room_is_told()
    {
        static bool Told(double roomMm) => Leverage.Wording.WatchWords
            .Of(Loosening.Assess(Nut with { Room = Length.FromMillimeters(roomMm) }), Leverage.Wording.UnitStyle.Metric)
            .Any(line => line.StartsWith("There is room for", StringComparison.Ordinal));
        double lever = Loosening.Assess(Nut).Setup.LeverLength!.Value.Millimeters;
        Assert.True(Told(lever - 1));
        Assert.False(Told(lever));
    }
}
