namespace Leverage.Workshop.Sheets;

/// <summary>How a sheet looks: black on white, nothing told by colour, on paper and on a phone.</summary>
internal static class SheetStyle
{
    // No paper size is asked for: the printer's own is used, and the layout takes any width from A5 up. Rows become
    // cards on a narrow screen, each value with the name of its column.
    internal const string Rules = """

        :root { --ink: #111; --soft: #555; --line: #999; --wash: #f0f0f0; }
        * { box-sizing: border-box; }
        html { font: 15px/1.4 system-ui, "Liberation Sans", Arial, sans-serif; color: var(--ink); background: #fff; }
        body { margin: 0; }
        main { max-width: 62rem; margin: 0 auto; padding: 1rem; overflow-wrap: anywhere; }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .5rem; }
        h2 { font-size: 1.2rem; margin: 1.6rem 0 .5rem; padding-bottom: .15rem; border-bottom: 2px solid var(--ink); }
        p { margin: .4rem 0; }
        .caution { border: 2px solid var(--ink); border-left-width: .6rem; padding: .4rem .6rem; font-weight: 600; }
        .blanks { display: flex; flex-wrap: wrap; gap: .3rem 1rem; color: var(--soft); }
        .blanks span { display: flex; flex: 1 1 9rem; gap: .3rem; white-space: nowrap; }
        .blanks i { flex: 1; border-bottom: 1px solid var(--line); min-width: 3rem; }
        ul { margin: .4rem 0; padding-left: 1.2rem; }
        ul.ticked { list-style: none; padding: 0; }
        li { margin: .15rem 0; }
        label { display: flex; gap: .5rem; align-items: flex-start; }
        input[type=checkbox] { appearance: none; flex: none; width: 1.05em; height: 1.05em; margin: .15em 0 0;
          border: 1.5px solid var(--ink); border-radius: 2px; background: #fff; }
        input[type=checkbox]:checked { background: linear-gradient(45deg, transparent 44%, var(--ink) 44% 56%, transparent 56%),
          linear-gradient(-45deg, transparent 44%, var(--ink) 44% 56%, transparent 56%); }
        ol.steps { list-style: none; counter-reset: step; padding: 0; margin: .4rem 0; }
        ol.steps > li { counter-increment: step; display: flex; gap: .6rem; padding: .35rem 0; margin: 0;
          border-bottom: 1px solid var(--line); break-inside: avoid; }
        ol.steps > li::before { content: counter(step); flex: none; width: 1.7rem; text-align: right; font-weight: 700; }
        .step { flex: 1; min-width: 0; }
        .step p { margin: .1rem 0 0 1.55em; }
        .step p b { color: var(--soft); font-weight: 600; }
        table { width: 100%; table-layout: fixed; border-collapse: collapse; margin: .5rem 0; font-size: .88rem; }
        th, td { text-align: left; vertical-align: top; padding: .3rem .4rem; border-bottom: 1px solid var(--line); }
        thead th { border-bottom: 2px solid var(--ink); font-size: .8rem; vertical-align: bottom; }
        table.boxes thead th:not(:first-child) { text-align: center; }
        tbody th { font-weight: 400; }
        td b, th div b { display: block; font-weight: 400; }
        tbody th div b, td.figure div b { font-weight: 700; }
        td span, th div span { display: block; color: var(--soft); font-size: .92em; }
        td.figure div b { white-space: nowrap; }
        td.verdict div b { display: inline-block; font-weight: 700; padding: 0 .4em; border: 1px solid var(--ink); border-radius: 3px; }
        td.care div b { border-width: 3px; }
        td.stop div b { background: var(--ink); color: #fff; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        table.boxes td.box { text-align: center; }
        table.boxes td.box label { justify-content: center; }
        tr, figure, .caution { break-inside: avoid; }
        h2 { break-after: avoid; }
        figure { margin: .8rem 0; }
        .drawing svg { display: block; width: 100%; height: auto; max-height: 75vh; }
        figcaption { color: var(--soft); font-size: .88rem; margin-top: .2rem; }
        @page { margin: 13mm; }
        @media print {
          html { font-size: 10.5pt; }
          main { max-width: none; padding: 0; }
          h2.page { break-before: page; }
          .drawing svg { max-height: 110mm; }
        }
        @media screen and (max-width: 640px) {
          main { padding: .7rem; }
          table, tbody, tr, tbody th, td { display: block; width: 100%; }
          thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
          tr { border: 1px solid var(--line); border-radius: 4px; margin: .5rem 0; padding: .2rem .4rem; }
          th, td { border: 0; padding: .15rem 0; }
          td { display: grid; grid-template-columns: 7.2rem 1fr; gap: .4rem; }
          td::before { content: attr(data-label); color: var(--soft); }
          td.figure div b { white-space: normal; }
          table.boxes tr { display: flex; flex-wrap: wrap; gap: .1rem .9rem; }
          table.boxes td.box { display: flex; width: auto; gap: .3rem; flex-direction: row-reverse; justify-content: flex-end; }
          input[type=checkbox] { width: 1.35em; height: 1.35em; margin-top: 0; }
        }

        """;
}
