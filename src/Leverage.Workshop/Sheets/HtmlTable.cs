using System.Globalization;

namespace Leverage.Workshop.Sheets;

/// <summary>Writes a table of a sheet as HTML.</summary>
internal static class HtmlTable
{
    /// <summary>Writes it.</summary>
    internal static void Write(HtmlWriter html, SheetTable table)
    {
        html.Open("table").Open("colgroup");
        foreach (SheetColumn column in table.Columns)
        {
            html.Void("col", ("style", string.Create(CultureInfo.InvariantCulture, $"width:{column.Width}%")));
        }

        html.Close().Open("thead").Open("tr");
        foreach (SheetColumn column in table.Columns)
        {
            html.Element("th", column.Name, ("scope", "col"));
        }

        html.Close().CloseLine();
        foreach (SheetGroup group in table.Groups)
        {
            Group(html, group, table.Columns);
        }

        html.CloseLine();
    }

    private static void Group(HtmlWriter html, SheetGroup group, IReadOnlyList<SheetColumn> columns)
    {
        html.Open("tbody").Open("tr");
        string across = Whole(columns.Count - 1);
        int lines = group.Rows.Count + group.Rows.Count(row => row.Note.Length > 0);
        html.Open("th", ("scope", "rowgroup"), lines > 0 ? ("rowspan", Whole(lines)) : ("colspan", Whole(columns.Count)));
        Lines(html, group.Lead);
        html.Close();
        for (int i = 0; i < group.Rows.Count; i++)
        {
            SheetRow row = group.Rows[i];
            if (i > 0)
            {
                html.CloseLine().Open("tr");
            }

            for (int c = 0; c < row.Cells.Count; c++)
            {
                Cell(html, row.Cells[c], columns[c + 1].Name);
            }

            if (row.Note.Length > 0)
            {
                html.CloseLine().Open("tr", ("class", "note")).Open("td", ("colspan", across)).Words(row.Note).Close();
            }
        }

        html.Close().CloseLine();
    }

    private static void Cell(HtmlWriter html, SheetCell cell, string column)
    {
        html.Open("td", ("data-label", column), ("class", cell.Kind.ToString().ToLowerInvariant()));
        Lines(html, cell);
        html.Close();
    }

    private static void Lines(HtmlWriter html, SheetCell cell)
    {
        if (cell.Kind == CellKind.Ticked)
        {
            html.Open("label");
            Box(html, cell.Lines[0]);
        }

        html.Open("div");
        for (int i = 0; i < cell.Lines.Count; i++)
        {
            if (i > 0)
            {
                html.Words(" ");
            }

            bool mark = cell.Kind == CellKind.Verdict && i == 1;
            html.Open(mark ? "em" : i == 0 ? "b" : "span", mark ? [("class", cell.Lines[i].ToLowerInvariant())] : []).Words(cell.Lines[i]).Close();
            for (int loud = 0; i == 0 && loud < cell.Loud.Count; loud++)
            {
                html.Element("strong", cell.Loud[loud]);
            }
        }

        html.Close();
        if (cell.Kind == CellKind.Ticked)
        {
            html.Close();
        }
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Box(HtmlWriter html, string what) => html.Void("input", ("type", "checkbox"), ("aria-label", what));
}
