using System.CommandLine;
using Leverage.Assessments;
using Leverage.Cli.Input;
using Leverage.Cli.Output;
using Leverage.Reading;
using Leverage.Tables;

namespace Leverage.Cli.Commands;

/// <summary><c>leverage table</c>: what the published tables say, with source and status.</summary>
internal sealed class TableCommand : LeverageCommand
{
    private readonly TextArgument _name = new("NAME", "a table, or how its name begins; without it, all tables", required: false);

    private readonly Argument<string[]> _filter = new("FILTER")
    {
        HelpName = "FILTER",
        Description = "rows that hold this, such as M24; several words narrow it down",
        Arity = ArgumentArity.ZeroOrMore,
        CustomParser = result => [.. result.Tokens.Select(token => token.Value)],
    };

    private readonly Flag _csv = new("--csv", "as CSV, all columns");

    /// <summary>Names are completed from the tables there are.</summary>
    internal TableCommand() => _name.CompletionSources.Add(_ => TableCatalog.Tables.Names);

    /// <inheritdoc/>
    internal override string[] Examples =>
    [
        "table threads M24",
        "table conditions",
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Symbol> Symbols => [_name, _filter, _csv];

    /// <inheritdoc/>
    internal override string Remarks =>
        "Every row has its source and a status: published, derived, judgement, memory.\n"
            + "* marks a figure recalled from memory in a row that is otherwise published.";

    /// <inheritdoc/>
    internal override CommandAnswer Answer(ParsedLine parsed)
    {
        bool csv = parsed.Get(_csv);
        if (csv && parsed.Json)
        {
            throw new InputException(_csv.Name, "cannot go with --json: ask for one of them.");
        }

        if (parsed.Text(_name) is not { } name)
        {
            return csv
                ? throw new InputException(_csv.Name, "needs the table's name, such as leverage table friction --csv.")
                : new CommandAnswer(Verdict.Go, TableJson.List, TableWords.List);
        }

        TableChoice[] chosen = [.. Named(name).Select(table => Narrowed(table, parsed.Get(_filter)))];
        TableChoice[] found = [.. chosen.Where(choice => choice.Rows.Count > 0)];
        if (found.Length == 0)
        {
            throw Nothing(chosen, parsed.Get(_filter));
        }

        return csv
            ? Csv(found)
            : new CommandAnswer(
                Verdict.Go,
                () => TableJson.Of(found),
                page => TableWords.Write(page, found, parsed.Units));
    }

    private CommandAnswer Csv(TableChoice[] found) => found.Length == 1
        ? new CommandAnswer(Verdict.Go, () => "", page => page.Raw(text => TableWriter.Write(found[0].Table, found[0].Rows, text)))
        : throw new InputException(
            _csv.Name, $"writes one table: name one of {string.Join(", ", found.Select(choice => choice.Table.Name))}.");

    private IEnumerable<Table> Named(string name)
    {
        IReadOnlyList<string> names = TableCatalog.Tables.Find(name);
        if (names.Count > 0)
        {
            return names.Select(found => TableCatalog.Tables[found]);
        }

        IReadOnlyList<string> near = TableCatalog.Tables.Nearest(name);
        string cure = near.Count > 0 ? $"Nearest: {string.Join(", ", near)}. " : "";
        throw new InputException(_name.Name, $"there is no table '{name}'. {cure}All of them: leverage table.");
    }

    private static TableChoice Narrowed(Table table, string[] words)
    {
        IEnumerable<TableRow> rows = table.Rows;
        foreach (string word in words)
        {
            var holds = table.Where(word.Replace('×', 'x')).ToHashSet();
            rows = rows.Where(holds.Contains);
        }

        return new TableChoice(table, [.. rows]);
    }

    private InputException Nothing(TableChoice[] chosen, string[] words)
    {
        IReadOnlyList<string> near = NearestNames.Of(
            words[0], chosen.SelectMany(choice => choice.Table.Rows).Select(row => row.Key).Distinct(StringComparer.Ordinal), 4);
        string cure = near.Count > 0 ? $" Nearest: {string.Join(", ", near)}." : "";
        string tables = string.Join(", ", chosen.Select(choice => choice.Table.Name));
        return new InputException(_filter.Name, $"no row of {tables} holds '{string.Join(' ', words)}'.{cure}");
    }
}
