using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Leverage.Wording;
using Leverage.Workshop.Jobs;
using Leverage.Workshop.Sheets;
using Leverage.Workshop.Tests.Jobs;

namespace Leverage.Workshop.Tests.Sheets;

/// <summary>How many sheets of paper a job takes, printed by a browser: one for every ten fasteners begun.</summary>
public sealed partial class PagesTests
{
    /// <summary>Debian's Chromium; without a desktop's own windows if it is there.</summary>
    private static readonly string? Chromium = new[] { "/usr/bin/chromium-headless-shell", "/usr/bin/chromium" }.FirstOrDefault(File.Exists);

    [Theory]
    [InlineData("shafts.toml", "A4", 2)]
    [InlineData("shafts.toml", "letter", 2)]
    [InlineData("job.toml", "A4", 4)]
    [InlineData("job.toml", "letter", 4)]
    [InlineData("starter", "A4", 1)]
    [InlineData("starter", "letter", 1)]
    public async Task A_job_takes_no_more_pages_than_this(string job, string paper, int most)
    {
        Assert.SkipUnless(Chromium is not null, "NO BROWSER: no page was counted. Install Debian's chromium-headless-shell or chromium.");
        JobPlan plan = JobPlanner.Plan(job == "starter" ? JobText.Read(StarterJob.Text()) : JobReader.Read(JobText.Demo(job)));
        string html = HtmlSheet.Write(JobSheet.Of(plan, UnitStyle.Metric, []));
        Assert.Contains("size: landscape", html, StringComparison.Ordinal);

        Assert.InRange(await PagesOf(html.Replace("size: landscape", $"size: {paper} landscape", StringComparison.Ordinal)), 1, most);
    }

    private static async Task<int> PagesOf(string html)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("leverage-pages-");
        try
        {
            string page = Path.Combine(folder.FullName, "page.html");
            string pdf = Path.Combine(folder.FullName, "page.pdf");
            await File.WriteAllTextAsync(page, html, TestContext.Current.CancellationToken);
            var start = new ProcessStartInfo(
                Chromium!,
                ["--no-sandbox", "--disable-gpu", $"--user-data-dir={folder.FullName}", "--no-pdf-header-footer", $"--print-to-pdf={pdf}", page])
            {
                UseShellExecute = false,
                RedirectStandardError = true,
                RedirectStandardOutput = true,
            };
            using Process browser = Process.Start(start)!;
            await Task.WhenAll(
                browser.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken),
                browser.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
            await browser.WaitForExitAsync(TestContext.Current.CancellationToken);
            return PageObject().Count(Encoding.Latin1.GetString(await File.ReadAllBytesAsync(pdf, TestContext.Current.CancellationToken)));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [GeneratedRegex(@"/Type\s*/Page\b", RegexOptions.None, 1000)]
    private static partial Regex PageObject();
}
