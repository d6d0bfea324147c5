using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>A real browser on the real page; whatever it complains of or asks of another machine is kept.</summary>
public sealed class Browsed : IAsyncLifetime
{
    /// <summary>Debian's Chromium: without a desktop's own windows if it is there, as that is the same engine at half the work.</summary>
    private static readonly string? Chromium = new[] { "/usr/bin/chromium-headless-shell", "/usr/bin/chromium" }.FirstOrDefault(File.Exists);

    private static readonly string[] Quiet =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    /// <summary>By how much what is shown has moved without being asked to, as a share of the screen, since the page was opened.</summary>
    internal const string Shift = "() => new Promise(done => { new PerformanceObserver(list => done(list.getEntries().reduce((sum, each) => sum + each.value, 0)))"
        + ".observe({ type: 'layout-shift', buffered: true }); setTimeout(() => done(0), 500); })";

    private readonly PageUnderTest _page = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private readonly List<IBrowserContext> _open = [];

    internal PageUnderTest Server => _page;

    internal ConcurrentQueue<string> Complaints { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await _page.InitializeAsync();
        if (Chromium is not null)
        {
            _playwright = await Playwright.CreateAsync();
            _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = Quiet, Headless = true });
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
        await _page.DisposeAsync();
    }

    /// <summary>A fresh browser window at a place of the page; skips, loudly, on a machine without the browser.</summary>
    internal async Task<IPage> Open(string place = "", int width = 1280, int height = 900, BrowserNewContextOptions? options = null, string? address = null)
    {
        Assert.SkipUnless(_browser is not null, "NO BROWSER: nothing of the page was tried in one. Install Debian's chromium-headless-shell or chromium.");
        options ??= new();
        options.ViewportSize = new() { Width = width, Height = height };
        IBrowserContext context = await _browser!.NewContextAsync(options);
        _open.Add(context);
        IPage page = await context.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        string home = address ?? _page.Address;
        page.Console += (_, message) => { if (message.Type is "error" or "warning") Complaints.Enqueue(message.Text); };
        page.PageError += (_, error) => Complaints.Enqueue(error);
        page.Request += (_, request) => { if (!request.Url.StartsWith(home, StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal)) Complaints.Enqueue($"asked {request.Url}"); };
        page.Response += (_, response) => { if (response.Status >= 400) Complaints.Enqueue($"{response.Status.ToString(CultureInfo.InvariantCulture)} {response.Url}"); };
        await page.GotoAsync(home + (address is null ? "/" : "") + place);
        await Ready(page);
        return page;
    }

    internal static Task Ready(IPage page) => page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });

    /// <summary>Asks the page's core in the browser, by the module its scripts ask through.</summary>
    internal static async Task<JsonElement> Ask(IPage page, string question, string query, bool? chart = null)
    {
        string json = await page.EvaluateAsync<string>(
            "async ([question, query, chart]) => JSON.stringify((await import('/core.js')).ask(question, query, ...chart === null ? [] : [chart]))", new object?[] { question, query, chart });
        return JsonDocument.Parse(json).RootElement.Clone();
    }

    /// <summary>Drags a handle of the picture by so many pixels.</summary>
    internal static async Task Drag(IPage page, string handle, float right, float down)
    {
        ILocator grip = page.Locator($"[data-handle='{handle}'] .grip");
        await grip.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await grip.BoundingBoxAsync())!;
        float x = box.X + box.Width / 2;
        float y = box.Y + box.Height / 2;
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 6 });
        await page.Mouse.UpAsync();
    }

    /// <summary>The verdict's word as shown.</summary>
    internal static ILocator Word(IPage page) => page.Locator("#word");

    /// <summary>Nothing was complained of and nothing asked of another machine since the last time.</summary>
    internal void NoComplaint()
    {
        string[] complaints = [.. Complaints];
        Complaints.Clear();
        Assert.Empty(complaints);
    }

    /// <summary>Shuts the windows that are open, so that none goes on working beside the next test.</summary>
    internal async Task Shut()
    {
        foreach (IBrowserContext context in _open)
        {
            await context.CloseAsync();
        }

        _open.Clear();
    }
}
