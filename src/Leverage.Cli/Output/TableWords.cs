using System.Globalization;
using Leverage.Tables;
using Leverage.Wording;

namespace Leverage.Cli.Output;

/// <summary>Tables in words: short columns side by side, long texts below their row, sources numbered at the end.</summary>
internal static class TableWords
{
    private const int LongText = 24;
    private const string Recalled = "memory_columns";

    /// <summary>The list of all tables.</summary>
    internal static void List(TextPage page)
    {
        page.Title("Tables: leverage table NAME [FILTER]");
        var list = new Columns("lrl").Row("name", "rows", "what it holds");
        foreach (string name in TableCatalog.Tables.Names)
        {
            Table table = TableCatalog.Tables[name];
            list.Row(name, Text(table.Rows.Count), Short(table.Title));
        }

        page.Table(list);
    }

    /// <summary>Chosen rows of tables.</summary>
    internal static void Write(TextPage page, IReadOnlyList<TableChoice> chosen, UnitStyle units)
    {
        for (int i = 0; i < chosen.Count; i++)
        {
            if (i > 0)
            {
                page.Space();
            }

            Write(page, chosen[i], units);
        }
    }

    private static void Write(TextPage page, TableChoice choice, UnitStyle units)
    {
        page.Title($"{choice.Table.Name}: {choice.Table.Title}");
        string[] shown = [.. choice.Table.Columns.Where(column => Shown(choice, column, units))];
        string[] below = [.. shown.Where(column => Longest(choice, column) > LongText)];
        string[] beside = [.. shown.Where(column => Array.IndexOf(below, column) < 0)];
        var sources = new List<string>();
        var grid = new Columns(Alignment(choice.Table, beside));
        Head(grid, beside);
        foreach (TableRow row in choice.Rows)
        {
            grid.Row([.. beside.Select(column => Cell(row, column)), $"{row.Status.Word()} [{Text(Number(sources, row.Source))}]"]);
        }

        string[] lines = [.. grid.Lines()];
        int head = lines.Length - choice.Rows.Count;
        for (int i = 0; i < lines.Length; i++)
        {
            page.Line(lines[i]);
            foreach (string column in i < head ? [] : below)
            {
                page.Under(choice.Rows[i - head].OptionalText(column) ?? "");
            }
        }

        Foot(page, choice, sources);
    }

    private static bool Shown(TableChoice choice, string column, UnitStyle units) =>
        column is not ("source" or "status" or Recalled or "printed_unit")
            && Longest(choice, column) > 0
            && !TableShape.IsDouble(choice.Table, column, units.IsUs);

    private static int Longest(TableChoice choice, string column)
    {
        int index = TableShape.Index(choice.Table, column);
        return choice.Rows.Max(row => row.Cells[index].Length);
    }

    private static string Alignment(Table table, string[] columns) =>
        string.Concat(columns.Select(column => TableShape.IsNumber(table, column) ? 'r' : 'l')) + "l";

    private static void Head(Columns grid, string[] columns)
    {
        string[][] headings = [.. columns.Select(TableShape.Heading), ["status", "[source]"]];
        int height = headings.Max(heading => heading.Length);
        for (int line = 0; line < height; line++)
        {
            grid.Row([.. headings.Select(heading => line < height - heading.Length ? "" : heading[line - height + heading.Length])]);
        }
    }

    private static string Cell(TableRow row, string column)
    {
        string cell = row.OptionalText(column) ?? "";
        bool recalled = row.Table.Has(Recalled)
            && (row.OptionalText(Recalled) ?? "").Split(' ').Contains(column);
        return recalled ? $"{cell}*" : cell;
    }

    private static int Number(List<string> sources, string source)
    {
        int known = sources.IndexOf(source);
        if (known < 0)
        {
            sources.Add(source);
            known = sources.Count - 1;
        }

        return known + 1;
    }

    private static void Foot(TextPage page, TableChoice choice, List<string> sources)
    {
        page.Space();
        for (int i = 0; i < sources.Count; i++)
        {
            page.Entry($"[{Text(i + 1)}]", sources[i]);
        }

        foreach (string note in choice.Table.Notes)
        {
            page.Entry("·", note);
        }

        if (choice.Rows.Any(row => row.Table.Has(Recalled) && row.OptionalText(Recalled) is not null))
        {
            page.Entry("*", "recalled from memory, not seen in a readable source");
        }
    }

    private static string Short(string title) =>
        title.Length <= 50 ? title : title[..title.LastIndexOf(' ', 49)].TrimEnd(',', ':', ';') + " …";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
