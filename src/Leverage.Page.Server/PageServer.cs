using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Leverage.Page.Server;

/// <summary>The server of the page's files: loopback only, or the local network behind a code.</summary>
internal sealed class PageServer : IAsyncDisposable
{
    private readonly WebApplication _app;
    private int _port;

    private PageServer(WebApplication app, PageOptions options) => (_app, Options) = (app, options);

    /// <summary>How it is served.</summary>
    internal PageOptions Options { get; }

    /// <summary>The port it listens on, once started.</summary>
    internal int Port => _port;

    /// <summary>Builds the server; it does not listen yet.</summary>
    /// <exception cref="OptionException">The folder does not hold the page.</exception>
    internal static PageServer Build(PageOptions options)
    {
        IReadOnlyDictionary<string, PageFile> files = PageFile.Read(options.Folder);
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = [] });
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
            kestrel.Limits.MaxRequestLineSize = 4 * 1024;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            kestrel.Limits.MaxConcurrentConnections = 256;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
            kestrel.Listen(options.Lan ? IPAddress.Any : IPAddress.Loopback, options.Port);
        });
        WebApplication app = builder.Build();
        app.Run(new Routes(options, files).Answer);
        return new PageServer(app, options);
    }

    /// <summary>Starts to listen.</summary>
    /// <exception cref="IOException">The port is taken.</exception>
    internal async Task Start()
    {
        await _app.StartAsync();
        IServerAddressesFeature? addresses = _app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>();
        _port = new Uri(addresses!.Addresses.First().Replace("[::]", "127.0.0.1", StringComparison.Ordinal)).Port;
    }

    /// <summary>Waits until the person stops it.</summary>
    internal Task UntilStopped() => _app.WaitForShutdownAsync();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _app.DisposeAsync();
}
