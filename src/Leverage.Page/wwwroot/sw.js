// Keeps the page for when there is no network. A version is known by the content of its files: a new one is fetched whole,
// then takes the place of the old at the next start.
const version = "VERSION";
const files = ["FILES"];
const mine = name => new URL(name, self.registration.scope).href;

self.addEventListener("install", event => event.waitUntil((async () => {
  const cache = await caches.open(version);
  await cache.addAll(files.map(name => new Request(mine(name), { cache: "no-cache" })));
  await self.skipWaiting();
})()));

self.addEventListener("activate", event => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name !== version) await caches.delete(name);
  await self.clients.claim();
})()));

self.addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) return;
  const wanted = url.pathname.endsWith("/") ? mine("index.html") : url.origin + url.pathname;
  event.respondWith((async () => (await (await caches.open(version)).match(wanted)) ?? fetch(event.request))());
});
