// Looks for words in the handbook. Everything that can be found stands in the page itself, so that it works from a folder on the disk.
"use strict";

const places = JSON.parse(document.getElementById("places").textContent)
  .map(([title, address, text]) => ({ title, address, inTitle: title.toLowerCase(), inText: text.toLowerCase(), text }));
const field = document.getElementById("words");
const count = document.getElementById("count");
const found = document.getElementById("found");
const most = 30;
const around = 60;

// A word in the title weighs more than one in the text. All words must be there.
function weigh(place, words) {
  let sum = 0;
  for (const word of words) {
    const weight = (place.inTitle.includes(word) ? 10 : 0) + (place.inText.includes(word) ? 1 : 0);
    if (weight === 0) return 0;
    sum += weight;
  }
  return sum;
}

function excerpt(place, words) {
  const at = Math.max(0, place.inText.indexOf(words.find(word => place.inText.includes(word)) ?? words[0]));
  const start = Math.max(0, at - around);
  return (start > 0 ? "… " : "") + place.text.slice(start, at + 2 * around).trim() + (at + 2 * around < place.text.length ? " …" : "");
}

function line(place, words) {
  const item = document.createElement("li");
  const link = document.createElement("a");
  const text = document.createElement("p");
  link.href = place.address;
  link.textContent = place.title;
  text.textContent = excerpt(place, words);
  item.append(link, text);
  return item;
}

function look() {
  const words = field.value.toLowerCase().split(/\s+/).filter(word => word.length > 0);
  const hits = words.length === 0 ? [] : places
    .map((place, order) => ({ place, order, weight: weigh(place, words) }))
    .filter(hit => hit.weight > 0)
    .sort((one, other) => other.weight - one.weight || one.order - other.order);
  found.replaceChildren(...hits.slice(0, most).map(hit => line(hit.place, words)));
  count.textContent = words.length === 0 ? "" : hits.length === 1 ? "1 place found." : `${hits.length} places found.`;
}

document.getElementById("ask").hidden = false;
field.addEventListener("input", look);
look();
