using System.CommandLine;
using System.CommandLine.Completions;
using FsCheck;
using FsCheck.Fluent;
using Leverage.Cli.Commands;

namespace Leverage.Hostile.Tests.Generated;

/// <summary>
/// Command lines out of the program's own grammar: each command with its example, more of its options, and a few words
/// damaged. A new option is tried without a line here.
/// </summary>
internal static class CommandLines
{
    private static readonly string[] Common = ["--json", "--units", "--strict", "--force-write", "--help"];
    private static readonly Grammar[] Commands = [.. CommandList.All.Select(entry => new Grammar(entry))];

    /// <summary>A line of one of these commands.</summary>
    internal static Gen<HostileInput> Of(params string[] names) =>
        Gen.OneOf(Commands.Where(command => names.Contains(command.Name, StringComparer.Ordinal)).Select(Line))
            .Select(words => new HostileInput(Door.Command, words));

    /// <summary>A line of this command that reads the file of the input, with its own mandatory words.</summary>
    internal static Gen<string[]> With(string name, params string[] first) =>
        Commands.Single(command => command.Name == name) is var grammar
            ? from more in More(grammar, 2) from flags in Flags select (string[])[name, .. first, .. more, .. flags]
            : throw new InvalidOperationException();

    /// <summary>Lines that are hardly a command at all.</summary>
    internal static Gen<HostileInput> Strays { get; } =
        from start in Gen.OneOf(
            Gen.Elements("loosen", "job", "pick", "table", "lossen", "--help", "--json", "[suggest:3]", "[suggest]", "--schema", "--version"), AnyText.Any)
        from rest in Gen.ArrayOf(AnyText.Any, 2)
        from cut in Gen.Choose(0, 2)
        select new HostileInput(Door.Command, [start, .. rest[..cut]]);

    private static Gen<string[]> Flags { get; } = Gen.Frequency(
        (6, Gen.Constant(Array.Empty<string>())),
        (3, Gen.Constant<string[]>(["--json"])),
        (2, Gen.Constant<string[]>(["--units", "us"])),
        (1, Gen.Constant<string[]>(["--strict"])),
        (1, Gen.Elements<string>(Common).Select(word => (string[])[word])));

    private static Gen<string[]> Line(Grammar grammar) =>
        from own in Gen.Frequency((9, Gen.Constant(grammar.Example)), (1, Gen.Constant<string[]>([grammar.Name])))
        from changed in Changed(grammar, own)
        from more in More(grammar, 4)
        from flags in Flags
        from damaged in Damaged([.. changed, .. more, .. flags])
        select damaged;

    /// <summary>Some values of the example replaced.</summary>
    private static Gen<string[]> Changed(Grammar grammar, string[] words) =>
        words.Select((word, i) => i > 0 && grammar.ValueOf(words[i - 1]) is { } value
            ? Gen.Frequency((1, Gen.Constant(word)), (1, value))
            : i == 1 && grammar.Place is { } place ? Gen.Frequency((2, Gen.Constant(word)), (1, place))
            : Gen.Constant(word)).Aggregate(
                Gen.Constant(Array.Empty<string>()),
                (done, next) => from a in done from b in next select (string[])[.. a, b]);

    private static Gen<string[]> More(Grammar grammar, int most) =>
        from count in Gen.Choose(0, most)
        from words in Gen.ArrayOf(grammar.Option, count)
        select words.SelectMany(word => word).ToArray();

    /// <summary>One line in four has a word lost, doubled, damaged or put elsewhere.</summary>
    private static Gen<string[]> Damaged(string[] words) => Gen.Frequency(
        (12, Gen.Constant(words)),
        (1, Gen.Choose(0, words.Length - 1).Select(at => words.Where((_, i) => i != at).ToArray())),
        (1, Gen.Choose(0, words.Length - 1).Select(at => words.Append(words[at]).ToArray())),
        (1, from at in Gen.Choose(0, words.Length - 1) from bad in AnyText.Damaged(words[at]) select Put(words, at, bad)),
        (1, from at in Gen.Choose(0, words.Length) from odd in AnyText.Any select words.Take(at).Append(odd).Concat(words.Skip(at)).ToArray()));

    private static string[] Put(string[] words, int at, string word) => [.. words.Select((old, i) => i == at ? word : old)];

    /// <summary>A command's own words: its example, and each option with values that suit it.</summary>
    private sealed class Grammar
    {
        private readonly Dictionary<string, Gen<string>> _values = new(StringComparer.Ordinal);
        private readonly List<Gen<string[]>> _options = [];

        internal Grammar(CommandEntry entry)
        {
            LeverageCommand built = entry.Build();
            (Name, Example) = (entry.Name, built.Examples[0].Split(' '));
            foreach (Option option in built.Symbols.OfType<Option>())
            {
                Add(option);
            }

            Place = built.Symbols.OfType<Argument>().FirstOrDefault() is { } first ? Values.Of(first.Name) ?? Names(first) : null;
        }

        internal string Name { get; }

        internal string[] Example { get; }

        /// <summary>What may stand in place without a name.</summary>
        internal Gen<string>? Place { get; }

        internal Gen<string[]> Option => Gen.OneOf(_options);

        internal Gen<string>? ValueOf(string option) => _values.GetValueOrDefault(option);

        private void Add(Option option)
        {
            if (option.Arity.MaximumNumberOfValues == 0)
            {
                _options.Add(Gen.Constant<string[]>([option.Name]));
                return;
            }

            Gen<string> value = option.Name is "--draws" ? Gen.Elements("1", "10", "1000", "0", "1.5", "-3", "many")
                : Values.Of(option.HelpName ?? "") ?? Files(option.HelpName) ?? Names(option);
            _values[option.Name] = value;
            _options.Add(value.Select(text => (string[])[option.Name, text]));
        }

        /// <summary>Files: a picture that can be written is rare, because drawing takes as long as a thousand refusals.</summary>
        private static Gen<string>? Files(string? help) => help switch
        {
            "FILE" => Gen.Frequency(
                (40, Gen.Elements("x", "x.gif", "x.toml.", "", " ", "{folder}", "{folder}/no/x.svg", "{folder}/no/x.html", "/proc/x.svg", "x\n.png")),
                (1, Gen.Elements("{folder}/x.svg", "{folder}/x.png", "{folder}/x.toml"))),
            "F.toml" => Gen.Elements("{folder}/no.toml", "{folder}", "", " ", "no\0.toml"),
            _ => null,
        };

        private static Gen<string> Names(Symbol symbol) =>
            Values.Name([.. symbol.GetCompletions(CompletionContext.Empty).Select(item => item.Label)]);
    }
}
