// What happened after a pull: it held, it came, it rounded. What is known of the nut goes back into the question.
import { make } from "./dom.js";

export function happened(form, changed) {
  const told = make("p", { role: "status", className: "quiet" });
  const button = (text, run) => make("button", { type: "button", text, on: { click: run } });
  let reached = "";
  const set = (field, value, words) => {
    if (form.lines.has(field)) {
      form.put(field, value);
      changed();
    }
    told.textContent = words;
  };
  const element = make("section", { className: "card happened noprint", id: "happened" },
    make("h2", { text: "What happened when you pulled?" }),
    make("div", { className: "row" },
      button("it held", () => set("held", reached, `Noted: it stayed tight at ${reached}. The next move is above.`)),
      button("it came", () => set("came", [form.values.came, reached].filter(Boolean).join(","), `Noted: it came at ${reached}. It counts for nuts like it.`)),
      button("it rounded", () => set("worn", "rounded", "Noted: its corners are rounded. Stop pulling with this socket; the next move is above.")),
      button("none of these", () => {
        for (const field of ["held", "came", "worn"]) form.put(field, "");
        told.textContent = "";
        changed();
      })), told);
  element.hidden = true;
  return {
    element,
    clear() { element.hidden = true; },
    show(reply) {
      element.hidden = !reply.side || !form.lines.has("held");
      reached = reply.side?.pullText ?? "";
    },
  };
}
