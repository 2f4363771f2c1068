// The map's findings as a list, what readers know on each page, and “where am I?” walked with its taps.
import { $, base, button, findingsOf, languageFolder, list, look, open, openFile, show, sides, views } from "./bench.js";

const isHere = () => !document.querySelector("main > .proofs").hidden;

async function renew() {
  if (!isHere()) return;
  const found = look.pages.map(page => ({ ...page, count: findingsOf(page.file).filter(each => each.severity !== "note").length })).filter(page => page.count);
  list("map-found", found, page => [button(page.title, () => {
    $(sides.write).click();
    openFile(page.file);
  }), `${page.count} found`]);
  const chosen = $("known-step").value || open?.name;
  $("known-step").replaceChildren(...look.pages.map(page => new Option(page.title, page.file)));
  if (look.pages.some(page => page.file === chosen)) $("known-step").value = chosen;
  await Promise.all([showKnown(), showWhere()]);
}

async function showKnown() {
  const name = $("known-step").value;
  const answer = name ? await fetch(`${base}known?name=${encodeURIComponent(name)}`) : null;
  if (!answer?.ok || $("known-step").value !== name) return;
  const known = await answer.json();
  $("known-said").textContent = known.reached ? "" : "No way leads to this step, so nobody reads its page.";
  $("known-names").textContent = known.known.join("; ") || "Nothing.";
  const parts = spoiler => [Object.assign(document.createElement("strong"), { textContent: spoiler.name }), `(${spoiler.from}):`, spoiler.why];
  list("spoilers", known.spoilers.filter(spoiler => !spoiler.title), parts);
  list("titles", known.spoilers.filter(spoiler => spoiler.title), parts);
  $("spoiler-titles").hidden = !known.spoilers.some(spoiler => spoiler.title);
}

$("known-step").onchange = () => {
  showKnown();
  const page = look.pages.find(each => each.file === $("known-step").value);
  if (page) show(languageFolder() + page.page);
};

// ---- “Where am I?”

let where = null;
let walk = null;

async function showWhere() {
  const answer = await fetch(`${base}where`);
  if (!answer.ok) return;
  where = await answer.json();
  list("where-says", where.says, line => [line]);
}

$("where-walk").onclick = () => {
  if (!where) return;
  walk = [];
  list("where-way", [], line => [line]);
  $("where-taps").textContent = "Answer on the phone beside as somebody with the box in front of them.";
  show(languageFolder() + where.page);
};

// Each page that the phone comes to on the walk is one tap more, up to the first that is a step's own, or the front page.
views[0].addEventListener("load", () => {
  if (!walk) return;
  const at = views[0].contentWindow.location.pathname;
  // A page that was still on its way when the walk began is none of it.
  if (!walk.length && !at.endsWith(`/${where.page}`)) return;
  const page = look.pages.find(each => at.endsWith(`/${each.page}`));
  walk.push(page ? page.title : at.endsWith("/index.html") ? "the front page" : views[0].contentDocument.querySelector("h1")?.textContent.trim() ?? "a question");
  const taps = walk.length - 1;
  list("where-way", walk, line => [line]);
  const counted = taps === 1 ? "1 tap" : `${taps} taps`;
  $("where-taps").textContent = page || at.endsWith("/index.html") ? `Found “${walk.at(-1)}” in ${counted}.` : taps ? `${counted} so far.` : $("where-taps").textContent;
  if (page || at.endsWith("/index.html")) walk = null;
});

document.addEventListener("looked", renew);
document.addEventListener("side", renew);
