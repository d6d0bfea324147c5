using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>What stays: the page without a network, the single file, chest and job over a reload, and addresses nobody meant.</summary>
public sealed class KeepingTests(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact]
    public async Task After_the_first_visit_it_answers_without_a_network()
    {
        IPage page = await browser.Open();
        await page.WaitForSelectorAsync("html[data-kept]", new() { State = WaitForSelectorState.Attached });
        await page.Context.SetOfflineAsync(true);
        await page.GotoAsync($"{browser.Server.Address}/#loosen?{PageUnderTest.Example}");
        await page.ReloadAsync();
        await Browsed.Ready(page);
        await Assertions.Expect(Browsed.Word(page)).Not.ToHaveTextAsync("no answer");
        browser.NoComplaint();
    }

    [Fact]
    public async Task The_single_file_opens_from_the_disk_with_no_network_and_answers_the_same()
    {
        string file = Path.Combine(Repository.Root, "artifacts", "leverage.html");
        IPage single = await browser.Open($"#loosen?{PageUnderTest.Example}", address: new Uri(file).AbsoluteUri);
        await single.Context.SetOfflineAsync(true);
        await single.ReloadAsync();
        await Browsed.Ready(single);
        IPage served = await browser.Open($"#loosen?{PageUnderTest.Example}");
        Assert.Equal(await served.GetAttributeAsync(".tell", "data-answer"), await single.GetAttributeAsync(".tell", "data-answer"));
        Assert.Contains("{", await single.GetAttributeAsync(".tell", "data-answer"), StringComparison.Ordinal);
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_job_is_ticked_off_over_reloads_and_a_bad_file_takes_nothing_away()
    {
        IPage page = await browser.Open("#job");
        await page.ClickAsync("#job-start");
        ILocator tick = page.Locator("[data-tick^='task:']").First;
        await tick.CheckAsync();
        await page.Locator("select[data-tick]").First.SelectOptionAsync("it held");
        await Assertions.Expect(page.Locator("main [role=status]").First).ToContainTextAsync("Kept");
        await page.ReloadAsync();
        await Assertions.Expect(tick).ToBeCheckedAsync();
        await Assertions.Expect(page.Locator("select[data-tick]").First).ToHaveValueAsync("it held");
        await page.SetInputFilesAsync("#job-file", new FilePayload { Name = "job.toml", MimeType = "text/plain", Buffer = "title = \n[[tasks"u8.ToArray() });
        await Assertions.Expect(page.Locator(".bad").First).ToContainTextAsync("job.toml(");
        await page.ReloadAsync();
        await Assertions.Expect(tick).ToBeCheckedAsync();
        browser.NoComplaint();
    }

    [Fact]
    public async Task A_chest_stays_and_picks_for_the_nut_of_the_first_page_and_a_full_store_is_told()
    {
        IPage page = await browser.Open("#chest?torque=460Nm&thread=M24x1.5&hex=36mm");
        await page.ClickAsync("text=start one");
        await Assertions.Expect(page.Locator("main [role=status]").First).ToContainTextAsync("Kept");
        await page.ReloadAsync();
        await page.WaitForFunctionAsync("() => document.getElementById('chest-text')?.value.length > 200");
        await page.ClickAsync("#pick");
        await Assertions.Expect(page.Locator(".moves li").First).ToContainTextAsync("comes loose");
        await page.EvaluateAsync("() => { IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; }");
        await page.FillAsync("#chest-text", "# nothing");
        await page.PressAsync("#chest-text", "Tab");
        await Assertions.Expect(page.Locator("main [role=status]").First).ToContainTextAsync("no room left");
        await page.ReloadAsync();
        await page.WaitForFunctionAsync("() => document.getElementById('chest-text')?.value.length > 200");
        browser.NoComplaint();
    }

    [Fact]
    public async Task No_address_leaves_a_blank_page()
    {
        var random = new Random(20);
        string[] parts = ["#", "?", "&", "=", "%", "%zz", "/", "loosen", "lesson", "tables", "teacher", "torque", "tube", "bar", "9", "-1", "1e999", "mm", "x", "jack:", "<b>", "é", "🔧", "__proto__", "constructor", "hex=36mm", "units=us", "NaN"];
        IPage page = await browser.Open();
        for (int i = 0; i < 300; i++)
        {
            string place = "#" + string.Concat(Enumerable.Range(0, random.Next(1, 9)).Select(_ => parts[random.Next(parts.Length)]));
            await page.EvaluateAsync("place => { location.hash = place }", place);
            string shown = await page.EvaluateAsync<string>("document.querySelector('main h1')?.textContent ?? ''");
            Assert.True(shown.Length > 0, place);
        }

        browser.NoComplaint();
    }
}
