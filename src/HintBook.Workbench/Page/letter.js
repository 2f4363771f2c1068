// Letters of owners who are stuck: pasted here, answered by the program with one step of help.
import { $, base } from "./bench.js";

let page = null;

const closed = "The workbench was closed. Start it again, and open its new address.";
const ask = (path, asked) => fetch(`${base}${path}`, { method: "POST", body: JSON.stringify(asked) }).catch(() => null);

$("letter-form").onsubmit = async event => {
  event.preventDefault();
  const asked = { text: $("letter-text").value };
  for (const name of ["page", "copy", "step", "language"]) asked[name] = $(`letter-${name}`).value;
  const answer = await ask("letter", asked);
  $("letter-reply").hidden = !answer?.ok;
  if (!answer?.ok) {
    $("letter-said").textContent = answer ? await answer.text() : closed;
    return;
  }
  const letter = await answer.json();
  page = letter.page;
  $("letter-subject").value = letter.subject;
  $("letter-answer").value = letter.text;
  $("letter-answer").lang = letter.language;
  $("letter-note").disabled = !page;
  const copy = letter.copy ? `For copy ${letter.copy}.` : "For no copy in particular.";
  $("letter-said").textContent = [copy, ...letter.remarks].join(" ");
};

$("letter-take").onclick = async () => {
  $("letter-answer").select();
  const taken = await navigator.clipboard.writeText($("letter-answer").value).then(() => true, () => false);
  $("letter-said").textContent = taken ? "Copied." : "It is marked: copy it with Ctrl+C.";
};

$("letter-note").onclick = async () => {
  const answer = await ask("letter/note", { page, date: $("letter-date").value });
  $("letter-said").textContent = answer?.ok ? "Noted." : answer ? await answer.text() : closed;
};
