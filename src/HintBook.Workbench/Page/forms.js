// The form beside the text: the usual entries of the open file. Each change is one entry of the file; the program replaces that stretch and nothing else.
import { $, base, open, settled, takeIn, say, findingsOf, goTo, button } from "./bench.js";

// What the program says of the open file: its groups of fields, and the book's names.
export let form = { groups: [], lists: {}, positions: {}, splits: [], declares: [], stage: null };
let shown = "";
let waiting = false;
let pressed = false;
let sending = Promise.resolve();

document.addEventListener("opened", () => renew());
document.addEventListener("looked", () => renew());
document.addEventListener("written", () => renew());

let newest = 0;
export async function renew() {
  if (!open) return;
  const mine = ++newest;
  const name = open.name;
  // Until its form is there, they would be about the step before.
  if ($("form").dataset.of !== name) $("steps").hidden = true;
  const answer = await fetch(`${base}form?name=${encodeURIComponent(name)}`);
  const text = answer.ok ? await answer.text() : null;
  // A newer question has a newer answer.
  if (mine !== newest || name !== open.name) return;
  form = text ? JSON.parse(text) : { groups: [], lists: {}, positions: {}, splits: [], declares: [], stage: null };
  document.dispatchEvent(new Event("formed"));
  $("form-fold").hidden = !form.groups.length;
  // What is being typed or pressed here isn't taken away: the form is made anew when it is done.
  if (isTouched() || pressed) return void (waiting = true);
  waiting = false;
  const what = JSON.stringify([name, form.groups.map(group => group.fields.map(({ from, to, ...field }) => field)), form.lists, form.declares]);
  if (what !== shown) make();
  shown = what;
  $("form").dataset.of = name;
  showFound();
}

// Something is entered that isn't in the file yet.
const isTouched = () => $("form").contains(document.activeElement) && document.activeElement.closest("li[data-fresh]")
  || [...$("form").querySelectorAll("input:not([type=checkbox]), textarea")].some(input => input.value !== input.defaultValue);

function make() {
  const at = document.activeElement;
  const focus = $("form").contains(at) ? at.id : null;
  $("form").replaceChildren(...lists(), ...form.groups.map(group), ...(form.declares.length ? [declare()] : []));
  if (focus) document.getElementById(focus)?.focus();
}

function lists() {
  const all = { ...form.lists };
  for (const [part, positions] of Object.entries(form.positions)) all[`of-${part}`] = positions;
  return Object.entries(all).map(([name, words]) => {
    const list = element("datalist", { id: `list-${name}` });
    list.append(...words.map(word => new Option(word, word)));
    return list;
  });
}

const element = (tag, properties = {}) => Object.assign(document.createElement(tag), properties);

function group({ title, fields }) {
  const set = element("fieldset");
  set.append(element("legend", { textContent: title }), ...fields.map(field));
  return set;
}

const idOf = field => `field-${field.path.join("-")}`;

function field(entry) {
  const box = element("div", { className: "field" });
  const id = idOf(entry);
  const help = element("p", { id: `${id}-help`, className: "count", textContent: entry.help });
  const found = element("ul", { id: `${id}-found`, className: "found" });
  if (!entry.shown) {
    box.append(element("span", { className: "label", textContent: entry.label }),
      element("p", { className: "count", textContent: "This is written in a way that the form doesn't show." }), button(`Change “${entry.label}” in the text`, () => goTo(entry.from)), found);
    return box;
  }
  const kinds = { lines: one, text: one, number: one, flag, names: rows, conditions: rows, changes: rows, cautions: rows };
  box.append(...kinds[entry.kind](entry, id), help, found);
  return box;
}

// One value. It is sent when the field is left, or by Enter.
function one(entry, id) {
  const input = element(entry.kind === "number" ? "input" : "textarea", { id, autocomplete: "off" });
  const text = (entry.value ?? "").replace(/\n$/, "");
  input.defaultValue = text;
  input.value = text;
  if (entry.kind === "number") Object.assign(input, { type: "number", min: 1, max: 10000, step: 1 });
  else input.rows = entry.kind === "lines" ? Math.min(10, Math.max(2, text.split("\n").length + 1)) : 1;
  // A long line is shown whole; it stays one line.
  if (entry.kind === "text") input.dataset.line = "";
  input.setAttribute("aria-describedby", `${id}-help ${id}-found`);
  input.addEventListener("change", () => {
    const value = input.value.trim();
    if (entry.kind === "number") return send(entry, value === "" ? null : Number.isFinite(+value) ? +value : value, input);
    if (entry.kind === "text") return send(entry, value.replace(/\s*\n\s*/g, " ") || null, input);
    const whole = entry.kind === "lines" && value.includes("\n") ? `${value}\n` : value;
    send(entry, value === "" ? null : whole, input);
  });
  input.addEventListener("blur", resume);
  return [element("label", { htmlFor: id, textContent: entry.label }), input];
}

function flag(entry, id) {
  const input = element("input", { id, type: "checkbox", checked: entry.value === "true" });
  input.setAttribute("aria-describedby", `${id}-help ${id}-found`);
  input.addEventListener("change", () => send(entry, input.checked ? true : null, input));
  const label = element("label");
  label.append(input, ` ${entry.label}`);
  return [label];
}

// Values of which there are several: a row for each, and one more on demand.
function rows(entry, id) {
  const set = element("fieldset", { className: "rows" });
  const list = element("ul", { id: `${id}-rows` });
  const { read, write, blank } = shapes[entry.kind];
  read(entry.value).forEach((value, index) => list.append(row(entry, id, index, value)));
  const add = button("Add", () => {
    const fresh = row(entry, id, list.children.length, blank);
    fresh.dataset.fresh = "";
    list.append(fresh);
    fresh.querySelector("input").focus();
  });
  add.id = `${id}-add`;
  add.setAttribute("aria-label", `Add to “${entry.label}”`);
  set.append(element("legend", { textContent: entry.label }), list, add);
  set.setAttribute("aria-describedby", `${id}-help ${id}-found`);
  set.sendAll = from => {
    for (const item of list.children) delete item.dataset.fresh;
    send(entry, write([...list.children].map(each => each.says())), from);
  };
  return [set];
}

function row(entry, id, index, value) {
  const item = element("li");
  const number = index + 1;
  const inputs = shapes[entry.kind].inputs(value, entry).map(({ says, hint, text, list, fixed }, place) => {
    const input = element("input", { id: `${id}-${index}-${place}`, autocomplete: "off", readOnly: Boolean(fixed), placeholder: hint ?? (place ? says : "") });
    input.defaultValue = text;
    input.value = text;
    input.setAttribute("aria-label", `${entry.label} ${number}: ${says}`);
    if (list) input.setAttribute("list", `list-${list}`);
    input.addEventListener("blur", resume);
    // A half-filled row waits for its other half.
    input.addEventListener("change", () => item.isWhole() && item.closest(".rows").sendAll(input));
    item.append(input);
    return input;
  });
  // The positions are those of the part that is named.
  if (entry.kind === "conditions" || entry.kind === "changes")
    inputs[0].addEventListener("input", () => inputs[1]?.setAttribute("list", `list-of-${inputs[0].value}`));
  item.isWhole = () => entry.kind !== "changes" || !inputs[0].value === !inputs[1].value;
  item.says = () => inputs[0].readOnly ? value : shapes[entry.kind].value(inputs.map(input => input.value.trim()), value);
  const away = button("Take out", () => {
    const set = item.closest(".rows");
    item.remove();
    set.sendAll(null);
    $(`${id}-add`).focus();
  });
  away.setAttribute("aria-label", `Take out ${inputs[0].value || "this row"} of “${entry.label}”`);
  item.append(away);
  return item;
}

const isWord = value => typeof value === "string";
const keyed = value => Object.entries(value ?? {});
const splitUp = text => text.split(",").map(word => word.trim()).filter(Boolean);
const orNothing = items => items.length ? items : null;

// How each kind of list is shown as rows, and what rows say.
const shapes = {
  names: {
    blank: "",
    read: value => value ?? [],
    inputs: (value, entry) => [{ says: "name", text: value, list: entry.names }],
    value: ([name]) => name,
    write: values => orNothing(values.filter(Boolean)),
  },
  conditions: {
    blank: "",
    read: value => value ?? [],
    inputs: (value, entry) => {
      if (isWord(value)) return [{ says: "what", text: value, list: entry.names }, { says: "position", hint: "in hand, or known", text: "", list: `of-${value}` }];
      const [[name, position], ...more] = keyed(value);
      const words = isWord(position) ? [position] : position;
      return more.length || name === "any" || !words.every(isWord)
        ? [{ says: "written in the text", text: JSON.stringify(value).replaceAll("\"", ""), fixed: true }]
        : [{ says: "what", text: name, list: entry.names }, { says: "position", text: words.join(", "), list: `of-${name}` }];
    },
    value: ([name, position]) => {
      const words = splitUp(position);
      return !name ? null : words.length ? { [name]: words.length > 1 ? words : words[0] } : name;
    },
    write: values => orNothing(values.filter(Boolean)),
  },
  changes: {
    blank: ["", ""],
    read: keyed,
    inputs: ([part, position], entry) => [{ says: "part", text: part, list: entry.names }, { says: "position", text: position, list: `of-${part}` }],
    value: ([part, position]) => [part, position],
    write: values => values.some(([part]) => part) ? Object.fromEntries(values.filter(([part, position]) => part && position)) : null,
  },
  cautions: {
    blank: "",
    read: value => value ?? [],
    inputs: value => [
      { says: "danger", text: isWord(value) ? value : value.kind ?? "", list: "cautions" },
      { says: "note, in your own words", text: isWord(value) ? "" : value.note ?? "" },
    ],
    value: ([kind, note], before) => {
      if (!kind) return null;
      const { kind: _, note: __, ...rest } = isWord(before) ? {} : before;
      return note || Object.keys(rest).length || !isWord(before) && before.kind ? { kind, ...(note && { note }), ...rest } : kind;
    },
    write: values => orNothing(values.filter(Boolean)),
  },
};

// A name of its own for a new part, thing, code or fact.
function declare() {
  const set = element("fieldset");
  set.append(element("legend", { textContent: "New names" }), ...form.declares.map(({ key, one }) => {
    const box = element("div", { className: "field" });
    const id = `declare-${key}`;
    const input = element("input", { id, autocomplete: "off", placeholder: "such as hive-tool" });
    input.addEventListener("keydown", event => { if (event.key === "Enter") { event.preventDefault(); add.click(); } });
    const add = button(`Add this ${one}`, async () => {
      const name = input.value.trim();
      if (name && await post({ path: [key, name], fresh: true })) {
        input.value = "";
        await renew();
        document.getElementById(`field-${key}-${name}-${key === "codes" ? "answer" : "name"}`)?.focus();
      }
    });
    box.append(element("label", { htmlFor: id, textContent: `Another ${one}` }), input, add);
    return box;
  }));
  return set;
}

async function send(entry, value, input) {
  // What is typed while it is on its way isn't in the file yet.
  const sent = (input ? [input, ...input.closest(".rows")?.querySelectorAll("input") ?? []] : []).map(each => [each, each.value]);
  if (!await post({ path: entry.path, value }, entry)) return;
  entry.value = value;
  for (const [each, text] of sent) each.defaultValue = text;
  await renew();
}

// One edit after the other, each made from what the one before left on the disk. What the form showed goes along: nobody else's change is written over.
function post(wish, entry) {
  return sending = sending.then(async () => {
    const name = open.name;
    await settled();
    if (!$("clash").hidden) return false;
    try {
      const body = JSON.stringify(entry ? { ...wish, was: entry.value ?? null } : wish);
      const answer = await fetch(`${base}entry?name=${encodeURIComponent(name)}`, { method: "POST", headers: { "If-Match": open.digest }, body });
      if (answer.status === 204) {
        await takeIn();
        say("Saved.");
        return true;
      }
      const words = await answer.text();
      await takeIn();
      await renew();
      const now = form.groups.flatMap(each => each.fields).find(each => entry && idOf(each) === idOf(entry));
      if (now) entry.value = now.value;
      say(words);
    } catch {
      say("The workbench was closed. What you entered is still in the form.");
    }
    return false;
  });
}

// A button that is replaced between the pressing and the letting go gets no click.
$("form").addEventListener("pointerdown", () => { pressed = true; });
for (const name of ["pointerup", "pointercancel"]) addEventListener(name, () => setTimeout(() => {
  pressed = false;
  resume();
}));

function resume() { if (waiting) setTimeout(renew); }

// What was found stands under the entry that it is about; under the smallest, where one lies in another.
function showFound() {
  const fields = form.groups.flatMap(each => each.fields);
  for (const entry of fields) {
    const found = $(`${idOf(entry)}-found`);
    if (!found) continue;
    const here = findingsOf(open.name).filter(finding => entry.from
      ? finding.line >= entry.from && finding.line <= entry.to
      : finding.message.includes(`“${entry.path.at(-1)}”`) && finding.severity === "error" && isMissing(finding, entry));
    found.replaceChildren(...here.map(finding => {
      const item = element("li", { textContent: `${finding.message} ${finding.help ?? ""}` });
      item.prepend(element("strong", { className: finding.severity, textContent: `${finding.severity}: ` }));
      return item;
    }));
    const input = $(idOf(entry));
    if (input) input.setAttribute("aria-invalid", String(here.some(finding => finding.severity === "error")));
  }
}

// A finding about something that isn't there points at what it is missing from.
function isMissing(finding, entry) {
  const parent = entry.path.at(-2);
  return finding.code === "HB1202" && (!parent || finding.message.includes(parent) || finding.source?.includes(parent));
}

$("form").addEventListener("submit", event => event.preventDefault());
// Enter means: this is what I want, also once more after it was refused.
$("form").addEventListener("keydown", event => {
  const input = event.target;
  if (event.key !== "Enter" || !input.matches("input, [data-line]")) return;
  if (input.matches("textarea")) event.preventDefault();
  if (input.value !== input.defaultValue) input.dispatchEvent(new Event("change"));
});
