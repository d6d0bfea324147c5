// The core, compiled for the browser: every figure and every sentence of the page comes from here.

const parts = globalThis.leverageParts;
let door;

/** Core and questions are under way at once, while the rest of the page is still being read. */
export const started = start();
export const questions = (parts ? parts.response("fields.json") : fetch("fields.json")).then(response => response.json());
for (const each of [started, questions]) each.catch(() => {});

/** Starts the core; the single file hands its parts out itself. */
async function start() {
  const { dotnet } = await import(parts ? parts.url("_framework/dotnet.js") : "./_framework/dotnet.js");
  let host = dotnet.withDiagnosticTracing(false);
  if (parts) host = host.withResourceLoader((type, name) => type === "dotnetjs" ? parts.url(`_framework/${name}`) : parts.response(`_framework/${name}`));
  const { getAssemblyExports, getConfig } = await host.create();
  door = (await getAssemblyExports(getConfig().mainAssemblyName)).Leverage.Page.Door;
}

/** Asks the core; what it refuses comes back as { refusal: { field, text } }. */
export function ask(question, ...args) {
  try {
    return JSON.parse(door[question](...args));
  } catch (problem) {
    return { refusal: { field: null, text: "The program stopped. Load the page again; what you typed stays in the address.", failed: true, problem: String(problem) } };
  }
}
