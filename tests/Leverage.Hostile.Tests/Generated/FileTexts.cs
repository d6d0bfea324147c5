using FsCheck;
using FsCheck.Fluent;
using Leverage.Tables;
using Leverage.Workshop.Chest;
using Leverage.Workshop.Jobs;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>
/// Chests, jobs and fastener lists as a person writes them: blocks of the shared examples, a few of them left out, a few
/// values changed, a few lines damaged.
/// </summary>
internal static class FileTexts
{
    private static readonly string[] Starter = [.. Split(StarterChest.Text())];
    private static readonly string[] ChestBlocks = [.. Blocks("chest.toml"), .. Starter];
    private static int SharedFromStarter => Starter.Length;
    private static readonly string[] JobBlocks = [.. Blocks("job.toml")];
    private static readonly string[] JobHeads = [.. JobBlocks.Where(block => !block.StartsWith('['))];
    private static readonly string[] JobFasteners = [.. JobBlocks.Where(block => block.StartsWith("[[fasteners", StringComparison.Ordinal))];
    private static readonly string[] JobOthers = [.. JobBlocks.Where(block => block.StartsWith('[') && !block.StartsWith("[[fasteners", StringComparison.Ordinal))];
    private static readonly string[] ListLines = [.. Shared("fasteners.csv").TrimStart('\ufeff').Split('\n').Select(line => line.TrimEnd('\r')).Where(line => line.Length > 0)];

    /// <summary>Starter and shared files as they stand.</summary>
    private static readonly string[] Whole = [StarterJob.Text(), Shared("job.toml"), Shared("job-with-loop.toml"), Shared("job-with-list.toml")];

    private static readonly Gen<string> AnyValue = Gen.Frequency(
        (3, Values.Length), (2, Values.Torque), (1, Values.Thread), (1, Values.Grade), (1, Values.Tube), (1, Values.Of("MASS")!), (1, AnyText.Any),
        (2, Gen.Elements<string>([.. TableCatalog.Tables["conditions"].Rows.Select(row => row.Key), "1/2", "3/4", "rear left", "in gear", "chocked", "brake"])));

    /// <summary>A chest of at most so many pieces.</summary>
    internal static Gen<string> Chest(int most) =>
        from count in Gen.Choose(0, most)
        from blocks in Gen.ArrayOf(Gen.Elements<string>(ChestBlocks), count)
        from text in Touched(Numbered(blocks))
        select text;

    /// <summary>A job of a few fasteners and tasks; its chest stands in it, or is missing.</summary>
    internal static Gen<string> Job { get; } =
        from head in Gen.Frequency((8, Gen.Elements<string>(JobHeads)), (1, Gen.Constant("title = \"x\"")))
        from fasteners in Gen.Choose(0, 2).SelectMany(n => Gen.ArrayOf(Gen.Elements<string>(JobFasteners), n))
        from others in Gen.Choose(0, 6).SelectMany(n => Gen.ArrayOf(Gen.Elements<string>(JobOthers), n))
        from tools in Gen.Choose(0, 3).SelectMany(n => Gen.ArrayOf(Gen.Elements<string>(ChestBlocks), n))
        from keyed in JobKeys.Below($"{Bare(head)}\n\n{Numbered([.. fasteners, .. others.Distinct(StringComparer.Ordinal)])}\n\n{InChest(Numbered(tools))}")
        from text in Touched(keyed)
        select text;

    /// <summary>A job of some fasteners and a few tools, untouched.</summary>
    internal static Gen<string> SmallJob { get; } =
        from count in Gen.Choose(2, 5)
        from fasteners in Gen.Shuffle(JobFasteners).Select(all => all.Take(count))
        from tools in Gen.Choose(1, 5).SelectMany(n => Gen.Shuffle(ChestBlocks[..^SharedFromStarter]).Select(all => all.Take(n)))
        select "title = \"small\"\n\n" + string.Join("\n\n", fasteners.Append("[vehicle]\nmass = \"1450kg\"").Concat(tools.Select(InChest)));

    /// <summary>A small job with tasks that turn its fasteners, and with whatever keys it can have besides.</summary>
    internal static Gen<string> KeyedJob { get; } =
        from job in SmallJob
        from keyed in JobKeys.Below($"""
            at_start = ["wheels down", "parking brake"]
            {job}

            [[tasks]]
            name = "Lift it"
            ends = "wheels down"
            gives = "on stands"

            [[tasks]]
            name = "Strip it"
            takes_off = [{string.Join(", ", NamesOf(job))}]

            """)
        select keyed;

    /// <summary>Rows of the shared list, each once, with whatever columns it can have besides.</summary>
    internal static Gen<string> KeyedList { get; } =
        from count in Gen.Choose(1, 4)
        from rows in Gen.Shuffle(ListLines[1..]).Select(all => all.Take(count))
        from keyed in JobKeys.Columns(string.Join('\n', rows.Prepend(ListLines[0])), ";")
        select keyed;

    /// <summary>A job as the program ships it, touched.</summary>
    internal static Gen<string> WholeJob { get; } = Gen.Elements<string>(Whole).SelectMany(Touched);

    /// <summary>A job that names a list beside it.</summary>
    internal static Gen<string> JobWithList { get; } = Touched($"title = \"list\"\nfastener_list = \"{HostileInput.BesideName}\"\n[vehicle]\nmass = \"1450kg\"\n");

    /// <summary>A fastener list.</summary>
    internal static Gen<string> List { get; } =
        from count in Gen.Choose(0, 6)
        from rows in Gen.ArrayOf(Gen.Elements<string>(ListLines[1..]), count)
        from separator in Gen.Elements(";", ",", "\t", ";")
        from end in Gen.Elements("\n", "\r\n", "\r")
        from bom in Gen.Elements("", "", "\ufeff")
        from keyed in JobKeys.Columns(string.Join(end, rows.Prepend(ListLines[0]).Select(row => row.Replace(";", separator, StringComparison.Ordinal))), separator)
        from text in Touched(keyed)
        select bom + text;

    /// <summary>Up to three values changed or places damaged; one text in three is left as it is.</summary>
    private static Gen<string> Touched(string text) => Gen.Choose(0, 3).SelectMany(times => Touched(text, times == 3 ? 0 : times));

    private static Gen<string> Touched(string text, int times) => times == 0
        ? Gen.Constant(text)
        : Gen.Frequency((4, Revalued(text)), (1, AnyText.Damaged(text)), (1, WithoutLine(text))).SelectMany(once => Touched(once, times - 1));

    private static Gen<string> Revalued(string text)
    {
        string[] parts = text.Split('"');
        return parts.Length < 3
            ? AnyText.Damaged(text)
            : from at in Gen.Choose(0, (parts.Length - 3) / 2)
              from value in Gen.Frequency((3, AnyValue), (1, AnyText.Damaged(parts[2 * at + 1])))
              select string.Join('"', parts.Select((part, i) => i == 2 * at + 1 ? value : part));
    }

    private static Gen<string> WithoutLine(string text)
    {
        string[] lines = text.Split('\n');
        return Gen.Choose(0, lines.Length - 1).Select(at => string.Join('\n', lines.Where((_, i) => i != at)));
    }

    /// <summary>Blocks one below the other; a block drawn twice gets another name now and then only.</summary>
    private static string Numbered(string[] blocks) => string.Join(
        "\n\n",
        blocks.Select((block, i) => i % 3 == 2 ? block : block.Replace("name = \"", $"name = \"{(char)('a' + i % 26)} ", StringComparison.Ordinal)));

    private static IEnumerable<string> NamesOf(string job) => job.Split("[[fasteners]]\n").Skip(1).Select(block => block.Split('\n')[0]["name = ".Length..]);

    private static string InChest(string blocks) => blocks.Replace("[[", "[[chest.", StringComparison.Ordinal);

    private static string Bare(string head) => string.Join('\n', head.Split('\n').Where(line => !line.StartsWith("chest", StringComparison.Ordinal)
        && !line.StartsWith("people", StringComparison.Ordinal)));

    private static string Shared(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "shared", "pickup", name));

    private static IEnumerable<string> Blocks(string name) => Split(Shared(name));

    private static IEnumerable<string> Split(string text) =>
        text.Split("\n\n", StringSplitOptions.RemoveEmptyEntries).Where(block => block.Split('\n').Any(line => line.Length > 0 && line[0] != '#'));
}
