using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>The page in use: the three questions, the verdict line, the picture, history, phone and keyboard.</summary>
public sealed class BrowserTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    private static readonly string[] Places =
        ["", $"#loosen?{PageUnderTest.Example}", "#tighten?thread=M12x1.25&grade=10.9&torque=130Nm", "#chest", "#job", "#tables/large-nuts?find=hub", "#lesson/2", "#lesson/teacher"];

    public static TheoryData<int, int> Sizes => new() { { 390, 844 }, { 768, 1024 }, { 1280, 900 }, { 320, 640 }, { 844, 390 }, { 640, 450 } };

    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact]
    public async Task It_opens_on_three_questions_and_no_answer()
    {
        IPage page = await browser.Open();
        await Assertions.Expect(Browsed.Word(page)).ToHaveTextAsync("no answer");
        Assert.Equal(["1 · Which nut?", "2 · Which bar?", "3 · What goes over it?"], await page.Locator("form h2").AllTextContentsAsync());
        Assert.Equal("", await page.InputValueAsync("#f-hex"));
        Assert.Empty((await page.Locator(".refusal:visible").AllTextContentsAsync()));
        browser.NoComplaint();
    }

    [Fact]
    public async Task An_old_verdict_never_stays_beside_a_refusal_which_waits_until_its_field_is_left()
    {
        IPage page = await browser.Open("#loosen?torque=100Nm&hex=19mm&bar=600mm&drive=1/2");
        await Assertions.Expect(Browsed.Word(page)).Not.ToHaveTextAsync("no answer");
        await page.ClickAsync("#anew");
        await page.FillAsync("#f-torque", "100");
        await Assertions.Expect(Browsed.Word(page)).Not.ToHaveTextAsync("no answer");
        await page.FillAsync("#f-bar", "9x");
        await Assertions.Expect(Browsed.Word(page)).ToHaveTextAsync("no answer");
        await Assertions.Expect(page.Locator("#f-bar-error")).ToBeHiddenAsync();
        await page.PressAsync("#f-bar", "Tab");
        await Assertions.Expect(page.Locator("#f-bar-error")).ToContainTextAsync("Length of the bar: cannot read '9x'");
        Assert.Equal("true", await page.GetAttributeAsync("#f-bar", "aria-invalid"));
        await page.FillAsync("#f-bar", "600");
        await Assertions.Expect(Browsed.Word(page)).Not.ToHaveTextAsync("no answer");
        await Assertions.Expect(page.Locator("#f-bar-error")).ToBeHiddenAsync();
        browser.NoComplaint();
    }

    [Fact]
    public async Task Clearing_a_field_drops_what_hangs_on_it_without_a_word()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}");
        await page.FillAsync("#f-bar", "");
        await page.PressAsync("#f-bar", "Tab");
        await Assertions.Expect(page.Locator("#f-overlap")).ToBeHiddenAsync();
        await page.WaitForFunctionAsync("() => !location.hash.includes('tube') && !location.hash.includes('overlap') && !location.hash.includes('bar')");
        Assert.Empty(await page.Locator(".refusal:visible").AllTextContentsAsync());
        browser.NoComplaint();
    }

    [Fact]
    public async Task Dragging_tube_swing_and_hands_asks_the_core_and_back_undoes_it()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}");
        string start = await page.EvaluateAsync<string>("location.hash");
        await Assertions.Expect(Browsed.Word(page)).ToHaveTextAsync("go");
        await Browsed.Drag(page, "tube along the bar", 120, 45);
        await Assertions.Expect(page.Locator(".side svg[data-state]")).ToHaveAttributeAsync("data-state", "dents-mouth");
        await Assertions.Expect(Browsed.Word(page)).ToHaveTextAsync("stop");
        Assert.Matches("overlap=1[0-4][0-9]mm", await page.EvaluateAsync<string>("location.hash"));
        await page.ClickAsync("#undo");
        await page.WaitForFunctionAsync("start => location.hash === start", start);
        await Assertions.Expect(page.Locator(".side svg[data-state]")).ToHaveAttributeAsync("data-state", "holds");
        Assert.Equal("400", await page.InputValueAsync("#f-overlap"));
        await page.ClickAsync("#redo");
        await Assertions.Expect(page.Locator(".side svg[data-state]")).ToHaveAttributeAsync("data-state", "dents-mouth");
        await page.ClickAsync("#undo");
        await Browsed.Drag(page, "swing of the bar", -240, 416);
        await Assertions.Expect(page.Locator(".side svg[data-state]")).ToHaveAttributeAsync("data-state", "off");
        await Assertions.Expect(page.Locator(".side svg .off")).ToHaveCountAsync(1);
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_handle_moves_by_keys_and_a_verdict_that_changes_is_announced()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}");
        await page.Locator("[data-handle='swing of the bar']").FocusAsync();
        for (int press = 0; press < 8; press++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
        }

        await Assertions.Expect(page.Locator("#f-past-square")).ToHaveValueAsync("50");
        await Assertions.Expect(page.Locator("#announce")).ToContainTextAsync("care. The tube slides off");
        await Assertions.Expect(page.Locator("#next")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#next")).ToContainTextAsync("Next: ");
        Assert.Equal("swing of the bar", await page.EvaluateAsync<string>("document.activeElement.dataset.handle"));
        browser.NoComplaint();
    }

    [Fact]
    public async Task An_address_brings_the_whole_set_up_back_in_its_units()
    {
        IPage first = await browser.Open($"#loosen?{PageUnderTest.Example}&units=us");
        await Assertions.Expect(first.Locator("#details")).ToContainTextAsync("lbf·ft");
        IPage second = await browser.Open(new Uri(first.Url).Fragment);
        Assert.Equal(await first.GetAttributeAsync(".tell", "data-answer"), await second.GetAttributeAsync(".tell", "data-answer"));
        await Assertions.Expect(second.Locator("#units")).ToHaveAttributeAsync("aria-pressed", "true");
        await second.ClickAsync("#scan");
        await Assertions.Expect(second.Locator("#code svg")).ToBeVisibleAsync();
        browser.NoComplaint();
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task No_view_is_wider_than_its_screen_and_verdict_and_next_move_stay_in_view_whole(int width, int height)
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}", width, height);
        Assert.InRange(await page.EvaluateAsync<double>(Browsed.Shift), 0, 0.05);
        foreach (string place in Places)
        {
            await page.EvaluateAsync("place => { location.hash = place || '#loosen' }", place);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{place} is wider than the screen");
        }

        foreach (string more in (string[])["", "&past-square=50deg", "&overlap=120mm&units=us", "&force=200N&condition=salted"])
        {
            string query = string.Join('&', PageUnderTest.Example.Split('&').Where(pair => !more.Contains($"&{pair.Split('=')[0]}=", StringComparison.Ordinal))) + more;
            await page.EvaluateAsync("place => { location.hash = place }", $"#loosen?{query}");
            await Assertions.Expect(page.Locator("#next")).ToContainTextAsync("Next: ");
            await page.EvaluateAsync("scrollTo(0, document.body.scrollHeight)");
            LocatorBoundingBoxResult line = (await page.Locator("#verdict").BoundingBoxAsync())!;
            LocatorBoundingBoxResult next = (await page.Locator("#next").BoundingBoxAsync())!;
            Assert.InRange(line.Y, -1, 1);
            Assert.InRange(line.Height, 20, height / 5.0);
            Assert.InRange(next.Y + next.Height, 10, line.Height + 1);
            Assert.InRange(next.X + next.Width, 10, width);
        }

        browser.NoComplaint();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_nothing_on_any_view(ColorScheme scheme)
    {
        IPage page = await browser.Open("", options: new() { ColorScheme = scheme });
        foreach (string place in Places)
        {
            await page.EvaluateAsync("place => { location.hash = place || '#loosen' }", place);
            await page.WaitForTimeoutAsync(150);
            var result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, $"{place}: {string.Join("; ", result.Violations.Select(v => $"{v.Id} {string.Join(' ', v.Nodes.Take(2).Select(n => n.Html))}"))}");
        }
    }

    [Theory]
    [InlineData("#loosen?{0}", "A4", 1)]
    [InlineData("#loosen?{0}&units=us", "Letter", 1)]
    [InlineData("#loosen?hex=32mm&on=hub&bar=450mm&drive=1/2", "A4", 1)]
    [InlineData("#lesson/2?{0}", "A4", 2)]
    [InlineData("#lesson/teacher?{0}", "Letter", 1)]
    public async Task A_set_up_prints_on_one_page_the_pupils_paper_on_two_and_the_teachers_on_one(string place, string paper, int pages)
    {
        IPage page = await browser.Open(string.Format(System.Globalization.CultureInfo.InvariantCulture, place, PageUnderTest.Example));
        byte[] printed = await page.PdfAsync(new() { Format = paper, PreferCSSPageSize = true });
        Assert.Equal(pages, Pages(printed));
    }

    private static int Pages(byte[] pdf) =>
        System.Text.RegularExpressions.Regex.Count(System.Text.Encoding.Latin1.GetString(pdf), @"/Type\s*/Page[^s]", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(5));
}
