// The answer in words: moves, chances, figures, parts, what was assumed.
import { make } from "./dom.js";

export function answerParts() {
  const moves = make("section", { className: "card", id: "moves", "aria-label": "what to do" });
  const details = make("section", { className: "card", id: "details", "aria-label": "figures" });
  return {
    moves,
    details,
    clear() {
      moves.replaceChildren();
      details.replaceChildren();
      moves.hidden = details.hidden = true;
    },
    show({ words }) {
      moves.hidden = details.hidden = false;
      moves.replaceChildren(
        make("h2", { text: words.sentence }),
        words.chances.length ? chances(words.chances) : "",
        ...words.reasons.slice(1).map(reason => make("p", { text: reason })),
        words.moves.length ? moveTable(words.moves) : "",
        ...words.watch.map(each => make("p", {}, make("b", { text: "Watch " }), each)),
        make("p", { className: "cautions", text: `Before you pull: ${words.cautions}` }));
      details.replaceChildren(
        figures(words.figures),
        words.links.length ? parts(words.links) : "",
        words.notJudged.length ? make("p", {}, make("b", { text: "Not judged: " }), words.notJudged.join(", ")) : "",
        words.assumed.length ? make("details", {}, make("summary", { text: `Assumed (${words.assumed.length})` }), make("ul", {}, ...words.assumed.map(text => make("li", { text })))) : "");
    },
  };
}

function chances(list) {
  const shown = list.filter(each => each.share > 0);
  return make("div", {},
    make("div", { className: "chance", "aria-hidden": "true" }, ...shown.map(each => {
      const bar = make("i", { className: kind(each.key) });
      bar.style.width = `${100 * each.share}%`;
      return bar;
    })),
    make("ul", { className: "keys", "aria-label": "in 100" }, ...list.map(each => make("li", {}, make("i", { className: kind(each.key), "aria-hidden": "true" }), `${each.words} ${each.in100} in 100`))));
}

const kind = key => ["comes", "stays", "breaks"].includes(key) ? key : "other";

export function moveTable(list) {
  const known = list.some(move => move.comesLoose !== null);
  if (!known) return make("ul", { className: "moves" }, ...list.map(move => make("li", {}, make("b", { text: `${move.mark} ` }), move.words)));
  return make("div", { className: "scroll" }, make("table", {},
    make("thead", {}, make("tr", {}, make("th", { scope: "col" }, make("span", { className: "hidden", text: "when" })), make("th", { scope: "col", text: "in this order" }), make("th", { scope: "col", className: "number", text: "comes loose by then" }), make("th", { scope: "col", className: "number", text: "breaks" }))),
    make("tbody", {}, ...list.map(move => make("tr", {}, make("th", { scope: "row", className: "mark", text: move.mark }), make("td", { text: move.words }),
      ...move.comesLoose === null ? [make("td", { colspan: 2, className: "quiet", text: "no figure known" })]
        : [make("td", { className: "number", text: move.comesLoose }), make("td", { className: "number", text: move.breaks })])))));
}

export function figures(list) {
  return make("dl", { className: "figures" }, ...list.map(each => make("div", {}, make("dt", { text: each.label }), make("dd", {}, make("b", { text: each.value }), make("span", { text: each.note })))));
}

function parts(list) {
  return make("div", { className: "scroll" }, make("table", {},
    make("caption", { className: "hidden", text: "parts, the weakest first" }),
    make("thead", {}, make("tr", {}, ...["part, weakest first", "gives at", "load on it", "margin"].map((text, i) => make("th", { scope: "col", className: i ? "number" : "", text })))),
    make("tbody", {}, ...list.map(link => make("tr", {},
      make("td", { title: link.source, text: link.confirmed ? link.part : `${link.part} *` }),
      make("td", { className: "number", text: link.limit }), make("td", { className: "number", text: link.load }),
      make("td", { className: "number", text: link.breaks ? `${link.margin} breaks` : link.margin }))))));
}
