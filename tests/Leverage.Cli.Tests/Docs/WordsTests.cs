using System.Text.RegularExpressions;

namespace Leverage.Cli.Tests.Docs;

/// <summary>One thing has one word wherever a person reads it: answers, help, manual, refusals, README and starter files.</summary>
public sealed partial class WordsTests
{
    private static readonly string[] Commands = ["loosen", "tighten", "check", "slip", "pick", "job", "table", "prove"];

    private static readonly string[] Asked =
    [
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 1/2 --bar 600mm",
        "loosen 460Nm --thread M24x1.5 --condition rusted --hex 36mm --drive 3/4 --bar 1000mm --bar-diameter 25mm --tube 33.7x3.2x1000mm --overlap 240mm --stance lift-legs",
        "loosen 60Nm --thread M12 --condition rusted --hex 18mm --tool open --bar 400mm --worn rounded --engaged 0.4",
        "loosen 290Nm --thread M27x1.5 --condition rusted --hex 41mm --drive 3/4 --bar 1000mm --on hub --held-by brake --mass 900kg",
        "loosen 22Nm --thread M8 --condition heat-rusted --hex 13mm --tool ring --bar 200mm --on exhaust",
        "loosen --hex 32mm --on hub --condition rusted --drive 1/2 --bar 450mm",
        "loosen 200Nm --thread M24x2 --left-hand --hex 36mm --drive 3/4 --bar 600mm --what-matters",
        "tighten --thread M12x1.25 --grade 10.9", "check 130Nm --thread M12x1.25 --grade 10.9",
        "slip --bar 600mm --bar-diameter 20mm --tube 33.7x3.2x1000mm --overlap 250mm",
        "pick 460Nm --thread M24x1.5 --condition rusted --hex 36mm --chest shared/pickup/chest.toml",
        "job shared/pickup/job.toml",
    ];

    /// <summary>Pages and files a person reads.</summary>
    private static readonly string[] Pages =
    [
        "README.md", "shared/README.md", "plots/README.md", "tables/README.md", "src/Leverage.Package/library.md", "src/Leverage.Package/tool.md",
        "src/Leverage.Workshop/Chest/starter-chest.toml", "src/Leverage.Workshop/Jobs/starter-job.toml", "shared/pickup/job.toml",
    ];

    public static TheoryData<string> Questions =>
    [
        .. Asked, .. Asked.Where(line => !line.StartsWith("prove", StringComparison.Ordinal)).Select(line => $"{line} --units us"),
        .. Asked.Where(line => line.StartsWith("loosen", StringComparison.Ordinal)).Select(line => $"{line} --more"),
        .. Commands.Select(command => $"{command} --help"), "--help", "--man",
    ];

    public static TheoryData<string> Read => [.. Pages];

    [Theory]
    [MemberData(nameof(Questions))]
    public void An_answer_uses_the_words_of_the_glossary(string line)
    {
        Ran ran = Here(line);
        Assert.Equal((0, ""), (ran.Code, ran.Errors));
        Assert.DoesNotMatch(NotSaid(), ran.Answer);
    }

    [Theory]
    [MemberData(nameof(Read))]
    public void A_page_uses_the_words_of_the_glossary(string page) =>
        Assert.DoesNotMatch(NotSaid(), File.ReadAllText(Path.Combine(Repository.Root, page)));

    /// <summary>Reasons, warnings and moves in the JSON of every question: their length is told, and no sentence runs on.</summary>
    [Fact]
    public void Sentences_are_short()
    {
        string[] sentences =
        [
            .. Asked.Where(line => line.StartsWith("loosen", StringComparison.Ordinal))
                .Select(line => System.Text.Json.JsonDocument.Parse(Here($"{line} --json").Answer).RootElement)
                .SelectMany(answer => answer.GetProperty("reasons").EnumerateArray().Concat(answer.GetProperty("watch").EnumerateArray())
                    .Select(text => text.GetString()!))
                .SelectMany(text => Ends().Split(text)).Where(sentence => sentence.Length > 0),
        ];
        int[] words = [.. sentences.Select(sentence => sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length)];
        TestContext.Current.TestOutputHelper?.WriteLine(FormattableString.Invariant($"{words.Length} sentences, {words.Average():F1} words each, longest {words.Max()}"));
        Assert.InRange(words.Length, 8, 500);
        Assert.True(words.Max() <= 20, sentences[Array.IndexOf(words, words.Max())]);
    }

    private static Ran Here(string line) =>
        Ran.Here(Ran.Words(line.Replace("shared/", Path.Combine(Repository.Root, "shared/"), StringComparison.Ordinal)));

    [GeneratedRegex(@"\b(sleeves?|undone|undo(es|ing)?|slacken\w*|stuck|breaker bar|cheater|P10|P90|hard case|gives first)\b|\bstands \d", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex NotSaid();

    [GeneratedRegex(@"(?<=[.;:])\s", RegexOptions.None, 5000)]
    private static partial Regex Ends();
}
