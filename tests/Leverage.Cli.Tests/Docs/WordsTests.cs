using System.Globalization;
using System.Text.RegularExpressions;
using Leverage.Tables;

namespace Leverage.Cli.Tests.Docs;

/// <summary>One thing has one word wherever a person reads it, and no sentence runs on.</summary>
public sealed partial class WordsTests
{
    /// <summary>Most words of a sentence in an answer.</summary>
    private const int MostWords = 20;

    private static readonly string[] Commands = ["loosen", "tighten", "check", "slip", "pick", "job", "table", "prove"];

    private static readonly string[] Asked =
    [
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm",
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 3/4 --bar 1000mm --bar-diameter 25mm --tube 33.7x3.2x1000mm --overlap 240mm --stance lift-legs",
        "loosen 60Nm --thread M12 --condition rusted --hex 18mm --tool open --bar 400mm --worn rounded --engaged 0.4",
        "loosen 290Nm --thread M27x1.5 --condition rusted --hex 41mm --drive 3/4 --bar 1000mm --on hub --held-by brake --mass 900kg",
        "loosen 22Nm --thread M8 --condition heat-rusted --hex 13mm --tool ring --bar 200mm --on exhaust",
        "loosen --hex 32mm --on hub --condition rusted --drive 1/2 --bar 450mm", "loosen --hex 32mm --on hub",
        "loosen 200Nm --thread M24x2 --left-hand --hex 36mm --drive 3/4 --bar 600mm --what-matters --draws 1000",
        "loosen 80Nm --thread M12 --condition rusted --drive 1/2 --bar 300mm --on-stands --count 4 --came 150Nm",
        "loosen \"90Nm + 90deg\" --thread M12 --grade 10.9 --drive 1/2 --bar 600mm --heat nut --by 150C --extension 200mm",
        "tighten --thread M12x1.25 --grade 10.9", "tighten --thread M24x1.5 --torque 460Nm --by-weight 20kg --adapter 100mm --wrench 500mm",
        "tighten --thread M12 --castle 6 --adjustable --left-hand --staked --locker --rough-thread",
        "check 130Nm --thread M12x1.25 --grade 10.9", "check 90Nm --then 90deg --thread M12x1.25 --grade 10.9",
        "check 20Nm --thread M12 --engagement 12mm --tapped aluminium",
        "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm",
        "slip --bar 600mm --bar-diameter 20mm --tube 26.9x2.3x800mm --overlap 20mm --surface oily",
        "pick 460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest shared/pickup/chest.toml",
        "job shared/pickup/job.toml",
    ];

    /// <summary>Pages and files a person reads.</summary>
    private static readonly string[] Pages =
    [
        "README.md", "shared/README.md", "plots/README.md", "tables/README.md", "shared/checks/README.md", "shared/measured/README.md", "tests/README.md",
        "DEVELOPERS.md", "CHANGELOG.md", "SECURITY.md", "src/Leverage.Package/library.md", "src/Leverage.Package/tool.md",
    ];

    private static readonly string[] Starters =
    [
        "src/Leverage.Workshop/Chest/starter-chest.toml", "src/Leverage.Workshop/Jobs/starter-job.toml", "shared/pickup/chest.toml", "shared/pickup/job.toml",
    ];

    /// <summary>Folders whose files hold what the page, the charts and their words say.</summary>
    private static readonly (string Folder, string Pattern)[] Drawn =
        [("src/Leverage.Page/wwwroot", "*.js"), ("src/Leverage.Page/wwwroot", "*.html"), ("src/Leverage.Page/Lesson", "*.cs"), ("src/Leverage.Charts", "*.cs"), ("src/Leverage.Workshop/Sheets", "*.cs")];

    public static TheoryData<string> Questions =>
    [
        .. Asked, .. Asked.Select(line => $"{line} --units us"),
        .. Asked.Where(line => line.Split(' ')[0] is "loosen" or "slip" or "tighten" or "check").Select(line => $"{line} --more"),
        .. Commands.Select(command => $"{command} --help"), "--help", "--man", "prove", .. TableCatalog.Tables.Names.Select(name => $"table {name}"),
    ];

    public static TheoryData<string> Read => [.. Pages, .. Starters, .. Drawn.SelectMany(one => Files(one.Folder, one.Pattern))];

    [Theory]
    [MemberData(nameof(Questions))]
    public void An_answer_uses_the_words_of_the_glossary(string line) => Assert.DoesNotMatch(NotSaid(), Here(line));

    [Theory]
    [MemberData(nameof(Read))]
    public void What_a_person_reads_uses_the_words_of_the_glossary(string file) =>
        Assert.DoesNotMatch(NotSaid(), file.EndsWith(".js", StringComparison.Ordinal) || file.EndsWith(".cs", StringComparison.Ordinal)
            ? string.Join('\n', Sentences.Quotes(Text(file)).Where(words => words != "undo")) : Text(file));

    /// <summary>How long the sentences of each text are; those of an answer are held.</summary>
    [Fact]
    public void Sentences_are_short()
    {
        (string Name, string[] Sentences)[] texts =
        [
            .. Commands[..6].Select(command => ($"leverage {command}",
                Asked.Where(line => line.StartsWith(command, StringComparison.Ordinal)).SelectMany(line => Sentences.OfAnswer(Here(line))).ToArray())),
            ("help", [.. Commands.SelectMany(command => CommandOptions(command)).SelectMany(Sentences.Of)]),
            .. Pages.Select(page => (page, Sentences.OfPage(Text(page)).ToArray())),
            .. Starters.Select(file => (file, Sentences.OfComments(Text(file)).ToArray())),
            .. Drawn.Select(one => ($"{one.Folder}/{one.Pattern}", Files(one.Folder, one.Pattern).SelectMany(file => Sentences.OfSource(Text(file))).ToArray())),
        ];
        foreach (var (name, sentences) in texts)
        {
            string longest = sentences.MaxBy(Sentences.Words) ?? "";
            TestContext.Current.TestOutputHelper?.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{name,-45}{sentences.Length,5} sentences{sentences.Select(Sentences.Words).DefaultIfEmpty().Average(),6:F1} words each, longest {Sentences.Words(longest),3}: {longest}"));
        }

        Assert.All(texts.Where(text => text.Name.StartsWith("leverage ", StringComparison.Ordinal)), text =>
        {
            Assert.NotEmpty(text.Sentences);
            Assert.All(text.Sentences, sentence => Assert.True(Sentences.Words(sentence) <= MostWords, sentence));
        });
    }

    private static IEnumerable<string> CommandOptions(string command) =>
        Leverage.Cli.Commands.CommandList.All.Single(entry => entry.Name == command).Build().Symbols.Select(symbol => symbol.Description ?? "");

    private static IEnumerable<string> Files(string folder, string pattern) => Directory
        .EnumerateFiles(Path.Combine(Repository.Root, folder), pattern, SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(Repository.Root, file)).Where(file => !file.Contains("/obj/", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static string Text(string file) => File.ReadAllText(Path.Combine(Repository.Root, file));

    private static string Here(string line)
    {
        Ran ran = Ran.Here(Ran.Words(line.Replace("shared/", Path.Combine(Repository.Root, "shared/"), StringComparison.Ordinal)));
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        return ran.Answer;
    }

    [GeneratedRegex(@"\b(sleeves?|undone|undo(es|ing)?|slacken\w*|stuck|breaker bar|cheater|P\d\d?|hard case|gives first)\b|\bstands \d", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 5000)]
    internal static partial Regex NotSaid();
}
