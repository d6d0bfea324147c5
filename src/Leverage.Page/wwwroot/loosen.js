// The first view: three questions, the verdict line, the picture, the answer.
import { $, make, say, atRest, eachFrame, idly } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";
import { Form } from "./fields.js";
import { goesOver, tubeParts } from "./goesover.js";
import { answerParts } from "./answer.js";
import { sideView } from "./side.js";
import { windowChart } from "./window.js";
import { happened } from "./happened.js";
import { tools } from "./tools.js";

export function loosenView(lists) {
  const form = new Form(lists.fields, "f", changed);
  const over = goesOver((text, resting) => {
    if (text === "") delete form.values.overlap;
    form.put("tube", text);
    changed("tube", resting);
  });
  const labels = Object.fromEntries(lists.fields.map(line => [line.name, line.label]));

  const more = (title, group) => make("details", {}, make("summary", { text: title }), make("div", { className: "fields" }, ...form.group(group)));
  const card = (title, ...inside) => make("section", { className: "card" }, make("h2", { text: title }), ...inside);
  const fields = group => make("div", { className: "fields" }, ...form.group(group));
  const general = make("p", { className: "refusal", id: "general", role: "alert", hidden: true });
  const question = make("form", { className: "ask", "aria-label": "what you have", autocomplete: "off", on: { submit: event => event.preventDefault() } },
    make("h1", { id: "case", text: "Will it come, and is it safe?" }),
    general,
    card("1 · Which nut?", fields("nut"), more("More about the nut", "nut-more")),
    card("2 · Which bar?", fields("bar"), more("More about the bar", "bar-more")),
    card("3 · What goes over it?", over.element, fields("tube"), more("More about the tube", "tube-more")),
    make("section", { className: "card" }, more("Who pulls, and how", "hands"), more("What holds the wheel", "hold")));
  const side = sideView({ drag, rest });
  const chart = windowChart({ drag, rest });
  const answer = answerParts();
  const what = happened(form, () => changed("held", true));
  const bar = tools({ lists, fields: () => form.counted(), set(values) { form.left.clear(); fill(values); refresh(true); } });
  const tell = make("div", { className: "tell", "aria-label": "the answer" }, side.element, answer.moves, what.element, chart.element, answer.details, bar.more);
  const element = make("div", { className: "view two" }, make("div", { className: "ask" }, bar.element, question), tell);

  const later = atRest(() => refresh(true), 500);
  let practised = false;
  const soon = eachFrame(() => refresh(false));
  let spoken = "";

  function changed(name, resting) {
    if (name === "bar" && !form.holds("tube")) over.show("");
    soon();
    if (resting) later.now();
    else later();
  }

  /** What a drag has written since the last frame. */
  let dragged = {};

  /** A drag is asked once a frame, without the moves; at rest the whole answer and an entry of the history follow. */
  function drag(values) {
    Object.assign(dragged, values);
    frame();
  }

  /** Writes it into the fields; returns whether there was anything. */
  function settle() {
    const values = Object.entries(dragged);
    dragged = {};
    for (const [name, text] of values) {
      form.put(name, text);
      if (name === "tube") over.show(text);
    }
    return values.length > 0;
  }

  const frame = eachFrame(() => {
    if (!settle()) return;
    const reply = ask("Sketch", queryOf(), chart.inView());
    if (reply.refusal) return refuse(reply.refusal);
    line(reply.words);
    for (const each of [answer.moves, answer.details]) each.classList.add("stale");
    for (const each of [side.element, chart.element]) each.classList.remove("stale");
    if (side.inView()) side.show(reply, form.counted());
    if (reply.window) chart.show(reply, form.counted());
  });

  function rest() {
    settle();
    refresh(true);
  }

  function queryOf() {
    const units = bar.units();
    return address.query({ ...form.counted(), ...(units ? { units } : {}) });
  }

  function refresh(resting) {
    if (resting) {
      const units = bar.units();
      address.write({ view: "loosen", fields: { ...form.counted(), ...(units ? { units } : {}) } }, document.documentElement.dataset.ready === "yes");
      bar.undoable();
    }
    const reply = ask("Loosen", queryOf());
    if (reply.refusal) return refuse(reply.refusal);
    general.hidden = true;
    form.refuse(null);
    over.refuse(null);
    $("case").textContent = reply.words.title;
    line(reply.words);
    element.classList.remove("unanswered");
    tell.querySelectorAll(".stale").forEach(each => each.classList.remove("stale"));
    form.assume(reply.assumed);
    side.show(reply, form.counted());
    chart.show(reply, form.counted());
    answer.show(reply);
    what.show(reply);
    bar.command(reply.command);
    tell.dataset.answer = JSON.stringify(reply.answer);
    if (reply.side && !practised) practise();
  }

  /** The core is slow the first times it is asked a thing: some are spent while nobody waits, before a finger drags. */
  function practise() {
    practised = true;
    idly(() => ask("Sketch", queryOf(), true), 60);
  }

  function line(words) {
    $("verdict").dataset.verdict = words.verdict;
    say($("word"), words.verdict);
    say($("why"), words.sentence);
    // While a finger drags, the next move is not looked for: its place stays and no old one is shown.
    $("next").classList.toggle("waiting", words.now === undefined);
    if (words.now !== undefined) say($("next"), words.now ? `Next: ${words.now}` : "");
    announce(`${words.verdict}. ${words.sentence}`);
  }

  const announce = atRest(text => {
    if (text !== spoken) $("announce").textContent = spoken = text;
  }, 700);

  /** No answer: no old verdict stays, and the old picture fades. The reason stands at its field once that was left. */
  function refuse(refusal) {
    const nothing = Object.keys(form.counted()).length === 0;
    const label = labels[refusal.field];
    const words = refusal.text;
    const placed = form.refuse(refusal, words) || refusal.field === "tube";
    over.refuse(refusal, words);
    general.textContent = words;
    general.hidden = placed || nothing || refusal.field === null && !form.left.size;
    $("verdict").dataset.verdict = "none";
    $("word").textContent = "no answer";
    $("next").textContent = "";
    $("why").textContent = nothing || !form.left.size && !refusal.failed ? "Say which nut: its hexagon or thread, or what it was tightened to." : label ? `Look at: ${label}.` : words;
    announce("no answer");
    tell.dataset.answer = "";
    $("case").textContent = "Will it come, and is it safe?";
    for (const each of [side.element, answer.moves, answer.details, chart.element, what.element]) each.classList.add("stale");
    element.classList.add("unanswered");
    if (nothing) {
      side.clear();
      chart.clear();
      answer.clear();
      what.clear();
    }
  }

  function fill(values) {
    const { units = "", ...own } = values;
    bar.setUnits(units);
    form.fill(own);
    over.show(own.tube ?? "");
  }

  return {
    element,
    fields: () => ({ ...form.counted(), ...(bar.units() ? { units: bar.units() } : {}) }),
    show(place) {
      later.drop();
      form.left = new Set(Object.keys(place.fields));
      fill(place.fields);
      refresh(false);
      bar.undoable();
    },
    put: drag,
    tubeParts,
  };
}
