using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>The page in a browser of another make, where the machine has one: served, and as a single file without a network.</summary>
public sealed class FirefoxTests(PageUnderTest page) : IClassFixture<PageUnderTest>
{
    private static readonly string? Firefox = new[] { "/usr/bin/firefox-esr", "/usr/bin/firefox" }.FirstOrDefault(File.Exists);

    [Fact]
    public async Task Firefox_answers_the_same_served_and_from_the_single_file()
    {
        Assert.SkipUnless(Firefox is not null, "NO SECOND BROWSER: the page was tried in Chromium only. Install Debian's firefox-esr.");
        using IPlaywright playwright = await Playwright.CreateAsync();
        await using IBrowser browser = await playwright.Firefox.LaunchAsync(new() { ExecutablePath = Firefox, Channel = "moz-firefox", Headless = true });
        IPage tab = await browser.NewPageAsync();
        tab.SetDefaultTimeout(60_000);
        string answer = await Answer(tab, page.Address + "/");
        Assert.Contains("\"verdict\"", answer, StringComparison.Ordinal);
        await tab.Locator("[data-handle='tube along the bar']").FocusAsync();
        await tab.Keyboard.PressAsync("ArrowLeft");
        await tab.WaitForFunctionAsync("() => location.hash.includes('overlap=390mm')");
        string single = await Answer(tab, new Uri(Path.Combine(Repository.Root, "artifacts", "leverage.html")).AbsoluteUri);
        Assert.Equal(answer, single);
    }

    private static async Task<string> Answer(IPage tab, string address)
    {
        await tab.GotoAsync($"{address}#loosen?{PageUnderTest.Example}");
        await Browsed.Ready(tab);
        return (await tab.GetAttributeAsync(".tell", "data-answer"))!;
    }
}
