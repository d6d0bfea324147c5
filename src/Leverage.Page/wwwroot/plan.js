// A planned job as lists to tick off, with what happened at each nut.
import { make } from "./dom.js";

/** Lays a plan out. `mark` writes what happened into the job's files, `tick` keeps a tick that no file has a key for. */
export function plan(out, { answer, tasks, nuts }, ticks, { mark, tick }) {
  const row = (key, words, on, set, ...rest) => {
    const input = make("input", { type: "checkbox", "data-tick": key });
    const item = make("li", { className: on ? "done" : "" }, make("label", { className: "tick" }, input, make("span", { text: words })), ...rest);
    input.checked = on;
    input.addEventListener("change", async () => {
      if (await set(input.checked) === undefined) input.checked = !input.checked;
      item.classList.toggle("done", input.checked);
    });
    return item;
  };
  const done = (table, name) => on => mark({ table, name, key: "done", values: on ? ["true"] : [] });
  const ticked = key => on => {
    tick(key, on);
    return true;
  };
  const nutOf = name => nuts.find(nut => nut.name === name);
  const quiet = text => make("p", { className: "quiet", text });
  const order = [...tasks.filter(task => task.done).map(task => row(`task:${task.name}`, task.name, true, done("tasks", task.name))),
    ...answer.order.map(each => row(`task:${each.task}`, each.task, false, done("tasks", each.task), each.needs.length ? make("span", { text: `needs ${each.needs.join(", ")}` }) : null))];
  const tight = answer.loosening.map(each => row(`nut:${each.fastener}`, `${each.count} × ${each.fastener}: ${each.verdict}`, false, done("fasteners", each.fastener),
    make("p", { text: `${each.setUp?.join(" + ") ?? "no tool of the chest fits"}${chance(each)}` }), ...each.reasons.slice(0, 1).map(quiet), happened(nutOf(each.fastener), mark)));
  const loose = nuts.filter(nut => !answer.loosening.some(each => each.fastener === nut.name));
  const card = (title, list, tag = "ul") => list.length ? make("section", { className: "card" }, make("h3", { text: title }), make(tag, { className: "moves" }, ...list)) : "";
  out.replaceChildren(
    make("h2", { text: answer.title }),
    card("In this order", order, "ol"),
    card("Breaking loose, the hard ones first", tight),
    card("Loose already", loose.map(nut => nut.done ? row(`nut:${nut.name}`, nut.name, true, done("fasteners", nut.name), noted(nut, mark)) : make("li", {}, nut.name, noted(nut, mark)))),
    card("Going back", answer.refit.map(each => row(`refit:${each.fastener}`, `${each.count} × ${each.fastener}: ${Math.round(each.torqueNm)} N·m`, !!ticks[`refit:${each.fastener}`], ticked(`refit:${each.fastener}`),
      each.newPart ? make("p", { text: `new: ${each.newPart}` }) : null))),
    card("Get", answer.parts.map(each => row(`part:${each.part}`, `${each.count} × ${each.part}`, !!ticks[`part:${each.part}`], ticked(`part:${each.part}`)))));
}

const chance = each => each.outcomes ? ` · comes loose ${Math.round(100 * each.outcomes.comesLoose)} in 100` : "";

const history = nut => [nut.held && `held at ${nut.held}`, nut.came.length && `came at ${nut.came.join(", ")}`, nut.rounded && "rounded off", nut.sheared && "twisted off"].filter(Boolean).join(" · ");

/** What happened at a nut, and at which torque: noted into the job's file. */
function happened(nut, mark) {
  const what = make("select", { "aria-label": `what happened at ${nut.name}`, "data-what": nut.name },
    ...[["", "what happened?"], ["held", "it held"], ["came", "it came"], ["rounded", "it rounded off"], ["sheared", "it twisted off"]].map(([value, text]) => make("option", { value, text })));
  const at = make("input", { type: "text", "aria-label": `torque at ${nut.name}`, "data-at": nut.name, value: nut.pull, placeholder: "such as 250Nm" });
  const past = noted(nut, mark);
  const marks = {
    "": () => [],
    held: () => [["held", [torque(at.value)]]],
    came: () => [["came_loose", [...nut.came, torque(at.value)].slice(-nut.count)]],
    rounded: () => [["rounded", ["true"]]],
    sheared: () => [["sheared", ["true"]]],
  };
  return make("div", { className: "note" }, make("div", { className: "row" }, what, at,
    make("button", { type: "button", text: "note it", "data-note": nut.name, on: { click: () => past.write(marks[what.value]()) } })), past);
}

/** What is noted of a nut, and a button that takes it back. */
function noted(nut, mark) {
  const words = make("span", { role: "status" });
  const back = make("button", { type: "button", text: "take back", "data-back": nut.name, on: { click: () => element.write([["held", []], ["came_loose", []], ["rounded", []], ["sheared", []]]) } });
  const element = make("p", { className: "row quiet" }, words, back);
  const show = () => {
    words.textContent = history(nut);
    back.hidden = words.textContent === "";
  };
  element.write = async list => {
    if (list.length === 0 || !await mark(...list.map(([key, values]) => ({ table: "fasteners", name: nut.name, key, values })))) return;
    for (const [key, values] of list) nut[key === "came_loose" ? "came" : key] = key === "came_loose" ? values : key === "held" ? values[0] ?? "" : values.length > 0;
    show();
  };
  show();
  return element;
}

const torque = text => /^[\d.,]+$/.test(text.trim()) ? `${text.trim()}Nm` : text.trim();
