// Force of the hands against length of the lever, from the core's curves; the set-up's point is dragged along it.
import { drawing, make, redraw, say, svg, watched } from "./dom.js";
import { drawingWidth, handle, handles, lengthText } from "./drag.js";
import { tubeParts } from "./goesover.js";

export function windowChart({ drag, rest }) {
  const root = drawing({ role: "group", "aria-label": "force against length" });
  handles(root);
  const words = make("p", {});
  const key = make("ul", { className: "keys" });
  const element = make("figure", { className: "picture window" }, root, make("figcaption", {}, words, key));
  let last;
  const view = {
    element,
    inView: watched(element),
    clear() { element.hidden = true; },
    show(reply, values) {
      last = [reply, values];
      element.hidden = false;
      draw(root, words, key, reply, values, { drag, rest });
    },
  };
  view.clear();
  matchMedia("(max-width: 40rem)").addEventListener("change", () => last && view.show(...last));
  return view;
}

function draw(root, words, key, reply, values, { drag, rest }) {
  const w = curves(reply.window);
  const width = drawingWidth();
  const height = width < 600 ? 330 : 340;
  const box = { left: 52, right: width - 14, top: 26, bottom: height - 46 };
  root.setAttribute("viewBox", `0 0 ${width} ${height}`);
  const [from, to] = [w.reachMm[0], w.reachMm.at(-1)];
  const x = mm => box.left + (mm - from) / (to - from) * (box.right - box.left);
  const y = newtons => Math.max(box.top - 40, box.bottom - newtons / w.topN * (box.bottom - box.top));
  const line = forces => forces.map((f, i) => f === null ? "" : `${i === 0 || forces[i - 1] === null ? "M" : "L"}${x(w.reachMm[i]).toFixed(1)} ${y(f).toFixed(1)}`).join("");
  const band = (low, high) => `${line(high)}L${[...low].map((f, i) => `${x(w.reachMm[i]).toFixed(1)} ${y(f).toFixed(1)}`).reverse().join("L")}Z`;
  const clip = svg("clipPath", { id: "window-clip" }, svg("rect", { x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top }));
  const inside = svg("g", { "clip-path": "url(#window-clip)" },
    svg("path", { d: band(w.needLowN, w.needHighN), fill: "var(--rust)", "fill-opacity": .2 }),
    svg("path", { d: line(w.needLikelyN), fill: "none", stroke: "var(--rust)", "stroke-width": 3 }),
    svg("rect", { x: box.left, width: box.right - box.left, y: y(w.handHighN), height: y(w.handLowN) - y(w.handHighN), fill: "var(--hand)", "fill-opacity": .14 }),
    svg("path", { d: `M${box.left} ${y(w.handLikelyN)}H${box.right}`, stroke: "var(--hand)", "stroke-width": 3 }),
    ...w.limits.map((limit, i) => svg("path", { d: line(limit.forceN), fill: "none", stroke: "var(--stop)", "stroke-width": 2.5, "stroke-dasharray": dashes[i] })));
  const axes = svg("g", { "font-size": 14, fill: "var(--quiet)" },
    ...w.lengthTicks.map(tick => svg("g", {}, svg("path", { d: `M${x(tick.at)} ${box.top}V${box.bottom}`, stroke: "var(--line)", "stroke-width": .7 }), svg("text", { x: x(tick.at), y: box.bottom + 19, "text-anchor": "middle", text: tick.words }))),
    ...w.forceTicks.map(tick => svg("g", {}, svg("path", { d: `M${box.left} ${y(tick.at)}H${box.right}`, stroke: "var(--line)", "stroke-width": .7 }), svg("text", { x: box.left - 7, y: y(tick.at) + 5, "text-anchor": "end", text: tick.words }))),
    svg("text", { x: box.right, y: height - 8, "text-anchor": "end", text: `length of the lever, ${w.lengthUnit}` }),
    svg("text", { x: box.left, y: 15, text: `force of the hands, ${w.forceUnit}` }));
  const parts = [clip, axes, inside];
  if (w.yourReachMm && reply.side) {
    const px = x(w.yourReachMm);
    const py = y(w.handLikelyN);
    parts.push(handle({
      label: "length of your lever", now: w.yourReachMm, min: from, max: to, step: 10, text: reply.side.reachWords,
      grab: start => point => w.yourReachMm + (point.x - start.x) / (box.right - box.left) * (to - from),
      to: mm => drag(longer(Math.min(to, Math.max(from, mm)) - w.yourReachMm, reply.side, values)), rest,
    }, svg("path", { d: `M${px} ${py}V${box.bottom}`, stroke: "var(--ink)", "stroke-dasharray": "3 4" }), svg("circle", { cx: px, cy: py, r: 30, fill: "transparent" }), svg("circle", { class: "grip", cx: px, cy: py, r: 9, fill: "var(--ink)", stroke: "var(--sheet)", "stroke-width": 3 })));
  }
  redraw(root, parts);
  say(words, w.words);
  const names = w.limits.map(limit => limit.name).join();
  if (key.dataset.names === names) return;
  key.replaceChildren(swatch("var(--rust)", "the nut needs"), swatch("var(--hand)", "your hands"), ...w.limits.map((limit, i) => dashed(dashes[i], `${limit.name} breaks`)));
  key.dataset.names = names;
}

/** The window with its curves as lists of numbers: they come as text. */
const curves = w => ({
  ...w, ...Object.fromEntries(["reachMm", "needLowN", "needLikelyN", "needHighN"].map(name => [name, JSON.parse(w[name])])),
  limits: w.limits.map(limit => ({ ...limit, forceN: JSON.parse(limit.forceN) })),
});

const dashes = ["none", "10 5", "3 4"];

const swatch = (color, text) => {
  const mark = make("i", { "aria-hidden": "true" });
  mark.style.background = color;
  return make("li", {}, mark, text);
};
const dashed = (dash, text) => make("li", {}, drawing({ viewBox: "0 0 40 10", width: 40, height: 10, "aria-hidden": "true" }, svg("path", { d: "M0 5H40", stroke: "var(--stop)", "stroke-width": 3, "stroke-dasharray": dash })), ` ${text}`);

function longer(by, side, values) {
  if (!side.tube) return { bar: lengthText(Math.max(120, side.barMm + by), values.bar) };
  const parts = tubeParts(values.tube);
  const long = lengthText(Math.max(side.tube.overlapMm + 20, side.tube.lengthMm + by), parts.length);
  return { tube: parts.kind === "jack" ? `jack:${long}` : `${parts.outside}x${parts.wall}x${long}` };
}
