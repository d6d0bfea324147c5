// Putting text and drawings into the page; nothing is ever read as markup.

export const $ = id => document.getElementById(id);

/** An element with text, properties and children. */
export function make(tag, { text, className, on, ...rest } = {}, ...children) {
  const element = document.createElement(tag);
  if (text !== undefined) element.textContent = text;
  if (className) element.className = className;
  for (const [name, value] of Object.entries(rest)) if (value !== undefined && value !== null && value !== false) element.setAttribute(name, value === true ? "" : value);
  for (const [name, handler] of Object.entries(on ?? {})) element.addEventListener(name, handler);
  element.append(...children.filter(child => child !== null && child !== undefined));
  return element;
}

/** Sets a text where it differs: the same text set again would be laid out again. */
export function say(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** A part of a drawing: its tag, attributes and parts; `redraw` makes elements of it. */
export const svg = (tag, attributes = {}, ...parts) => ({ tag, attributes, parts: parts.filter(Boolean) });

/** A whole drawing. */
export function drawing(attributes, ...parts) {
  const element = fresh("svg");
  change(element, svg("svg", attributes, ...parts));
  return element;
}

/** Draws parts, changing only what differs from what is drawn: at a frame of a drag that is little. */
export function redraw(element, parts) {
  parts.forEach((part, i) => {
    let child = element.children[i];
    if (child?.tagName !== part.tag || child.hold?.label !== part.hold?.label) {
      const other = fresh(part.tag);
      if (child) child.replaceWith(other);
      else element.append(other);
      child = other;
    }
    change(child, part);
  });
  while (element.children.length > parts.length) element.lastChild.remove();
}

const fresh = tag => document.createElementNS("http://www.w3.org/2000/svg", tag);

function change(element, { attributes, parts, hold }) {
  const before = element.drawn ?? {};
  for (const [name, value] of Object.entries(attributes)) {
    if (before[name] === value) continue;
    if (name === "text") element.textContent = value;
    else if (value === undefined || value === null) element.removeAttribute(name);
    else element.setAttribute(name, typeof value === "number" ? Math.round(value * 100) / 100 : value);
  }
  for (const name of Object.keys(before)) if (!(name in attributes)) element.removeAttribute(name);
  element.drawn = attributes;
  element.hold = hold;
  if (!("text" in attributes)) redraw(element, parts);
}

/** Tells whether an element is in view, as far as is known. */
export function watched(element) {
  let seen = true;
  new IntersectionObserver(entries => { seen = entries.at(-1).isIntersecting; }).observe(element);
  return () => seen;
}

/** Runs some times while there is nothing else to do. */
export function idly(run, times) {
  const soon = globalThis.requestIdleCallback ?? (next => setTimeout(next, 60));
  soon(() => {
    run();
    if (times > 1) idly(run, times - 1);
  });
}

/** Runs at most once a frame, with the latest call. */
export function eachFrame(run) {
  let waiting = false;
  return () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      run();
    });
  };
}

/** Runs when it has been quiet for a while. */
export function atRest(run, milliseconds) {
  let timer = 0;
  const call = (...args) => {
    clearTimeout(timer);
    timer = setTimeout(() => run(...args), milliseconds);
  };
  call.now = (...args) => {
    clearTimeout(timer);
    run(...args);
  };
  call.drop = () => clearTimeout(timer);
  return call;
}

/** Offers a text as a file to keep. */
export function save(name, text, type = "text/plain") {
  const link = make("a", { href: URL.createObjectURL(new Blob([text], { type })), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
