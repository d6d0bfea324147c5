using System.Globalization;
using System.Text;

namespace Leverage.Workshop.Sheets;

/// <summary>Writes a sheet as Markdown; drawings are left out, their captions stay.</summary>
public static class MarkdownSheet
{
    private const string Special = "\\`*_[]<>#|~";

    /// <summary>The Markdown of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>Text with line feeds.</returns>
    public static string Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder($"# {Plain(sheet.Title)}\n");
        foreach (SheetBlock block in sheet.Blocks)
        {
            text.Append('\n');
            Write(text, block);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, SheetBlock block)
    {
        switch (block)
        {
            case SheetHeading heading:
                text.Append(CultureInfo.InvariantCulture, $"## {Plain(heading.Words)}\n");
                break;
            case SheetParagraph paragraph:
                text.Append(CultureInfo.InvariantCulture, $"{Plain(paragraph.Words)}\n");
                break;
            case SheetCaution caution:
                text.Append(CultureInfo.InvariantCulture, $"> **{Plain(caution.Words)}**\n");
                break;
            case SheetBlanks blanks:
                text.Append(string.Join(" · ", blanks.Labels.Select(label => $"{Plain(label)} \\_\\_\\_\\_\\_\\_"))).Append('\n');
                break;
            case SheetList list:
                text.AppendJoin("", list.Entries.Select(entry => $"- {(list.Ticked ? "[ ] " : "")}{Plain(entry)}\n"));
                break;
            case SheetSteps steps:
                Steps(text, steps);
                break;
            case SheetTable table:
                Table(text, table);
                break;
            case SheetFigure figure:
                text.Append(CultureInfo.InvariantCulture, $"*{Plain(figure.Caption)}*\n");
                break;
        }
    }

    private static void Steps(StringBuilder text, SheetSteps steps)
    {
        for (int i = 0; i < steps.Steps.Count; i++)
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture);
            text.Append(CultureInfo.InvariantCulture, $"{number}. [ ] **{Plain(steps.Steps[i].Title)}**\n");
            foreach (SheetLine line in steps.Steps[i].Lines)
            {
                text.Append(CultureInfo.InvariantCulture, $"   - {Plain(line.Label)} {Plain(line.Words)}\n");
            }
        }
    }

    private static void Table(StringBuilder text, SheetTable table)
    {
        Row(text, table.Columns.Select(column => Plain(column.Name)));
        Row(text, table.Columns.Select(_ => "---"));
        foreach (IReadOnlyList<SheetCell> row in table.Rows)
        {
            Row(text, row.Select(Cell));
        }
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    private static string Cell(SheetCell cell) => cell.Kind == CellKind.Box
        ? "☐"
        : string.Join("<br>", cell.Lines.Select((line, i) =>
            i == 0 && cell.Kind is CellKind.Name or CellKind.Verdict && line.Length > 0 ? $"**{Plain(line)}**" : Plain(line)));

    /// <summary>Words with every mark that Markdown would read as its own told to stand for itself.</summary>
    private static string Plain(string words)
    {
        var plain = new StringBuilder(words.Length);
        foreach (char c in words.ReplaceLineEndings(" "))
        {
            if (Special.Contains(c, StringComparison.Ordinal))
            {
                plain.Append('\\');
            }

            plain.Append(c);
        }

        return plain.ToString();
    }
}
