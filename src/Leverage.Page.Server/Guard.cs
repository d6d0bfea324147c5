using System.Net;

namespace Leverage.Page.Server;

/// <summary>What stands before every answer: who may ask, and what a browser may do with the answer.</summary>
internal static class Guard
{
    private const string Policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; "
        + "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Puts the headers every response has.</summary>
    internal static void Headers(HttpResponse response)
    {
        IHeaderDictionary headers = response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        headers.CacheControl = "no-store";
    }

    /// <summary>
    /// Whether the address asked for is this machine's own: a page of elsewhere whose name was made to point here is
    /// refused. With the local network served, any number will do, but no name.
    /// </summary>
    internal static bool IsOurs(HostString host, bool lan)
    {
        string name = host.Host.Trim('[', ']');
        return name.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || IPAddress.TryParse(name, out IPAddress? address) && (lan || IPAddress.IsLoopback(address));
    }
}
