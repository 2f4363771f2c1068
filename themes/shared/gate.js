// The gate of a step: its help opens with what the box has given by now, besides the card. What was typed is kept nowhere; the key that it opens is kept
// with the keys of the card, and forgotten with them.
(function () {
  "use strict";

  if (!window.hintbook) return;

  var rounds = 600000;
  var root = document.documentElement;
  var tools = hintbook.tools;
  var place = null;
  var working = false;
  // Where a browser keeps nothing, until the page is left.
  var here = {};

  hintbook.gate = { behind: behind, keeps: keeps, look: look, spellings: spellings };

  // The key of a gate that was opened here.
  function keyBehind(page) {
    return here[page] || (tools.kept().gates || {})[page];
  }

  // What lies behind a gate that was opened; null where it wasn't, or the piece isn't there.
  async function behind(key, piece) {
    var gate = keyBehind(tools.keyPage(piece));
    if (!gate) return null;
    var gated = await tools.derive(tools.join([key, tools.unhex(gate)]), 16, ["gated"]);
    return tools.open(gated, tools.contextOf(piece), tools.unbase64(piece.dataset.text));
  }

  // Whether a gate that wasn't opened yet keeps a piece back. On a page about several steps that is said in its place; which of them have gates isn't
  // known there.
  function keeps(piece) {
    if (keyBehind(tools.keyPage(piece))) return false;
    var list = piece.closest("[data-gate-says]");
    if (!list) return "gated" in root.dataset;
    var link = document.createElement("a");
    link.href = tools.keyPage(piece) + ".html";
    link.textContent = list.dataset.gatePage;
    piece.textContent = list.dataset.gateSays + " ";
    piece.appendChild(link);
    return true;
  }

  // Asks at the gate of this page, if it has one that is still shut.
  async function look() {
    place = document.querySelector("[data-sealed=head] [data-gate]");
    if (!place) return;
    if (await passes()) {
      place.hidden = true;
      return;
    }

    root.dataset.gated = "";
    place.querySelector("form").addEventListener("submit", function (event) {
      event.preventDefault();
      tryOut();
    });
  }

  async function passes() {
    var piece = document.querySelector("[data-sealed=nudge]");
    var key = await tools.keyOf(root.dataset.name);
    return !!await behind(key, piece);
  }

  function say(what) {
    var line = place.querySelector("[role=status]");
    line.textContent = line.dataset[what];
  }

  async function tryOut() {
    if (working) return;
    var input = place.querySelector("input");
    var words = spellings(input.value);
    if (!words.length) {
      say("empty");
      input.focus();
      return;
    }

    working = true;
    var late = setTimeout(function () { say("opening"); }, 400);
    try {
      var gate = await opened(words);
    } finally {
      clearTimeout(late);
      working = false;
    }

    if (!gate) {
      say("wrong");
      input.focus();
      input.select();
      return;
    }

    remember(gate);
    if (!await passes()) {
      say("damaged");
      return;
    }

    delete root.dataset.gated;
    place.querySelector("form").hidden = true;
    say("open");
    document.querySelector(".help summary").focus();
    tools.all("details[open]").forEach(hintbook.fill);
  }

  function remember(gate) {
    var page = root.dataset.name;
    here[page] = tools.hex(gate);
    var known = tools.kept();
    known.gates = known.gates || {};
    known.gates[page] = here[page];
    tools.keep(known);
  }

  // The key that the gate gives for one of these words; null where none is right.
  async function opened(words) {
    var page = root.dataset.name;
    var records = place.dataset.gate === "own" ? await ownRecords(page) : [[place.dataset.gate]];
    var salt = await tools.derive(await tools.keyOf(page), 16, ["gate salt"]);
    for (var each = 0; each < words.length; each++) {
      var word = await crypto.subtle.importKey("raw", new TextEncoder().encode(words[each]), "PBKDF2", false, ["deriveBits"]);
      var bits = await crypto.subtle.deriveBits({ name: "PBKDF2", hash: "SHA-256", salt: salt, iterations: rounds }, word, 256);
      for (var one = 0; one < records.length; one++) {
        var context = tools.fields(["gate", tools.tag, tools.epoch, page].concat(records[one].slice(1)));
        var gate = await tools.open(new Uint8Array(bits), context, tools.unbase64(records[one][0]));
        if (gate) return gate;
      }
    }

    return null;
  }

  // Where each copy has a code of its own: what the slots of the cards hold that are known, each with its card's number.
  async function ownRecords(page) {
    var known = tools.kept();
    var records = [];
    for (var each = 0; each < known.codes.length; each++) {
      var code = await tools.read(known.codes[each]);
      var slot = code.key && await tools.slot(code, page);
      var own = slot ? tools.ownIn(slot) : !code.kind && known.own || {};
      if (own["gate:" + page]) records.push([own["gate:" + page], code.number]);
    }

    return records;
  }

  // What was typed as it is compared: letters and digits alone, small. A gate never asks for letters that keyboards write in two ways, so these are
  // tried in their common form as well, and digits of other scripts as 0 to 9.
  function spellings(typed) {
    var plain = small(typed.normalize("NFKC"));
    var common = small(typed.normalize("NFKC").replace(/[\u0130\u0131]/g, "i").replace(/\u00df|\u1e9e/g, "ss").replace(/\u03c2/g, "\u03c3")
      .replace(/[\u0660-\u0669\u06f0-\u06f9]/g, function (digit) { return String(digit.charCodeAt(0) & 15); }));
    return [plain, common].filter(function (word, at, words) { return word && words.indexOf(word) === at; });
  }

  // Letter by letter: within a word a browser would write a Greek sigma in two ways.
  function small(word) {
    return Array.from(word.replace(/[^\p{L}\p{Nd}]/gu, ""), function (letter) { return letter.toLowerCase(); }).join("");
  }
}());
