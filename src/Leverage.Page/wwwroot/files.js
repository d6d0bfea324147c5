// Reading files a person picks, whatever they hold.
import { make } from "./dom.js";

const most = 4e6;

/** A button to pick files; `take` gets their names and texts. */
export function filePicker(id, label, take, several = false) {
  const error = make("p", { className: "refusal", role: "alert", hidden: true });
  const input = make("input", { id, type: "file", accept: ".toml,.csv,.txt", multiple: several });
  input.addEventListener("change", async () => {
    const files = [...input.files];
    error.hidden = true;
    if (files.length === 0) return;
    try {
      if (files.reduce((sum, file) => sum + file.size, 0) > most) throw new Error("These files are larger than 4 MB. Are they the right ones?");
      take(await Promise.all(files.map(async file => ({ name: file.name, text: await text(file) }))));
    } catch (problem) {
      error.textContent = problem.message;
      error.hidden = false;
    }
    input.value = "";
  });
  return make("div", { className: "field" }, make("label", { for: id, text: label }), input, error);
}

/** Text of a file as UTF-8, UTF-16 with its mark, or else the code page spreadsheets write. */
async function text(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
