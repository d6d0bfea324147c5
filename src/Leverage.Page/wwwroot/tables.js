// Looking tables up: every row with its source and status.
import { make, atRest } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";

const first = ["large-nuts", "hexagons", "threads-metric", "threads-unified", "tubes", "tool-torques"];

export function tablesView(lists) {
  const names = [...first.filter(name => lists.tables.includes(name)), ...lists.tables.filter(name => !first.includes(name))];
  const which = make("select", { id: "table-name" }, ...names.map(name => make("option", { value: name, text: name.replaceAll("-", " ") })));
  const search = make("input", { id: "table-find", type: "search", autocomplete: "off", placeholder: "such as M24 or hub" });
  const out = make("div", { "aria-live": "polite" });
  const look = () => {
    const table = ask("Table", which.value, search.value);
    if (table.refusal) return out.replaceChildren(make("p", { className: "refusal", role: "alert", text: table.refusal.text }));
    const shown = table.columns.map((name, i) => ({ name, i })).filter(({ name, i }) => name === "source" || name === "status" || table.rows.some(row => row[i] !== ""));
    out.replaceChildren(
      make("h2", { text: table.title }), ...table.notes.map(text => make("p", { className: "quiet", text })),
      make("p", { text: table.rows.length < table.of ? `${table.rows.length} of ${table.of} rows: search to narrow them down.` : `${table.of} rows` }),
      make("div", { className: "scroll", tabindex: 0, role: "region", "aria-label": table.title }, make("table", {},
        make("thead", {}, make("tr", {}, ...shown.map(({ name }) => make("th", { scope: "col", text: name.replaceAll("_", " ") })))),
        make("tbody", {}, ...table.rows.map(row => make("tr", {}, ...shown.map(({ i }, at) => make(at ? "td" : "th", { scope: at ? undefined : "row", text: row[i] }))))))));
  };
  const later = atRest(() => {
    address.write({ view: "tables", part: which.value, fields: { find: search.value } }, true);
    look();
  }, 250);
  which.addEventListener("change", () => later.now());
  search.addEventListener("input", () => later());
  const element = make("div", { className: "view" }, make("h1", { text: "Tables" }),
    make("div", { className: "card search" }, make("label", { for: "table-name", text: "table" }), which, make("label", { for: "table-find", text: "rows that hold" }), search), out);
  return {
    element,
    fields: () => ({}),
    show({ part, fields }) {
      which.value = names.includes(part) ? part : names[0];
      search.value = fields.find ?? "";
      look();
    },
  };
}
