// An empty folder: a book is begun in it.
import { $, base, look, openFile } from "./bench.js";

document.addEventListener("looked", () => {
  const begins = Boolean(look.begins);
  const was = !document.querySelector("main > .begin").hidden;
  if (begins === was) return;
  document.querySelector("main > .begin").hidden = !begins;
  for (const other of document.querySelectorAll("main > .write, main > .see, .rooms, nav")) other.hidden = begins;
  if (begins) {
    $("title").textContent = "No book yet";
    for (const other of document.querySelectorAll("main > .play, main > .proofs")) other.hidden = true;
    $("begin-title").focus();
  }
});

$("begin").addEventListener("submit", async event => {
  event.preventDefault();
  const wish = { title: $("begin-title").value, maker: $("begin-maker").value, language: $("begin-language").value, sample: $("begin-sample").checked };
  try {
    const answer = await fetch(`${base}begin`, { method: "POST", body: JSON.stringify(wish) });
    $("begun").textContent = await answer.text();
    if (!answer.ok) return;
    document.addEventListener("looked", () => openFile("book.yaml").then(() => document.querySelector("#files button")?.focus()), { once: true });
  } catch {
    $("begun").textContent = "The workbench was closed. Start it again.";
  }
});
