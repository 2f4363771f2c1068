// Photos of the open step: dropped or chosen, with words and marks. What is written here goes into the step's own file.
import { $, base, button, open, settled } from "./bench.js";

// What the file says: its photos and its clip; null where the open file is no step.
let shown = null;
// The photo that is looked at: as the file has it, and as it is here, until that is saved.
let was = null;
let now = null;
let pause = 0;
let saving = Promise.resolve();

const say = words => { $("pictures-said").textContent = words; };
const media = name => `${base}media?name=${encodeURIComponent(name)}`;
const same = (one, other) => one && other && one.place === other.place && one.index === other.index && one.file === other.file;
const copy = photo => ({ ...photo, marks: photo.marks.map(mark => ({ ...mark })) });
const whole = photo => ({ ...photo, alt: photo.alt?.trim() || null, marks: photo.marks.filter(mark => mark.says.trim()).map(mark => ({ ...mark, says: mark.says.trim() })) });
const isDirty = () => was && JSON.stringify(whole(now)) !== JSON.stringify(was);
// A mark that waits for its words isn't in the file yet.
const isBegun = () => now.marks.some(mark => !mark.says.trim());

let asked = 0;

async function renew() {
  const name = open?.name;
  const before = asked;
  const answer = name?.startsWith("stages/") ? await fetch(`${base}show?name=${encodeURIComponent(name)}`) : null;
  const next = answer?.ok ? await answer.json() : null;
  if (open?.name !== name) return;
  // Something was saved from here while this was on its way: what came may be older.
  if (asked !== before) return renew();
  if (shown?.name !== name) choose(null);
  shown = next && { ...next, name };
  $("pictures").hidden = !shown;
  if (!shown) return tellOthers();
  if (!shown.readable) say("The keys of this step can't be read. Mend its text first.");
  for (const id of ["photo-place", "photo-file"]) $(id).disabled = !shown.readable;
  if (!$("photo-place").options.length) {
    $("photo-place").replaceChildren(...shown.places.map(place => new Option(place, place)));
    $("photo-place").value = "clue";
  }
  tellOthers();
  showPhotos();
  const again = shown.photos.find(photo => same(photo, was));
  if (!again) choose(null);
  else if (!isDirty() && !isBegun()) choose(again);
}

const tellOthers = () => document.dispatchEvent(new CustomEvent("shown", { detail: shown }));

function showPhotos() {
  const focused = document.activeElement?.closest("#photos li");
  const index = [...$("photos").children].indexOf(focused);
  $("photos").replaceChildren(...shown.photos.map(photo => {
    const item = document.createElement("li");
    const pick = button("", () => choose(photo));
    const image = Object.assign(document.createElement("img"), { src: media(`photos/${photo.file}`), alt: "" });
    pick.append(image, `${photo.place}: ${photo.file}`);
    pick.setAttribute("aria-pressed", String(same(photo, was)));
    item.append(pick);
    return item;
  }));
  $("photos").children[index]?.firstChild.focus();
}

function choose(photo) {
  const fresh = !same(photo, was);
  was = photo && copy(photo);
  now = photo && copy(photo);
  $("photo").hidden = !photo;
  if (!photo) return;
  if (fresh) $("photo-img").src = media(`photos/${photo.file}`);
  if (document.activeElement !== $("photo-alt")) $("photo-alt").value = now.alt ?? "";
  showMarks();
  [...$("photos").querySelectorAll("button")].forEach((pick, index) => pick.setAttribute("aria-pressed", String(same(shown.photos[index], was))));
}

// ---- Marks

const dots = () => [...$("picture").querySelectorAll(".mark")];

function showMarks() {
  if (dots().length !== now.marks.length) {
    dots().forEach(dot => dot.remove());
    $("picture").append(...now.marks.map((_, index) => dotOf(index)));
    $("photo-marks").replaceChildren(...now.marks.map((_, index) => lineOf(index)));
  }
  dots().forEach((dot, index) => place(dot, now.marks[index], index));
  [...$("photo-marks").querySelectorAll("input")].forEach((words, index) => {
    if (document.activeElement !== words) words.value = now.marks[index].says;
  });
}

function place(dot, mark, index) {
  dot.style.left = `${mark.x}%`;
  dot.style.top = `${mark.y}%`;
  dot.classList.toggle("silent", !mark.says.trim());
  dot.setAttribute("aria-label", `Mark ${index + 1}: ${mark.says.trim() || "no words yet"}, ${mark.x} per cent from the left, ${mark.y} from the top`);
}

function dotOf(index) {
  const dot = Object.assign(document.createElement("button"), { type: "button", className: "mark", textContent: String(index + 1) });
  const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  dot.onkeydown = event => {
    if (event.key === "Delete" || event.key === "Backspace") {
      event.preventDefault();
      remove(index);
    } else if (steps[event.key]) {
      event.preventDefault();
      const far = event.shiftKey ? 5 : 0.5;
      move(index, now.marks[index].x + far * steps[event.key][0], now.marks[index].y + far * steps[event.key][1]);
    }
  };
  dot.onpointerdown = event => dot.setPointerCapture(event.pointerId);
  dot.onpointermove = event => {
    if (!dot.hasPointerCapture(event.pointerId)) return;
    const [x, y] = onPicture(event);
    move(index, x, y);
  };
  return dot;
}

function lineOf(index) {
  const item = document.createElement("li");
  const words = Object.assign(document.createElement("input"), { autocomplete: "off" });
  words.setAttribute("aria-label", `What mark ${index + 1} shows`);
  words.oninput = () => {
    now.marks[index].says = words.value;
    changed();
  };
  const away = button("Take away", () => remove(index));
  away.setAttribute("aria-label", `Take away mark ${index + 1}`);
  item.append(`${index + 1}`, words, away);
  return item;
}

const within = number => Math.round(Math.min(100, Math.max(0, number)) * 10) / 10;

function onPicture(event) {
  const box = $("photo-img").getBoundingClientRect();
  return [(event.clientX - box.left) / box.width * 100, (event.clientY - box.top) / box.height * 100];
}

function move(index, x, y) {
  Object.assign(now.marks[index], { x: within(x), y: within(y) });
  changed();
}

function remove(index) {
  now.marks.splice(index, 1);
  changed();
  (dots()[Math.min(index, now.marks.length - 1)] ?? $("add-mark")).focus();
}

function add(x, y) {
  now.marks.push({ x: within(x), y: within(y), says: "" });
  changed();
  say("Write what the mark shows; a mark without words isn't kept.");
  $("photo-marks").lastElementChild.querySelector("input").focus();
}

$("photo-img").onclick = event => add(...onPicture(event));
$("add-mark").onclick = () => add(50, 50);
$("photo-alt").oninput = () => {
  now.alt = $("photo-alt").value;
  changed();
};

function changed() {
  showMarks();
  clearTimeout(pause);
  pause = setTimeout(save, 250);
}

// One change after the other; each says what it was made from, so that nothing that was written elsewhere is lost.
function save() {
  clearTimeout(pause);
  saving = saving.then(async () => {
    if (!isDirty()) return;
    const name = shown.name;
    const next = whole(now);
    await settled();
    const why = await ask("PUT", "photo", JSON.stringify({ name, was, now: next }));
    if (why === "" && same(was, next)) was = next;
    else if (why) await renewAnyway(why);
  });
  return saving;
}

async function renewAnyway(why) {
  was = null;
  await renew();
  say(why);
}

// Null where it is done, else why it isn't.
async function ask(method, path, body) {
  try {
    const answer = await fetch(base + path, { method, body });
    asked++;
    if (answer.ok) {
      say("Saved.");
      return "";
    }
    const why = await answer.text() || "This wasn't taken.";
    say(why);
    return why;
  } catch {
    const why = "The workbench was closed, so this isn't saved.";
    say(why);
    return why;
  }
}

// ---- New photos

async function take(files) {
  if (!shown?.readable) return;
  for (const file of files) {
    if (file.size > shown.limit) {
      say(`“${file.name}” is too large: a photo may have ${shown.limit / 1048576} MB at most. Save it as a JPEG.`);
      continue;
    }
    await save();
    await settled();
    say(`“${file.name}” is being taken in …`);
    const place = $("photo-place").value;
    const name = shown.name;
    const why = await ask("POST", `photo?name=${encodeURIComponent(name)}&place=${place}&as=${encodeURIComponent(file.name)}`, file);
    if (why || open?.name !== name) continue;
    await renew();
    const fresh = shown.photos.filter(photo => photo.place === place).at(-1);
    if (fresh) {
      choose(fresh);
      say(`Saved as photos/${fresh.file}, turned upright and without what the camera wrote into it. Say in one sentence what it shows.`);
      $("photo-alt").focus();
    }
  }
  $("photo-file").value = "";
}

$("new-photo").onsubmit = event => event.preventDefault();
$("photo-file").onchange = () => take([...$("photo-file").files]);

// A file that is dropped beside its place would be opened in the page's stead.
const isFile = event => [...event.dataTransfer?.types ?? []].includes("Files");
addEventListener("dragover", event => {
  if (!isFile(event)) return;
  event.preventDefault();
  const here = !!event.target.closest?.(".write") && shown?.readable;
  event.dataTransfer.dropEffect = here ? "copy" : "none";
  document.body.classList.toggle("dropping", !!here);
});
addEventListener("dragleave", () => document.body.classList.remove("dropping"));
addEventListener("drop", event => {
  if (!isFile(event)) return;
  event.preventDefault();
  document.body.classList.remove("dropping");
  if (event.target.closest?.(".write")) take([...event.dataTransfer.files]);
});
addEventListener("beforeunload", event => { if (isDirty()) event.preventDefault(); });

document.addEventListener("opened", renew);
document.addEventListener("looked", renew);

export { ask, media };
