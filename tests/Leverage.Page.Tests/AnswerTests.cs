using System.Text.Json;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>The page's core in the browser against the command line, in every word and figure.</summary>
public sealed class AnswerTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    private static readonly string[] Nuts =
    [
        "torque=460Nm&thread=M24x1.5&grade=10.9&condition=used",
        "torque=110ft-lb&thread=1/2-20&grade=SAE 8&condition=rusted&hex=3/4in&body=150lb&person=woman",
        "thread=M12&left-hand=yes&soaked=yes&heat=nut&by=150C&friction=0.12&prevailing=12Nm&condition=salted",
        "torque=120Nm&condition=clean&on-stands=yes&mass=1200kg&wheel-load=3000N&tyre-radius=310mm&held-by=none",
    ];

    private static readonly string[] Levers =
    [
        "drive=3/4&bar=600mm&bar-diameter=22mm&tube=33.7x3.2x1200mm&overlap=400mm&surface=dry&past-square=20deg&stance=stand-push",
        "drive=1/2&bar=500mm&bar-diameter=18mm&bar-yield=800MPa&bar-taper=0.5deg&tube=jack:900mm&bore=26mm&surface=oily&force=400N",
        "drive=3/4&bar=500mm&tube=1.66x0.14x48in&overlap=9in&surface-friction=0.15&past-square=10deg",
        "drive=1/2&bar=450mm",
        "tool=ring&bar=14in&stance=stand-pull",
    ];

    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact]
    public async Task Twenty_questions_are_answered_by_the_page_as_by_the_command_line_in_every_word_and_figure()
    {
        IPage page = await browser.Open();
        foreach (string query in from nut in Nuts from lever in Levers select $"{nut}&{lever}")
        {
            JsonElement reply = await Browsed.Ask(page, "Loosen", query);
            string[] expected = [.. CommandLine.Values(CommandLine.Loosen(query))];
            Assert.True(reply.TryGetProperty("answer", out JsonElement answer), $"{query}: {reply.GetRawText()[..Math.Min(300, reply.GetRawText().Length)]}");
            Assert.Null(CommandLine.Difference(expected, [.. CommandLine.Values(answer)]));
            Assert.True(expected.Length > 30);
        }

        browser.NoComplaint();
    }

    [Theory]
    [InlineData("torque=100Nm&bar=3km", "bar", "0.1mm")]
    [InlineData("torque=100Nm&drive=1/2&bar=400mm&tube=33.7x3.2x1000mm&overlap=900mm", "overlap", "longer than the bar")]
    [InlineData("torque=100Nm&tool=hammer", "tool", "socket or ring")]
    [InlineData("torque=100Nm&ovrlap=2mm", null, "Nearest: overlap")]
    [InlineData("torque=100Nm&torque=90Nm", "torque", "more than once")]
    public async Task A_refusal_is_one_line_about_its_field_in_its_labels_words(string query, string? field, string words)
    {
        IPage page = await browser.Open();
        JsonElement refusal = (await Browsed.Ask(page, "Loosen", query)).GetProperty("refusal");
        string text = refusal.GetProperty("text").GetString()!;
        Assert.Equal(field, refusal.GetProperty("field").GetString());
        Assert.Contains(words, text, StringComparison.Ordinal);
        Assert.DoesNotContain("--", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text);
    }

    [Fact]
    public async Task No_figure_of_the_lesson_gives_its_answer_away_on_screen_or_paper()
    {
        IPage page = await browser.Open($"#lesson/1?{PageUnderTest.Example}");
        JsonElement lesson = await Browsed.Ask(page, "Lesson", PageUnderTest.Example);
        for (int step = 1; step <= 6; step++)
        {
            string number = step.ToString(System.Globalization.CultureInfo.InvariantCulture);
            await page.EvaluateAsync($"() => {{ location.hash = '#lesson/{number}?{PageUnderTest.Example}' }}");
            await Assertions.Expect(page.Locator("h2").First).ToContainTextAsync($"{number} of 6");
            double answer = lesson.GetProperty("steps")[step - 1].GetProperty("answer").GetDouble();
            string figure = await page.Locator(".lesson-figure").First.TextContentAsync() ?? "";
            string paper = await page.Locator(".paper .lesson-figure").Nth(step - 1).TextContentAsync() ?? "";
            foreach (string shown in (string[])[figure, paper])
            {
                Assert.Contains("?", shown, StringComparison.Ordinal);
                Assert.DoesNotContain(answer.ToString("F0", System.Globalization.CultureInfo.InvariantCulture), shown, StringComparison.Ordinal);
                Assert.DoesNotContain(answer.ToString("F1", System.Globalization.CultureInfo.InvariantCulture), shown, StringComparison.Ordinal);
            }
        }

        browser.NoComplaint();
    }
}
