// Keeps the whole site on this device at the first visit. A newer site is fetched as a whole beside the old one and takes its
// place at the next page; what the reader ticked and opened is kept elsewhere and stays.
const cacheName = "hintbook:" + site + ":" + version;

self.addEventListener("install", event => {
  event.waitUntil(caches.open(cacheName).then(async cache => {
    // A few at a time: a phone's radio and a small host both like it better.
    for (let at = 0; at < files.length; at += 20) await cache.addAll(files.slice(at, at + 20).map(file => new Request(file, { cache: "no-cache" })));
    await self.skipWaiting();
  }));
});

self.addEventListener("activate", event => {
  event.waitUntil(caches.keys().then(names => Promise.all(names
    .filter(name => name.startsWith("hintbook:" + site + ":") && name !== cacheName)
    .map(name => caches.delete(name)))).then(() => self.clients.claim()));
});

self.addEventListener("fetch", event => {
  if (event.request.method !== "GET" || new URL(event.request.url).origin !== self.location.origin) return;
  event.respondWith(caches.open(cacheName).then(async cache => {
    const here = event.request.url.split(/[?#]/)[0];
    const kept = await cache.match(here) || (here.endsWith("/") && await cache.match(here + "index.html"));
    return kept || fetch(event.request);
  }));
});
