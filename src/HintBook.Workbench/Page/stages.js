// New steps, other names, another order: what it means is told before it is done, and it can be taken back.
import { $, base, look, open, openFile, settled, button } from "./bench.js";
import { form, renew } from "./forms.js";

const kinds = {
  new: { title: "New step", asks: "Title of the new step" },
  rename: { title: "Rename this step", asks: "New name (letters, digits, hyphens)" },
  earlier: { title: "Move this step one place earlier" },
  later: { title: "Move this step one place later" },
  split: { title: "Split this step in two", asks: "Title of the second step" },
  delete: { title: "Take this step out" },
};
const done = [];
let kind = "new";
let asked = 0;

document.addEventListener("formed", () => {
  $("steps").hidden = !form.stage;
  $("steps").querySelector("[data-do=split]").disabled = form.splits.length < 2;
});

for (const press of $("steps").querySelectorAll("button")) press.onclick = () => begin(press.dataset.do);
$("new-step").onclick = () => begin("new");

const stageFiles = () => look.files.filter(name => /^stages\/[0-9]{1,6}-[^/]*\.(md|yaml)$/.test(name));

function wish() {
  const stage = kind === "new" ? form.stage ?? "" : form.stage;
  const place = stageFiles().indexOf(open?.name) + 1;
  const last = look.pages.length ? look.pages.at(-1).file : stageFiles().at(-1);
  return {
    do: kind === "earlier" || kind === "later" ? "move" : kind,
    // A new step comes after the open one, or last of all.
    stage: kind === "new" && !stage ? /^stages\/[0-9]+-(.*)\.(md|yaml)$/.exec(stageFiles().includes(last) ? last : "")?.[1] ?? "" : stage,
    to: $("wish-text").value,
    title: $("wish-text").value,
    place: kind === "earlier" ? Math.max(1, place - 1) : place + 1,
    goes: [...$("wish-goes").querySelectorAll("input:checked")].map(box => box.value),
  };
}

function begin(next) {
  kind = next;
  const { title, asks } = kinds[kind];
  $("wish-title").textContent = title;
  $("wish-name").hidden = !asks;
  $("wish-label").textContent = asks ?? "";
  $("wish-text").value = kind === "rename" ? form.stage : "";
  $("wish-goes").hidden = kind !== "split";
  $("wish-goes").replaceChildren($("wish-goes").firstElementChild, ...(kind === "split" ? form.splits : []).map(({ key, says }) => {
    const label = document.createElement("label");
    label.append(Object.assign(document.createElement("input"), { type: "checkbox", value: key }), ` ${says}`);
    return label;
  }));
  $("wish-says").replaceChildren();
  $("wish-do").disabled = true;
  $("wish").showModal();
  if (asks) $("wish-text").focus(); else ask();
}

let pause = 0;
$("wish").addEventListener("input", () => {
  clearTimeout(pause);
  $("wish-do").disabled = true;
  pause = setTimeout(ask, 150);
});
$("wish-leave").onclick = () => $("wish").close();
$("wish").querySelector("form").addEventListener("submit", event => {
  event.preventDefault();
  if (!$("wish-do").disabled) act();
});

const post = (path, body) => fetch(`${base}${path}`, { method: "POST", body: JSON.stringify(body) });

async function ask() {
  if (await told($("wish"), "stages/ask", wish) && !kinds[kind].asks) $("wish-do").focus();
}

const act = () => carryOut($("wish"), "stages/do", wish);
const submit = dialog => dialog.querySelector("[type=submit]");

// Says in a dialog what it would mean. Nothing is done yet. True where it can be done.
async function told(dialog, path, wanted) {
  const mine = ++asked;
  await settled();
  try {
    const answer = await post(path, wanted());
    const words = answer.ok ? await answer.json() : await answer.text();
    if (mine !== asked) return false;
    submit(dialog).disabled = !answer.ok;
    tell(dialog, answer.ok ? words.says : [words], answer.ok ? words.files : []);
    return answer.ok;
  } catch {
    tell(dialog, ["The workbench was closed."]);
    return false;
  }
}

function tell(dialog, says, files = []) {
  const list = document.createElement("ul");
  list.append(...files.map(file => Object.assign(document.createElement("li"), { textContent: file })));
  dialog.querySelector("[role=status]").replaceChildren(...says.map(words => Object.assign(document.createElement("p"), { textContent: words })), list);
}

async function carryOut(dialog, path, wanted) {
  submit(dialog).disabled = true;
  try {
    const answer = await post(path, wanted());
    if (!answer.ok) return tell(dialog, [await answer.text()]);
    const { what, opens } = await answer.json();
    dialog.close();
    done.push(what);
    await moved(opens ?? "book.yaml", `Done: ${what}.`);
  } catch {
    tell(dialog, ["The workbench was closed. Look into the folder whether it was done."]);
  }
}

$("take-back").onclick = async () => {
  await settled();
  const answer = await post("stages/back", {});
  const words = await answer.text();
  if (answer.ok) done.pop();
  await moved(null, words);
};

async function moved(opens, words) {
  const label = done.at(-1);
  $("take-back").hidden = !label;
  $("take-back").textContent = label ? `Take back: ${label}` : "";
  $("stepped").textContent = words;
  if (opens) await openFile(opens);
  else if (open && !(await fetch(`${base}text?name=${encodeURIComponent(open.name)}`)).ok) await openFile("book.yaml");
  await renew();
}

export { carryOut, tell, told };
