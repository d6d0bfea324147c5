using System.Text.Json;
using System.Text.RegularExpressions;
using Leverage.Page.Asking;
using Leverage.Page.Pack;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>The page's core in the browser against the command line, in every word and figure.</summary>
public sealed partial class AnswerTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
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
            Assert.Equal((asked, Letters(OnThePage(errors))), (asked, Letters(refusal.GetProperty("text").GetString()!)));
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

    /// <summary>A refusal of the command line with the page's label in the place of each option, and of the field it is about.</summary>
    private static string OnThePage(string refusal)
    {
        string line = refusal.Replace("leverage: ", "", StringComparison.Ordinal);
        string about = line.Split(':')[0];
        return Option().Replace(FieldWords.LabelOf(about) + line[about.Length..], option => FieldWords.LabelOf(option.Groups["name"].Value));
    }

    [GeneratedRegex("^[a-z]+(-[a-z]+)+$", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Hyphened();

    [GeneratedRegex("--(?<name>[a-z]+(-[a-z]+)*)", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Option();

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
    public void Every_field_has_words_of_its_own_and_none_speaks_as_one_types_on_the_command_line()
    {
        PageFields all = FieldList.All();
        FieldLine[] lines = [.. all.Fields, .. all.Tighten];
        Assert.Equal(FieldWords.All.Keys.Order(StringComparer.Ordinal), lines.Select(line => line.Name).Distinct().Order(StringComparer.Ordinal));
        foreach (IReadOnlyList<FieldLine> form in (IReadOnlyList<FieldLine>[])[all.Fields, all.Tighten])
        {
            Assert.Equal(form.Count, form.Select(line => line.Label).Distinct(StringComparer.Ordinal).Count());
        }

        // A field's name, a choice's key or a table's name where its words should stand; two of them are words of the trade.
        string[] typed = [.. lines.SelectMany(line => line.Choices.Select(choice => choice.Key).Append(line.Name))
            .Where(key => key is not ("left-hand" or "anti-seize") && Hyphened().IsMatch(key))];
        foreach (FieldLine line in lines)
        {
            string said = string.Join(' ', [line.Label, line.Help, line.Choices.Any(choice => choice.Key == line.LeftOut) ? "" : line.LeftOut, .. line.Choices.Select(choice => choice.Words)]);
            Assert.DoesNotMatch("--|\\btables? [a-z-]+$|, …|[a-z],[a-z]", said);
            Assert.All(typed, key => Assert.DoesNotContain($" {key} ", $" {said} ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task What_is_drawn_while_a_finger_drags_is_what_the_whole_answer_draws()
    {
        IPage page = await browser.Open();
        foreach (Question question in Question.Draw(loosen: 40, tighten: 0, check: 0))
        {
            JsonElement whole = await Browsed.Ask(page, "Loosen", question.Query);
            JsonElement sketch = await Browsed.Ask(page, "Sketch", question.Query, chart: true);
            if (whole.TryGetProperty("refusal", out JsonElement refusal))
            {
                Assert.Equal(refusal.GetRawText(), sketch.GetProperty("refusal").GetRawText());
                continue;
            }

            Assert.Equal((question.Query, whole.GetProperty("side").GetRawText()), (question.Query, sketch.GetProperty("side").GetRawText()));
            Assert.Equal((question.Query, whole.GetProperty("window").GetRawText()), (question.Query, sketch.GetProperty("window").GetRawText()));
            foreach (JsonProperty word in sketch.GetProperty("words").EnumerateObject())
            {
                Assert.Equal((question.Query, whole.GetProperty("words").GetProperty(word.Name).GetString()), (question.Query, word.Value.GetString()));
            }

            Assert.Equal(JsonValueKind.Null, (await Browsed.Ask(page, "Sketch", question.Query, chart: false)).GetProperty("window").ValueKind);
        }
    }

    [Fact]
    public async Task The_next_move_is_the_first_of_the_command_line_that_is_not_the_pull_as_asked()
    {
        IPage page = await browser.Open();
        foreach ((string query, int first) in ((string, int)[])[
            ("torque=120Nm&hex=19mm&condition=rusted&drive=1/2&bar=600mm&on=wheel&on-stands=yes&mass=1400kg", 0),
            ("torque=400Nm&hex=36mm", 0), ("torque=110ft-lb&hex=3/4in&drive=1/2&bar=24in&condition=rusted", 1), (PageUnderTest.Example, 0)])
        {
            JsonElement reply = await Browsed.Ask(page, "Loosen", query);
            string[] command = [.. CommandLine.Words(reply.GetProperty("command").GetString()!).Skip(1), "--json"];
            using JsonDocument answer = JsonDocument.Parse(CommandLine.Run(command).Answer);
            Assert.Equal(answer.RootElement.GetProperty("moves")[first].GetProperty("words").GetString(), reply.GetProperty("words").GetProperty("now").GetString());
        }
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
