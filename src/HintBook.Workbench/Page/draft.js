// Steps to start from, out of what is said in a film: what they would be is told before they are written, and they can be taken back.
import { $, base } from "./bench.js";
import { carryOut, tell, told } from "./stages.js";

const largest = 3_000_000;
let captions = null;
let pause = 0;

const wish = () => ({ ...captions, chapters: $("draft-chapters").value, film: $("draft-film").value });

async function begin() {
  const shown = $("film-file").value;
  const answer = await fetch(`${base}draft/films`).catch(() => null);
  const films = answer?.ok ? (await answer.json()).films : [];
  $("draft-film").replaceChildren(...["", ...films].map(name => new Option(name || "not in the folder “clips”", name)));
  $("draft-film").value = films.includes(shown) ? shown : films.length === 1 ? films[0] : "";
  $("draft-captions").value = $("draft-chapters").value = "";
  captions = null;
  tell($("draft"), []);
  $("draft-do").disabled = true;
  $("draft").showModal();
}

// As the bytes that they are: which letters they mean is found out where they are read.
function read(file) {
  return new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onload = () => done({ name: file.name, captions: reader.result.split(",")[1] ?? "" });
    reader.onerror = fail;
    reader.readAsDataURL(file);
  });
}

async function choose() {
  const file = $("draft-captions").files[0];
  captions = null;
  $("draft-do").disabled = true;
  if (!file) return tell($("draft"), []);
  if (file.size > largest) return tell($("draft"), [`“${file.name}” is too large for captions: 3 MB at most.`]);
  try {
    captions = await read(file);
    await ask();
  } catch {
    tell($("draft"), [`“${file.name}” can't be read.`]);
  }
}

const ask = () => captions && told($("draft"), "draft/ask", wish);

for (const press of document.querySelectorAll("[data-draft]")) press.onclick = begin;
$("draft-captions").onchange = choose;
$("draft-film").onchange = ask;
$("draft-chapters").oninput = () => {
  clearTimeout(pause);
  $("draft-do").disabled = true;
  pause = setTimeout(ask, 150);
};
$("draft-leave").onclick = () => $("draft").close();
$("draft").querySelector("form").addEventListener("submit", event => {
  event.preventDefault();
  if (!$("draft-do").disabled) carryOut($("draft"), "draft/do", wish);
});
