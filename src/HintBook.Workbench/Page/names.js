// Names of the book, completed in the text: while a name is typed in the keys, or by Ctrl+Space.
import { $, open, showMarks } from "./bench.js";
import { form } from "./forms.js";

const Most = 8;
let from = 0;
let chosen = -1;

const words = () => [...$("completions").children];
const hide = () => { $("completions").hidden = true; chosen = -1; $("text").removeAttribute("aria-activedescendant"); };

// Whether the caret stands among the keys: all of a YAML file, and what stands above the text of a stage.
function isInKeys(text, caret) {
  if (!open || open.name.endsWith(".yaml")) return Boolean(open);
  const fence = text.indexOf("\n---", 3);
  return text.startsWith("---") && caret > 3 && (fence < 0 || caret <= fence);
}

// What may stand at the caret: the positions of a part behind its colon, otherwise every name.
function candidates(line) {
  const part = /([\p{L}\p{N}_-]+):\s*\[?\s*[\p{L}\p{N}_-]*$/u.exec(line)?.[1];
  if (part && form.positions[part]) return form.positions[part];
  if (/^\s*(-\s*\{?\s*)?kind:/.test(line) || /^cautions:/.test(line)) return form.lists.cautions ?? [];
  return [...new Set([...form.lists.all ?? [], ...form.lists.stages ?? []])];
}

function offer(wanted) {
  const text = $("text").value;
  const caret = $("text").selectionStart;
  const line = text.slice(text.lastIndexOf("\n", caret - 1) + 1, caret);
  const word = /[\p{L}\p{N}_-]*$/u.exec(line)[0];
  // A text or a remark isn't completed unasked.
  if (!isInKeys(text, caret) || $("text").selectionEnd !== caret || !wanted && (word.length < 2 || !/[[{:,]\s*[\p{L}\p{N}_-]*$/u.test(line) || /^\s*(title|sign|name|note|says|#)/.test(line))) return hide();
  const found = candidates(line).filter(name => name.startsWith(word) && name !== word).slice(0, Most);
  if (!found.length) return hide();
  from = caret - word.length;
  $("completions").replaceChildren(...found.map((name, index) => {
    const item = Object.assign(document.createElement("li"), { id: `completion-${index}`, textContent: name });
    item.setAttribute("role", "option");
    item.onmousedown = event => { event.preventDefault(); take(index); };
    return item;
  }));
  $("completions").hidden = false;
  place(from);
  choose(wanted ? 0 : -1);
}

function choose(index) {
  chosen = index;
  words().forEach((item, at) => item.setAttribute("aria-selected", String(at === index)));
  if (index >= 0) $("text").setAttribute("aria-activedescendant", words()[index].id); else $("text").removeAttribute("aria-activedescendant");
}

function take(index) {
  const name = words()[index].textContent;
  const text = $("text");
  text.setRangeText(name, from, text.selectionStart, "end");
  hide();
  text.dispatchEvent(new Event("input"));
  hide();
}

// Below the word, whose place is known from the layer behind the text.
function place(offset) {
  showMarks();
  const walk = document.createTreeWalker($("marks"), NodeFilter.SHOW_TEXT);
  let left = offset;
  for (let node = walk.nextNode(); node; left -= node.length, node = walk.nextNode()) {
    if (left > node.length) continue;
    const range = document.createRange();
    range.setStart(node, left);
    range.collapse(true);
    const where = () => range.getClientRects()[0] ?? range.getBoundingClientRect();
    const box = $("text").getBoundingClientRect();
    if (where().top < box.top || where().bottom > box.bottom) {
      $("text").scrollTop += where().top - box.top - box.height / 2;
      $("marks").scrollTop = $("text").scrollTop;
    }
    const at = where();
    const list = $("completions");
    list.style.insetInlineStart = `${Math.min(at.left, innerWidth - list.offsetWidth - 8) + scrollX}px`;
    list.style.insetBlockStart = `${at.bottom + scrollY + 2}px`;
    return;
  }
}

$("text").addEventListener("input", event => { if (event.isTrusted) offer(false); });
$("text").addEventListener("blur", hide);
$("text").addEventListener("wheel", hide);
$("text").addEventListener("keydown", event => {
  if (event.key === " " && event.ctrlKey) {
    event.preventDefault();
    return offer(true);
  }
  if ($("completions").hidden) return;
  const count = words().length;
  if (event.key === "ArrowDown") choose((chosen + 1) % count);
  else if (event.key === "ArrowUp") choose((chosen + count - (chosen < 0 ? 0 : 1)) % count);
  else if (event.key === "Enter" && chosen >= 0) take(chosen);
  else {
    if (event.key === "Escape" || event.key.startsWith("Arrow") || event.key === "Home" || event.key === "End" || event.key === "Enter") hide();
    if (event.key !== "Escape") return;
  }
  event.preventDefault();
});
