using System.Net;
using Leverage.Page.Serving;

namespace Leverage.Page.Tests;

/// <summary>The real server on a port of its own, on this machine only.</summary>
public sealed class PageUnderTest : IAsyncLifetime
{
    private PageServer? _server;

    internal HttpClient Client { get; } = new(new SocketsHttpHandler { AllowAutoRedirect = false });

    internal string Address => $"http://127.0.0.1:{_server!.Port.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    internal static string Example => Answering.Choices.Example;

    public async ValueTask InitializeAsync()
    {
        _server = PageServer.Build(new PageOptions(0, null));
        await _server.Start();
        Client.BaseAddress = new Uri(Address);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _server!.DisposeAsync();
    }

    internal Task<HttpResponseMessage> Get(string path) => Client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);

    internal async Task<(HttpStatusCode Status, string Body)> Read(string path)
    {
        using HttpResponseMessage response = await Get(path);
        return (response.StatusCode, await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
