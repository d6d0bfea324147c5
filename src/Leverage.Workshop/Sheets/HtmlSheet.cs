using System.Globalization;

namespace Leverage.Workshop.Sheets;

/// <summary>Writes a sheet as one self-contained page: no link leads out of it and nothing in it runs.</summary>
public static class HtmlSheet
{
    /// <summary>The page of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>HTML, UTF-8.</returns>
    public static string Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var html = new HtmlWriter();
        html.Doctype().Open("html", ("lang", "en"));
        html.Open("head").Void("meta", ("charset", "utf-8"))
            .Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"))
            .Element("title", sheet.Title).Style(SheetStyle.For(sheet.Title)).CloseLine();
        html.Open("body").Open("main");
        html.Element("h1", sheet.Title);
        foreach (SheetBlock block in sheet.Blocks)
        {
            Write(html, block);
        }

        html.Close().Close().CloseLine();
        return html.Text;
    }

    private static void Write(HtmlWriter html, SheetBlock block)
    {
        switch (block)
        {
            case SheetHeading heading:
                html.Open("h2").Words(heading.Words).Words(" ").Element("small", heading.Note).CloseLine();
                break;
            case SheetParagraph paragraph:
                html.Open("p").Words(paragraph.Words).CloseLine();
                break;
            case SheetCaution caution:
                html.Open("p", ("class", "caution")).Words(caution.Words).CloseLine();
                break;
            case SheetBlanks blanks:
                Blanks(html, blanks);
                break;
            case SheetList list:
                List(html, list);
                break;
            case SheetPanel panel:
                Panel(html, panel);
                break;
            case SheetTable table:
                Table(html, table);
                break;
            case SheetFigure figure:
                html.Open("figure").Open("div", ("class", "drawing"), ("role", "img"), ("aria-label", figure.Caption))
                    .Drawing(figure.Svg).Close().Element("figcaption", figure.Caption).CloseLine();
                break;
        }
    }

    private static void Blanks(HtmlWriter html, SheetBlanks blanks)
    {
        html.Open("p", ("class", "blanks"));
        foreach (string label in blanks.Labels)
        {
            html.Open("span").Words(label).Element("i", "").Close();
        }

        html.CloseLine();
    }

    private static void List(HtmlWriter html, SheetList list)
    {
        html.Open("ul", list.Ticked ? [("class", "ticked")] : []);
        foreach (string entry in list.Entries)
        {
            html.Open("li");
            if (list.Ticked)
            {
                html.Open("label");
                Box(html, entry);
                html.Element("span", entry).Close();
            }
            else
            {
                html.Words(entry);
            }

            html.CloseLine();
        }

        html.CloseLine();
    }

    private static void Panel(HtmlWriter html, SheetPanel panel)
    {
        html.Open("dl", ("class", "panel"));
        foreach (SheetLine line in panel.Lines)
        {
            html.Open("div").Element("dt", line.Label).Element("dd", line.Words).CloseLine();
        }

        html.CloseLine();
    }

    private static void Table(HtmlWriter html, SheetTable table)
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
