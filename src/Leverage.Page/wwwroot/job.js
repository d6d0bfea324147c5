// The job: the order of work as a list to tick off. What happened is written into the files, which stay in this browser.
import { make, save } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";
import { kept, keep } from "./store.js";
import { filePicker } from "./files.js";
import { plan as draw } from "./plan.js";

export function jobView() {
  const told = make("p", { role: "status", className: "quiet" });
  const bad = make("div", { role: "alert" });
  const out = make("div", { className: "tell", id: "plan" });
  let files = [];
  let ticks = {};
  let place = { fields: {} };
  let sheet = "";
  const remember = async (name, value, words = "Kept in this browser.") => { told.textContent = await keep(name, value) ?? words; };
  const refused = (refusal, ...rest) => bad.replaceChildren(
    ...(refusal.lines.length ? refusal.lines : [refusal.text]).map(line => make("p", { className: "refusal bad", text: line })), ...rest.map(text => make("p", { className: "bad", text })));
  const planned = list => ask("Job", JSON.stringify(list), address.query(place.fields.units ? { units: place.fields.units } : {}));
  const show = reply => {
    bad.replaceChildren();
    sheet = reply.sheet;
    draw(out, reply, ticks, { mark, tick });
  };
  const plan = () => {
    if (files.length === 0) return out.replaceChildren(make("p", { text: "No job yet. Load one, or start from the commented one." }));
    const reply = planned(files);
    if (reply.refusal) refused(reply.refusal);
    else show(reply);
  };
  /** Writes what happened into the files; a mark that cannot be leaves them as they are. */
  const mark = async (...marks) => {
    let next = files;
    for (const each of marks) {
      const marked = ask("Mark", JSON.stringify(next), JSON.stringify(each));
      if (marked.refusal) return refused(marked.refusal, "Nothing was written.");
      next = marked;
    }
    bad.replaceChildren();
    files = next;
    await remember("job", files, "Written into the job and kept in this browser. Plan what is left when you are ready; save the files to take them along.");
    return true;
  };
  const tick = (key, on) => {
    ticks = { ...ticks, [key]: on };
    if (!on) delete ticks[key];
    remember("ticks", ticks);
  };
  const take = async next => {
    const trial = planned(next);
    if (trial.refusal) return refused(trial.refusal, ...files.length ? ["The job kept before is still here."] : []);
    files = next;
    await remember("job", files);
    show(trial);
  };
  const element = make("div", { className: "view two" },
    make("div", { className: "ask noprint" }, make("h1", { text: "Job" }),
      make("section", { className: "card" }, make("p", { text: "The whole strip-down and refit in its order. What you tick and note stays in this browser for days." }),
        filePicker("job-file", "load a job with what it names (.toml, .csv)", take, true),
        make("div", { className: "row" },
          make("button", { type: "button", id: "job-start", text: "start one", on: { click: () => take([{ name: "job.toml", text: ask("Starters").job }]) } }),
          make("button", { type: "button", id: "job-plan", text: "plan what is left", on: { click: plan } }),
          make("button", { type: "button", id: "job-save", text: "save files", on: { click: () => files.forEach(file => save(file.name, file.name.endsWith(".csv") ? `\ufeff${file.text}` : file.text)) } }),
          make("button", { type: "button", text: "save the sheet", on: { click: () => sheet && save("sheet.html", sheet, "text/html") } }),
          make("button", { type: "button", text: "print", on: { click: () => window.print() } })), told, bad)), out);
  const ready = Promise.all([kept("job"), kept("ticks")]).then(([job, marks]) => {
    if (Array.isArray(job) && files.length === 0) files = job;
    if (marks && typeof marks === "object") ticks = marks;
    plan();
  });
  return { element, ready, fields: () => place.fields, show(now) { place = now; } };
}
