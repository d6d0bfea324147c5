// The row of buttons: undo, redo, example, start anew, units, share, print; and the command that asks the same.
import { drawing, make, svg } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";

export function tools({ lists, fields, set }) {
  let chosen = "";
  const button = (text, run, extra = {}) => make("button", { type: "button", text, ...extra, on: { click: run } });
  const undo = button("undo", () => history.back(), { id: "undo" });
  const redo = button("redo", () => history.forward(), { id: "redo" });
  const units = button("US units", () => {
    chosen = chosen === "us" ? "" : "us";
    shown();
    set({ ...fields(), ...(chosen ? { units: chosen } : {}) });
  }, { id: "units", "aria-pressed": "false" });
  const shown = () => units.setAttribute("aria-pressed", String(chosen === "us"));
  const element = make("div", { className: "row" }, undo, redo,
    button("example", () => set(address.pairs(lists.example)), { id: "example" }),
    button("start anew", () => set({}), { id: "anew" }), units);

  const code = make("div", { className: "code", id: "code" });
  const told = make("p", { role: "status", className: "quiet" });
  const command = make("code", { id: "command" });
  const share = async () => {
    const link = location.href;
    try {
      if (navigator.share) return await navigator.share({ title: "Leverage", url: link });
      await navigator.clipboard.writeText(link);
      told.textContent = "The link is copied. It holds the whole set-up.";
    } catch {
      told.textContent = "Copy the address of this page: it holds the whole set-up.";
    }
  };
  const more = make("section", { className: "card noprint" },
    make("div", { className: "row" }, button("share", share, { id: "share" }), button("QR code", () => draw(code), { id: "scan" }), button("print", () => window.print(), { id: "print" })),
    told, code,
    make("details", {}, make("summary", { text: "The same on the command line" }), command));
  return {
    element,
    more,
    units: () => chosen,
    setUnits(text) {
      chosen = text === "us" ? "us" : "";
      shown();
    },
    undoable() {
      undo.disabled = !address.canUndo();
      redo.disabled = !address.canRedo();
      code.replaceChildren();
      told.textContent = "";
    },
    command(text) { command.textContent = text; },
  };
}

function draw(place) {
  const rows = ask("Code", location.href);
  if (rows.refusal) return place.replaceChildren(make("p", { className: "refusal", role: "alert", text: rows.refusal.text }));
  const path = rows.flatMap((row, y) => [...row].map((dark, x) => dark === "1" ? `M${x} ${y}h1v1h-1z` : "")).join("");
  place.replaceChildren(drawing({ viewBox: `0 0 ${rows.length} ${rows.length}`, role: "img", "aria-label": "QR code of this set-up", "shape-rendering": "crispEdges" },
    svg("rect", { width: rows.length, height: rows.length, fill: "#fff" }), svg("path", { d: path, fill: "#000" })));
}
