using System.Collections.Concurrent;
using System.Globalization;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>A real browser on the real server; whatever it complains of or asks of another machine is kept.</summary>
public sealed class Browsed : IAsyncLifetime
{
    /// <summary>Debian's Chromium: without a desktop's own windows if it is there, as that is the same engine at half the work.</summary>
    private static readonly string? Chromium = new[] { "/usr/bin/chromium-headless-shell", "/usr/bin/chromium" }.FirstOrDefault(File.Exists);

    private static readonly string[] Quiet =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

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

    /// <summary>A fresh browser window at an address; skips, loudly, on a machine without the browser.</summary>
    internal async Task<IPage> Open(string path, int width = 1280, int height = 900, BrowserNewContextOptions? options = null)
    {
        Assert.SkipUnless(_browser is not null, "NO BROWSER: nothing of the page was tried in one. Install Debian's chromium-headless-shell or chromium.");
        options ??= new();
        options.ViewportSize = new() { Width = width, Height = height };
        IBrowserContext context = await _browser!.NewContextAsync(options);
        _open.Add(context);
        IPage page = await context.NewPageAsync();
        page.SetDefaultTimeout(30_000);
        page.Console += (_, message) => { if (message.Type is "error" or "warning" && !IsRefusal(message)) Complaints.Enqueue(message.Text); };
        page.PageError += (_, error) => Complaints.Enqueue(error);
        page.Request += (_, request) => { if (!request.Url.StartsWith(_page.Address, StringComparison.Ordinal)) Complaints.Enqueue($"asked {request.Url}"); };
        page.Response += (_, response) => { if (response.Status >= 400 && response.Status != 400) Complaints.Enqueue($"{response.Status.ToString(CultureInfo.InvariantCulture)} {response.Url}"); };
        await page.GotoAsync(_page.Address + path);
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        return page;
    }

    /// <summary>Chromium's own note that a request was answered by 400, as every unfinished word is.</summary>
    private static bool IsRefusal(IConsoleMessage message) => message.Text.Contains("status of 400 (Bad Request)", StringComparison.Ordinal);

    /// <summary>Types into a field as a person does and waits for the answer to it.</summary>
    internal static Task Type(IPage page, string field, string text) =>
        page.RunAndWaitForResponseAsync(() => page.FillAsync($"[name='{field}']", text), response => response.Url.Contains("/loosen?", StringComparison.Ordinal));

    /// <summary>Drags a slider's thumb to a value with the mouse.</summary>
    internal static async Task Drag(IPage page, string id, double value)
    {
        ILocator slider = page.Locator($"#{id}");
        await slider.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await slider.BoundingBoxAsync())!;
        float At(double share) => (float)(box.X + 8 + (box.Width - 16) * share);
        double[] range = await slider.EvaluateAsync<double[]>("each => [Number(each.min), Number(each.max), Number(each.value)]");
        double Share(double at) => (at - range[0]) / (range[1] - range[0]);
        float middle = box.Y + box.Height / 2;
        await page.Mouse.MoveAsync(At(Share(range[2])), middle);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(At(Share(value)), middle, new() { Steps = 8 });
        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator($"#{id}")).ToHaveJSPropertyAsync("value", value.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>The verdict's word as shown.</summary>
    internal static async Task<string> Verdict(IPage page) => (await page.TextContentAsync("#word"))!.Trim();

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
