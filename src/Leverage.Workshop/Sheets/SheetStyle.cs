using System.Globalization;
using System.Text;

namespace Leverage.Workshop.Sheets;

/// <summary>How a sheet looks: black on white, nothing told by colour, on paper and on a phone.</summary>
internal static class SheetStyle
{
    // The paper's width is the printer's own, laid across. What is read at arm's length is 12 pt, boxes are 6 mm. Groups
    // stay together, and the last of a table stay with the one before, so that no page holds a single row. Rows become
    // cards on a narrow screen, each value with the name of its column.
    private const string Rules = """

        :root { --ink: #111; --soft: #444; --line: #888; --wash: #eee; }
        * { box-sizing: border-box; }
        html { font: 15px/1.25 Arial, "Liberation Sans", Helvetica, "DejaVu Sans Condensed", sans-serif; color: var(--ink); background: #fff; }
        body { margin: 0; }
        main { max-width: 80rem; margin: 0 auto; padding: 1rem; overflow-wrap: break-word; }
        h1 { font-size: 1.6rem; line-height: 1.15; margin: 0 0 .3rem; }
        h2 { font-size: 1.25rem; margin: .5rem 0 .2rem; break-after: avoid; }
        h2 small { font-size: .87rem; font-weight: 400; }
        p { margin: .2rem 0; }
        .caution { border: 2px solid var(--ink); border-left-width: .6rem; padding: .15rem .5rem; font-weight: 600; break-inside: avoid; }
        .blanks { display: flex; flex-wrap: wrap; gap: .3rem 1rem; color: var(--soft); }
        .blanks span { display: flex; flex: 1 1 9rem; gap: .3rem; white-space: nowrap; }
        .blanks i { flex: 1; border-bottom: 1px solid var(--line); min-width: 3rem; }
        ul { margin: .25rem 0; padding-left: 1.2rem; columns: 24rem; }
        .panel { border: 2px solid var(--ink); margin: .3rem 0; padding: .15rem .5rem; columns: 30rem 2; column-gap: 1.2rem; line-height: 1.15; }
        .panel div { display: grid; grid-template-columns: 9.5rem 1fr; gap: .4rem; padding: .05rem 0; }
        .panel dt { font-weight: 700; }
        .panel dd { margin: 0; }
        label { display: flex; gap: .4rem; align-items: flex-start; }
        label > div { flex: 1; min-width: 0; }
        input[type=checkbox] { appearance: none; flex: none; width: 6mm; height: 6mm; margin: 0;
          border: 1.5px solid var(--ink); border-radius: 2px; background: #fff; }
        input[type=checkbox]:checked { background: linear-gradient(45deg, transparent 44%, var(--ink) 44% 56%, transparent 56%),
          linear-gradient(-45deg, transparent 44%, var(--ink) 44% 56%, transparent 56%); }
        table { width: 100%; table-layout: fixed; border-collapse: collapse; margin: .3rem 0; font-size: .87rem; line-height: 1.15; }
        th, td { text-align: left; vertical-align: top; padding: .05rem .25rem; font-weight: 400; }
        thead th { border-bottom: 2px solid var(--ink); font-weight: 700; vertical-align: bottom; }
        tbody { border-bottom: 1px solid var(--ink); }
        tbody tr + tr:not(.note) td { border-top: 1px solid #bbb; }
        tr, figure { break-inside: avoid; }
        tr.note { break-before: avoid; }
        tbody tr:nth-last-child(2) { break-after: avoid; }
        tr.note td { padding-top: 0; }
        tbody:last-child { break-before: avoid; }
        td b, th b { font-size: 12pt; line-height: 1.05; font-weight: 700; }
        td.ticked b { font-weight: 400; }
        td.words b { font-weight: 400; font-size: 9pt; }
        td b, td span, td strong, th b, th span, th strong { display: block; }
        td span, th span { color: var(--soft); }
        td.ticked b, td.ticked b + span, td.words b, td.words b + span { display: inline; }
        tbody th b { font-size: 9.5pt; }
        tbody th span { display: inline; }
        tbody th span + span::before { content: " · "; }
        table + p { font-size: .9rem; line-height: 1.1; margin: 0; }
        th[colspan] b, th[colspan] span, th[colspan] strong { display: inline; margin-right: .6em; }
        h1, h1 + p { display: inline; margin-right: .6rem; }
        td.figure b, td.verdict b { white-space: nowrap; }
        td.figure b, td.figure b + span { display: inline; }
        td.verdict b { display: inline-block; margin-right: .2em; }
        td.blank b { border-bottom: 1px solid var(--line); height: 6mm; }
        td em { display: inline-block; font-style: normal; font-weight: 700; font-size: 9.5pt; line-height: 1.1; padding: 0 .15em;
          border: 1px solid var(--ink); border-radius: 3px; }
        td em.care { border-width: 3px; }
        td em.stop { background: var(--ink); color: #fff; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        figure { margin: .5rem 0; }
        .drawing svg { display: block; width: 100%; height: auto; max-height: 75vh; }
        figcaption { color: var(--soft); font-size: .87rem; }
        @media print {
          html { font-size: 8.5pt; }
          main { max-width: none; padding: 0; }
          .drawing svg { max-height: 62mm; }
          .panel div { display: block; }
          .panel dt, .panel dd { display: inline; margin-right: .5em; }
        }
        @media screen and (max-width: 700px) {
          main { padding: .7rem; }
          table, tbody, tr, tbody th, td { display: block; width: 100%; }
          thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
          tbody { border: 1px solid var(--ink); border-radius: 4px; margin: .5rem 0; padding: .2rem .4rem; }
          tbody th { padding: .15rem 0; }
          td { padding: .15rem 0; }
          td:not(.ticked) { display: grid; grid-template-columns: 9.5rem 1fr; gap: .4rem; }
          td:not(.ticked)::before { content: attr(data-label); color: var(--soft); }
          tr.note td { display: block; }
          td.blank b { height: 1.6rem; }
          .panel div { grid-template-columns: 1fr; gap: 0; }
        }

        """;

    /// <summary>The rules of a page, with its title running on every sheet of paper.</summary>
    internal static string For(string title) =>
        $"\n@page {{ size: landscape; margin: 9mm 7mm 5mm;\n  @top-left {{ content: \"{Text(title)}\"; font: 8pt sans-serif; }}\n"
        + "  @top-right { content: counter(page) \" / \" counter(pages); font: 8pt sans-serif; } }\n" + Rules;

    /// <summary>Text as a style's string: all but plain letters, digits and spaces by their numbers.</summary>
    private static string Text(string title)
    {
        var text = new StringBuilder(title.Length);
        foreach (Rune rune in title.EnumerateRunes())
        {
            _ = rune.IsAscii && (Rune.IsLetterOrDigit(rune) || rune.Value == ' ')
                ? text.Append((char)rune.Value)
                : text.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x6} ");
        }

        return text.ToString();
    }
}
