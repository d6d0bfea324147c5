using System.Globalization;
using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>
/// What the page weighs and how long it takes, each as a share of what is wanted: 1 and below is met. Asked for by
/// <c>tests/page-measures.sh</c>; no part of an ordinary run, as a busy machine can slow anything.
/// </summary>
public sealed class Measures(Browsed browser) : IClassFixture<Browsed>, IAsyncDisposable
{
    private static readonly string[] Views = ["", $"#loosen?{PageUnderTest.Example}", "#tighten?thread=M12&torque=80Nm", "#chest", "#job", "#tables", "#lesson/1", "#lesson/teacher"];
    private readonly StringBuilder _told = new();

    public async ValueTask DisposeAsync() => await browser.Shut();

    [Fact(Explicit = true)]
    public async Task Printed()
    {
        string[] files = [.. Directory.EnumerateFiles(PageUnderTest.Folder, "*", SearchOption.AllDirectories).Where(path => Path.GetExtension(path) is not (".br" or ".gz"))];
        Share("over the wire in all, of 2.5 MB", files.Sum(path => new FileInfo(File.Exists(path + ".br") ? path + ".br" : path).Length) / 2.5e6);
        Share("the single file, of 3.6 MB", new FileInfo(Path.Combine(PageUnderTest.Folder, "..", "leverage.html")).Length / 3.6e6);
        Count("files that would go out uncompressed", files.Count(path => Path.GetExtension(path) is not (".woff2" or ".webmanifest") && Path.GetFileName(path) != "sw.js" && !File.Exists(path + ".br")));
        Count("fonts that are no WOFF2", files.Count(path => Path.GetExtension(path) is ".ttf" or ".otf" or ".woff"));
        await Starts();
        await Drags();
        await Looks();
        string place = Path.Combine(Repository.Root, "artifacts", "page-measures.txt");
        await File.WriteAllTextAsync(place, _told.ToString(), TestContext.Current.CancellationToken);
    }

    private async Task Starts()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}");
        await page.WaitForSelectorAsync("html[data-kept]", new() { State = WaitForSelectorState.Attached });
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        await session.SendAsync("Network.emulateNetworkConditions", new() { ["offline"] = false, ["latency"] = 150, ["downloadThroughput"] = 200_000, ["uploadThroughput"] = 94_000 });
        Share("first answer at 1.6 Mbit/s with the runtime kept, of 1.5 s", await FirstAnswer(page) / 1500);
        Share("layout shift, of 0.05", await page.EvaluateAsync<double>(Browsed.Shift) / 0.05);
        await page.Context.SetOfflineAsync(true);
        Share("first answer without a network, of 1 s", await FirstAnswer(page) / 1000);
    }

    /// <summary>Milliseconds from the start of loading to an answer on the page, the middle one of three.</summary>
    private static async Task<double> FirstAnswer(IPage page)
    {
        var times = new List<double>();
        for (int i = 0; i < 3; i++)
        {
            await page.ReloadAsync();
            times.Add(await (await page.WaitForFunctionAsync("() => document.querySelector('.tell')?.dataset.answer ? performance.now() : 0")).JsonValueAsync<double>());
        }

        return times.Order().ElementAt(1);
    }

    /// <summary>A frame of a drag of the swing: the core asked, and the picture and the chart drawn.</summary>
    private async Task Drags()
    {
        IPage page = await browser.Open($"#loosen?{PageUnderTest.Example}");
        await page.EvaluateAsync("() => { globalThis.frames_ = []; const own = requestAnimationFrame; globalThis.requestAnimationFrame = run => own(at => { const from = performance.now(); run(at); frames_.push(performance.now() - from); }); }");
        ICDPSession session = await Clock(page);
        // A person looks before dragging; until then the page asks its core idly, for the first answers are its slowest.
        await page.WaitForTimeoutAsync(4000);
        LocatorBoundingBoxResult grip = (await page.Locator("[data-handle='swing of the bar'] .grip").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(grip.X + grip.Width / 2, grip.Y + grip.Height / 2);
        await page.Mouse.DownAsync();
        double before = await Worked(session);
        for (int i = 1; i <= 60; i++)
        {
            await page.Mouse.MoveAsync(grip.X - i, grip.Y + 3 * i);
        }

        double worked = await Worked(session) - before;
        double[] frames = await page.EvaluateAsync<double[]>("() => frames_.filter(each => each > 0.5).sort((a, b) => a - b)");
        await page.Mouse.UpAsync();
        var frame = (frames[frames.Length / 2], worked / frames.Length);
        Share("a drag frame on a desk, of 16 ms", frame, 16);
        Share("a drag frame on a processor six times slower, of 50 ms", frame, 50 / 6.0);
    }

    private static async Task<ICDPSession> Clock(IPage page)
    {
        ICDPSession session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Performance.enable", new() { ["timeDomain"] = "threadTicks" });
        return session;
    }

    /// <summary>Milliseconds the page's own thread has had of the processor: what else the machine does leaves it as it is, nearly.</summary>
    private static async Task<double> Worked(ICDPSession session)
    {
        System.Text.Json.JsonElement metrics = (await session.SendAsync("Performance.getMetrics"))!.Value;
        return 1000 * metrics.GetProperty("metrics").EnumerateArray().First(each => each.GetProperty("name").GetString() == "ThreadTime").GetProperty("value").GetDouble();
    }

    private async Task Looks()
    {
        (int findings, int wide) = (0, 0);
        foreach ((int width, int height) in ((int, int)[])[(1280, 900), (320, 640), (640, 450), (844, 390)])
        {
            IPage page = await browser.Open("", width, height);
            foreach (string view in Views)
            {
                await page.EvaluateAsync("view => { location.hash = view || '#loosen' }", view);
                await page.WaitForTimeoutAsync(150);
                wide += await page.EvaluateAsync<int>("document.documentElement.scrollWidth") > width ? 1 : 0;
                findings += width == 1280 ? (await page.RunAxe()).Violations.Length : 0;
            }
        }

        Count($"axe's findings on {Views.Length} views", findings);
        Count("views wider than the screen at 320 px, 200 % zoom, a phone on its side and a desk", wide);
        IPage keys = await browser.Open($"#loosen?{PageUnderTest.Example}");
        await keys.Locator("[data-handle='swing of the bar']").FocusAsync();
        for (int i = 0; i < 8; i++)
        {
            await keys.Keyboard.PressAsync("ArrowRight");
        }

        await keys.WaitForTimeoutAsync(1500);
        Count("verdicts changed by keys and not announced", (await keys.TextContentAsync("#announce"))!.StartsWith(await keys.InnerTextAsync("#word"), StringComparison.OrdinalIgnoreCase) ? 0 : 1);
    }

    private void Share(string words, (double Wall, double Processor) ms, double wanted) =>
        _told.Append(CultureInfo.InvariantCulture, $"{ms.Wall / wanted,6:0.00}  {words}; by the processor's time {ms.Processor / wanted:0.00}\n");

    private void Share(string words, double share) => _told.Append(CultureInfo.InvariantCulture, $"{share,6:0.00}  {words}\n");

    private void Count(string words, int count) => _told.Append(CultureInfo.InvariantCulture, $"{count,6}  {words}\n");
}
