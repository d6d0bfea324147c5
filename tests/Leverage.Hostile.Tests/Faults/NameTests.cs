using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Leverage.Hostile.Tests.Running;

namespace Leverage.Hostile.Tests.Faults;

/// <summary>Names and contents of files that are not what they seem.</summary>
public sealed partial class NameTests : IDisposable
{
    private const string Markup = "</title><script>alert(1)</script>&amp;\\\"'|[x](javascript:1)**`";
    private const string Hebrew = "אום הגלגל";
    private readonly RealProgram _program = new();

    public void Dispose() => _program.Dispose();

    [Fact]
    public void A_file_name_that_is_no_text_is_refused_or_read_in_one_line()
    {
        _program.Copy("chest.toml");
        Ended missing = _program.Shell("$leverage job $'\\xff\\xfe.toml'");
        Assert.Equal((2, 0), (missing.Code, missing.Answer.Length));
        Assert.Null(Manners.BrokenLine(missing.Errors));
        Ended written = _program.Shell("$leverage job --new $'\\xff.toml'");
        Assert.True(written.Code is 0 or 2, written.Errors);
    }

    [Theory]
    [InlineData("\\x1b[31mred.toml")]
    [InlineData("two\\nlines.toml")]
    [InlineData("\\xe2\\x80\\xaeright.toml")]
    public void A_name_that_would_act_on_the_terminal_is_shown_without_what_acts(string name)
    {
        foreach (string line in (string[])[$"$leverage job $'{name}'", $"$leverage job --new $'{name}'", $"$leverage pick 1Nm --chest $'{name}'", $"$leverage $'{name}'"])
        {
            Ended ended = _program.Shell(line);
            Assert.Equal((2, 0), (ended.Code, ended.Answer.Length));
            Assert.Null(Manners.BrokenLine(ended.Errors));
            Assert.DoesNotContain('\u202e', ended.Errors);
        }

        Assert.Empty(Directory.EnumerateFileSystemEntries(_program.Folder));
    }

    [Fact]
    public void Contents_that_are_no_text_are_refused_with_their_line()
    {
        byte[] bytes = [.. "title = \"x\"\nnote = \""u8, 0xff, 0xfe, .. "\"\n"u8];
        _program.Put("job.toml", bytes);
        Ended ended = _program.Run("job job.toml");
        Assert.Equal((2, "leverage: job.toml: is not UTF-8 text (line 2). Save it as UTF-8.\n"), (ended.Code, ended.Errors));
    }

    [Theory]
    [InlineData("\\u001b[31m", "U+001B")]
    [InlineData("\\u0007", "U+0007")]
    [InlineData("\\u009b", "U+009B")]
    [InlineData("\\u202e", "U+202E")]
    public void A_name_with_a_control_character_is_refused_where_it_stands(string escape, string told)
    {
        _program.Put("job.toml", Job($"nut {escape}"));
        Ended ended = _program.Run("job job.toml");
        Assert.Equal(2, ended.Code);
        string[] lines = ended.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains($"leverage: job.toml(3,8): name: a character that does not print ({told}) stands in it. Take it out.", lines);
        Assert.Contains($"leverage: job.toml(10,8): name: a character that does not print ({told}) stands in it. Take it out.", lines);
        Assert.All(lines, line => Assert.EndsWith($"a character that does not print ({told}) stands in it. Take it out.", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Markup)]
    [InlineData("=cmd|'/c calc'!A1")]
    [InlineData(Hebrew)]
    public void A_name_is_shown_as_it_is_written_and_acts_nowhere(string name)
    {
        _program.Put("job.toml", Job(name));
        string shown = name.Replace("\\\"", "\"", StringComparison.Ordinal);
        Ended words = _program.Run("job job.toml --out sheet.html");
        Assert.Equal((0, ""), (words.Code, words.Errors));
        Assert.Null(Manners.BrokenWords(words.Text));
        string html = Read("sheet.html");
        Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
        foreach (Match svg in Drawing().Matches(html))
        {
            Assert.DoesNotContain(XDocument.Parse(svg.Value).Descendants(), element => element.Name.LocalName == "script");
        }

        Assert.Contains(shown, System.Net.WebUtility.HtmlDecode(html), StringComparison.Ordinal);
        Assert.Equal(0, _program.Run("job job.toml --out sheet.md").Code);
        Assert.DoesNotContain("<script>alert", Read("sheet.md"), StringComparison.Ordinal);
        Assert.DoesNotContain("[x](javascript", Read("sheet.md"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=cmd|'/c calc'!A1")]
    [InlineData("+1+1")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1)")]
    public void A_spreadsheet_takes_no_name_for_a_formula(string name)
    {
        _program.Put("job.toml", Job(name));
        Ended csv = _program.Run("job job.toml --csv");
        Assert.Equal(0, csv.Code);
        Assert.Contains($",'{name},", csv.Text, StringComparison.Ordinal);
        Assert.DoesNotContain($",{name},", csv.Text, StringComparison.Ordinal);
    }

    private static string Job(string name) => $"""
        title = "t"
        [[fasteners]]
        name = "{name}"
        place = "{name}"
        note = "{name}"
        new_part = "{name}"
        torque = "85Nm"
        thread = "M12"
        [[chest.bars]]
        name = "{name} bar"
        drive = "1/2"
        length = "600mm"
        [[chest.sockets]]
        name = "{name} socket"
        drive = "1/2"
        size = "18mm"
        """;

    private string Read(string name) => File.ReadAllText(Path.Combine(_program.Folder, name), Encoding.UTF8);

    [GeneratedRegex("<svg.*?</svg>", RegexOptions.Singleline, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Drawing();
}
