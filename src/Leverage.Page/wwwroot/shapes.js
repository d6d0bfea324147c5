// Shapes of the side view: the tube whole, dented and folded, arrows, and its mouth magnified.
import { svg } from "./dom.js";

/** A tube as it should be. */
export const plain = (long, thick) => `M0 ${-thick / 2}H${long}V${thick / 2}H0Z`;

/** A tube with a dent in one wall. */
export function dented(long, thick, at, wall) {
  const y = wall * thick / 2;
  const deep = -wall * Math.max(5, thick * .34);
  const x = Math.min(Math.max(at, 14), long - 14);
  const dent = `L${x + 14} ${y}Q${x} ${y + 2 * deep} ${x - 14} ${y}`;
  return wall > 0 ? `M0 ${-y}H${long}V${y}${dent}H0Z` : `M0 ${-y}H${long}V${y}${dent}H0Z`;
}

/** A tube folded at the bar's tip. */
export function folded(long, thick, at) {
  const half = thick / 2;
  const drop = (long - at) * .42;
  const out = at + (long - at) * .9;
  return `M0 ${-half}H${at}L${out} ${drop - half}L${out - half * .8} ${drop + half}L${at - 6} ${half * .35}L${at - 14} ${half}H0Z`;
}

/** An arrow with a letter at its tail. `into` ends at the point, else it starts there. */
export function arrow(point, angle, long, color, letter, into = false) {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  const tip = into ? { x: point.x - dx * 12, y: point.y - dy * 12 } : { x: point.x + dx * (long + 10), y: point.y + dy * (long + 10) };
  const tail = { x: tip.x - dx * long, y: tip.y - dy * long };
  const letterAt = into ? { x: tail.x - dx * 14, y: tail.y - dy * 14 } : { x: tip.x + dx * 15, y: tip.y + dy * 15 };
  const side = [-dy, dx];
  const head = `M${tip.x} ${tip.y}L${tip.x - dx * 13 + side[0] * 7} ${tip.y - dy * 13 + side[1] * 7}L${tip.x - dx * 13 - side[0] * 7} ${tip.y - dy * 13 - side[1] * 7}Z`;
  return svg("g", { class: `force ${letter}` },
    svg("path", { d: `M${tail.x} ${tail.y}L${tip.x - dx * 8} ${tip.y - dy * 8}`, stroke: color, "stroke-width": 5 }),
    svg("path", { d: head, fill: color }),
    svg("circle", { cx: letterAt.x, cy: letterAt.y, r: 11, fill: color }),
    svg("text", { x: letterAt.x, y: letterAt.y + 5, "text-anchor": "middle", "font-size": 14, "font-weight": 700, fill: "var(--on)", text: letter }));
}

/** The tube's mouth on the bar, magnified; the tilt is shown four times as large as it is. */
export function mouth(x, y, barMm, boreMm, wallMm, tiltDeg, dents, down) {
  const one = 40 / barMm;
  const bore = boreMm * one;
  const wall = Math.max(4, wallMm * one);
  const slope = Math.tan(Math.min(12, 4 * tiltDeg) * Math.PI / 180) * 104;
  const low = 80;
  const inner = low - bore;
  const shape = (from, to) => `M56 ${from}L160 ${from + slope}V${to + slope}L56 ${to}Z`;
  const dent = dents ? `M48 ${low}q9 ${-12} 18 0` : "";
  return svg("g", { transform: `translate(${x} ${y})`, class: "mouth" },
    svg("rect", { x: 0, y: 0, width: 170, height: 128, rx: 8, fill: "var(--sheet)", stroke: "var(--line)" }),
    svg("g", { transform: down < 0 ? "translate(0 120) scale(1 -1)" : "" },
      svg("rect", { x: 6, y: low - 40, width: 154, height: 40, fill: "var(--steel)", stroke: "var(--ink)" }),
      svg("path", { d: shape(inner - wall, inner), fill: "var(--tube)", stroke: "var(--ink)" }),
      svg("path", { d: shape(low, low + wall), fill: "var(--tube)", stroke: "var(--ink)" }),
      svg("path", { d: dent, fill: "none", stroke: "var(--stop)", "stroke-width": 3 }),
      svg("circle", { cx: 56, cy: low, r: 5, fill: "var(--mouth)" })),
    svg("text", { x: 8, y: 122, "font-size": 13, fill: "var(--quiet)", text: "its mouth, magnified" }));
}
