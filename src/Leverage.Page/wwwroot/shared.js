// What page and lesson share: asking this machine, and putting what it says into the page as text and drawings only.

export const $ = id => document.getElementById(id);

/** An element with text and children; nothing is ever read as markup. */
export function make(tag, { text, className, ...rest } = {}, ...children) {
  const element = document.createElement(tag);
  if (text !== undefined) element.textContent = text;
  if (className) element.className = className;
  for (const [name, value] of Object.entries(rest)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/** Puts a whole SVG document into a figure. */
export function draw(figure, svg) {
  if (!svg) {
    figure.replaceChildren();
    return;
  }
  const parsed = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  parsed.removeAttribute("width");
  parsed.removeAttribute("height");
  figure.replaceChildren(document.importNode(parsed, true));
}

/** Asks this machine; a refusal comes back as { refusal: { error, field } }. */
export async function ask(path, options) {
  let response;
  try {
    response = await fetch(path, options);
  } catch (problem) {
    if (problem.name === "AbortError") throw problem;
    return { refusal: { error: "The page's program does not answer. Is it still running?", field: null } };
  }
  const body = await response.json();
  return response.ok ? body : { refusal: body };
}

/** Runs the latest call only: one on its way, one waiting, the ones between are dropped. */
export function latest(run) {
  let busy = false;
  let again = false;
  return async function call() {
    if (busy) {
      again = true;
      return;
    }
    busy = true;
    try {
      do {
        again = false;
        await run();
      } while (again);
    } finally {
      busy = false;
    }
  };
}

/** Whether the screen is a phone's. */
export const isTall = () => window.matchMedia("(max-width: 40rem)").matches;
