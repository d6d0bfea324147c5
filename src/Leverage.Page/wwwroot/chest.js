// The chest: your tools as a file that stays in this browser, and the best set-up out of them.
import { make, save } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";
import { kept, keep } from "./store.js";
import { filePicker } from "./files.js";
import { moveTable } from "./answer.js";

const groups = { tool: "Sockets and spanners", bar: "Bars", tube: "Tubes", person: "People", hold: "What holds" };

export function chestView(lists) {
  const stances = Object.fromEntries(lists.fields.find(line => line.name === "stance").choices.map(each => [each.key, each.words]));
  const text = make("textarea", { id: "chest-text", spellcheck: "false", "aria-label": "the chest as a file" });
  const told = make("p", { role: "status", className: "quiet" });
  const error = make("div", { role: "alert" });
  const pieces = make("div", { className: "figures" });
  const places = make("div", { "aria-live": "polite" });
  let place = { fields: {} };
  const check = async resting => {
    const opened = ask("Open", JSON.stringify([{ name: "chest.toml", text: text.value }]));
    error.replaceChildren(...opened.refusal && text.value.trim() ? opened.refusal.lines.map(line => make("p", { className: "refusal", text: line })) : []);
    pieces.replaceChildren(...opened.refusal ? [] : Object.entries(groups).map(([key, name]) => [name, opened.pieces.filter(each => each.group === key)]).filter(([, list]) => list.length)
      .map(([name, list]) => make("div", {}, make("dt", { text: name }), make("dd", { className: "row" }, ...list.map(each => make("button", { type: "button", text: each.name, on: { click: () => put(each) } }))))));
    if (resting) told.textContent = await keep("chest", text.value) ?? "Kept in this browser.";
    return !opened.refusal;
  };
  /** A piece goes into the set-up of the first page, which opens with it. */
  const put = piece => { location.hash = address.hash({ view: "loosen", fields: { ...place.fields, ...piece.fields } }); };
  text.addEventListener("change", () => check(true));
  const pick = async () => {
    if (!await check(true)) return places.replaceChildren();
    const reply = ask("Pick", text.value, address.query(place.fields));
    places.replaceChildren(...reply.refusal ? [make("p", { className: "refusal", role: "alert", text: reply.refusal.text })] : shown(reply, stances));
  };
  const use = async file => {
    const opened = ask("Open", JSON.stringify([{ name: file.name, text: file.text }]));
    if (opened.refusal && text.value.trim()) {
      error.replaceChildren(...opened.refusal.lines.map(line => make("p", { className: "refusal", text: line })), make("p", { text: "The chest kept before is still here." }));
      return;
    }
    text.value = file.text;
    await check(true);
  };
  const element = make("div", { className: "view two" },
    make("div", { className: "ask" }, make("h1", { text: "Chest" }),
      make("section", { className: "card" }, make("p", { text: "Your own tools, as a file you can edit here, load and save." }),
        filePicker("chest-file", "load a chest (.toml)", files => use(files[0])),
        make("div", { className: "row" },
          make("button", { type: "button", text: "start one", on: { click: () => use({ name: "chest.toml", text: ask("Starters").chest }) } }),
          make("button", { type: "button", text: "save as file", on: { click: () => save("chest.toml", text.value, "application/toml") } })),
        text, told, error)),
    make("div", { className: "tell" }, make("section", { className: "card" }, make("h2", { text: "In it" }), pieces),
      make("section", { className: "card" }, make("h2", { text: "Best for the nut on the first page" }),
        make("button", { type: "button", id: "pick", text: "pick the best set-up", on: { click: pick } }), places)));
  const ready = kept("chest").then(value => {
    if (value && !text.value) text.value = value;
    return check(false);
  });
  return {
    element,
    ready,
    fields: () => place.fields,
    show(now) { place = now; },
  };
}

function shown({ answer, moves }, stances) {
  const percent = share => String(Math.round(100 * share));
  const list = answer.setUps.map(each => make("li", {},
    make("b", { text: [each.tool, ...each.adapters, each.bar, each.tube].filter(Boolean).join(" + ") }),
    make("span", { text: ` ${each.verdict} · comes loose ${percent(each.comesLoose ?? 0)} in 100 · ${stances[each.stance] ?? each.stance}${each.overlapMm ? ` · overlap ${Math.round(each.overlapMm)} mm` : ""}${each.weakestLink ? ` · weakest: ${each.weakestLink}` : ""}` })));
  return [
    answer.setUps.length ? make("ol", { className: "moves" }, ...list) : make("p", { text: "Nothing of the chest fits this nut." }),
    moves.length ? moveTable(moves) : "",
  ];
}
