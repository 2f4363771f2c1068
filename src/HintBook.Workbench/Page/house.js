// The workbench itself: whether it may write, whether another one is open, and where a telephone finds the pages.
import { $, base, list } from "./bench.js";

async function renew() {
  const answer = await fetch(`${base}house`);
  if (!answer.ok) return;
  const house = await answer.json();
  const says = [];
  if (house.readOnly) says.push("This book can only be read: its folder doesn't let you write. You can look at everything; nothing is saved.");
  if (house.another) says.push("Another workbench has this book open on this computer. Both may write: a text that was changed by both is shown with both versions.");
  const words = says.join(" ");
  if ($("house").textContent !== words) $("house").textContent = words;
  document.documentElement.toggleAttribute("data-read-only", house.readOnly);
  $("text").readOnly = house.readOnly;
  writers().forEach(part => { part.inert = house.readOnly; });
  if (house.readOnly) bar(); else unbar();
  $("phone-on").hidden = !house.phone;
  $("phone-off").hidden = house.phone;
  $("phone-sealed").hidden = !house.sealed;
  if (!house.phone) return;
  list("phone-addresses", house.addresses.length ? house.addresses : ["This computer is in no network now, so no telephone finds it."], line => [line]);
  $("phone-code").hidden = !house.addresses.length;
  if (house.addresses.length && !$("phone-code").getAttribute("src")) $("phone-code").src = "phone.svg";
}

const fields = () => document.querySelectorAll("#pictures :is(input, select, button):not(#photos button)");
// Drawn anew as the book changes, so that not each field by itself is shut.
const writers = () => document.querySelectorAll("#form-fold, .tools, .steps, #begin");
const barred = new Set();

function bar() {
  for (const field of fields()) {
    if (field.disabled) continue;
    field.disabled = true;
    barred.add(field);
  }
}

function unbar() {
  barred.forEach(field => { field.disabled = false; });
  barred.clear();
}

// Whether it may write is tried on the disk, so it isn't asked with each look.
document.addEventListener("looked", renew, { once: true });
addEventListener("focus", renew);
document.addEventListener("shown", () => { if (document.documentElement.hasAttribute("data-read-only")) bar(); });
