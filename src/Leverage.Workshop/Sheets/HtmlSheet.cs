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
            case SheetPanel panel:
                Panel(html, panel);
                break;
            case SheetTable table:
                HtmlTable.Write(html, table);
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

    private static void Panel(HtmlWriter html, SheetPanel panel)
    {
        html.Open("dl", ("class", "panel"));
        foreach (SheetLine line in panel.Lines)
        {
            html.Open("div").Element("dt", line.Label).Element("dd", line.Words).CloseLine();
        }

        html.CloseLine();
    }
}
