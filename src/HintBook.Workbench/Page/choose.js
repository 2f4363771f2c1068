// Asks which book the workbench shall open.
const $ = id => document.getElementById(id);
const say = words => { $("said").textContent = words; };
const post = (path, wish = {}) => fetch(path, { method: "POST", body: JSON.stringify(wish) });

// Held open for as long as this page is.
const stay = new EventSource("stay");
stay.addEventListener("error", () => { if (!$("close").disabled) say("HintBook was closed. Start it again."); });

async function open(path) {
  try {
    const answer = await post("open", { path });
    if (!answer.ok) {
      say(await answer.text());
      return;
    }
    const book = await answer.json();
    $("opened").hidden = book.shown;
    $("address").value = book.address;
    say(book.shown ? `${book.path} is open in another tab.` : `${book.path} is open. Copy its address into your browser.`);
    await list();
  } catch {
    say("HintBook was closed. Start it again.");
  }
}

async function list() {
  const found = await (await fetch("books")).json();
  $("none").textContent = `There are no books in ${found.documents} yet.`;
  $("none").hidden = found.books.length > 0;
  $("name-help").textContent = `It is made in ${found.documents}.`;
  $("books").replaceChildren(...found.books.map(book => {
    const item = document.createElement("li");
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = book.title;
    button.addEventListener("click", () => open(book.path));
    const where = document.createElement("span");
    where.className = "count";
    where.textContent = ` ${book.path}`;
    item.append(button, where);
    return item;
  }));
}

const sends = (form, field) => $(form).addEventListener("submit", event => {
  event.preventDefault();
  open($(field).value);
});
sends("other", "path");
sends("begin", "name");
$("close").addEventListener("click", async () => {
  $("close").disabled = true;
  stay.close();
  await post("close").catch(() => {});
  say("HintBook is closed. You can close this page.");
});
list();
