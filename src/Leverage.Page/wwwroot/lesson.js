// The lesson: six steps with the learner's own numbers, one at a time on the screen, all of them on the teacher's sheet.
import { $, make, draw, ask, latest, isTall } from "./shared.js";

const form = $("own");
const fields = [...form.querySelectorAll("[name]")];
let query;
let lesson;
let at = 0;

const load = latest(async () => {
  const asked = new URLSearchParams(query);
  if (isTall()) asked.set("shape", "tall");
  const answer = await ask(`lesson-steps?${asked}`);
  $("refusal").hidden = !answer.refusal;
  $("refusal").textContent = answer.refusal?.error ?? "";
  for (const each of fields) each.toggleAttribute("aria-invalid", false);
  if (answer.refusal) {
    fields.find(each => each.name === answer.refusal.field)?.setAttribute("aria-invalid", "true");
    return;
  }
  lesson = answer;
  $("title").textContent = lesson.title;
  $("given").textContent = `Your numbers: ${lesson.given}`;
  $("cautions").textContent = lesson.cautions;
  show();
  sheet();
});

const figure = (svg, label) => {
  const drawing = make("figure", { className: "drawing", "aria-label": label });
  draw(drawing, svg);
  return drawing;
};

function show() {
  const step = lesson.steps[at];
  $("step").replaceChildren(make("h2", { text: step.title }), ...step.words.map(text => make("p", { text })), figure(step.figure, step.title), question(step));
  $("where").textContent = `${at + 1} of ${lesson.steps.length}`;
  $("back").disabled = at === 0;
  $("next").disabled = at === lesson.steps.length - 1;
}

function question(step) {
  const input = make("input", { inputmode: "decimal", id: "guess", autocomplete: "off" });
  const result = make("p", { className: "result", role: "status", id: "result" });
  const worked = make("p", { text: step.worked, id: "worked" });
  worked.hidden = true;
  const check = make("button", { type: "submit", text: "Check" });
  const reveal = make("button", { type: "button", text: "Show the working" });
  reveal.addEventListener("click", () => (worked.hidden = false));
  const box = make("form", { className: "question" }, make("p", { text: step.question }),
    make("div", { className: "try" }, make("label", { for: "guess" }, "Answer ", input, step.unit), check, reveal), result, worked);
  box.addEventListener("submit", event => {
    event.preventDefault();
    const guess = Number(input.value.replace(",", "."));
    const right = input.value.trim() !== "" && Math.abs(guess - step.answer) <= step.within;
    result.textContent = right ? "Right." : "Not yet: try again, or look at the working.";
    result.className = `result ${right ? "right" : "wrong"}`;
    if (right) worked.hidden = false;
  });
  return box;
}

/** The teacher's sheet: questions to hand out, then a page of answers. It is printed, not shown. */
function sheet() {
  $("sheet").replaceChildren(
    make("p", { text: lesson.given }),
    ...lesson.steps.map(step => make("article", {}, make("h2", { text: step.title }), ...step.words.map(text => make("p", { text })),
      figure(step.figure, step.title), make("p", {}, make("b", { text: step.question })), make("div", { className: "blank" }))),
    make("div", { className: "answers" }, make("h2", { text: "Answers, for the teacher" }),
      ...lesson.steps.map(step => make("article", {}, make("h3", { text: step.title }), make("p", { text: step.question }), make("p", {}, make("b", { text: step.worked })))),
      make("p", { className: "cautions", text: lesson.cautions })));
}

function go(by) {
  at += by;
  show();
  $("step").focus();
}

function save() {
  for (const each of fields) {
    if (each.value.trim()) query.set(each.name, each.value.trim());
    else query.delete(each.name);
  }
  const address = query.toString().replaceAll("%2C", ",").replaceAll("%2F", "/").replaceAll("%3A", ":");
  history.replaceState(null, "", `?${address}`);
  $("to-page").href = `./?${address}`;
}

async function start() {
  const choices = await ask("choices");
  query = new URLSearchParams(location.search.length > 1 ? location.search : choices.example);
  const handle = fields.find(each => each.name === "surface");
  for (const { key, words } of choices.handle) handle.append(make("option", { value: key, text: `${key}: ${words}` }));
  for (const each of fields) each.value = query.get(each.name) ?? (each === handle ? "dry" : "");
  save();
  await load();
  document.documentElement.dataset.ready = "yes";
}

form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("input", event => {
  if (event.target.name === "surface") query.delete("surface-friction");
  save();
  load();
});
$("back").addEventListener("click", () => go(-1));
$("next").addEventListener("click", () => go(1));
$("print").addEventListener("click", () => window.print());
start();
