// What goes over the bar: nothing, a tube by outside, wall and length, or a jack handle by its length.
import { make } from "./dom.js";
import { Form } from "./fields.js";
import { split } from "./quantities.js";

const lengths = ["mm", "in", "cm", "m"];
const line = (name, label, step, example, help = "") => ({ name, group: "size", label, help, kind: "number", units: lengths, choices: [], needs: [], leftOut: "", step, example });
const sizes = [
  line("outside", "outside", 1, "33.7mm", "Measure across it."),
  line("wall", "wall", 0.2, "3.2mm", "Measure at its end."),
  line("length", "length", 50, "1000mm"),
];

/** The parts of a tube as the address writes it. */
export function tubeParts(text) {
  if (!text) return { kind: "none" };
  const jack = /^\s*jack\s*:\s*(.*)$/i.exec(text);
  if (jack) return { kind: "jack", length: jack[1] };
  const parts = text.split(/[x×]/i).map(part => part.trim());
  if (parts.length !== 3) return { kind: "other" };
  const unit = split(parts[2], lengths)?.unit ?? "";
  const own = part => split(part, lengths)?.unit === null ? `${part}${unit}` : part;
  return { kind: "tube", outside: own(parts[0]), wall: own(parts[1]), length: own(parts[2]) };
}

/** The chooser; `say(text, resting)` gets the tube as the address writes it. */
export function goesOver(say) {
  let kind = "none";
  const form = new Form(sizes, "tube", (name, resting) => say(written(), resting));
  const written = () => {
    const { outside = "", wall = "", length = "" } = form.values;
    if (kind === "none") return "";
    if (kind === "jack") return length ? `jack:${length}` : "";
    return outside && wall && length ? `${outside}x${wall}x${length}` : "";
  };
  const ways = [["none", "nothing"], ["tube", "a tube"], ["jack", "a jack handle"]];
  const radios = ways.map(([value]) => make("input", { type: "radio", name: "goes-over", value, id: `over-${value}` }));
  const fields = make("div", { className: "fields" }, ...form.group("size"));
  const error = make("p", { id: "tube-error", className: "refusal", role: "alert", hidden: true });
  const apply = () => {
    radios.forEach(radio => { radio.checked = radio.value === kind; });
    fields.hidden = kind === "none";
    for (const name of ["outside", "wall"]) form.boxes.get(name).element.hidden = kind === "jack";
  };
  radios.forEach(radio => radio.addEventListener("change", () => {
    kind = radio.value;
    apply();
    say(written(), true);
  }));
  const element = make("div", { className: "over" },
    make("div", { className: "choose", role: "radiogroup", "aria-label": "what goes over the bar" },
      ...radios.map((radio, i) => make("label", {}, radio, make("span", { text: ways[i][1] })))), fields, error);
  apply();
  return {
    element,
    show(text) {
      if (text === written() && kind !== "other") return;
      const parts = tubeParts(text);
      if (parts.kind !== "none" || kind === "none" || written() !== "") kind = parts.kind === "other" ? "tube" : parts.kind;
      form.fill(parts.kind === "other" ? {} : parts);
      apply();
    },
    /** Whether enough is said to ask. */
    whole: () => kind === "none" || written() !== "",
    parts: () => ({ kind, ...form.values }),
    refuse(refusal, words) {
      const mine = refusal?.field === "tube" && form.left.size > 0;
      error.textContent = mine ? words : "";
      error.hidden = !mine;
    },
  };
}
