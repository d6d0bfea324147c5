using System.Net;
using System.Text.Json;
using Leverage.Page.Server;

namespace Leverage.Page.Tests;

/// <summary>The server hands out files and nothing else, to nobody it should not.</summary>
public sealed class TrustTests(PageUnderTest page) : IClassFixture<PageUnderTest>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/main.js")]
    [InlineData("/_framework/dotnet.native.wasm")]
    [InlineData("/nothing-here")]
    public async Task Every_response_carries_the_headers_that_keep_it_to_itself(string path)
    {
        using HttpResponseMessage response = await page.Get(path);
        string policy = response.Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-eval'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", response.Headers.GetValues("Referrer-Policy").Single());
        Assert.False(response.Headers.Contains("Server"));
        Assert.False(response.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("/../Program.cs")]
    [InlineData("/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("/..%2f..%2fetc%2fpasswd")]
    [InlineData("/wwwroot/index.html")]
    [InlineData("//etc/passwd")]
    [InlineData("/page.css%00.html")]
    [InlineData("/main.js.br")]
    public async Task No_path_leads_out_of_the_page(string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(page.Address + path, new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true }));
        using HttpResponseMessage response = await page.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.True(response.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, response.StatusCode.ToString());
    }

    [Theory]
    [InlineData("br", "br")]
    [InlineData("gzip, deflate", "gzip")]
    [InlineData("", null)]
    public async Task Files_go_out_compressed_as_the_browser_takes_them(string accepted, string? packed)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/_framework/dotnet.native.wasm", UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Accept-Encoding", accepted);
        using HttpResponseMessage response = await page.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(packed, response.Content.Headers.ContentEncoding.FirstOrDefault());
        Assert.Equal("application/wasm", response.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task A_page_of_elsewhere_that_points_here_is_refused_and_so_is_anything_sent()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(page.Address));
        request.Headers.Host = "somewhere.example";
        using HttpResponseMessage elsewhere = await page.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, elsewhere.StatusCode);
        using HttpResponseMessage sent = await page.Client.PostAsync(new Uri("/", UriKind.Relative), null, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, sent.StatusCode);
    }

    [Fact]
    public async Task On_the_local_network_nothing_is_served_without_the_code()
    {
        var options = new PageOptions(0, PageOptions.NewCode(), PageUnderTest.Folder, "loosen?hex=36mm");
        await using PageServer server = PageServer.Build(options);
        await server.Start();
        string address = $"http://127.0.0.1:{server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
        foreach (string path in (string[])["/", "/page.css", $"/{new string('0', 32)}/", $"{options.Base}x/", options.Base])
        {
            using HttpResponseMessage refused = await page.Client.GetAsync(new Uri(address + path), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, refused.StatusCode);
        }

        using HttpResponseMessage served = await page.Client.GetAsync(new Uri(address + options.Base + "/"), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, served.StatusCode);
        Assert.Contains($"{options.Base}/#loosen?hex=36mm", Welcome.Of(server), StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_is_made_anew_each_time_and_kept_where_that_is_asked()
    {
        Assert.NotEqual(PageOptions.NewCode(), PageOptions.NewCode());
        Assert.Equal(32, PageOptions.NewCode().Length);
        Assert.False(PageOptions.Read([])!.Lan);
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            string file = Path.Combine(folder, "kept", "code");
            string code = CodeFile.Kept(file);
            Assert.Equal(code, CodeFile.Kept(file));
            File.WriteAllText(file, "short");
            Assert.NotEqual("short", CodeFile.Kept(file));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task The_single_file_is_handed_out_to_be_kept_and_never_shown_from_here()
    {
        using HttpResponseMessage response = await page.Get("/leverage.html");
        Assert.Equal("attachment", response.Content.Headers.ContentDisposition!.DispositionType);
        Assert.InRange(response.Content.Headers.ContentLength ?? 0, 1_000_000, 3_600_000);
    }

    [Fact]
    public void The_whole_page_weighs_at_most_what_a_phone_should_fetch()
    {
        long bytes = Directory.EnumerateFiles(PageUnderTest.Folder, "*", SearchOption.AllDirectories)
            .Where(path => Path.GetExtension(path) is not (".br" or ".gz"))
            .Sum(path => new FileInfo(File.Exists(path + ".br") ? path + ".br" : path).Length);
        Assert.InRange(bytes, 1_000_000, 2_500_000);
        Assert.InRange(new FileInfo(Path.Combine(PageUnderTest.Folder, "..", "leverage.html")).Length, 1_000_000, 3_600_000);
    }

    [Fact]
    public void What_works_without_a_network_is_every_file_of_the_page_and_what_installs_it_is_among_them()
    {
        string worker = File.ReadAllText(Path.Combine(PageUnderTest.Folder, "sw.js"));
        string[] files = [.. Directory.EnumerateFiles(PageUnderTest.Folder, "*", SearchOption.AllDirectories)
            .Where(path => Path.GetExtension(path) is not (".br" or ".gz") && Path.GetFileName(path) != "sw.js")
            .Select(path => Path.GetRelativePath(PageUnderTest.Folder, path).Replace('\\', '/'))];
        Assert.All(files, name => Assert.Contains($"\"{name}\"", worker, StringComparison.Ordinal));
        Assert.Matches("const version = \"[0-9a-f]{16}\"", worker);
        using var manifest = JsonDocument.Parse(File.ReadAllText(Path.Combine(PageUnderTest.Folder, "manifest.webmanifest")));
        Assert.Equal("standalone", manifest.RootElement.GetProperty("display").GetString());
        Assert.All(manifest.RootElement.GetProperty("icons").EnumerateArray(), icon => Assert.Contains(icon.GetProperty("src").GetString(), files));
    }
}
