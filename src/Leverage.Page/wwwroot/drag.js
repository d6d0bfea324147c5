// Handles of a drawing: dragged by pointer, moved by keys, told to screen readers as sliders.
import { svg } from "./dom.js";

const narrow = matchMedia("(max-width: 40rem)");

/** Width of a drawing's own units: fewer on a phone, so that its parts and letters stay large. */
export const drawingWidth = () => narrow.matches ? 480 : 800;

/** Text of a length in the unit its field is written in. */
export function lengthText(mm, like) {
  return /in\s*$/i.test(like ?? "") ? `${Math.round(mm / 25.4 * 8) / 8}in` : `${Math.round(mm)}mm`;
}

/**
 * A handle, as a part of a drawing. `grab(point)` gives what makes a value of the point under the pointer, `step` is what an arrow
 * key adds, `to(value)` writes it, `rest()` ends the move.
 */
export function handle({ label, now, min, max, text, ...hold }, ...parts) {
  const told = { class: "handle", tabindex: 0, role: "slider", "aria-label": label, "aria-valuemin": Math.round(min), "aria-valuemax": Math.round(max), "aria-valuenow": Math.round(now), "aria-valuetext": text, "data-handle": label };
  return { ...svg("g", told, ...parts), hold: { label, now, min, max, ...hold } };
}

/** Lets the handles of a drawing be dragged and moved by keys. */
export function handles(root) {
  const held = event => event.target.closest(".handle")?.hold;
  root.addEventListener("keydown", event => {
    const hold = held(event);
    const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (!hold || !way) return;
    event.preventDefault();
    hold.to(Math.min(hold.max, Math.max(hold.min, hold.now + way * hold.step)));
    hold.rest();
  });
  // Inside a drawing the style's touch-action counts for nothing: a finger on a handle would scroll the page.
  root.addEventListener("touchstart", event => { if (held(event)) event.preventDefault(); }, { passive: false });
  root.addEventListener("pointerdown", event => {
    const hold = held(event);
    if (!hold || event.button !== 0) return;
    event.preventDefault();
    root.setPointerCapture(event.pointerId);
    const under = hold.grab(pointOf(root, event));
    const move = each => { if (each.pointerId === event.pointerId) hold.to(under(pointOf(root, each))); };
    const end = each => {
      if (each.pointerId !== event.pointerId) return;
      removeEventListener("pointermove", move);
      removeEventListener("pointerup", end);
      removeEventListener("pointercancel", end);
      hold.rest();
    };
    addEventListener("pointermove", move);
    addEventListener("pointerup", end);
    addEventListener("pointercancel", end);
  });
}

function pointOf(root, event) {
  const matrix = root.getScreenCTM();
  return new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
}
