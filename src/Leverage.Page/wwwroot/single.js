// The whole page in one file: its parts stand in it as compressed letters and are handed out as blobs; nothing is fetched.
(async () => {
  const types = { js: "text/javascript", wasm: "application/wasm", json: "application/json" };
  const bytes = new Map();
  const urls = new Map();
  const type = name => types[name.split(".").pop()];
  if (typeof DecompressionStream === "undefined") {
    document.getElementById("starting").textContent = "This browser is too old for the single file. Use the page from a server, or a newer browser.";
    return;
  }
  const part = document.getElementById("parts");
  const text = part.textContent;
  part.remove();
  const packed = new Uint8Array(Math.floor(text.length * 7 / 8));
  for (let i = 0, at = 0, held = 0, bits = 0; at < packed.length; i++) {
    held = (held << 7 | text.charCodeAt(i) & 127) & 0x7fff;
    bits += 7;
    if (bits >= 8) packed[at++] = held >> (bits -= 8);
  }
  const all = await new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
  let from = 0;
  for (const [name, size] of part.dataset.sizes.split(" ").map(each => each.split(":"))) bytes.set(name, all.slice(from, from += Number(size)));
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
