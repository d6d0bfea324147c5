using System.Text.Json;
using System.Xml.Linq;

namespace Leverage.Cli.Tests.Docs;

/// <summary>The papers that go out with the programs: NOTICE, CHANGELOG and the texts NOTICE points to.</summary>
public sealed class PapersTests
{
    [Theory]
    [InlineData("Leverage.Cli")]
    [InlineData("Leverage.Page")]
    [InlineData("Leverage.Package")]
    public void NOTICE_lists_every_package_that_runs_in_what_is_shipped(string project)
    {
        string notice = File.ReadAllText(Path.Combine(Repository.Root, "NOTICE"));
        (string Name, string Version)[] packages = [.. Running(project)];
        Assert.Contains(packages, package => package.Name == "UnitsNet");
        Assert.All(packages, package =>
        {
            Assert.True(
                notice.Contains($"\n{package.Name} {package.Version}, ", StringComparison.Ordinal),
                $"NOTICE lacks {package.Name} {package.Version}: write it anew by dotnet run src/Notice.cs");
            Assert.Matches($@"\n-{{80}}\n(\S+\n)*{package.Name}\n(\S+\n)*\n\S", notice);
        });
    }

    [Theory]
    [InlineData("drawing.txt", "FreeType")]
    [InlineData("runtime.txt", ".NET Runtime uses third-party libraries")]
    public void The_texts_NOTICE_points_to_are_there(string file, string holds) => Assert.Contains(
        holds, File.ReadAllText(Path.Combine(Repository.Root, "src/Leverage.Package/notices", file)), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void The_program_the_changelog_and_the_build_agree_on_the_version()
    {
        string version = XDocument.Load(Path.Combine(Repository.Root, "Directory.Build.props")).Descendants("Version").Single().Value;
        Assert.Matches(@"^\d+\.\d+\.\d+$", version);
        Assert.Equal($"{version}\n", Ran.ForReal(["--version"]).Answer);
        string newest = File.ReadLines(Path.Combine(Repository.Root, "CHANGELOG.md"))
            .First(line => line.StartsWith("## ", StringComparison.Ordinal));
        Assert.StartsWith($"## {version}", newest, StringComparison.Ordinal);
    }

    /// <summary>What the restore of a project brought that is there when it runs; analyzers and build tools are not.</summary>
    private static IEnumerable<(string Name, string Version)> Running(string project)
    {
        string assets = Path.Combine(Repository.Root, "src", project, "obj/project.assets.json");
        using var restored = JsonDocument.Parse(File.ReadAllText(assets));
        foreach (JsonProperty library in restored.RootElement.GetProperty("targets").EnumerateObject()
            .SelectMany(target => target.Value.EnumerateObject().Where(library => library.Value.GetProperty("type").GetString() == "package")))
        {
            string[] files = [.. ((string[])["runtime", "native", "runtimeTargets"])
                .Where(kind => library.Value.TryGetProperty(kind, out _))
                .SelectMany(kind => library.Value.GetProperty(kind).EnumerateObject().Select(file => file.Name))];
            if (files.Any(file => !file.EndsWith("_._", StringComparison.Ordinal)))
            {
                yield return (library.Name.Split('/')[0], library.Name.Split('/')[1]);
            }
        }
    }
}
