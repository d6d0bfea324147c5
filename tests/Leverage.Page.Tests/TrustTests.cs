using System.Net;
using System.Text;
using System.Text.Json;
using Leverage.Page.Serving;

namespace Leverage.Page.Tests;

public sealed class TrustTests(PageUnderTest page) : IClassFixture<PageUnderTest>
{
    [Theory]
    [InlineData("book-torque=85kN", "book-torque", "kN is a force")]
    [InlineData("book-torque=85", "book-torque", "it has no unit")]
    [InlineData("book-torque=1,5Nm", "book-torque", "a comma stands in the number")]
    [InlineData("thread=M24x1.55", "thread", "M24x1.5")]
    [InlineData("book-torque=100Nm&condition=rustd", "condition", "rusted")]
    [InlineData("book-torque=100Nm&overlap=200mm", "overlap", "says nothing without --tube")]
    [InlineData("book-torque=100Nm&bar=600mm&bar-diameter=20mm&tube=33.7x3.2x1000mm&overlap=900mm", "overlap", "longer than the bar")]
    [InlineData("book-torque=100Nm&mass=1200kg", "mass", "says nothing without --held-by")]
    [InlineData("book-torque=100Nm&heat=nut", "heat", "needs --by")]
    [InlineData("book-torque=100Nm&tool=hammer", "tool", "socket or ring")]
    [InlineData("book-torque=100Nm&units=furlongs", "units", "metric or us")]
    [InlineData("book-torque=NaN Nm", "book-torque", "not a finite number")]
    [InlineData("book-torque=100Nm&ovrlap=2mm", null, "Nearest: overlap")]
    [InlineData("book-torque=100Nm&bar=3km", "bar", "0.1mm to 10m")]
    [InlineData("", null, "nothing says how tight it is")]
    public async Task A_bad_request_gets_the_same_one_line_as_on_the_command_line(string query, string? field, string words)
    {
        var (status, body) = await page.Read($"/loosen?{query}");
        using var document = JsonDocument.Parse(body);
        string error = document.RootElement.GetProperty("error").GetString()!;
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal(field, document.RootElement.GetProperty("field").GetString());
        Assert.Contains(words, error, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', error);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/lesson")]
    [InlineData("/page.js")]
    [InlineData("/choices")]
    [InlineData("/nothing-here")]
    [InlineData("/loosen?thread=x")]
    public async Task Every_response_carries_the_headers_that_keep_it_to_itself(string path)
    {
        using HttpResponseMessage response = await page.Get(path);
        string policy = response.Headers.GetValues("Content-Security-Policy").Single();
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
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
    public async Task No_path_leads_out_of_the_page(string path)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(page.Address + path, new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true }));
        using HttpResponseMessage response = await page.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.True(response.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, response.StatusCode.ToString());
    }

    [Fact]
    public async Task A_page_of_elsewhere_that_points_here_is_refused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(page.Address));
        request.Headers.Host = "somewhere.example";
        using HttpResponseMessage response = await page.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, response.StatusCode);
    }

    [Fact]
    public async Task A_body_over_the_limit_is_refused_before_it_is_read()
    {
        using var content = new ByteArrayContent(new byte[PageServer.MostBodyBytes + 1]);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/open") { Content = content };
        request.Headers.ExpectContinue = true;
        using HttpResponseMessage response = await page.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.Contains("larger than 4 MB", await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no json")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("[null]")]
    [InlineData("[{\"name\":\"../../etc/passwd\",\"text\":\"[[bars]]\\nname = 3\"}]")]
    [InlineData("[{\"name\":\"c.toml\",\"text\":\"chest = \"}]")]
    public async Task A_file_that_is_none_is_refused_in_one_line(string body)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using HttpResponseMessage response = await page.Client.PostAsync(new Uri("/open", UriKind.Relative), content, TestContext.Current.CancellationToken);
        string text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.DoesNotContain("..", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_the_local_network_nothing_is_served_without_the_code()
    {
        var options = new PageOptions(0, PageOptions.NewCode());
        await using PageServer server = PageServer.Build(options);
        await server.Start();
        string address = $"http://127.0.0.1:{server.Port.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
        foreach (string path in (string[])["/", "/page.css", $"/loosen?{PageUnderTest.Example}", $"/{new string('0', 32)}/", $"{options.Base}x/", options.Base])
        {
            using HttpResponseMessage refused = await page.Client.GetAsync(new Uri(address + path), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, refused.StatusCode);
        }

        foreach (string path in (string[])["/", "/page.css", $"/loosen?{PageUnderTest.Example}"])
        {
            using HttpResponseMessage served = await page.Client.GetAsync(new Uri(address + options.Base + path), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, served.StatusCode);
        }

        Assert.Contains($"{options.Base}/", Welcome.Of(server), StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_is_made_anew_each_time_and_is_long()
    {
        Assert.NotEqual(PageOptions.NewCode(), PageOptions.NewCode());
        Assert.Equal(32, PageOptions.NewCode().Length);
        Assert.False(PageOptions.Read([])!.Lan);
    }
}
