// The job: the order of work as a list to tick off, what happened at each nut, kept here until it is done.
import { make, save } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";
import { kept, keep } from "./store.js";
import { filePicker } from "./files.js";

export function jobView() {
  const told = make("p", { role: "status", className: "quiet" });
  const out = make("div", { className: "tell", id: "plan" });
  let files = [];
  let ticks = {};
  let place = { fields: {} };
  let sheet = "";
  const remember = async (name, value) => { told.textContent = await keep(name, value) ?? "Kept in this browser."; };
  const plan = () => {
    if (files.length === 0) return out.replaceChildren(make("p", { text: "No job yet. Load one, or start from the commented one." }));
    const reply = ask("Job", JSON.stringify(files), address.query(place.fields.units ? { units: place.fields.units } : {}));
    if (reply.refusal) return out.replaceChildren(...reply.refusal.lines.map(line => make("p", { className: "refusal", role: "alert", text: line })));
    sheet = reply.sheet;
    draw(out, reply.answer, ticks, (key, value) => {
      ticks = { ...ticks, [key]: value };
      if (value === "") delete ticks[key];
      remember("ticks", ticks);
    });
  };
  const take = async next => {
    const before = files;
    const trial = ask("Job", JSON.stringify(next), "");
    if (trial.refusal && before.length) {
      out.querySelectorAll(".bad").forEach(each => each.remove());
      out.prepend(...trial.refusal.lines.map(line => make("p", { className: "refusal bad", role: "alert", text: line })), make("p", { className: "bad", text: "The job kept before is still here." }));
      return;
    }
    files = next;
    if (!trial.refusal) await remember("job", files);
    plan();
  };
  const element = make("div", { className: "view two" },
    make("div", { className: "ask noprint" }, make("h1", { text: "Job" }),
      make("section", { className: "card" }, make("p", { text: "The whole strip-down and refit in its order. Ticks stay in this browser for days." }),
        filePicker("job-file", "load a job with what it names (.toml, .csv)", take, true),
        make("div", { className: "row" },
          make("button", { type: "button", id: "job-start", text: "start one", on: { click: () => take([{ name: "job.toml", text: ask("Starters").job }]) } }),
          make("button", { type: "button", text: "save files", on: { click: () => files.forEach(file => save(file.name, file.text)) } }),
          make("button", { type: "button", text: "save the sheet", on: { click: () => sheet && save("sheet.html", sheet, "text/html") } }),
          make("button", { type: "button", text: "print", on: { click: () => window.print() } }),
          make("button", { type: "button", text: "all ticks off", on: { click: () => { ticks = {}; remember("ticks", ticks); plan(); } } })), told)), out);
  const ready = Promise.all([kept("job"), kept("ticks")]).then(([job, marks]) => {
    if (Array.isArray(job) && files.length === 0) files = job;
    if (marks && typeof marks === "object") ticks = marks;
    plan();
  });
  return { element, ready, fields: () => place.fields, show(now) { place = now; } };
}

function draw(out, answer, ticks, mark) {
  const box = (key, words) => {
    const input = make("input", { type: "checkbox", "data-tick": key });
    input.checked = ticks[key] === "done";
    const label = make("label", { className: "tick" }, input, make("span", { text: words }));
    input.addEventListener("change", () => {
      mark(key, input.checked ? "done" : "");
      label.parentElement.classList.toggle("done", input.checked);
    });
    return label;
  };
  const row = (key, words, ...rest) => make("li", { className: ticks[key] === "done" ? "done" : "" }, box(key, words), ...rest);
  const happened = name => {
    const key = `nut:${name}:happened`;
    const select = make("select", { "aria-label": `what happened at ${name}`, "data-tick": key }, ...["", "it came", "it held", "it rounded", "it sheared"].map(value => make("option", { value, text: value || "what happened?" })));
    select.value = ticks[key] ?? "";
    select.addEventListener("change", () => mark(key, select.value));
    return select;
  };
  const percent = each => each.outcomes ? ` · comes loose ${Math.round(100 * each.outcomes.comesLoose)} in 100` : "";
  out.replaceChildren(
    make("h2", { text: answer.title }),
    make("section", { className: "card" }, make("h3", { text: "In this order" }), make("ol", { className: "moves" }, ...answer.order.map(each => row(`task:${each.task}`, each.task,
      each.needs.length ? make("span", { text: `needs ${each.needs.join(", ")}` }) : null)))),
    make("section", { className: "card" }, make("h3", { text: "Breaking loose, the hard ones first" }), make("ul", { className: "moves" }, ...answer.loosening.map(each => row(`nut:${each.fastener}`, `${each.count} × ${each.fastener}: ${each.verdict}`,
      make("p", { text: `${each.setUp?.join(" + ") ?? "no tool of the chest fits"}${percent(each)}` }), ...each.reasons.slice(0, 1).map(text => make("p", { className: "quiet", text })), happened(each.fastener))))),
    make("section", { className: "card" }, make("h3", { text: "Going back" }), make("ul", { className: "moves" }, ...answer.refit.map(each => row(`refit:${each.fastener}`, `${each.count} × ${each.fastener}: ${Math.round(each.torqueNm)} N·m`,
      each.newPart ? make("p", { text: `new: ${each.newPart}` }) : null)))),
    answer.parts.length ? make("section", { className: "card" }, make("h3", { text: "Get" }), make("ul", { className: "moves" }, ...answer.parts.map(each => row(`part:${each.part}`, `${each.count} × ${each.part}`)))) : "");
}
