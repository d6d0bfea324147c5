using System.Text.Json;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>The page's core in the browser against the command line, in every word and figure.</summary>
public sealed class AnswerTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact]
    public async Task Two_hundred_questions_over_all_fields_are_answered_or_refused_by_the_page_as_by_the_command_line()
    {
        IPage page = await browser.Open();
        IReadOnlyList<Question> questions = Question.Draw(loosen: 150, tighten: 30, check: 20);
        string[] replies = await page.EvaluateAsync<string[]>(
            "async list => { const { ask } = await import('/core.js'); return list.map(([door, query]) => JSON.stringify(ask(door, query))); }",
            questions.Select(question => new[] { question.Door, question.Query }).ToArray());
        int answered = 0;
        for (int i = 0; i < replies.Length; i++)
        {
            using JsonDocument reply = JsonDocument.Parse(replies[i]);
            answered += Alike(questions[i], reply.RootElement) ? 1 : 0;
        }

        Assert.InRange(answered, 120, 190);
        browser.NoComplaint();
    }

    /// <summary>Whether it was answered; an answer to the last figure and word, a refusal by its sentence.</summary>
    private static bool Alike(Question question, JsonElement reply)
    {
        string asked = string.Join(' ', question.Command);
        var (code, text, errors) = CommandLine.Run([.. question.Command, "--json"]);
        if (reply.TryGetProperty("refusal", out JsonElement refusal))
        {
            Assert.True(code == 2, $"{asked}: refused on the page only: {refusal.GetProperty("text").GetString()}");
            Assert.Equal((asked, Letters(errors.Replace("leverage:", "", StringComparison.Ordinal))), (asked, Letters(refusal.GetProperty("text").GetString()!)));
            return false;
        }

        Assert.True(code == 0, $"{asked}: refused on the command line only: {errors}");
        using JsonDocument expected = JsonDocument.Parse(text);
        string[] values = [.. CommandLine.Values(expected.RootElement)];
        Assert.True(values.Length > 8, asked);
        Assert.Equal((asked, null), (asked, CommandLine.Difference(values, [.. CommandLine.Values(reply.GetProperty("answer"))])));
        if (question.Door == "Loosen")
        {
            string said = CommandLine.Run([.. CommandLine.Words(reply.GetProperty("command").GetString()!).Skip(1), "--json"]).Answer;
            Assert.Equal((asked, text), (asked, said));
            Shown(asked, reply.GetProperty("words"), Letters(CommandLine.Run([.. question.Command, "--more"]).Answer));
        }

        return true;
    }

    /// <summary>What the page shows beside the answer stands in the command line's words too.</summary>
    private static void Shown(string asked, JsonElement words, string text)
    {
        IEnumerable<string?> shown = words.GetProperty("figures").EnumerateArray().Select(each => each.GetProperty("value").GetString())
            .Concat(words.GetProperty("links").EnumerateArray().SelectMany(link => new[] { link.GetProperty("part").GetString(), link.GetProperty("margin").GetString() }))
            .Append(words.GetProperty("title").GetString());
        foreach (string? each in shown)
        {
            Assert.True(text.Contains(Letters(each!), StringComparison.Ordinal), $"{asked}: the command line does not say '{each}'");
        }
    }

    /// <summary>Letters, digits and signs without the dress of a door: no blanks, hyphens or quotes, all small.</summary>
    private static string Letters(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter) && letter is not ('-' or '\'' or '"'))).ToLowerInvariant();

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

        string given = await page.Locator(".paper").TextContentAsync() ?? "";
        foreach (double answer in lesson.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("answer").GetDouble()))
        {
            string number = answer.ToString(answer < 10 ? "F2" : answer < 100 ? "F1" : "F0", System.Globalization.CultureInfo.InvariantCulture);
            Assert.DoesNotMatch($@"(?<![\d.]){number}(?![\d.])", given);
        }

        browser.NoComplaint();
    }
}
