// The part of a film that the open step shows: played here, and marked where it starts and ends.
import { $, settled } from "./bench.js";
import { ask, media } from "./photos.js";

let shown = null;
let saving = Promise.resolve();
let stopAt = null;
const video = $("film-video");
const say = words => { $("film-said").textContent = words; };

document.addEventListener("shown", event => {
  const other = shown?.name !== event.detail?.name;
  shown = event.detail;
  if (!shown) return;
  $("film").hidden = !shown.readable;
  const films = [...new Set([...shown.films, shown.clip?.file].filter(Boolean))];
  const choices = ["", ...films];
  const select = $("film-file");
  if ([...select.options].map(each => each.value).join("\n") !== choices.join("\n")) {
    select.replaceChildren(...choices.map(name => new Option(name || "none in the folder “clips”", name)));
    other || load();
  }
  if (other || !$("film").contains(document.activeElement)) fill();
  if (other) {
    $("film").open = !!shown.clip;
    say(films.length ? "" : "Put a film into the folder “clips” of the book, and it can be chosen here.");
  }
});

function fill() {
  const { clip, films } = shown;
  $("film-file").value = clip ? clip.file ?? "" : films.length === 1 ? films[0] : $("film-file").value;
  $("film-from").value = clip?.from ?? "";
  $("film-to").value = clip?.to ?? "";
  load();
}

function load() {
  const name = $("film-file").value;
  video.hidden = !name;
  const source = name ? media(`clips/${name}`) : "";
  if (video.dataset.source === source) return;
  video.dataset.source = source;
  if (source) video.src = source; else video.removeAttribute("src");
  say("");
}

video.onerror = () => {
  if (!video.dataset.source) return;
  video.hidden = true;
  say("This browser can't play the film. Readers may be unable to as well: an MP4 with H.264 and AAC plays everywhere. You can still type the times, such as 2:16 or 2:16.5.");
};
video.onloadedmetadata = () => {
  if (seconds($("film-from").value) !== null) video.currentTime = seconds($("film-from").value);
};
video.ontimeupdate = () => {
  if (stopAt === null || video.currentTime < stopAt) return;
  stopAt = null;
  video.pause();
};

// Minutes and seconds, with tenths where there are any; hours before them in a long film.
function written(time) {
  const tenths = Math.round(time * 10);
  const [hours, minutes, rest] = [Math.floor(tenths / 36000), Math.floor(tenths / 600) % 60, tenths % 600 / 10];
  const end = String(rest).padStart(rest % 1 ? 4 : 2, "0");
  return hours ? `${hours}:${String(minutes).padStart(2, "0")}:${end}` : `${minutes}:${end}`;
}

function seconds(text) {
  return /^(\d+:){0,2}\d+(\.\d+)?$/.test(text.trim()) ? text.trim().split(":").reduce((sum, part) => sum * 60 + Number(part), 0) : null;
}

function save() {
  saving = saving.then(async () => {
    const from = $("film-from").value.trim();
    const to = $("film-to").value.trim() || null;
    if (!shown?.readable) return;
    if (!from) return say("Say where the part starts.");
    if (seconds(from) === null || to && seconds(to) === null) return say("Write times as minutes and seconds, such as 2:16 or 2:16.5.");
    if (to && seconds(to) <= seconds(from)) return say("The part ends before it starts.");
    await put({ file: $("film-file").value || null, from, to });
  });
  return saving;
}

async function put(next) {
  const [name, was] = [shown.name, shown.clip];
  if (JSON.stringify(was) === JSON.stringify(next)) return;
  await settled();
  const why = await ask("PUT", "clip", JSON.stringify({ name, was, now: next }));
  if (!why && shown.name === name) shown = { ...shown, clip: next };
  say(why || (next ? "Saved." : "This step shows no film."));
}

$("film-file").onchange = () => {
  load();
  if ($("film-from").value) save();
};
$("film-from").onchange = save;
$("film-to").onchange = save;
$("film-from-here").onclick = () => {
  $("film-from").value = written(video.currentTime);
  save();
};
$("film-to-here").onclick = () => {
  $("film-to").value = written(video.currentTime);
  save();
};
$("film-play").onclick = () => {
  video.currentTime = seconds($("film-from").value) ?? 0;
  stopAt = seconds($("film-to").value);
  video.play().catch(() => {});
};
$("film-none").onclick = () => {
  saving = saving.then(async () => {
    if (shown?.clip) await put(null);
    $("film-from").value = $("film-to").value = "";
  });
};
