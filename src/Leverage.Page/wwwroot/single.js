// The whole page in one file: its parts stand in it as compressed text and are handed out as blobs; nothing is fetched.
(async () => {
  const texts = new Map([...document.querySelectorAll("script[data-part]")].map(part => [part.dataset.part, part]));
  const types = { js: "text/javascript", wasm: "application/wasm", json: "application/json" };
  const bytes = new Map();
  const urls = new Map();
  const type = name => types[name.split(".").pop()];
  if (typeof DecompressionStream === "undefined") {
    document.getElementById("starting").textContent = "This browser is too old for the single file. Use the page from a server, or a newer browser.";
    return;
  }
  await Promise.all([...texts].map(async ([name, part]) => {
    const packed = Uint8Array.from(atob(part.textContent), letter => letter.charCodeAt(0));
    part.remove();
    bytes.set(name, await new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer());
  }));
  const url = name => {
    if (!urls.has(name)) {
      let script = new TextDecoder().decode(bytes.get(name));
      script = name.startsWith("_framework/")
        ? script.replaceAll("import.meta.url", "\"https://leverage.invalid/_framework/\"")
        : script.replace(/(from|import)\s+"\.\/([\w.-]+\.js)"/g, (_, word, part) => `${word} "${url(part)}"`);
      urls.set(name, URL.createObjectURL(new Blob([script], { type: "text/javascript" })));
    }
    return urls.get(name);
  };
  globalThis.leverageParts = { url, response: async name => new Response(bytes.get(name), { headers: { "Content-Type": type(name) } }) };
  await import(url("main.js"));
})();
