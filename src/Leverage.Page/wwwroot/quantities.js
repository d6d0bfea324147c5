// Quantities as they are typed and as they are read: 460Nm, 460 N·m.

/** Units as they are read, where they are typed otherwise. */
export const spoken = { "ft-lb": "lbf·ft", Nm: "N·m", "kgf-m": "kgf·m", deg: "°" };

/** A quantity as it is read, not typed. */
export function read(text, units) {
  const parts = split(text, units);
  return parts?.unit ? `${parts.number}${/deg|%/.test(parts.unit) ? "" : " "}${spoken[parts.unit] ?? parts.unit}` : text;
}

/** Number and unit of a text, the unit one of those offered; null where the text is something else. */
export function split(value, units) {
  const match = /^\s*([-+]?[\d.,/ ]*\d)\s*(\D*)$/.exec(value);
  if (!match) return null;
  const unit = match[2].trim();
  if (unit === "") return { number: match[1].trim(), unit: null };
  const known = units.find(each => each.toLowerCase() === unit.toLowerCase());
  return known ? { number: match[1].trim(), unit: known } : null;
}
