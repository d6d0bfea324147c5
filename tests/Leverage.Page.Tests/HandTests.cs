using System.Text.Json;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>The page under a hand: fingers, keys alone, and what happened at the last pull.</summary>
public sealed class HandTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact]
    public async Task What_happened_goes_back_into_the_question_and_the_moves_follow()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}&force=250N");
        string before = await Chance(page);
        await page.ClickAsync("#happened button:text-is('it held')");
        await page.WaitForFunctionAsync("() => /[?&]held=[0-9]+Nm/.test(location.hash)");
        Assert.Equal(await page.InputValueAsync("#f-held"), new string([.. new Uri(page.Url).Fragment.Split("held=")[1].TakeWhile(char.IsAsciiDigit)]));
        Assert.NotEqual(before, await Chance(page));
        await page.ClickAsync("#happened button:text-is('it came')");
        await page.ClickAsync("#happened button:text-is('it came')");
        await page.WaitForFunctionAsync("() => /[?&]came=[0-9]+Nm,[0-9]+Nm/.test(location.hash)");
        await page.ClickAsync("#happened button:text-is('it rounded')");
        await page.WaitForFunctionAsync("() => location.hash.includes('worn=rounded')");
        await Assertions.Expect(page.Locator("#happened [role=status]")).ToContainTextAsync("Stop pulling");
        await page.ClickAsync("#happened button:text-is('none of these')");
        await page.WaitForFunctionAsync("() => !/held=|came=|worn=/.test(location.hash)");
        Assert.Equal(before, await Chance(page));
        browser.NoComplaint();
    }

    [Fact]
    public async Task The_moves_are_marked_as_on_the_command_line()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}&force=250N");
        string[] marks = [.. await page.Locator("#moves .mark").AllTextContentsAsync()];
        Assert.Equal("now", marks[0]);
        Assert.Equal("last", marks[^1]);
        Assert.Equal(Enumerable.Range(1, marks.Length - 2).Select(i => i.ToString(System.Globalization.CultureInfo.InvariantCulture)), marks[1..^1]);
        string said = CommandLine.Run([.. CommandLine.Words((await page.TextContentAsync("#command"))!).Skip(1), "--more"]).Answer;
        Assert.All(marks, mark => Assert.Contains($"\n    {mark} ", said, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_finger_that_scrolls_moves_nothing_and_one_on_a_handle_does()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}", 390, 844, new() { HasTouch = true, IsMobile = true });
        string start = await page.EvaluateAsync<string>("location.hash");
        LocatorBoundingBoxResult picture = await Shown(page, ".side svg");
        await Swipe(page, picture.X + picture.Width - 30, picture.Y + picture.Height - 20, 0, -120);
        Assert.Equal(start, await page.EvaluateAsync<string>("location.hash"));
        LocatorBoundingBoxResult grip = await Shown(page, "[data-handle='swing of the bar'] .grip");
        await Swipe(page, grip.X + grip.Width / 2, grip.Y + grip.Height / 2, -20, 90);
        await page.WaitForFunctionAsync("start => location.hash !== start", start);
        Assert.InRange(int.Parse(await page.InputValueAsync("#f-past-square"), System.Globalization.CultureInfo.InvariantCulture), 22, 40);

        await page.EvaluateAsync($"() => {{ location.hash = '#lesson/4?{PageUnderTest.Example}' }}");
        await page.FillAsync("#guess", "20");
        await page.ClickAsync("text=That is my guess");
        string slider = await page.InputValueAsync("#move-past-square");
        LocatorBoundingBoxResult track = await Shown(page, "#move-past-square");
        await Swipe(page, track.X + track.Width * 0.9, track.Y + track.Height / 2, 0, -150);
        track = await Shown(page, "#move-past-square");
        await page.Touchscreen.TapAsync((float)(track.X + track.Width * 0.9), (float)(track.Y + track.Height / 2));
        Assert.Equal(slider, await page.InputValueAsync("#move-past-square"));
        browser.NoComplaint();
    }

    [Fact]
    public async Task While_a_drag_goes_on_no_old_move_or_answer_stands_beside_the_new_verdict()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}");
        LocatorBoundingBoxResult grip = await Shown(page, "[data-handle='swing of the bar'] .grip");
        await page.Mouse.MoveAsync(grip.X + grip.Width / 2, grip.Y + grip.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(grip.X - 150, grip.Y + 280, new() { Steps = 5 });
        await Assertions.Expect(Browsed.Word(page)).ToHaveTextAsync("care");
        await Assertions.Expect(page.Locator("#next")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator("#moves.stale, #details.stale")).ToHaveCountAsync(2);
        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator("#next")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".stale")).ToHaveCountAsync(0);
        browser.NoComplaint();
    }

    [Fact]
    public async Task Keys_alone_answer_the_three_questions_move_the_tube_and_reach_every_view()
    {
        IPage page = await browser.Open();
        foreach ((string field, string text) in ((string, string)[])[("f-hex", "36"), ("f-torque", "400"), ("f-bar", "600"), ("f-drive", "3/4")])
        {
            await Tabbed(page, field);
            await page.Keyboard.TypeAsync(text);
        }

        await Tabbed(page, "over-none");
        await page.Keyboard.PressAsync("ArrowDown");
        foreach ((string field, string text) in ((string, string)[])[("tube-outside", "42"), ("tube-wall", "3"), ("tube-length", "1000")])
        {
            await Tabbed(page, field);
            await page.Keyboard.TypeAsync(text);
        }

        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(Browsed.Word(page)).Not.ToHaveTextAsync("no answer");
        await page.Locator("[data-handle='tube along the bar']").FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await page.WaitForFunctionAsync("() => location.hash.includes('overlap=')");
        foreach (string view in (string[])["tighten", "chest", "job", "tables", "lesson", "loosen"])
        {
            await page.Locator($"nav [data-view={view}]").FocusAsync();
            await page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(page.Locator($"nav [data-view={view}]")).ToHaveAttributeAsync("aria-current", "page");
        }

        browser.NoComplaint();
    }

    /// <summary>Goes on by the Tab key until a field has the focus.</summary>
    private static async Task Tabbed(IPage page, string id)
    {
        for (int i = 0; i < 60; i++)
        {
            if (await page.EvaluateAsync<string>("document.activeElement.id") == id)
            {
                return;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"Tab does not reach {id}.");
    }

    private static async Task<string> Chance(IPage page)
    {
        using var answer = JsonDocument.Parse((await page.GetAttributeAsync(".tell", "data-answer"))!);
        return answer.RootElement.GetProperty("outcomes").GetProperty("comesLoose").GetRawText();
    }

    private static async Task<LocatorBoundingBoxResult> Shown(IPage page, string what)
    {
        // A finger's swipe goes on for a while by itself.
        await page.EvaluateAsync("() => new Promise(done => { let last = -1; const look = () => { if (scrollY === last) return done(); last = scrollY; setTimeout(look, 200); }; look(); })");
        await page.Locator(what).First.EvaluateAsync("each => each.scrollIntoView({ block: 'center' })");
        return (await page.Locator(what).First.BoundingBoxAsync())!;
    }

    /// <summary>A finger put down, moved and lifted.</summary>
    private static async Task Swipe(IPage page, double x, double y, double right, double down)
    {
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        Task Touch(string type, double share) => session.SendAsync("Input.dispatchTouchEvent", new()
        {
            ["type"] = type,
            ["touchPoints"] = type == "touchEnd" ? Array.Empty<object>() : new object[] { new { x = x + right * share, y = y + down * share } },
        });
        await Touch("touchStart", 0);
        for (int i = 1; i <= 6; i++)
        {
            await Touch("touchMove", i / 6.0);
            await page.WaitForTimeoutAsync(40);
        }

        await Touch("touchEnd", 1);
        await page.WaitForTimeoutAsync(100);
    }
}
