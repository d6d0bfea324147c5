// What to set, and whether a quoted torque is believable.
import { make, atRest } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";
import { Form } from "./fields.js";
import { figures } from "./answer.js";

export function tightenView(lists) {
  const form = new Form(lists.tighten, "t", (name, resting) => resting ? later.now() : later());
  const out = make("section", { className: "card", "aria-live": "polite", id: "set" });
  const error = make("p", { className: "refusal", role: "alert", hidden: true });
  const element = make("div", { className: "view two" },
    make("form", { className: "ask", on: { submit: event => event.preventDefault() } }, make("h1", { text: "What do I set?" }), error,
      make("section", { className: "card" }, make("div", { className: "fields" }, ...form.group("tighten")),
        make("details", {}, make("summary", { text: "More" }), make("div", { className: "fields" }, ...form.group("tighten-more"))))),
    make("div", { className: "tell" }, out));
  const forCheck = new Set(lists.check);
  const look = () => {
    const counted = form.counted();
    const reply = ask("Tighten", address.query(counted));
    const placed = form.refuse(reply.refusal ?? null, reply.refusal?.text);
    error.hidden = !reply.refusal || placed || !form.left.size;
    error.textContent = reply.refusal?.text ?? "";
    if (reply.refusal) return out.replaceChildren(make("p", {}, make("b", { text: "No answer yet. " }), counted.thread ? "" : "Say which thread."));
    const check = counted.torque ? ask("Check", address.query(Object.fromEntries(Object.entries(counted).filter(([name]) => forCheck.has(name))))) : null;
    out.replaceChildren(make("h2", { text: reply.title }), figures(check && !check.refusal ? [...check.figures, ...reply.figures.filter(each => each.label !== "Torque")] : reply.figures),
      make("ul", {}, ...reply.assumed.map(text => make("li", { className: "quiet", text }))),
      make("p", { className: "cautions", text: "The maker's manual comes first. Clean threads, the lubricant it names, new bolts where it wants them." }));
    out.dataset.answer = JSON.stringify(reply.answer);
  };
  const later = atRest(() => {
    address.write({ view: "tighten", fields: form.counted() }, true);
    look();
  }, 400);
  return {
    element,
    fields: () => form.counted(),
    show({ fields }) {
      form.fill(fields);
      look();
    },
  };
}
