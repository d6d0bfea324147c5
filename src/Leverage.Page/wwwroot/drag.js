// Handles of a drawing: dragged by pointer, moved by keys, told to screen readers as sliders.
import { svg } from "./dom.js";

const narrow = matchMedia("(max-width: 40rem)");

/** Width of a drawing's own units: fewer on a phone, so that its parts and letters stay large. */
export const drawingWidth = () => narrow.matches ? 480 : 800;

/** Text of a length in the unit its field is written in. */
export function lengthText(mm, like) {
  return /in\s*$/i.test(like ?? "") ? `${Math.round(mm / 25.4 * 8) / 8}in` : `${Math.round(mm)}mm`;
}

/** A handle. `at(point)` gives the value under the pointer, `step` what an arrow key adds, `to(value)` writes it. */
export function handle({ root, label, now, min, max, step, text, grab, to, rest }, ...drawn) {
  const group = svg("g", { class: "handle", tabindex: 0, role: "slider", "aria-label": label, "aria-valuemin": Math.round(min), "aria-valuemax": Math.round(max), "aria-valuenow": Math.round(now), "aria-valuetext": text, "data-handle": label }, ...drawn);
  group.addEventListener("keydown", event => {
    const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (!way) return;
    event.preventDefault();
    to(Math.min(max, Math.max(min, now + way * step)));
    rest();
  });
  // Inside a drawing the style's touch-action counts for nothing: a finger on a handle would scroll the page.
  group.addEventListener("touchstart", event => event.preventDefault(), { passive: false });
  group.addEventListener("pointerdown", event => {
    if (event.button !== 0) return;
    event.preventDefault();
    // Every frame draws the handle anew: a finger would lose it with the one it was put down on.
    root.setPointerCapture(event.pointerId);
    const held = grab(pointOf(root, event));
    const move = each => { if (each.pointerId === event.pointerId) to(held(pointOf(root, each))); };
    const end = each => {
      if (each.pointerId !== event.pointerId) return;
      removeEventListener("pointermove", move);
      removeEventListener("pointerup", end);
      removeEventListener("pointercancel", end);
      rest();
    };
    addEventListener("pointermove", move);
    addEventListener("pointerup", end);
    addEventListener("pointercancel", end);
  });
  return group;
}

function pointOf(root, event) {
  const matrix = root.getScreenCTM();
  return new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
}
