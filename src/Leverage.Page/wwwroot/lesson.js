// The lesson: one idea a step, a guess before anything is shown, then a live figure to move.
import { make, eachFrame } from "./dom.js";
import { ask } from "./core.js";
import * as address from "./address.js";
import { lessonFigure, moves } from "./lessonfigures.js";

export function lessonView(lists) {
  const element = make("div", { className: "view lesson" });
  let fields = {};
  let guesses = {};
  const own = () => fields.tube ? fields : { ...address.pairs(lists.example) };

  function draw(part) {
    const lesson = ask("Lesson", address.query(own()));
    if (lesson.refusal) {
      element.replaceChildren(make("h1", { text: "Lesson" }), make("p", { className: "refusal", role: "alert", text: lesson.refusal.text }), make("p", { text: "The lesson needs a bar with a tube over it." }));
      return;
    }
    if (part === "teacher") return teacher(lesson);
    const at = Math.min(lesson.steps.length, Math.max(1, Number.parseInt(part, 10) || 1));
    const step = lesson.steps[at - 1];
    const answered = Object.hasOwn(guesses, at);
    const out = make("div", { "aria-live": "polite" });
    const guess = make("input", { id: "guess", type: "text", inputmode: "decimal", autocomplete: "off" });
    const form = make("form", { className: "card" }, make("label", { for: "guess", text: `${step.question} (${step.unit})` }), guess, make("button", { text: "That is my guess" }));
    form.addEventListener("submit", event => {
      event.preventDefault();
      const value = Number(guess.value.trim().replace(",", "."));
      if (guess.value.trim() === "" || !Number.isFinite(value)) return out.replaceChildren(make("p", { className: "refusal", role: "alert", text: "Write a number: any guess will do." }));
      guesses[at] = value;
      reveal();
    });
    const shown = make("div", { className: "tell" });
    const asked = answered ? "" : lessonFigure(step.figure, lesson.figures, "asked");
    const reveal = () => {
      const right = Math.abs(guesses[at] - step.answer) <= step.within;
      form.hidden = true;
      if (asked) asked.remove();
      out.replaceChildren(make("p", { className: "card" }, make("b", { text: right ? "Yes. " : `You guessed ${guesses[at]} ${step.unit}. ` }), step.worked));
      shown.replaceChildren(...step.words.map(text => make("p", { text })), live(step, own()));
    };
    const go = to => make("a", { href: address.hash({ view: "lesson", part: String(to), fields }), className: "button", text: to < at ? `← step ${to}` : `step ${to} →` });
    element.replaceChildren(make("h1", { text: lesson.title }), make("p", { className: "quiet", text: lesson.given }),
      make("h2", { text: `${at} of ${lesson.steps.length} · ${step.title}` }), asked, form, out, shown,
      make("nav", { className: "row", "aria-label": "steps" }, at > 1 ? go(at - 1) : "", at < lesson.steps.length ? go(at + 1) : "",
        make("a", { href: address.hash({ view: "lesson", part: "teacher", fields }), className: "button", text: "teacher's page" }), make("button", { type: "button", text: "print", on: { click: () => window.print() } })),
      make("p", { className: "cautions", text: lesson.cautions }), paper(lesson));
    if (answered) reveal();
  }

  /** A figure the pupil moves: each move asks the core again. */
  function live(step, start) {
    const now = { ...start };
    const figure = make("div", {});
    const told = make("p", { role: "status" });
    const refresh = eachFrame(() => {
      const lesson = ask("Lesson", address.query(now));
      if (lesson.refusal) return told.replaceChildren(lesson.refusal.text);
      figure.replaceChildren(lessonFigure(step.figure, lesson.figures, "shown"));
      const same = lesson.steps.find(each => each.figure === step.figure);
      told.textContent = same.worked;
    });
    const sliders = moves[step.figure].map(each => start.units === "us" && each.unit === "mm" ? inches(each) : each).map(({ field, label, unit, min, max, step: by }) => {
      const input = make("input", { type: "range", id: `move-${field}`, min, max, step: by, value: inUnit(now[field], unit) ?? (min + max) / 2 });
      const value = make("output", { for: input.id, text: `${input.value} ${unit}` });
      input.addEventListener("input", () => {
        now[field] = `${input.value}${unit}`;
        value.textContent = `${input.value} ${unit}`;
        refresh();
      });
      return make("div", { className: "field" }, make("label", { for: input.id }, `${label}: `, value), input);
    });
    refresh();
    return make("section", { className: "card noprint" }, make("h3", { text: "Now move it" }), figure, ...sliders, told);
  }

  /** The pupil's paper: all questions, no answers. */
  const paper = lesson => make("section", { className: "paper" }, make("h2", { text: lesson.title }), make("p", { text: lesson.given }),
    ...lesson.steps.map((step, i) => make("div", { className: "question" }, make("h3", { text: `${i + 1}  ${step.title}` }), lessonFigure(step.figure, lesson.figures, "asked"), make("p", { text: step.question }), make("p", { text: `My guess: __________ ${step.unit}    Worked out: __________ ${step.unit}` }))));

  function teacher(lesson) {
    element.replaceChildren(make("h1", { text: `${lesson.title}: teacher's page` }), make("p", { className: "quiet", text: lesson.given }),
      make("ol", {}, ...lesson.steps.map(step => make("li", {}, make("b", { text: step.title }), make("p", { text: step.question }), make("p", { text: step.worked })))),
      make("p", { className: "cautions", text: lesson.cautions }),
      make("p", {}, make("a", { href: address.hash({ view: "lesson", part: "1", fields }), text: "back to the lesson" })));
  }

  return { element, fields: () => fields, show(place) { fields = place.fields; draw(place.part); } };
}

/** A slider of a length in inches. */
const inches = each => ({ ...each, unit: "in", min: Math.round(each.min / 25.4), max: Math.round(each.max / 25.4), step: .25 });

/** The number of a length or angle in a slider's unit; null where the text is none. */
function inUnit(text, unit) {
  const mm = { mm: 1, cm: 10, m: 1000, in: 25.4 };
  const number = Number.parseFloat(text);
  const own = /[a-z]+\s*$/i.exec(text ?? "")?.[0].trim();
  return Number.isNaN(number) ? null : own in mm && unit in mm ? number * mm[own] / mm[unit] : number;
}
