// The workbench's page. Files, findings and pages come from the program; the text that is written here is its only state.
const $ = id => document.getElementById(id);
const base = location.pathname;
let look = { files: [], themes: [], languages: [], pages: [], found: { findings: [] } };

// ---- Writing

// The open file: its name, the digest of what it was made from, and the texts of yours that are on their way to the disk.
let open = null;
let saving = Promise.resolve();
let pause = 0;

async function read(name) {
  const answer = await fetch(`${base}text?name=${encodeURIComponent(name)}`);
  return answer.ok ? { name, digest: answer.headers.get("ETag"), text: await answer.text() } : null;
}

async function openFile(name, line) {
  await settled();
  if (!$("clash").hidden) return;
  const file = await read(name);
  if (!file) return say("This file can't be shown here: it isn't UTF-8, or it is gone.");
  open = { name, digest: file.digest, saved: file.text };
  $("text").value = file.text;
  $("text").disabled = false;
  $("text").scrollTop = 0;
  $("writing").textContent = name;
  say("");
  showFiles();
  showFindings();
  announce("opened");
  if (line) goTo(line);
  const page = look.pages.find(each => each.file === name);
  if (page) show(languageFolder() + page.page);
}

function goTo(line) {
  const text = $("text");
  let at = 0;
  for (let k = 1; k < line; k++) at = text.value.indexOf("\n", at) + 1;
  const end = text.value.indexOf("\n", at);
  text.focus();
  text.setSelectionRange(at, end < 0 ? text.value.length : end);
  const lineHeight = parseFloat(getComputedStyle(text).lineHeight);
  text.scrollTop = Math.max(0, (line - 4) * lineHeight);
}

$("text").addEventListener("input", () => {
  showMarks();
  say("Not saved yet.");
  clearTimeout(pause);
  pause = setTimeout(save, 40);
});
$("text").addEventListener("scroll", () => { $("marks").scrollTop = $("text").scrollTop; });

// One save after the other: each is held against what the one before it left on the disk.
function save() {
  clearTimeout(pause);
  saving = saving.then(async () => {
    const file = open;
    const text = $("text").value;
    if (!file || text === file.saved || !$("clash").hidden) return;
    try {
      const answer = await fetch(`${base}text?name=${encodeURIComponent(file.name)}`, { method: "PUT", headers: { "If-Match": file.digest }, body: text });
      if (answer.status === 204) {
        file.digest = answer.headers.get("ETag");
        file.saved = text;
        announce("written");
        say($("text").value === text ? "Saved." : "Not saved yet.");
      } else if (answer.status === 412) {
        clash(text, await answer.text(), answer.headers.get("ETag"));
      } else {
        say(await answer.text());
      }
    } catch {
      say("The workbench was closed. Your text is still on this page: copy it before you leave.");
    }
  });
  return saving;
}

const settled = () => open && $("text").value !== open.saved ? save() : saving;

function clash(mine, theirs, digest) {
  if (mine === theirs) {
    open.digest = digest;
    open.saved = mine;
    return say("Saved.");
  }
  // With what was written since it was sent.
  $("yours").textContent = $("text").value;
  $("theirs").textContent = theirs;
  $("clash").hidden = false;
  announce("clash");
  say("Not saved.");
  $("keep-yours").onclick = () => chosen(digest, theirs, $("text").value);
  $("keep-theirs").onclick = () => chosen(digest, theirs, theirs);
}

function chosen(digest, onDisk, text) {
  $("clash").hidden = true;
  open.digest = digest;
  open.saved = onDisk;
  $("text").value = text;
  showMarks();
  save();
  $("text").focus();
}

// What another program changed is taken in where nothing was written here meanwhile. One after the other: what was asked for earlier never takes the
// place of what is newer.
let taking = Promise.resolve();
const takeIn = () => taking = taking.then(take, take);

async function take() {
  await settled();
  if (!open || !$("clash").hidden) return;
  const { name, digest } = open;
  const file = await read(name);
  // Saved, or another file opened, while this was on its way: what came is older.
  if (open.name !== name || open.digest !== digest) return;
  if (!file || file.digest === digest || $("text").value !== open.saved) return;
  const { selectionStart, selectionEnd, scrollTop } = $("text");
  open.digest = file.digest;
  open.saved = file.text;
  $("text").value = file.text;
  $("text").setSelectionRange(selectionStart, selectionEnd);
  $("text").scrollTop = scrollTop;
  announce("taken");
  say("Changed by another program, and read again.");
}

addEventListener("beforeunload", event => { if (open && $("text").value !== open.saved) event.preventDefault(); });

function say(words) { $("saved").textContent = words; }

// ---- Findings

function findingsOf(name) { return look.found.findings.filter(finding => finding.file === name); }

function showFindings() {
  const here = open ? findingsOf(open.name) : [];
  $("here").replaceChildren(...here.map(entry));
  $("found-here").hidden = !here.length;
  const all = look.found.findings;
  const count = severity => all.filter(finding => finding.severity === severity).length;
  $("count").textContent = `Everything that was found: ${count("error")} errors, ${count("warning")} warnings, ${count("note")} notes`;
  $("found").replaceChildren(...all.map(entry));
  showMarks();
}

function entry(finding) {
  const item = document.createElement("li");
  const kind = Object.assign(document.createElement("strong"), { className: finding.severity, textContent: `${finding.severity} ` });
  const place = Object.assign(document.createElement("button"), { type: "button", textContent: `${finding.file}, line ${finding.line}` });
  place.onclick = () => open?.name === finding.file ? goTo(finding.line) : openFile(finding.file, finding.line);
  const message = Object.assign(document.createElement("p"), { textContent: finding.message });
  item.append(kind, place, message);
  if (finding.help) item.append(Object.assign(document.createElement("p"), { className: "count", textContent: finding.help }));
  return item;
}

// The text once more, unseen, with the places of findings underlined. While it differs from what was checked the places are old, and left out.
function showMarks() {
  const marks = $("marks");
  const text = $("text").value;
  marks.replaceChildren();
  if (!open || text !== open.saved) return void marks.append(text);
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  const offset = (line, column) => Math.min(text.length, (starts[line - 1] ?? text.length) + column - 1);
  let done = 0;
  const places = findingsOf(open.name).map(f => ({ from: offset(f.line, f.column), to: offset(f.endLine, f.endColumn), kind: f.severity })).sort((a, b) => a.from - b.from);
  for (const { from, to, kind } of places) {
    if (from < done || to <= from) continue;
    marks.append(text.slice(done, from), Object.assign(document.createElement("u"), { className: kind, textContent: text.slice(from, to) }));
    done = to;
  }
  marks.append(text.slice(done) + "\n");
  marks.scrollTop = $("text").scrollTop;
}

// A file's button stays for as long as its file: one that is replaced while it is pressed gets no click, and loses the focus.
function showFiles() {
  const there = [...$("files").children];
  const items = look.files.map(name => there.find(item => item.dataset.name === name) ?? itemOf(name));
  if (items.length !== there.length || items.some((item, index) => item !== there[index])) $("files").replaceChildren(...items);
  for (const item of items) {
    const { name } = item.dataset;
    const button = item.firstChild;
    if (open?.name === name) button.setAttribute("aria-current", "true"); else button.removeAttribute("aria-current");
    const found = findingsOf(name).filter(finding => finding.severity !== "note").length;
    const count = found ? [Object.assign(document.createElement("span"), { className: "count", textContent: String(found) })] : [];
    button.replaceChildren(name, ...count);
  }
}

function itemOf(name) {
  const item = document.createElement("li");
  item.dataset.name = name;
  item.append(button("", () => openFile(name)));
  return item;
}

// ---- Seeing

const views = [$("phone-view"), $("desk-view")];
const room = () => `${base}see/${$("theme").value}/${$("dark").checked ? "dark" : "light"}/`;
const languageFolder = () => $("language").selectedIndex > 0 ? `${$("language").value}/` : "";
let page = "index.html";

// The page that a view shows, without room and fragment; a reader may have followed a link.
function pageOf(view) {
  const path = view.contentWindow?.location.pathname ?? "";
  const at = path.startsWith(`${base}see/`) ? path.slice(base.length).split("/").slice(3).join("/") : "";
  return at || page;
}

function show(next) {
  page = next;
  for (const view of views) {
    view.toggleAttribute("hidden", view.id === "desk-view" && !$("desk").checked);
    if ($("still").checked) view.setAttribute("sandbox", "allow-same-origin"); else view.removeAttribute("sandbox");
    if (!view.hidden && $("theme").value) view.src = room() + page;
  }
}

// Shows a changed page in its place: scrolled as it was, with the folds open that were open.
async function refresh(view) {
  const now = view.contentDocument;
  if (!now?.body || view.hidden) return;
  const at = pageOf(view);
  const answer = await fetch(room() + at);
  if (!answer.ok) return;
  const text = await answer.text();
  if (view.dataset.text === text && view.dataset.at === at) return;
  const first = view.dataset.at !== at;
  view.dataset.text = text;
  view.dataset.at = at;
  if (first && now.readyState === "loading") return;
  const fresh = new DOMParser().parseFromString(text, "text/html");
  if (sameHead(now, fresh)) {
    renew(now.body, fresh.body);
    now.title = fresh.title;
    return;
  }
  const scrolled = now.scrollingElement.scrollTop;
  const folds = [...now.querySelectorAll("details")].map(fold => fold.open);
  view.addEventListener("load", () => {
    [...view.contentDocument.querySelectorAll("details")].forEach((fold, index) => { fold.open = folds[index] ?? fold.open; });
    view.contentDocument.scrollingElement.scrollTop = scrolled;
  }, { once: true });
  view.contentWindow.location.reload();
}

const sameHead = (one, other) => [...one.head.querySelectorAll("link[rel=stylesheet], script")].length > 0
  && one.body.className === other.body.className
  && one.documentElement.dataset.page === other.documentElement.dataset.page;

// Makes a part of a page like its new text and leaves alone what is like it. Folds stay as the reader left them.
function renew(old, fresh) {
  for (const { name, value } of fresh.attributes) if (name !== "open" && name !== "hidden" && old.getAttribute(name) !== value) old.setAttribute(name, value);
  const olds = [...old.childNodes];
  const news = [...fresh.childNodes];
  news.forEach((node, index) => {
    const was = olds[index];
    if (!was) old.append(node.cloneNode(true));
    else if (was.nodeName !== node.nodeName) was.replaceWith(node.cloneNode(true));
    else if (node.nodeType === Node.ELEMENT_NODE) renew(was, node);
    else if (was.data !== node.data) was.data = node.data;
  });
  olds.slice(news.length).forEach(node => node.remove());
}

function options(select, values) {
  if ([...select.options].map(each => each.value).join() === values.join()) return;
  const chosen = select.value;
  select.replaceChildren(...values.map(value => new Option(value, value)));
  if (values.includes(chosen)) select.value = chosen;
}

$("choices").addEventListener("change", event => {
  const current = pageOf(views[0]).split("/").pop();
  show(event.target.id === "language" ? languageFolder() + current : pageOf(views[0]));
});
$("front").onclick = () => show(languageFolder() + "index.html");
$("choices").addEventListener("submit", event => event.preventDefault());

// ---- Trying the box

// The steps so far; each request carries all of them, so that a changed book is played anew.
let steps = [];
// What was asked for last; a changed book is asked about the same, and an answer to what was asked before comes too late.
let wanted = steps;
let askings = 0;
let box = { possible: [], shortest: [], stuck: [] };

async function play(next) {
  const mine = ++askings;
  wanted = next;
  const answer = await fetch(`${base}play`, { method: "POST", body: JSON.stringify(next) });
  const played = answer.ok ? await answer.json() : null;
  if (mine !== askings) return;
  if (!played) return void (wanted = steps);
  box = played;
  steps = box.made.map(step => step.key);
  $("played").textContent = box.why ?? (box.solved ? "The box is open." : box.possible.length ? "" : "Nothing can be done now.");
  list("possible", box.possible, step => [button(step.says, () => play([...steps, step.key]))]);
  list("open", box.stages, stage => [button(stage.title, () => show(languageFolder() + stage.page)), stage.sign]);
  list("made", box.made, step => [step.says, step.changes && ` (${step.changes})`]);
  for (const part of ["hand", "known", "elsewhere"]) $(part).textContent = box[part].join("; ") || "Nothing.";
  $("stuck").hidden = !box.stuck.length;
}

// What says the same stays as it is: a button that is replaced while it is pressed gets no click.
const listed = new Map();

function list(id, items, parts) {
  const says = JSON.stringify(items);
  if (listed.get(id) === says) return;
  listed.set(id, says);
  $(id).replaceChildren(...items.map(item => {
    const entry = document.createElement("li");
    entry.append(...parts(item).filter(Boolean).flatMap(part => [part, " "]));
    return entry;
  }));
}

function button(words, press) {
  const made = Object.assign(document.createElement("button"), { type: "button", textContent: words });
  made.onclick = press;
  return made;
}

$("back").onclick = () => play(steps.slice(0, -1));
$("anew").onclick = () => play([]);
$("by-chance").onclick = () => box.possible.length && play([...steps, box.possible[Math.floor(Math.random() * box.possible.length)].key]);
$("stuck").onclick = () => play(box.stuck);
// Step by step along the shortest way from the beginning, from where the way so far leaves it.
$("shortest").onclick = () => {
  const same = steps.every((step, index) => box.shortest[index] === step);
  return play(same ? box.shortest.slice(0, steps.length + 1) : box.shortest.slice(0, 1));
};

$("keep").onsubmit = async event => {
  event.preventDefault();
  const answer = await fetch(`${base}rehearsal?title=${encodeURIComponent($("keep-as").value)}`, { method: "POST", body: JSON.stringify(steps) });
  $("kept").textContent = answer.ok ? "Kept." : await answer.text();
};

function showRehearsals() {
  const rehearsals = look.rehearsals.map(kept => ({ ...kept, broken: look.found.findings?.some(finding => finding.file === kept.file) }));
  list("rehearsals", rehearsals, kept => [
    button(kept.title, async () => play(await (await fetch(`${base}rehearsal?name=${encodeURIComponent(kept.file)}`)).json())),
    kept.broken && "can't be played to its end any more",
  ]);
}

const sides = { write: "to-write", play: "to-play", proofs: "to-proofs", make: "to-make", letter: "to-letter" };
for (const [side, id] of Object.entries(sides)) {
  $(id).onclick = async () => {
    for (const [other, press] of Object.entries(sides)) {
      document.querySelector(`main > .${other}`).hidden = other !== side;
      $(press).setAttribute("aria-pressed", String(other === side));
    }
    if (side === "play") await play(wanted);
    if (side === "proofs") showProofs();
    document.dispatchEvent(new CustomEvent("side", { detail: side }));
  };
}

function showProofs() {
  list("verdicts", look.verdicts, verdict => [
    Object.assign(document.createElement("strong"), { className: verdict.status === "refuted" ? "error" : verdict.status === "proved" ? "" : "warning", textContent: verdict.status }),
    verdict.says,
    verdict.why && `(${verdict.why})`,
  ]);
  $("map").src = `${base}map.svg?look=${look.number}`;
}

// ---- What is new

async function renewAll() {
  const answer = await fetch(`${base}look`);
  look = await answer.json();
  $("title").textContent = look.title ?? "This book can't be read yet";
  document.title = `${look.title ?? "Workbench"} · workbench`;
  $("stale").hidden = look.current || look.number === 0;
  options($("theme"), look.themes);
  options($("language"), look.languages);
  showFiles();
  showFindings();
  if (!views[0].src && look.themes.length) show(page);
  else await Promise.all(views.map(refresh));
  $("state").textContent = look.number ? "" : "Reading the book …";
  showRehearsals();
  if (!document.querySelector("main > .play").hidden) await play(wanted);
  if (!document.querySelector("main > .proofs").hidden) showProofs();
  document.documentElement.dataset.look = look.number;
  await takeIn();
  // Saved, or read again, only now: the places of what was found are those of this text.
  showMarks();
  announce("looked");
}

let renewing = Promise.resolve();
const looks = new EventSource(`${base}looks`);
looks.onmessage = () => { renewing = renewing.then(renewAll).catch(() => {}); };
looks.onerror = () => { $("state").textContent = "The workbench was closed. Start it again, and open its new address."; };

// ---- What the other scripts of the page need: they hear of what happens here by events of these names.

function announce(name) { document.dispatchEvent(new Event(name)); }

export {
  $, base, button, entry, findingsOf, goTo, languageFolder, list, look, open, openFile, pageOf, say, settled, show, showMarks, sides, takeIn, views,
};
