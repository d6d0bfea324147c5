using System.Text.Json;
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
    public async Task Where_a_browser_keeps_no_copy_the_page_says_so_and_offers_the_single_file()
    {
        IPage page = await browser.Open();
        await page.AddInitScriptAsync("delete Navigator.prototype.serviceWorker");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#offline")).ToContainTextAsync("keeps no copy");
        IDownload file = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#offline a"));
        Assert.Equal("leverage.html", file.SuggestedFilename);
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
        await Assertions.Expect(page.Locator("main [role=status]").First).ToContainTextAsync("Written into the job");
        await page.Locator("[data-what='backing-plate nuts, left']").SelectOptionAsync("held");
        await page.Locator("[data-at='backing-plate nuts, left']").FillAsync("175");
        await page.Locator("[data-note='backing-plate nuts, left']").ClickAsync();
        await Assertions.Expect(page.Locator("li:has([data-what='backing-plate nuts, left']) [role=status]")).ToHaveTextAsync("held at 175Nm");
        await page.Locator("[data-tick^='part:'], [data-tick^='refit:']").First.CheckAsync();
        await Assertions.Expect(page.Locator("main [role=status]").First).ToContainTextAsync("Kept");
        await page.ReloadAsync();
        await Assertions.Expect(tick).ToBeCheckedAsync();
        await Assertions.Expect(page.Locator("li:has([data-what='backing-plate nuts, left']) [role=status]")).ToHaveTextAsync("held at 175Nm");
        await Assertions.Expect(page.Locator("[data-tick^='part:'], [data-tick^='refit:']").First).ToBeCheckedAsync();
        await page.SetInputFilesAsync("#job-file", new FilePayload { Name = "job.toml", MimeType = "text/plain", Buffer = "title = \n[[tasks"u8.ToArray() });
        await Assertions.Expect(page.Locator(".bad").First).ToContainTextAsync("job.toml(");
        await page.EvaluateAsync("() => { IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; }");
        await page.Locator("[data-back='backing-plate nuts, left']").ClickAsync();
        await Assertions.Expect(page.Locator("main [role=status]").First).ToContainTextAsync("no room left");
        await page.ReloadAsync();
        await Assertions.Expect(tick).ToBeCheckedAsync();
        IDownload saved = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#job-save"));
        string file = Path.Combine(Directory.CreateTempSubdirectory().FullName, "job.toml");
        await saved.SaveAsAsync(file);
        using var answer = JsonDocument.Parse(CommandLine.Run("job", file, "--json").Answer);
        Assert.Contains(answer.RootElement.GetProperty("loosening").EnumerateArray(), nut => nut.TryGetProperty("heldNm", out JsonElement held) && held.ValueKind == JsonValueKind.Number && held.GetDouble() == 175);
        browser.NoComplaint();
    }

    [Fact]
    public async Task Files_nobody_meant_leave_neither_a_blank_page_nor_take_the_chest_away()
    {
        var random = new Random(4);
        string[] parts = ["[[bars]]\n", "name = ", "\"a\"\n", "[", "]]", "=", "\"", "\\", "length = \"600mm\"\n", "\0", "\uFFFD", "[[tasks]]\n", "title;thread\n", "é", "{", "'", "\r", "9e99"];
        IPage page = await browser.Open("#chest");
        await page.ClickAsync("text=start one");
        string kept = await page.InputValueAsync("#chest-text");
        foreach ((string view, string input) in ((string, string)[])[("#chest", "#chest-file"), ("#job", "#job-file")])
        {
            await page.EvaluateAsync("view => { location.hash = view }", view);
            for (int i = 0; i < 25; i++)
            {
                byte[] bytes = i % 5 == 0 ? [.. Enumerable.Range(0, 200).Select(_ => (byte)random.Next(256))]
                    : System.Text.Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, random.Next(0, 12)).Select(_ => parts[random.Next(parts.Length)])));
                await page.EvaluateAsync("() => document.querySelectorAll('main .refusal').forEach(each => each.remove())");
                await page.SetInputFilesAsync(input, new FilePayload { Name = i % 3 == 0 ? "x.csv" : "x.toml", MimeType = "text/plain", Buffer = bytes });
                await Assertions.Expect(page.Locator("main .refusal:visible").First).Not.ToBeEmptyAsync();
                Assert.True((await page.TextContentAsync("main h1"))!.Length > 0);
            }
        }

        await page.EvaluateAsync("() => { location.hash = '#chest' }");
        Assert.Equal(kept, await page.InputValueAsync("#chest-text"));
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
        Assert.Equal("last", await page.Locator(".mark").Last.TextContentAsync());
        await page.ClickAsync("button:text('my jack handle')");
        await Assertions.Expect(page.Locator("#over-jack")).ToBeCheckedAsync();
        await Assertions.Expect(page.Locator("#f-torque")).ToHaveValueAsync("460");
        await page.GoBackAsync();
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
