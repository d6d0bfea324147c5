using System.Text.Json;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

public sealed class BrowserTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact]
    public async Task It_opens_with_a_go_and_a_slider_turns_it_to_stop_with_the_side_view_saying_why()
    {
        IPage page = await browser.Open("/");
        Assert.Equal("go", await Browsed.Verdict(page));
        await Browsed.Drag(page, "slide-overlap", 100);
        await Assertions.Expect(page.Locator("#word")).ToHaveTextAsync("stop");
        Assert.Equal("100mm", await page.InputValueAsync("[name=overlap]"));
        Assert.Contains("dent", await page.TextContentAsync("#sentence"), StringComparison.Ordinal);
        await Browsed.Drag(page, "slide-overlap", 400);
        await Browsed.Drag(page, "slide-below-level", 45);
        await Assertions.Expect(page.Locator("#word")).ToHaveTextAsync("stop");
        Assert.Contains("it slides off", await page.Locator("#side desc").TextContentAsync(), StringComparison.Ordinal);
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_typed_set_up_is_answered_as_the_command_line_answers_it_to_the_last_digit()
    {
        IPage page = await browser.Open("/");
        await Browsed.Type(page, "book-torque", "340ft-lb");
        await Browsed.Type(page, "thread", "1/2-20");
        await Browsed.Type(page, "grade", "SAE 8");
        await Browsed.Type(page, "tube", "42.4mmx3.2mmx1.1m");
        await page.WaitForFunctionAsync("() => JSON.parse(document.getElementById('setup').dataset.answer).tube.handToTipMm === 605");
        string shown = (await page.GetAttributeAsync("#setup", "data-answer"))!;
        using var answer = JsonDocument.Parse(shown);
        string query = new Uri(page.Url).Query[1..].Replace('+', ' ');
        Assert.Equal(CommandLine.Values(CommandLine.Loosen(query)), CommandLine.Values(answer.RootElement));
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_bookmark_brings_the_whole_set_up_back()
    {
        IPage first = await browser.Open("/");
        await Browsed.Type(first, "overlap", "150mm");
        await first.CheckAsync("[data-hold=gear]");
        await first.ClickAsync("#units");
        await Assertions.Expect(first.Locator("#case")).ToContainTextAsync("lbf·ft");
        await Assertions.Expect(first.Locator("#word")).ToHaveTextAsync("care");
        IPage second = await browser.Open(new Uri(first.Url).PathAndQuery);
        Assert.Equal(await first.GetAttributeAsync("#setup", "data-answer"), await second.GetAttributeAsync("#setup", "data-answer"));
        Assert.Equal("150mm", await second.InputValueAsync("[name=overlap]"));
        Assert.True(await second.IsCheckedAsync("[data-hold=gear]"));
        Assert.Equal(first.Url, second.Url);
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_mistake_is_told_beside_its_field_and_goes_when_it_is_mended()
    {
        IPage page = await browser.Open("/");
        await Browsed.Type(page, "overlap", "900mm");
        await Assertions.Expect(page.Locator("#refusal")).ToContainTextAsync("overlap: 900 mm is longer than the bar");
        Assert.Equal("true", await page.GetAttributeAsync("[name=overlap]", "aria-invalid"));
        await Browsed.Type(page, "overlap", "300mm");
        await Assertions.Expect(page.Locator("#refusal")).ToBeHiddenAsync();
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_chest_is_opened_from_disk_and_its_pieces_fill_the_fields()
    {
        IPage page = await browser.Open("/");
        string chest = Path.Combine(Repository.Root, "shared", "pickup", "chest.toml");
        await page.SetInputFilesAsync("#file", chest);
        await page.SelectOptionAsync("[data-group=bar]", new SelectOptionValue { Label = "long bar" });
        await page.SelectOptionAsync("[data-group=tube]", new SelectOptionValue { Label = "scaffold tube" });
        await Assertions.Expect(page.Locator("#case")).ToContainTextAsync("M24");
        await page.WaitForFunctionAsync("() => JSON.parse(document.getElementById('setup').dataset.answer).lever.reachMm > 1600");
        Assert.Equal("1000mm", await page.InputValueAsync("[name=bar]"));
        Assert.Equal("48.3mmx3.2mmx1500mm", await page.InputValueAsync("[name=tube]"));
        Assert.Contains("bar-straight=800mm", page.Url, StringComparison.Ordinal);
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_job_is_opened_with_the_chest_it_names_and_a_nut_of_it_fills_the_fields()
    {
        IPage page = await browser.Open("/");
        string folder = Path.Combine(Repository.Root, "shared", "pickup");
        await page.SetInputFilesAsync("#file", Path.Combine(folder, "job.toml"));
        await Assertions.Expect(page.Locator("#pieces")).ToContainTextAsync("Open both together");
        await page.SetInputFilesAsync("#file", [Path.Combine(folder, "job.toml"), Path.Combine(folder, "chest.toml")]);
        await page.SelectOptionAsync("[data-group=nut]", new SelectOptionValue { Index = 1 });
        await page.SelectOptionAsync("[data-group=bar]", new SelectOptionValue { Label = "long bar" });
        Assert.Equal("1000mm", await page.InputValueAsync("[name=bar]"));
        Assert.NotEqual("460Nm", await page.InputValueAsync("[name='book-torque']"));
        browser.NoComplaint();
    }

    [Theory]
    [InlineData("/", 390)]
    [InlineData("/", 1280)]
    [InlineData("/lesson", 390)]
    [InlineData("/lesson", 1280)]
    public async Task Nothing_scrolls_sideways_every_target_can_be_hit_and_nothing_shuts_anybody_out(string path, int width)
    {
        IPage page = await browser.Open(path, width, 844);
        await page.EvaluateAsync("document.querySelectorAll('details').forEach(each => each.open = true)");
        Assert.Equal(width, await page.EvaluateAsync<int>("Math.max(document.documentElement.scrollWidth, document.body.scrollWidth)"));
        string[] small = await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('button, select, input:not([type=hidden]), summary, nav a')]
              .map(each => each.type === 'checkbox' ? each.closest('label') : each)
              .filter(each => each.getClientRects().length && each.getBoundingClientRect().height < 43.5)
              .map(each => each.outerHTML.slice(0, 80))
            """);
        Assert.Empty(small);
        Assert.Empty(await ShutOut(page));
        browser.NoComplaint();
    }

    [Fact]
    public async Task Dark_screens_shut_nobody_out_either()
    {
        IPage page = await browser.Open("/", 390, 844, new() { ColorScheme = ColorScheme.Dark });
        Assert.Empty(await ShutOut(page));
    }

    [Fact]
    public async Task The_keyboard_alone_is_enough()
    {
        IPage page = await browser.Open("/");
        for (int i = 0; i < 12 && await Focused(page) != "slide-overlap"; i++)
        {
            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Equal("slide-overlap", await Focused(page));
        await page.Keyboard.PressAsync("Home");
        await Assertions.Expect(page.Locator("#word")).ToHaveTextAsync("stop");
        await page.Keyboard.PressAsync("End");
        await Assertions.Expect(page.Locator("#word")).ToHaveTextAsync("go");
        Assert.Equal("450mm", await page.InputValueAsync("[name=overlap]"));
        browser.NoComplaint();
    }

    [Fact]
    public async Task It_prints_what_it_shows()
    {
        IPage page = await browser.Open("/");
        byte[] sheet = await page.PdfAsync(new() { Format = "A4" });
        Assert.True(sheet.Length > 20_000);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.False(await page.IsVisibleAsync("#sliders"));
        Assert.True(await page.IsVisibleAsync("#verdict"));
        IPage lesson = await browser.Open("/lesson");
        await lesson.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True(await lesson.IsVisibleAsync("#sheet .answers"));
        Assert.True((await lesson.PdfAsync(new() { Format = "A4" })).Length > 20_000);
        browser.NoComplaint();
    }

    [Fact]
    public async Task The_lesson_marks_answers_by_the_learners_own_numbers()
    {
        IPage page = await browser.Open("/lesson");
        await page.FillAsync("#guess", "300");
        await page.ClickAsync("text=Check");
        await Assertions.Expect(page.Locator("#result")).ToContainTextAsync("Not yet");
        await page.FillAsync("#guess", "400");
        await page.ClickAsync("text=Check");
        await Assertions.Expect(page.Locator("#result")).ToHaveTextAsync("Right.");
        await page.RunAndWaitForResponseAsync(() => page.FillAsync("[name=overlap]", "200mm"), response => response.Url.Contains("lesson-steps", StringComparison.Ordinal));
        await page.ClickAsync("#next");
        await Assertions.Expect(page.Locator("#step h2")).ToContainTextAsync("two places");
        await Assertions.Expect(page.Locator("#step")).ToContainTextAsync("the overlap is 200 mm");
        browser.NoComplaint();
    }

    /// <summary>What shuts somebody out, by the rules of WCAG a program can look at.</summary>
    private static async Task<string[]> ShutOut(IPage page) =>
        [.. (await page.RunAxe()).Violations.Select(each => $"{each.Id}: {each.Help} {string.Join(" | ", each.Nodes.Select(node => node.Html))}")];

    private static Task<string> Focused(IPage page) => page.EvaluateAsync<string>("document.activeElement.id");
}
