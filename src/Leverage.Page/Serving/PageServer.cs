using System.Net;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Leverage.Page.Serving;

/// <summary>The server of the page: loopback only, or the local network behind a code.</summary>
internal sealed class PageServer : IAsyncDisposable
{
    /// <summary>The largest body read, bytes: a job of ten thousand fasteners stays below it.</summary>
    internal const long MostBodyBytes = Workshop.Files.TomlFile.MostBytes;

    /// <summary>Requests a second one other machine may make, and how many at once: a slider makes sixty.</summary>
    internal const int MostPerSecond = 80;

    private readonly WebApplication _app;
    private int _port;

    private PageServer(WebApplication app, PageOptions options) => (_app, Options) = (app, options);

    /// <summary>How it is served.</summary>
    internal PageOptions Options { get; }

    /// <summary>The port it listens on, once started.</summary>
    internal int Port => _port;

    /// <summary>Builds the server; it does not listen yet.</summary>
    internal static PageServer Build(PageOptions options)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = [] });
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = MostBodyBytes;
            kestrel.Limits.MaxRequestLineSize = 8 * 1024;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            kestrel.Limits.MaxConcurrentConnections = 256;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
            kestrel.Listen(options.Lan ? IPAddress.Any : IPAddress.Loopback, options.Port);
        });
        builder.Services.AddRateLimiter(limiter =>
        {
            limiter.GlobalLimiter = Limits();
            limiter.OnRejected = (rejected, _) => Refusals.TooMany(rejected.HttpContext);
        });
        WebApplication app = builder.Build();
        var server = new PageServer(app, options);
        app.Use((context, next) => Refusals.Around(context, next));
        app.UseRateLimiter();
        app.Run(new Routes(options).Answer);
        return server;
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

    /// <summary>This machine waits in a queue; any other is held to what its fingers can do, so that no one takes the page from the rest.</summary>
    private static PartitionedRateLimiter<HttpContext> Limits() => PartitionedRateLimiter.CreateChained(
        PartitionedRateLimiter.Create<HttpContext, string>(context => Asker(context) is { } asker
            ? RateLimitPartition.GetTokenBucketLimiter(asker, _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = 2 * MostPerSecond,
                TokensPerPeriod = MostPerSecond / 4,
                ReplenishmentPeriod = TimeSpan.FromMilliseconds(250),
                QueueLimit = 0,
            })
            : RateLimitPartition.GetNoLimiter("this machine")),
        PartitionedRateLimiter.Create<HttpContext, string>(_ => RateLimitPartition.GetConcurrencyLimiter("all", _ => new ConcurrencyLimiterOptions
        {
            PermitLimit = 2 * Environment.ProcessorCount,
            QueueLimit = 128,
        })));

    private static string? Asker(HttpContext context) =>
        context.Connection.RemoteIpAddress is { } address && !IPAddress.IsLoopback(address) ? address.ToString() : null;
}
