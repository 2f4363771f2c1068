// Keeps the site on this device: pages, style and script first, then pictures at a phone's width; other sizes once they are asked for.
// Each file that has come is used at once, also when the network stops before the rest. Pages come from the network, and the kept one
// stands in where there is none or it is slow, so that a corrected page shows at the next view. What the reader ticked and opened is kept
// elsewhere and stays.
const ours = "hintbook:" + site + ":";
const cacheName = ours + version;
const home = new URL("./", self.location).href;

// In milliseconds: how long a page waits for the network before the kept one is shown.
const patience = 2000;

let filling = null;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", event => event.waitUntil(self.clients.claim()));

// A page asks for itself to be kept first, and is told what has come of it all.
self.addEventListener("message", event => {
  filling = filling || fill(event.data).finally(() => { filling = null; });
  event.waitUntil(filling.then(all => event.source && event.source.postMessage(all ? "kept" : "incomplete")));
});

self.addEventListener("fetch", event => {
  const file = fileAt(event.request.url);
  if (event.request.method !== "GET" || !file.startsWith(home) || file.startsWith(home + "films/")) return;
  event.respondWith(hasDigest(file) ? fromDevice(file) : fromNetwork(file, event));
});

function fileAt(address) {
  const bare = address.split(/[?#]/)[0];
  return bare.endsWith("/") ? bare + "index.html" : bare;
}

// What is in such a file never changes: another content has another name.
function hasDigest(file) {
  return /\/(assets|pictures)\/[^/]+$/.test(file);
}

// The page that is open with its style and script, then the rest, a few at a time: a phone's radio and a small host both like it better.
async function fill(page) {
  const first = files.map(file => home + file);
  const groups = [first.filter(file => file === fileAt(page) || hasDigest(file))];
  for (const rest of [first, pictures.map(file => home + file)]) {
    for (let at = 0; at < rest.length; at += 6) groups.push(rest.slice(at, at + 6));
  }

  let all = true;
  for (const group of groups) {
    const came = await Promise.allSettled(group.map(keep));
    if (came.some(each => each.status === "rejected")) return false;
    all = all && came.every(each => each.value);
  }

  if (all) await Promise.all((await olderCaches()).map(name => caches.delete(name)));
  return all;
}

// Whether the file is kept now. Fails where there is no network.
async function keep(file) {
  const cache = await caches.open(cacheName);
  if (await cache.match(file)) return true;
  const answer = hasDigest(file) && await kept(file) || await ask(file);
  if (answer.ok) await cache.put(file, answer);
  return answer.ok;
}

async function ask(file) {
  const answer = await fetch(file, { cache: hasDigest(file) ? "default" : "no-cache" });
  // A browser takes no redirected answer for a page that it is on the way to.
  return answer.redirected ? new Response(answer.body, { status: answer.status, headers: answer.headers }) : answer;
}

async function olderCaches() {
  return (await caches.keys()).filter(name => name.startsWith(ours) && name !== cacheName);
}

// Of the newest site that has it.
async function kept(file) {
  for (const name of [cacheName, ...(await olderCaches()).reverse()]) {
    const found = await caches.match(file, { cacheName: name });
    if (found) return found;
  }

  return undefined;
}

async function fromDevice(file) {
  const found = await kept(file);
  if (found) return found;
  try {
    const answer = await ask(file);
    if (answer.ok) await (await caches.open(cacheName)).put(file, answer.clone());
    return answer;
  } catch (noNetwork) {
    // The same picture in the size that is kept.
    const other = pictures.find(each => pictureIn(home + each) === pictureIn(file));
    return other && await kept(home + other) || Response.error();
  }
}

// "…/pictures/3f9a-800w.jpg" is a size of "…/pictures/3f9a".
function pictureIn(file) {
  return file.slice(0, file.lastIndexOf("-"));
}

async function fromNetwork(file, event) {
  const coming = ask(file).then(async answer => {
    if (answer.ok) await (await caches.open(cacheName)).put(file, answer.clone());
    return answer;
  });
  event.waitUntil(coming.catch(() => { /* the kept page is shown */ }));
  const waited = new Promise(done => setTimeout(done, patience));
  const answer = await Promise.race([coming, waited]).catch(() => undefined);
  return answer && answer.ok ? answer : await kept(file) || answer || coming;
}
