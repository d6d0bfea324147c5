using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Leverage.Charts.Tests;

public sealed partial class GalleryTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "plots");

    /// <summary>Photographs of a browser, which have no drawing of their own to twin.</summary>
    private static readonly string[] Screens = ["page.png", "sheet.png"];

    [Fact]
    public void Every_picture_the_gallery_shows_is_there_and_every_picture_there_is_shown()
    {
        string readme = File.ReadAllText(Path.Combine(Folder, "README.md"));
        string[] shown = [.. Shown().Matches(readme).Select(match => match.Groups["file"].Value).Order(StringComparer.Ordinal)];
        string[] there = [.. Directory.GetFiles(Folder, "*.png").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];
        Assert.NotEmpty(there);
        Assert.Equal(there, shown);
    }

    [Fact]
    public void Every_picture_has_its_twin_in_svg_that_can_be_read_aloud()
    {
        XNamespace space = "http://www.w3.org/2000/svg";
        foreach (string path in Directory.GetFiles(Folder, "*.png").Where(path => !Screens.Contains(Path.GetFileName(path))))
        {
            XElement root = XElement.Load(Path.ChangeExtension(path, ".svg"));
            Assert.NotEmpty(root.Element(space + "title")!.Value);
            Assert.NotEmpty(root.Element(space + "desc")!.Value);
        }
    }

    [GeneratedRegex(@"!\[[^\]]+\]\((?<file>[^)]+)\)", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Shown();
}
