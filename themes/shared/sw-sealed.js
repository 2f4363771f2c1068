// Of a sealed book: keeps those tables of slots and sealed pictures that were used here, and no others, so that what is kept says nothing of the rest.
// Tables come from the network, and the kept one stands in where there is none; a new version of the site fetches anew what was used.
const sealedCaches = "hintbook-sealed:" + site + ":";
const sealedCache = sealedCaches + version;

let renewing = null;

// A page names the files that it was opened with: the first one is opened before there is a worker.
self.addEventListener("message", event => {
  const used = event.data.used;
  if (used) event.stopImmediatePropagation();
  renewing = renewing || renew().finally(() => { renewing = null; });
  event.waitUntil(renewing.then(() => Promise.allSettled((used || []).map(name => keepSealed(home + name)))));
});

self.addEventListener("fetch", event => {
  const file = fileAt(event.request.url);
  if (event.request.method !== "GET" || !isSealed(file)) return;
  event.stopImmediatePropagation();
  event.respondWith(answer(file, event.request.url !== file));
});

function isSealed(file) {
  return file.startsWith(home + "k/") || file.startsWith(home + "p/");
}

// The name of a picture follows from its content, so the kept one is as good as any, unless the page asks once more past every cache.
async function answer(file, isAskedOnceMore) {
  if (file.startsWith(home + "p/") && !isAskedOnceMore) {
    const found = await keptSealed(file);
    if (found) return found;
  }

  const coming = fetchSealed(file, isAskedOnceMore ? "reload" : "no-cache");
  const waited = new Promise(done => setTimeout(done, isAskedOnceMore ? 10 * patience : patience));
  const came = await Promise.race([coming, waited]).catch(() => undefined);
  return came && came.ok ? came : await keptSealed(file) || came || coming.catch(() => Response.error());
}

async function fetchSealed(file, cache) {
  const came = await fetch(file, { cache });
  if (came.ok) await (await caches.open(sealedCache)).put(file, came.clone());
  return came;
}

async function keepSealed(file) {
  if (isSealed(file) && !await keptSealed(file)) await fetchSealed(file, "default");
}

async function keptSealed(file) {
  for (const name of [sealedCache, ...(await olderSealed())]) {
    const found = await caches.match(file, { cacheName: name });
    if (found) return found;
  }

  return undefined;
}

async function olderSealed() {
  return (await caches.keys()).filter(name => name.startsWith(sealedCaches) && name !== sealedCache).reverse();
}

// What was used of an older version, as the new one has it. The older files stay for the next time unless each was answered: the host has another one,
// or has none any more. Where there is no network, or the host is busy, that isn't known.
async function renew() {
  for (const name of await olderSealed()) {
    const files = await (await caches.open(name)).keys();
    const came = await Promise.allSettled(files.map(file => fetchSealed(file.url, "no-cache")));
    if (came.every(({ value }) => value && (value.ok || value.status === 404 || value.status === 410))) await caches.delete(name);
  }
}
