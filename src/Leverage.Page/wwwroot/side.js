// The lever from the side, to scale, drawn from the core's figures; tube, hands and swing are dragged in it.
import { drawing, make, redraw, say, svg, watched } from "./dom.js";
import { drawingWidth, handle, handles, lengthText } from "./drag.js";
import { arrow, dented, folded, mouth, plain } from "./shapes.js";
import { tubeParts } from "./goesover.js";

const rad = degrees => degrees * Math.PI / 180;
const newtonPx = 0.03;

export function sideView({ drag, rest }) {
  const root = drawing({ role: "group", "aria-label": "the lever from the side" });
  handles(root);
  const words = make("dl", { className: "labels" });
  const element = make("figure", { className: "picture side" }, root, make("figcaption", {}, words));
  let last;
  const view = {
    element,
    inView: watched(element),
    clear() { element.hidden = true; },
    show(reply, values) {
      last = [reply, values];
      element.hidden = !reply.side;
      if (reply.side) draw(root, words, reply, values, { drag, rest });
    },
  };
  view.clear();
  matchMedia("(max-width: 40rem)").addEventListener("change", () => last && view.show(...last));
  return view;
}

function draw(root, words, reply, values, { drag, rest }) {
  const side = reply.side;
  const tube = side.tube;
  const width = drawingWidth();
  const height = width < 600 ? 430 : 400;
  root.setAttribute("viewBox", `0 0 ${width} ${height}`);
  const angle = rad(side.pastSquareDeg);
  const whole = Math.max(side.barMm, tube ? side.barMm - tube.overlapMm + tube.lengthMm : 0);
  const pivot = { x: 56, y: angle < 0 ? height - 80 : 96 };
  const off = tube && !tube.staysOn;
  // A tube that has slid off lies beyond the bar, tipped down: the drawing makes room for all of it.
  const [reach, tipped] = off ? [side.barMm + tube.lengthMm * 1.02, angle + rad(9)] : [whole, angle];
  const one = Math.min((width - 130) / Math.max(reach * Math.cos(angle), reach * .25), (height - 190) / Math.max(Math.abs(Math.sin(tipped)) * reach, 1));
  const barThick = Math.max(8, (side.barDiameterMm ?? 18) * one);
  const bar = svg("rect", { x: 0, y: -barThick / 2, width: side.barMm * one, height: barThick, rx: 3, fill: "var(--steel)", stroke: "var(--ink)", "stroke-width": 1.5 });
  const lever = svg("g", { transform: `translate(${pivot.x} ${pivot.y}) rotate(${side.pastSquareDeg})` }, bar);
  const forces = svg("g");
  const at = mm => ({ x: pivot.x + mm * one * Math.cos(angle), y: pivot.y + mm * one * Math.sin(angle) });
  const hands = at(side.reachMm);
  const drawn = [svg("path", { d: `M${pivot.x} ${pivot.y}H${width - 8}`, stroke: "var(--line)", "stroke-dasharray": "4 6" }), lever, forces];

  if (tube) {
    const flat = side.pastSquareDeg >= 0 && side.pastSquareDeg <= 45;
    const thick = Math.max(barThick + 6, (tube.boreMm + 2 * (tube.wallMm ?? 3)) * one);
    const start = (side.barMm - tube.overlapMm) * one;
    const on = tube.overlapMm * one;
    const long = tube.lengthMm * one;
    const gone = off ? `translate(${start + on * 1.05} ${thick * .9}) rotate(9)` : `translate(${start} 0) rotate(${tube.tiltDeg})`;
    lever.parts.push(svg("g", {}, off && svg("rect", { x: start, y: -thick / 2, width: long, height: thick, fill: "none", stroke: "var(--stop)", "stroke-dasharray": "6 5" })));
    const shape = off ? plain(long, thick) : tube.fails === "folds" ? folded(long, thick, on) : tube.fails ? dented(long, thick, tube.fails === "dents-tip" ? on : 0, tube.fails === "dents-tip" ? -1 : 1) : plain(long, thick);
    const body = handle({
      label: "tube along the bar", now: tube.overlapMm, min: tube.leastOverlapMm, max: tube.mostOverlapMm, step: 10, text: `overlap ${tube.overlapWords}`,
      grab: from => to => tube.overlapMm - ((to.x - from.x) * Math.cos(angle) + (to.y - from.y) * Math.sin(angle)) / one,
      to: mm => drag({ overlap: lengthText(Math.min(tube.mostOverlapMm, Math.max(tube.leastOverlapMm, mm)), values.overlap) }), rest,
    }, svg("rect", { x: 0, y: -26, width: long, height: 52, fill: "transparent" }),
    svg("path", { class: "grip", d: shape, fill: "var(--tube)", "fill-opacity": .82, stroke: off || tube.fails ? "var(--stop)" : "var(--ink)", "stroke-width": off || tube.fails ? 3 : 1.5 }));
    lever.parts.push(svg("g", { class: off ? "off" : tube.fails ?? "on", transform: gone }, body));
    if (!off) {
      const down = side.push === "up" ? -1 : 1;
      const long = (point, way, force) => Math.max(16, Math.min(130, force * newtonPx, (way < 0 ? point.y : height - point.y) - 70));
      const [tip, lip] = [at(side.barMm), at(side.barMm - tube.overlapMm)];
      forces.parts.push(arrow(tip, angle - down * Math.PI / 2, long(tip, -down, tube.tipN), "var(--tip)", "B"));
      forces.parts.push(arrow(lip, angle + down * Math.PI / 2, long(lip, down, tube.mouthN), "var(--mouth)", "C"));
      forces.parts.push(mouth(flat ? 8 : width - 178, flat || side.pastSquareDeg < 0 ? height - 136 : 8, side.barDiameterMm ?? 18, tube.boreMm, tube.wallMm ?? 3, tube.tiltDeg, tube.fails === "dents-mouth", down));
    }
  }

  drawn.push(svg("path", { d: hexagon(pivot, Math.max(17, (side.acrossFlatsMm ?? 30) * one / 1.73)), fill: "var(--rust)" }), svg("circle", { cx: pivot.x, cy: pivot.y, r: 8, fill: "var(--sheet)" }));
  const push = side.push === "up" ? -Math.PI / 2 : side.push === "across" ? angle + Math.PI / 2 : Math.PI / 2;
  drawn.push(arrow(hands, push, Math.max(34, side.handN * newtonPx * 3), "var(--hand)", "A", true));
  const longest = tube ? tube.lengthMm : side.barMm;
  drawn.push(handle({
    label: "hands along the lever", now: side.reachMm, min: 100, max: 2800, step: 10, text: `hands ${side.reachWords} out`,
    grab: from => to => side.reachMm + ((to.x - from.x) * Math.cos(angle) + (to.y - from.y) * Math.sin(angle)) / one,
    to: mm => drag(atHands(mm - side.reachMm, longest, side, values)), rest,
  }, svg("circle", { cx: hands.x, cy: hands.y, r: 30, fill: "transparent" }), svg("circle", { class: "grip", cx: hands.x, cy: hands.y, r: 11, fill: "var(--hand)", stroke: "var(--sheet)", "stroke-width": 3 })));
  const end = at(whole + 26 / one);
  drawn.push(handle({
    label: "swing of the bar", now: side.pastSquareDeg, min: 0, max: 80, step: 5, text: `${Math.round(side.pastSquareDeg)} degrees below level`,
    grab: () => to => Math.atan2(to.y - pivot.y, to.x - pivot.x) * 180 / Math.PI,
    to: degrees => drag({ "past-square": `${Math.round(Math.min(80, Math.max(0, degrees)))}deg` }), rest,
  }, svg("circle", { cx: end.x, cy: end.y, r: 30, fill: "transparent" }), svg("path", { class: "grip", d: turn(end), fill: "none", stroke: "var(--rust)", "stroke-width": 4, "stroke-linecap": "round" })));
  const wrong = off ? "slides off" : tube?.fails ? { folds: "the tube folds", "dents-tip": "the tube dents at the tip", "dents-mouth": "the tube dents at its mouth" }[tube.fails] : side.breaks ? `breaks: ${side.breaks}` : "";
  drawn.push(svg("text", { x: 10, y: 26, fill: "var(--stop)", "font-weight": 700, "font-size": 17, text: wrong }));
  redraw(root, drawn);
  root.dataset.state = off ? "off" : tube?.fails ?? (side.breaks ? "breaks" : "holds");

  labels(words, [
    ["hands", side.handWords, "A", "var(--hand)"],
    tube ? ["overlap", tube.overlapWords] : ["out", side.reachWords],
    tube ? ["stays on to", tube.safeWords] : ["torque", side.torqueWords],
    ...tube ? [["tip presses", off ? "no more" : tube.tipWords, "B", "var(--tip)", "desk"], ["mouth presses", off ? "no more" : tube.mouthWords, "C", "var(--mouth)", "desk"], ["hands out", side.reachWords, "", "", "desk"]] : []]);
}

/** Terms and values below the picture; the terms are made once and the values set. */
function labels(words, list) {
  const terms = list.map(([term]) => term).join();
  if (words.dataset.terms !== terms) {
    words.replaceChildren(...list.map(([term, , key, color, shown]) => make("div", { className: shown }, make("dt", {}, key ? keyed(key, color) : "", term), make("dd"))));
    words.dataset.terms = terms;
  }
  list.forEach(([, value], i) => say(words.children[i].lastChild, value));
}

const keyed = (text, color) => {
  const key = make("span", { className: "key", text });
  key.style.background = color;
  return key;
};

/** Hands further in or out: as a tube, or without one a bar, that much shorter or longer. */
function atHands(by, longest, side, values) {
  if (!side.tube) return { bar: lengthText(Math.max(120, longest + by), values.bar) };
  const parts = tubeParts(values.tube);
  const long = lengthText(Math.max(side.tube.overlapMm + 20, longest + by), parts.length);
  return { tube: parts.kind === "jack" ? `jack:${long}` : `${parts.outside}x${parts.wall}x${long}` };
}

const hexagon = ({ x, y }, r) => `M${[0, 1, 2, 3, 4, 5].map(i => `${x + r * Math.cos(i * Math.PI / 3)} ${y + r * Math.sin(i * Math.PI / 3)}`).join("L")}Z`;
const turn = ({ x, y }) => `M${x - 4} ${y - 15}q12 15 0 30m-7 -22 7 -8 8 6m-15 17 7 7 8 -6`;
