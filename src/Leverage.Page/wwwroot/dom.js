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

/** An SVG element with attributes and children. */
export function svg(tag, attributes = {}, ...children) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name === "text") element.textContent = value;
    else if (value !== undefined && value !== null) element.setAttribute(name, typeof value === "number" ? Math.round(value * 100) / 100 : value);
  }
  element.append(...children.filter(Boolean));
  return element;
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
