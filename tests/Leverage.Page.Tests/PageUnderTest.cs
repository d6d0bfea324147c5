using Leverage.Page.Server;

namespace Leverage.Page.Tests;

/// <summary>The real server of the real, published page on a port of its own, on this machine only.</summary>
public sealed class PageUnderTest : IAsyncLifetime
{
    internal const string Example = "torque=460Nm&thread=M24x1.5&grade=10.9&condition=used&drive=3/4&bar=600mm&bar-diameter=22mm"
        + "&tube=33.7x3.2x1200mm&overlap=400mm&surface=dry&past-square=10deg&stance=stand-push&body=82kg"
        + "&held-by=brake,chock,helper&mass=1400kg&chock=120mm";

    private PageServer? _server;

    internal static string Folder { get; } = Path.Combine(Repository.Root, "artifacts", "page");

    internal HttpClient Client { get; } = new(new SocketsHttpHandler { AllowAutoRedirect = false });

    internal string Address => $"http://127.0.0.1:{_server!.Port.ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    public async ValueTask InitializeAsync()
    {
        _server = PageServer.Build(new PageOptions(0, null, Folder));
        await _server.Start();
        Client.BaseAddress = new Uri(Address);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _server!.DisposeAsync();
    }

    internal Task<HttpResponseMessage> Get(string path) => Client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);
}
