// Publishing and printing: begun here, done by the program, told as it goes on.
import { $, base, entry, list, settled, sides } from "./bench.js";

let choices = null;
let making = null;

async function begin() {
  if (choices) return;
  const answer = await fetch(`${base}make`);
  choices = await answer.json();
  $("make-output").value = choices.output;
  $("make-sheets").replaceChildren(...choices.sheets.map(name => new Option(name, name)));
  $("make-papers").replaceChildren(...choices.papers.map(name => {
    const label = document.createElement("label");
    label.append(Object.assign(document.createElement("input"), { type: "checkbox", value: name, checked: true }), ` ${name}`);
    return label;
  }));
  making = new EventSource(`${base}making`);
  making.onmessage = event => tell(JSON.parse(event.data));
}

function tell(state) {
  for (const id of ["make-all", "make-print"]) $(id).disabled = state.running;
  $("make-stop").hidden = !state.running;
  $("make-bar").hidden = !state.running;
  const parts = / (\d+) of (\d+)$/.exec(state.says);
  if (parts) [$("make-bar").value, $("make-bar").max] = [Number(parts[1]), Number(parts[2])];
  else $("make-bar").removeAttribute("value");
  $("make-said").textContent = state.running ? state.says : state.done === true ? "It is done." : state.done === false ? "It wasn't done." : "";
  $("make-lines").classList.toggle("refused", state.done === false);
  list("make-lines", state.lines, line => [line]);
  $("make-found").replaceChildren(...(state.found.findings ?? []).map(entry));
}

async function make(papers) {
  await settled();
  const asked = { output: $("make-output").value, sheets: $("make-sheets").value, papers };
  const answer = await fetch(`${base}make`, { method: "POST", body: JSON.stringify(asked) }).catch(() => null);
  if (!answer) $("make-said").textContent = "The workbench was closed. Start it again, and open its new address.";
  else if (!answer.ok) $("make-said").textContent = await answer.text();
}

$("make-all").onclick = () => make(null);
$("make-print").onclick = () => make([...$("make-papers").querySelectorAll("input:checked")].map(each => each.value));
$("make-stop").onclick = () => fetch(`${base}make`, { method: "DELETE" });
$("make-found").onclick = event => { if (event.target.closest("button")) $(sides.write).click(); };
$("make-form").onsubmit = event => event.preventDefault();
document.addEventListener("side", event => { if (event.detail === "make") begin(); });
