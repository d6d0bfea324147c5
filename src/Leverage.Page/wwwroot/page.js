// The page: fields to address, address to answer, answer to words and drawings. It works nothing out itself.
import { $, make, draw, ask, latest, isTall } from "./shared.js";

const form = $("setup");
const fields = [...form.querySelectorAll("[name]")];
const holds = [...form.querySelectorAll("[data-hold]")];
let choices;
let sliders = [];
let units = "";

const field = name => fields.find(each => each.name === name);

function get(each) {
  return each.type === "checkbox" ? (each.checked ? each.value : "") : each.value.trim();
}

function put(name, text) {
  const each = field(name);
  if (!each) return;
  if (each.type === "checkbox") each.checked = text === "yes" || text === "on";
  else {
    if (each.tagName === "SELECT" && text && ![...each.options].some(option => option.value === text)) each.append(make("option", { text }));
    each.value = text;
  }
  if (name === "held-by") holds.forEach(box => (box.checked = text.split(",").includes(box.dataset.hold)));
}

function toQuery() {
  const query = new URLSearchParams();
  for (const each of fields) {
    const text = get(each);
    if (text) query.set(each.name, text);
    each.closest("label")?.classList.toggle("unsaid", !text);
  }
  if (units) query.set("units", units);
  return query;
}

/** The address with its commas, slashes and colons left readable. */
const readable = query => query.toString().replaceAll("%2C", ",").replaceAll("%2F", "/").replaceAll("%3A", ":");

function fromQuery(query) {
  for (const each of fields) put(each.name, query.get(each.name) ?? "");
  units = query.get("units") ?? "";
  $("units").setAttribute("aria-pressed", String(units === "us"));
}

const refresh = latest(async () => {
  const query = toQuery();
  const address = readable(query);
  history.replaceState(null, "", address ? `?${address}` : location.pathname);
  $("to-lesson").href = `lesson${address ? `?${address}` : ""}`;
  if (isTall()) query.set("shape", "tall");
  const answer = await ask(`loosen?${query}`);
  if (answer.refusal) refuse(answer.refusal);
  else show(answer);
});

function refuse({ error, field: name }) {
  clearRefusal();
  const line = $("refusal");
  line.textContent = error;
  line.hidden = false;
  const about = name && field(name);
  if (about && about.type !== "hidden") {
    about.setAttribute("aria-invalid", "true");
    about.setAttribute("aria-describedby", "refusal");
    about.closest("details")?.setAttribute("open", "");
    about.closest("label").after(line);
  } else form.querySelector("h2").before(line);
  for (const part of document.querySelectorAll(".stage, .meaning")) part.classList.add("stale");
}

function clearRefusal() {
  $("refusal").hidden = true;
  $("refusal").textContent = "";
  for (const each of form.querySelectorAll("[aria-invalid]")) {
    each.removeAttribute("aria-invalid");
    each.removeAttribute("aria-describedby");
  }
  for (const part of document.querySelectorAll(".stale")) part.classList.remove("stale");
}

function show({ words, drawings, sliders: lines, command, answer }) {
  clearRefusal();
  $("case").textContent = words.title;
  document.title = `${words.verdict}: ${words.title}`;
  $("verdict").dataset.verdict = words.verdict;
  $("word").textContent = words.verdict;
  if ($("sentence").textContent !== words.sentence) $("sentence").textContent = words.sentence;
  draw($("side"), drawings.side);
  $("side").hidden = !drawings.side;
  draw($("window"), drawings.window);
  showSliders(lines);
  $("figures").replaceChildren(...[...words.takes, ...words.tube, ...words.around].map(line =>
    make("div", {}, make("dt", { text: line.label }), make("dd", {}, make("b", { text: line.value }), make("span", { text: line.note })))));
  $("advice").replaceChildren(...words.advice.map(text => make("li", { text })));
  $("chances").replaceChildren(...chances(words.chances));
  $("links").replaceChildren(...words.links.map(link));
  $("cautions").textContent = words.cautions;
  $("assumed").textContent = `Assumed: ${words.assumed}. * unconfirmed or assumed figure.`;
  $("command-label").hidden = !command;
  $("command").textContent = command;
  form.dataset.answer = JSON.stringify(answer);
}

function chances(line) {
  if (!line) return [make("p", { text: "Give a bar to see the chances." })];
  const parts = [["undone", "comes undone", line.undone], ["stuck", "stays stuck", line.stuck], ["gives", "something gives first", line.gives]];
  const bar = make("div", { className: "chance", "aria-hidden": "true" }, ...parts.map(([name]) => {
    const part = make("i", { className: name });
    part.style.width = `${100 * line.shares[name]}%`;
    return part;
  }));
  return [bar, make("ul", { className: "keys" }, ...parts.map(([name, text, percent]) =>
    make("li", {}, make("i", { className: name, "aria-hidden": "true" }), `${text} ${percent} %`)))];
}

/** A link's bar: the limit stands at three quarters of the width. */
function link(line) {
  const limit = 75;
  const part = (name, share) => {
    const piece = make("i", { className: name });
    if (name === "limit") piece.style.left = `${limit}%`;
    else piece.style.width = `${Math.min(100, limit * share)}%`;
    return piece;
  };
  return make("div", { className: "link" },
    make("p", {}, make("b", { text: line.part }), make("span", { text: `limit ${line.limit}${line.confirmed ? "" : ", unconfirmed"}` })),
    make("div", { className: "bar", "aria-hidden": "true" }, part("hard", line.hardShare), part("likely", line.likelyShare), part("limit", 1)),
    make("p", { className: "quiet" }, make("span", { text: `likely ${line.likely}, hard ${line.hard}: safety ${line.safety}` }),
      make("span", { text: line.givesFirst ? "◀ gives first" : line.source, className: line.givesFirst ? "first" : "" })));
}

/** Sliders stay the same elements while their fields stay the same, so that a thumb keeps its hold. */
function showSliders(lines) {
  const same = lines.length === sliders.length && lines.every((line, i) => line.field === sliders[i].field);
  if (!same) $("sliders").replaceChildren(...lines.map(slider));
  sliders = lines;
  for (const line of lines) {
    const input = $(`slide-${line.field}`);
    input.step = line.step;
    input.min = line.min;
    input.max = line.max;
    if (document.activeElement !== input || !input.matches(":active")) input.value = line.value;
    input.setAttribute("aria-valuetext", line.text);
    $(`value-${line.field}`).textContent = line.text;
  }
}

function slider({ field: name, label }) {
  const id = `slide-${name}`;
  const input = make("input", { type: "range", id });
  input.addEventListener("input", () => {
    const line = sliders.find(each => each.field === name);
    if (name === "surface-friction") put("surface", "");
    put(name, line.template.replace("{}", String(Number(input.value))));
    refresh();
  });
  return make("div", { className: "slider" }, make("label", { text: label, for: id }), make("output", { id: `value-${name}`, for: id }), input);
}

const groups = { nut: "Nut", tool: "Socket or spanner", bar: "Bar", tube: "Tube", person: "Who pulls", hold: "What holds" };

const mostBytes = 4e6;

async function openFiles(files) {
  if ([...files].reduce((sum, file) => sum + file.size, 0) > mostBytes) {
    $("pieces").replaceChildren(make("p", { className: "refusal", role: "alert", text: "These files are larger than 4 MB. Are they the right ones?" }));
    return;
  }
  const texts = await Promise.all([...files].map(async file => ({ name: file.name, text: await file.text() })));
  const opened = await ask("open", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(texts) });
  if (opened.refusal) {
    $("pieces").replaceChildren(make("p", { className: "refusal", role: "alert", text: opened.refusal.error }));
    return;
  }
  const lists = Object.keys(groups).map(group => [group, opened.pieces.filter(piece => piece.group === group)]).filter(([, pieces]) => pieces.length);
  $("file-words").textContent = `${opened.file}, read as a ${opened.kind}: ${opened.pieces.length} pieces. It was read on this machine and forgotten.`;
  $("pieces").replaceChildren(...lists.map(([group, pieces]) => {
    const select = make("select", { "data-group": group }, make("option", { text: "pick one", value: "" }),
      ...pieces.map((piece, i) => make("option", { text: piece.name, value: String(i) })));
    select.addEventListener("change", () => {
      const piece = pieces[Number(select.value)];
      if (select.value === "" || !piece) return;
      for (const [name, text] of Object.entries(piece.fields)) put(name, text);
      refresh();
    });
    return make("label", { text: groups[group] }, select);
  }));
}

function offer(name, list) {
  const select = field(name);
  for (const { key, words } of list) select.append(make("option", { value: key, text: words && !words.startsWith(key) ? `${key}: ${words}` : words || key }));
}

async function start() {
  choices = await ask("choices");
  if (choices.refusal) return refuse(choices.refusal);
  for (const name of ["condition", "stance", "surface", "ground", "drive"]) offer(name, choices[name]);
  for (const [id, list] of [["threads", choices.thread], ["grades", choices.grade]]) $(id).append(...list.map(({ key }) => make("option", { value: key })));
  fromQuery(new URLSearchParams(location.search.length > 1 ? location.search : choices.example));
  await refresh();
  document.documentElement.dataset.ready = "yes";
}

form.addEventListener("submit", event => event.preventDefault());
form.addEventListener("input", event => {
  if (event.target.dataset.hold !== undefined) {
    const box = event.target;
    holds.forEach(each => { if (box.checked && (box.dataset.hold === "none") !== (each.dataset.hold === "none")) each.checked = false; });
    field("held-by").value = holds.filter(each => each.checked).map(each => each.dataset.hold).join(",");
    refresh();
  } else if (event.target.name === "surface") {
    put("surface-friction", "");
    refresh();
  } else if (event.target.name) refresh();
});
$("file").addEventListener("change", event => openFiles(event.target.files));
$("units").addEventListener("click", () => {
  units = units === "us" ? "" : "us";
  $("units").setAttribute("aria-pressed", String(units === "us"));
  refresh();
});
$("print").addEventListener("click", () => window.print());
$("example").addEventListener("click", () => { fromQuery(new URLSearchParams(choices.example)); refresh(); });
window.addEventListener("popstate", () => { fromQuery(new URLSearchParams(location.search)); refresh(); });
window.matchMedia("(max-width: 40rem)").addEventListener("change", () => refresh());
start();
