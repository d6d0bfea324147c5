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
                text.Append(CultureInfo.InvariantCulture, $"## {Plain(heading.Words)}\n{(heading.Note.Length > 0 ? $"\n{Plain(heading.Note)}\n" : "")}");
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
            case SheetPanel panel:
                text.AppendJoin("", panel.Lines.Select(line => $"- **{Plain(line.Label)}**: {Plain(line.Words)}\n"));
                break;
            case SheetTable table:
                Table(text, table);
                break;
            case SheetFigure figure:
                text.Append(CultureInfo.InvariantCulture, $"*{Plain(figure.Caption)}*\n");
                break;
        }
    }

    private static void Table(StringBuilder text, SheetTable table)
    {
        Row(text, table.Columns.Select(column => Plain(column.Name)));
        Row(text, table.Columns.Select(_ => "---"));
        foreach (SheetGroup group in table.Groups)
        {
            string lead = Cell(group.Lead);
            foreach (SheetRow row in group.Rows)
            {
                Row(text, [lead, .. row.Cells.Select((cell, i) => i == 0 && row.Note.Length > 0 ? $"{Cell(cell)}<br>{Plain(row.Note)}" : Cell(cell))]);
                lead = "";
            }

            if (group.Rows.Count == 0)
            {
                Row(text, [lead, .. Enumerable.Repeat("", table.Columns.Count - 1)]);
            }
        }
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    private static string Cell(SheetCell cell)
    {
        string box = cell.Kind == CellKind.Ticked ? "☐ " : "";
        IEnumerable<string> lines = cell.Lines.Select((line, i) =>
            line.Length > 0 && (i == 0 && cell.Kind == CellKind.Ticked || i == 1 && cell.Kind == CellKind.Verdict) ? $"**{Plain(line)}**" : Plain(line));
        return box + string.Join("<br>", lines.Take(1).Concat(cell.Loud.Select(line => $"**{Plain(line)}**")).Concat(lines.Skip(1)));
    }

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
