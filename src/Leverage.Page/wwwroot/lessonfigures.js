// Figures of the lesson: before the guess, what is asked stands as a question mark and nothing is drawn to its size.
import { drawing, svg } from "./dom.js";

/** What the pupil moves at each figure. */
const overlap = { field: "overlap", label: "overlap", unit: "mm", min: 100, max: 450, step: 5 };
const swing = { field: "past-square", label: "swing ends below level", unit: "deg", min: 0, max: 60, step: 1 };
export const moves = {
  lever: [{ field: "bar", label: "length of the bar", unit: "mm", min: 500, max: 1200, step: 10 }],
  reactions: [overlap],
  balance: [overlap, swing],
  dial: [swing, overlap],
  "letting-go": [swing, overlap],
  overlaps: [overlap],
};

export function lessonFigure(kind, f, state) {
  const drawn = makers[kind](f, state === "shown");
  return drawing({ viewBox: "0 0 600 240", class: "lesson-figure", role: "img", "aria-label": drawn.words }, ...drawn.parts);
}

const text = (x, y, words, color = "var(--ink)", anchor = "middle") => svg("text", { x, y, "font-size": 16, fill: color, "text-anchor": anchor, text: words });
const line = (d, color, width = 3, dash) => svg("path", { d, stroke: color, "stroke-width": width, fill: "none", "stroke-dasharray": dash });
const arrowTo = (x, from, to, color) => line(`M${x} ${from}V${to}M${x - 7} ${to + Math.sign(from - to) * 10}L${x} ${to}L${x + 7} ${to + Math.sign(from - to) * 10}`, color, 4);
const degrees = d => `${d.toFixed(1)}°`;

function tubeAndBar(f) {
  const one = 480 / (f.overlapMm + f.handToTipMm);
  return { mouth: 70, tip: 70 + f.overlapMm * one, hands: 550 };
}

const makers = {
  lever(f, shown) {
    const { hands } = tubeAndBar(f);
    return { words: "A lever with the push of the hands at its end.", parts: [svg("circle", { cx: 40, cy: 130, r: 18, fill: "var(--rust)" }), line(`M40 130H${hands}`, "var(--steel)", 16), arrowTo(hands, shown ? 120 - Math.min(90, f.squareN / 8) : 60, 118, "var(--hand)"), text(hands - 10, 30, shown ? f.words.square : "?", "var(--hand)", "end")] };
  },
  reactions(f, shown) {
    const { mouth, tip, hands } = tubeAndBar(f);
    const one = shown ? 90 / f.tipN : 0;
    const long = n => shown ? Math.max(18, n * one) : 50;
    return { words: "Three forces on the tube: mouth, tip and hands.", parts: [line(`M10 130H${tip}`, "var(--steel)", 14), svg("rect", { x: mouth, y: 116, width: hands + 25 - mouth, height: 28, fill: "none", stroke: "var(--ink)", "stroke-width": 2 }),
      arrowTo(mouth, 114 - long(f.mouthN), 114, "var(--mouth)"), arrowTo(tip, 146 + long(f.tipN), 146, "var(--tip)"), arrowTo(hands, 114 - long(f.squareN), 114, "var(--hand)"),
      text(mouth, 22, shown ? f.words.mouth : "mouth", "var(--mouth)"), text(tip + 14, 225, shown ? f.words.tip : "tip: ?", "var(--tip)", "start"), text(hands, 22, shown ? f.words.square : "your push", "var(--hand)")] };
  },
  balance(f, shown) {
    const most = Math.max(f.snugN, f.holdsN, f.outwardN);
    const bar = (y, words, n, color) => [text(20, y, words, "var(--ink)", "start"), svg("rect", { x: 20, y: y + 8, width: shown ? Math.max(3, 560 * Math.max(0, n) / most) : 280, height: 24, fill: color, "fill-opacity": shown ? 1 : .3 })];
    return { words: "What holds the tube against what pulls it off.", parts: [...bar(24, `a snug tube would hold ${shown ? f.words.snug : "?"}`, f.snugN, "var(--holds)"), ...bar(100, shown ? `yours holds ${f.words.holds}` : "yours holds less", f.holdsN, "var(--holds)"), ...bar(176, shown ? `you pull along it ${f.words.outward}` : "you pull along it", f.outwardN, "var(--stop)")] };
  },
  dial: (f, shown) => dial(f, shown, false),
  "letting-go": (f, shown) => dial(f, shown, true),
  overlaps(f, shown) {
    const stands = f.breaksAtN.map(n => n === null || n >= f.forceN);
    const [low, high] = [f.overlapsMm[0], f.overlapsMm.at(-1)];
    const x = mm => 50 + (mm - low) / (high - low) * 520;
    const top = Math.max(...f.safeDegs);
    const y = d => 200 - Math.max(0, d) / top * 165;
    const path = keep => f.overlapsMm.map((mm, i) => keep(i) ? `${i && keep(i - 1) ? "L" : "M"}${x(mm)} ${y(f.safeDegs[i])}` : "").join("");
    return { words: "Widest safe angle against overlap; dashed where the tube breaks.", parts: [line("M50 20V200H570", "var(--ink)", 2), text(310, 232, "overlap"), text(56, 20, "safe to", "var(--ink)", "start"),
      ...shown ? [line(path(i => !stands[i]), "var(--stop)", 3, "6 5"), line(path(i => stands[i]), "var(--holds)", 4), line(`M${x(f.bestOverlapMm)} 200V28`, "var(--rust)", 2, "4 4"), text(x(f.bestOverlapMm), 20, `best ${f.words.best}`, "var(--rust)"), svg("circle", { cx: x(f.overlapMm), cy: y(f.safeDegs[nearest(f)]), r: 7, fill: "var(--ink)" })]
        : [text(310, 110, "?")]] };
  },
};

const nearest = f => f.overlapsMm.reduce((best, mm, i) => Math.abs(mm - f.overlapMm) < Math.abs(f.overlapsMm[best] - f.overlapMm) ? i : best, 0);

function dial(f, shown, end) {
  const ray = (angle, long, color, width, dash) => line(`M40 40L${40 + long * Math.cos(angle * Math.PI / 180)} ${40 + long * Math.sin(angle * Math.PI / 180)}`, color, width, dash);
  const key = [["your swing ends", degrees(f.pastSquareDeg), "var(--ink)"], ["safe while it holds", shown ? degrees(f.safeDeg) : end ? "the answer before" : "?", "var(--holds)"], ...end ? [["safe as it lets go", shown ? degrees(f.safeAtEndDeg) : "?", "var(--stop)"]] : []];
  return { words: "The bar below level, and the last safe angles.", parts: [svg("circle", { cx: 40, cy: 40, r: 14, fill: "var(--rust)" }), ray(0, 300, "var(--line)", 2), ray(f.pastSquareDeg, 230, "var(--ink)", 8), ...shown ? [ray(f.safeDeg, 280, "var(--holds)", 4)] : [], ...end && shown ? [ray(f.safeAtEndDeg, 280, "var(--stop)", 4, "8 5")] : [],
    ...key.map(([words, value, color], i) => text(320, 60 + 34 * i, `${words}: ${value}`, color, "start"))] };
}
