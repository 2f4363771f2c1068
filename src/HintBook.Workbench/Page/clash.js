// Two texts of one file: where they differ, line by line.
import { $, base } from "./bench.js";

const Around = 2;

const Pause = 300;
let pause = 0;

document.addEventListener("clash", compare);
// Who goes on writing sees what would be saved.
$("text").addEventListener("input", () => {
  if ($("clash").hidden) return;
  clearTimeout(pause);
  pause = setTimeout(() => {
    $("yours").textContent = $("text").value;
    compare();
  }, Pause);
});

let newest = 0;
async function compare() {
  const mine = ++newest;
  const body = JSON.stringify({ mine: $("yours").textContent, theirs: $("theirs").textContent });
  const answer = await fetch(`${base}compare`, { method: "POST", body });
  if (!answer.ok) return;
  const { lines } = await answer.json();
  if (mine !== newest) return;
  const near = lines.map((_, index) => lines.slice(Math.max(0, index - Around), index + Around + 1).some(line => line.kind !== "same"));
  $("differences").replaceChildren(...lines.flatMap((line, index) => {
    if (!near[index]) return index && near[index - 1] ? [item("same", "…", "")] : [];
    return [item(line.kind, line.text, { mine: "yours", theirs: "on the disk", same: "" }[line.kind])];
  }));
}

function item(kind, text, whose) {
  const made = Object.assign(document.createElement("li"), { className: kind });
  made.append(Object.assign(document.createElement("strong"), { textContent: whose ? `${whose}: ` : "" }), text || " ");
  return made;
}
