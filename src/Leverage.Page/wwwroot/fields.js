// Fields made from the core's list: number and unit, steppers, choices, boxes, each with its label, help and refusal.
import { make } from "./dom.js";
import { read, split, spoken } from "./quantities.js";

/** Letters of an assumption that its field has room for. */
const short = 10;

/** A form of fields. `changed(name, resting)` is called at every change. */
export class Form {
  constructor(lines, prefix, changed) {
    this.lines = new Map(lines.map(line => [line.name, line]));
    this.values = {};
    this.left = new Set();
    this.boxes = new Map();
    this.prefix = prefix;
    this.changed = changed;
  }

  /** The elements of a group's fields, in the order of the list. */
  group(name) {
    return [...this.lines.values()].filter(line => line.group === name).map(line => this.field(line));
  }

  /** The values that count: what hangs on an empty field is dropped. */
  counted() {
    const counted = {};
    for (const [name, text] of Object.entries(this.values)) if (String(text).trim() !== "" && this.holds(name)) counted[name] = text;
    return counted;
  }

  holds(name) {
    const needs = this.lines.get(name)?.needs ?? [];
    return needs.length === 0 || needs.some(need => String(this.values[need] ?? "").trim() !== "" && this.holds(need));
  }

  /** Puts values in, all of them, and shows them. */
  fill(values) {
    this.values = { ...values };
    for (const [name, box] of this.boxes) box.show(this.values[name] ?? "");
    this.hideIdle();
  }

  /** Sets one value as if it had been typed. */
  put(name, text) {
    this.values[name] = text;
    this.boxes.get(name)?.show(text);
    this.hideIdle();
  }

  /** Shows what stands in for the empty fields. */
  assume(assumed) {
    for (const [name, box] of this.boxes) box.assume(assumed[name] ?? "");
  }

  /** Shows a refusal at its field, once the field was left; returns whether it has a field here. */
  refuse(refusal, words) {
    for (const [name, box] of this.boxes) {
      const mine = refusal?.field === name && this.left.has(name);
      box.error.textContent = mine ? words : "";
      box.error.hidden = !mine;
      box.input.setAttribute("aria-invalid", String(mine));
    }
    return this.boxes.has(refusal?.field);
  }

  hideIdle() {
    for (const [name, box] of this.boxes) {
      const idle = !this.holds(name);
      if (box.element.hidden !== idle) box.element.hidden = idle;
    }
  }

  field(line) {
    const id = `${this.prefix}-${line.name}`;
    const error = make("p", { id: `${id}-error`, className: "refusal", role: "alert", hidden: true });
    const told = line.kind === "number" && line.leftOut.length > short ? [line.help, `assumed: ${line.leftOut}`].filter(Boolean).join("; ") : line.help;
    const help = told ? make("span", { id: `${id}-help`, className: "help", text: told }) : null;
    const described = [help?.id, error.id].filter(Boolean).join(" ");
    const box = (kinds[line.kind] ?? text)(this, line, id, described);
    const head = line.kind === "list" ? make("legend", { text: line.label }) : make("label", { for: id, text: line.label });
    box.element = make(line.kind === "list" ? "fieldset" : "div", { className: `field ${line.kind}` }, head, help, box.control, error);
    box.error = error;
    this.boxes.set(line.name, box);
    box.input.addEventListener("focusout", () => {
      if (String(this.values[line.name] ?? "") === "" && !this.left.has(line.name)) return;
      this.left.add(line.name);
      this.changed(line.name, true);
    });
    box.show(this.values[line.name] ?? "");
    box.assume("");
    box.element.hidden = !this.holds(line.name);
    return box.element;
  }

  say(name, value, resting) {
    this.values[name] = value;
    this.hideIdle();
    this.changed(name, resting);
  }
}

function number(form, line, id, described) {
  const input = make("input", { id, type: "text", inputmode: "decimal", autocomplete: "off", "aria-describedby": described, enterkeyhint: "done" });
  const unit = line.units.length > 1
    ? make("select", { "aria-label": `unit of ${line.label}` }, ...line.units.map(each => make("option", { value: each, text: spoken[each] ?? each })))
    : make("span", { className: "unit", text: spoken[line.units[0]] ?? line.units[0] ?? "" });
  const chosen = () => unit.value ?? line.units[0] ?? "";
  const say = resting => {
    const typed = input.value.trim();
    form.say(line.name, typed === "" ? "" : /[a-z"'°]/i.test(typed) ? typed : `${typed}${chosen()}`, resting);
  };
  const step = sign => {
    const now = Number(input.value.replace(",", ".")) || Number(split(line.example, line.units)?.number) - sign * line.step || 0;
    const size = line.step / ({ in: 25.4, cm: 10, m: 1000, "ft-lb": 1.356, "kgf-m": 9.8, lb: 0.4536, lbf: 4.448, kgf: 9.8, ksi: 6.895 }[chosen()] ?? 1);
    const tidy = 10 ** Math.floor(Math.log10(size));
    const grain = Math.max(1, Math.round(size / tidy)) * tidy;
    input.value = String(Number((Math.round((now + sign * grain) / grain) * grain).toFixed(4)));
    form.left.add(line.name);
    say(true);
  };
  input.addEventListener("input", () => say(false));
  input.addEventListener("keydown", event => {
    if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      event.preventDefault();
      step(event.key === "ArrowUp" ? 1 : -1);
    }
  });
  unit.addEventListener("change", () => say(true));
  const press = (sign, word) => make("button", { type: "button", className: "step", "aria-label": `${word} ${line.label}`, text: sign < 0 ? "−" : "+", on: { click: () => step(sign) } });
  return {
    input,
    control: make("div", { className: "numbers" }, press(-1, "less"), input, unit, press(1, "more")),
    show(value) {
      const parts = split(value, line.units);
      if (document.activeElement !== input || value === "") input.value = parts ? parts.number : value;
      if (parts?.unit && unit.tagName === "SELECT") unit.value = parts.unit;
    },
    assume(words) {
      const stands = words || (line.leftOut.length > short ? "" : read(line.leftOut, line.units));
      input.placeholder = stands ? `assumed ${stands}` : "";
    },
  };
}

function text(form, line, id, described) {
  const list = line.choices.length ? make("datalist", { id: `${id}-list` }, ...line.choices.map(each => make("option", { value: each.key }))) : null;
  const input = make("input", { id, type: "text", autocomplete: "off", autocapitalize: "off", spellcheck: "false", list: list?.id, "aria-describedby": described, enterkeyhint: "done" });
  input.addEventListener("input", () => form.say(line.name, input.value.trim(), false));
  return {
    input,
    control: make("div", {}, input, list),
    show(value) { if (document.activeElement !== input || value === "") input.value = value; },
    assume(words) { input.placeholder = words || line.leftOut ? `assumed ${words || line.leftOut}` : line.example ? `such as ${line.example}` : ""; },
  };
}

function choice(form, line, id, described) {
  const none = make("option", { value: "", text: "not said" });
  const input = make("select", { id, "aria-describedby": described }, none,
    ...line.choices.map(each => make("option", { value: each.key, text: each.words || each.key })));
  input.addEventListener("change", () => form.say(line.name, input.value, true));
  return {
    input,
    control: input,
    show(value) {
      if (value !== "" && ![...input.options].some(option => option.value === value)) input.append(make("option", { value, text: value }));
      input.value = value;
    },
    assume(words) {
      const stands = words || (line.choices.find(each => each.key === line.leftOut)?.words ?? line.leftOut);
      none.textContent = stands ? `assumed: ${stands}` : "not said";
    },
  };
}

function flag(form, line, id, described) {
  const input = make("input", { id, type: "checkbox", "aria-describedby": described });
  input.addEventListener("change", () => form.say(line.name, input.checked ? "yes" : "", true));
  return { input, control: input, show(value) { input.checked = value === "yes" || value === "on"; }, assume() {} };
}

function list(form, line, id, described) {
  const boxes = line.choices.map(each => make("input", { type: "checkbox", value: each.key, id: `${id}-${each.key}` }));
  const control = make("div", { className: "ticks", id, "aria-describedby": described }, ...line.choices.map((each, i) => make("label", {}, boxes[i], make("span", { text: each.words }))));
  control.addEventListener("change", event => {
    for (const box of boxes) if (event.target.checked && (event.target.value === "none") !== (box.value === "none")) box.checked = false;
    form.say(line.name, boxes.filter(box => box.checked).map(box => box.value).join(","), true);
  });
  return { input: control, control, show(value) { for (const box of boxes) box.checked = value.split(",").includes(box.value); }, assume() {} };
}

const kinds = { number, text, choice, flag, list };
