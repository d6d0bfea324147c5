// The address holds everything: #view/part?fields. A rest makes a history entry, so Back is undo and Forward is redo.

let last = 0;

/** What the address says. */
export function read() {
  const [path, query = ""] = location.hash.replace(/^#/, "").split(/\?(.*)/s);
  const [view = "", part = ""] = path.split("/");
  return { view: view || "loosen", part: decodePart(part), fields: pairs(query) };
}

/** Pairs of a query; a name said twice keeps the first, and what cannot be read is left as it is. */
export function pairs(query) {
  const fields = {};
  for (const pair of query.replace(/^\?/, "").split("&").filter(Boolean)) {
    const [name, text = ""] = pair.split(/=(.*)/s);
    const key = decodePart(name);
    if (!Object.hasOwn(fields, key)) fields[key] = decodePart(text.replace(/\+/g, " "));
  }
  return fields;
}

/** A query of fields, the empty ones left out. */
export function query(fields) {
  return Object.entries(fields).filter(([, text]) => String(text).trim() !== "")
    .map(([name, text]) => `${encodeURIComponent(name)}=${encodeURIComponent(text).replace(/%2C/g, ",").replace(/%2F/g, "/").replace(/%3A/g, ":").replace(/%20/g, "+")}`).join("&");
}

/** The hash of a place. */
export function hash({ view, part = "", fields }) {
  const text = query(fields);
  return `#${view}${part ? `/${encodeURIComponent(part)}` : ""}${text ? `?${text}` : ""}`;
}

/** Puts a place into the address, as a new entry of the history or in place of the present one. */
export function write(place, fresh) {
  const target = hash(place);
  if (target === location.hash || (target === "#loosen" && location.hash === "")) return;
  if (fresh) history.pushState({ at: ++last }, "", target);
  else history.replaceState({ at: history.state?.at ?? 0 }, "", target);
}

/** Whether there is anything to undo on this page. */
export const canUndo = () => (history.state?.at ?? 0) > 0;

/** Whether something undone can come back. */
export const canRedo = () => (history.state?.at ?? 0) < last;

function decodePart(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
