// Undo beyond the browser's: each file's own history, across saves, forms and what other programs wrote, as long as the page is open.
import { $, open } from "./bench.js";

const Most = 500;
// Keys that follow each other faster than this are undone together.
const Together = 800;
const histories = new Map();
let stepping = false;

function history() {
  if (!histories.has(open.name)) histories.set(open.name, { past: [], now: $("text").value, future: [], typed: 0 });
  return histories.get(open.name);
}

function note(typed) {
  if (!open || stepping) return;
  const all = history();
  const text = $("text").value;
  if (text === all.now) return show();
  const time = performance.now();
  if (!(typed && time - all.typed < Together)) all.past.push(all.now);
  all.typed = typed ? time : 0;
  all.now = text;
  all.future = [];
  if (all.past.length > Most) all.past.shift();
  show();
}

function step(from, to) {
  if (!open || $("text").disabled) return;
  note(false);
  const all = history();
  if (!all[from].length) return;
  all[to].push(all.now);
  const before = all.now;
  all.now = all[from].pop();
  all.typed = 0;
  stepping = true;
  $("text").value = all.now;
  $("text").dispatchEvent(new Event("input"));
  stepping = false;
  const [start, end] = difference(before, all.now);
  $("text").setSelectionRange(start, end);
  show();
}

// Where a text differs from the one before it.
function difference(before, now) {
  let start = 0;
  while (start < now.length && start < before.length && now[start] === before[start]) start++;
  let same = 0;
  while (same < now.length - start && same < before.length - start && now[now.length - 1 - same] === before[before.length - 1 - same]) same++;
  return [start, now.length - same];
}

function show() {
  $("undo").disabled = !open || !history().past.length;
  $("redo").disabled = !open || !history().future.length;
}

$("undo").onclick = () => step("past", "future");
$("redo").onclick = () => step("future", "past");
$("text").addEventListener("input", () => note(true));
$("text").addEventListener("keydown", event => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  if (key !== "z" && key !== "y") return;
  event.preventDefault();
  if (key === "y" || event.shiftKey) step("future", "past"); else step("past", "future");
});
for (const name of ["opened", "taken", "written"]) document.addEventListener(name, () => note(name === "written"));
