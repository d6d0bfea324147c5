using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Leverage.Page.Tests;

/// <summary>A real browser on the real server; whatever it complains of or asks of another machine is kept.</summary>
public sealed class Browsed : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";
    private static readonly string[] Quiet =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private readonly PageUnderTest _page = new();
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    internal PageUnderTest Server => _page;

    internal ConcurrentQueue<string> Complaints { get; } = new();

    public async ValueTask InitializeAsync()
    {
        await _page.InitializeAsync();
        if (File.Exists(Chromium))
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
        Assert.SkipUnless(_browser is not null, $"NO BROWSER: {Chromium} is not there, so nothing of the page was tried in one. Install Debian's chromium.");
        options ??= new();
        options.ViewportSize = new() { Width = width, Height = height };
        IBrowserContext context = await _browser!.NewContextAsync(options);
        IPage page = await context.NewPageAsync();
        page.SetDefaultTimeout(30_000);
        page.Console += (_, message) => { if (message.Type is "error" or "warning" && !IsRefusal(message)) Complaints.Enqueue(message.Text); };
        page.PageError += (_, error) => Complaints.Enqueue(error);
        page.Request += (_, request) => { if (!request.Url.StartsWith(_page.Address, StringComparison.Ordinal)) Complaints.Enqueue($"asked {request.Url}"); };
        page.Response += (_, response) => { if (response.Status >= 400 && response.Status != 400) Complaints.Enqueue($"{response.Status.ToString(System.Globalization.CultureInfo.InvariantCulture)} {response.Url}"); };
        await page.GotoAsync(_page.Address + path);
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        return page;
    }

    /// <summary>Chromium's own note that a request was answered by 400, as every unfinished word is.</summary>
    private static bool IsRefusal(IConsoleMessage message) => message.Text.Contains("status of 400 (Bad Request)", StringComparison.Ordinal);

    /// <summary>Types into a field as a person does and waits for the answer to it.</summary>
    internal static Task Type(IPage page, string field, string text) =>
        page.RunAndWaitForResponseAsync(() => page.FillAsync($"[name='{field}']", text), response => response.Url.Contains("/loosen?", StringComparison.Ordinal));

    /// <summary>The verdict's word as shown.</summary>
    internal static async Task<string> Verdict(IPage page) => (await page.TextContentAsync("#word"))!.Trim();

    /// <summary>Nothing was complained of and nothing asked of another machine since the last time.</summary>
    internal void NoComplaint()
    {
        string[] complaints = [.. Complaints];
        Complaints.Clear();
        Assert.Empty(complaints);
    }
}
