using System.Net;
using System.Text.Json;

namespace Leverage.Page.Tests;

public sealed class AnswerTests(PageUnderTest page) : IClassFixture<PageUnderTest>
{
    public static TheoryData<string> Setups => new(
        Answering.Choices.Example,
        "book-torque=340ft-lb&thread=1/2-20&grade=SAE 8&condition=rusted&hex=3/4in&tool=ring&bar=14in&stance=stand-pull&person=woman&body=150lb",
        "thread=M12&left-hand=yes&soaked=yes&heat=nut&by=150K&drive=1/2&bar=450mm&friction=0.12&prevailing=12Nm",
        "book-torque=200Nm&hex=30mm&drive=1/2&bar=500mm&bar-diameter=18mm&bar-yield=800MPa&bar-taper=0.5deg&tube=jack:900mm&bore=26mm&handle=oily&force=400N",
        "book-torque=250Nm&drive=3/4&bar=500mm&tube=1.66x0.14x48in&overlap=9in&grip-friction=0.15&below-level=10deg&held-by=old-brake,gear,bar&mass=3200lb&hold-bar=30mm&side=left&half-shafts=one&ground=gravel",
        "book-torque=120Nm&bar=400mm&on-stands=yes&wheel-load=3000N&tyre-radius=310mm&held-by=none&mass=1200kg");

    [Theory]
    [MemberData(nameof(Setups))]
    public async Task The_page_answers_what_the_command_line_answers_to_the_last_digit(string query)
    {
        var (status, body) = await page.Read($"/loosen?{query}");
        Assert.True(status == HttpStatusCode.OK, body);
        using var document = JsonDocument.Parse(body);
        string[] expected = [.. CommandLine.Values(CommandLine.Loosen(query))];
        Assert.Equal(expected, CommandLine.Values(document.RootElement.GetProperty("answer")));
        Assert.True(expected.Length > 30);
    }

    [Fact]
    public async Task The_example_is_a_go_that_each_slider_can_turn()
    {
        Assert.Equal("go", await Verdict(PageUnderTest.Example));
        Assert.Equal("stop", await Verdict(PageUnderTest.Example.Replace("overlap=400mm", "overlap=100mm", StringComparison.Ordinal)));
        Assert.Equal("care", await Verdict(PageUnderTest.Example.Replace("below-level=20deg", "below-level=34deg", StringComparison.Ordinal)));
        Assert.Equal("stop", await Verdict(PageUnderTest.Example.Replace("below-level=20deg", "below-level=45deg", StringComparison.Ordinal)));
        Assert.Equal("stop", await Verdict($"{PageUnderTest.Example}&grip-friction=0.08".Replace("&handle=dry", "", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Units_change_the_words_and_leave_the_numbers()
    {
        using var metric = JsonDocument.Parse((await page.Read($"/loosen?{PageUnderTest.Example}")).Body);
        using var us = JsonDocument.Parse((await page.Read($"/loosen?{PageUnderTest.Example}&units=us")).Body);
        Assert.Equal(
            metric.RootElement.GetProperty("answer").GetProperty("breakaway").GetRawText(),
            us.RootElement.GetProperty("answer").GetProperty("breakaway").GetRawText());
        Assert.Contains("lbf·ft", us.RootElement.GetProperty("words").GetProperty("title").GetString(), StringComparison.Ordinal);
        Assert.Contains("{}in", us.RootElement.GetProperty("sliders").GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_charts_in_one_page_share_no_names()
    {
        using var document = JsonDocument.Parse((await page.Read($"/loosen?{PageUnderTest.Example}")).Body);
        JsonElement drawings = document.RootElement.GetProperty("drawings");
        string[] window = Names(drawings.GetProperty("window").GetString()!);
        string[] side = Names(drawings.GetProperty("side").GetString()!);
        Assert.Empty(window.Intersect(side, StringComparer.Ordinal));
        Assert.DoesNotContain("style=", drawings.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_lesson_asks_six_questions_with_the_learners_own_numbers()
    {
        using var document = JsonDocument.Parse((await page.Read($"/lesson-steps?{PageUnderTest.Example}")).Body);
        JsonElement steps = document.RootElement.GetProperty("steps");
        using var loosened = JsonDocument.Parse((await page.Read($"/loosen?{PageUnderTest.Example}")).Body);
        JsonElement tube = loosened.RootElement.GetProperty("answer").GetProperty("tube");
        Assert.Equal(6, steps.GetArrayLength());
        Assert.Equal(loosened.RootElement.GetProperty("answer").GetProperty("lever").GetProperty("handForceLikelyN").GetDouble(), steps[0].GetProperty("answer").GetDouble(), 6);
        Assert.Equal(tube.GetProperty("tipReactionN").GetDouble(), steps[1].GetProperty("answer").GetDouble(), 6);
        Assert.Equal(0.2 * (tube.GetProperty("tipReactionN").GetDouble() + tube.GetProperty("mouthReactionN").GetDouble()), steps[2].GetProperty("answer").GetDouble(), 6);
        Assert.Equal(tube.GetProperty("slipAngleDeg").GetDouble(), steps[3].GetProperty("answer").GetDouble(), 6);
        Assert.Equal(tube.GetProperty("slipAngleAtReleaseDeg").GetDouble(), steps[4].GetProperty("answer").GetDouble(), 6);
    }

    [Fact]
    public async Task No_figure_of_the_lesson_gives_its_answer_away()
    {
        using var document = JsonDocument.Parse((await page.Read($"/lesson-steps?{PageUnderTest.Example}")).Body);
        foreach (int step in (int[])[1, 2, 3, 4])
        {
            JsonElement asked = document.RootElement.GetProperty("steps")[step];
            string figure = asked.GetProperty("figure").GetString()!;
            double answer = asked.GetProperty("answer").GetDouble();
            Assert.DoesNotContain(Wording.UnitStyle.Figures(answer), figure, StringComparison.Ordinal);
            Assert.DoesNotContain(Wording.UnitStyle.Fixed(answer, 1), figure, StringComparison.Ordinal);
            Assert.Contains("?<", figure.Replace("? ", "?<", StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    private static string[] Names(string svg) => [.. svg.Split("id=\"").Skip(1).Select(part => part[..part.IndexOf('"', StringComparison.Ordinal)])];

    private async Task<string> Verdict(string query)
    {
        using var document = JsonDocument.Parse((await page.Read($"/loosen?{query}")).Body);
        return document.RootElement.GetProperty("answer").GetProperty("verdict").GetString()!;
    }
}
