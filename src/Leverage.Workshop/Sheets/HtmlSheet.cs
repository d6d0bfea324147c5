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
            .Element("title", sheet.Title).Style(SheetStyle.Rules).CloseLine();
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
                html.Open("h2", heading.NewPage ? [("class", "page")] : []).Words(heading.Words).CloseLine();
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
            case SheetSteps steps:
                Steps(html, steps);
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

    private static void Steps(HtmlWriter html, SheetSteps steps)
    {
        html.Open("ol", ("class", "steps"));
        foreach (SheetStep step in steps.Steps)
        {
            html.Open("li").Open("div", ("class", "step"));
            html.Open("label");
            Box(html, step.Title);
            html.Element("strong", step.Title).Close();
            foreach (SheetLine line in step.Lines)
            {
                html.Open("p").Element("b", line.Label).Words(" ").Element("span", line.Words).Close();
            }

            html.Close().CloseLine();
        }

        html.CloseLine();
    }

    private static void Table(HtmlWriter html, SheetTable table)
    {
        bool boxes = table.Rows.Count > 0 && table.Rows[0].Any(cell => cell.Kind == CellKind.Box);
        html.Open("table", boxes ? [("class", "boxes")] : []).Open("colgroup");
        foreach (SheetColumn column in table.Columns)
        {
            html.Void("col", ("style", string.Create(CultureInfo.InvariantCulture, $"width:{column.Width}%")));
        }

        html.Close().Open("thead").Open("tr");
        foreach (SheetColumn column in table.Columns)
        {
            html.Element("th", column.Name, ("scope", "col"));
        }

        html.Close().Close().Open("tbody");
        foreach (IReadOnlyList<SheetCell> row in table.Rows)
        {
            html.Open("tr");
            for (int i = 0; i < row.Count; i++)
            {
                Cell(html, row[i], table.Columns[i].Name, row[0].Lines[0]);
            }

            html.CloseLine();
        }

        html.Close().CloseLine();
    }

    private static void Cell(HtmlWriter html, SheetCell cell, string column, string rowName)
    {
        if (cell.Kind == CellKind.Name)
        {
            html.Open("th", ("scope", "row"));
        }
        else
        {
            html.Open("td", ("data-label", column), ("class", cell.Kind == CellKind.Verdict
                ? $"verdict {cell.Lines[0].ToLowerInvariant()}"
                : cell.Kind.ToString().ToLowerInvariant()));
        }

        if (cell.Kind == CellKind.Box)
        {
            html.Open("label");
            Box(html, $"{rowName}: {column}");
            html.Close();
        }

        html.Open("div");
        for (int i = 0; i < cell.Lines.Count; i++)
        {
            html.Open(i == 0 ? "b" : "span").Words(cell.Lines[i]).Close();
        }

        html.Close().Close();
    }

    private static void Box(HtmlWriter html, string what) => html.Void("input", ("type", "checkbox"), ("aria-label", what));
}
