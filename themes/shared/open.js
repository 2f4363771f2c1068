// Opens a sealed page with the code of a card, which stands behind the # of the address or is typed. What the card opens is shown piece by piece, as it is
// asked for. Keys stay on this device: a browser sends nobody what stands behind #.
(function () {
  "use strict";

  var root = document.documentElement;
  if (!root.dataset.seal) return;

  var store = "hintbook:" + root.dataset.book + ":keys";
  var locked = document.querySelector("[data-locked]");
  var alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  var waiting = {};
  var pageKeys = {};
  var slots = {};
  var filling = new Map();
  var missing = false;
  var opener = "";
  var tag = unhex(root.dataset.tag);
  var epoch = unhex(root.dataset.epoch);

  var hintbook = window.hintbook = {
    // What a file of slots, or a segment of a picture, hands over.
    take: function (name) {
      if (waiting[name]) waiting[name].done([].slice.call(arguments, 1));
    },
    // Set by the page's own script: what it does once there is something to read.
    start: null,
    fill: fillIn,
    // Set by the script for films: what it does with a piece that was opened.
    films: null,
    file: file,
    // What the script of gates needs, and what it puts here in turn.
    tools: {
      all: all, derive: derive, fields: fields, hex: hex, unhex: unhex, unbase64: unbase64, join: join, open: open,
      kept: kept, keep: keep, read: read, slot: slot, ownIn: ownIn, keyOf: keyOf, keyPage: keyPage, contextOf: contextOf, tag: tag, epoch: epoch,
    },
    gate: { behind: nothing, keeps: nothing, look: nothing },
  };

  function nothing() {
    return null;
  }

  function all(selector, within) {
    return [].slice.call((within || document).querySelectorAll(selector));
  }

  function unhex(text) {
    return Uint8Array.from((text.match(/../g) || []).map(function (pair) { return parseInt(pair, 16); }));
  }

  function hex(bytes) {
    return [].map.call(bytes, function (each) { return (each + 256).toString(16).slice(1); }).join("");
  }

  function unbase64(text) {
    var letters = atob(text);
    var bytes = new Uint8Array(letters.length);
    for (var at = 0; at < letters.length; at++) bytes[at] = letters.charCodeAt(at);
    return bytes;
  }

  function join(parts) {
    var joined = new Uint8Array(parts.reduce(function (sum, part) { return sum + part.length; }, 0));
    parts.reduce(function (at, part) {
      joined.set(part, at);
      return at + part.length;
    }, 0);
    return joined;
  }

  // Each field stands behind its length, a uint16; a number is a uint32. Both are big-endian.
  function fields(values) {
    return join(values.map(function (value) {
      var bytes = typeof value === "string" ? new TextEncoder().encode(value)
        : typeof value === "number" ? Uint8Array.of(value >>> 24, value >>> 16 & 255, value >>> 8 & 255, value & 255)
        : value;
      return join([Uint8Array.of(bytes.length >> 8, bytes.length & 255), bytes]);
    }));
  }

  async function stretch(parent, length, info) {
    var key = await crypto.subtle.importKey("raw", parent, "HKDF", false, ["deriveBits"]);
    return new Uint8Array(await crypto.subtle.deriveBits({ name: "HKDF", hash: "SHA-256", salt: new Uint8Array(), info: info }, key, 8 * length));
  }

  function derive(parent, length, label) {
    return stretch(parent, length, fields(["hb1"].concat(label)));
  }

  // Null where the key, the place or a single bit is another.
  async function open(parent, context, bytes) {
    var raw = await stretch(parent, 32, join([fields(["hb1", "key"]), context]));
    var key = await crypto.subtle.importKey("raw", raw, "AES-GCM", false, ["decrypt"]);
    try {
      var text = await crypto.subtle.decrypt({ name: "AES-GCM", iv: bytes.slice(0, 12), additionalData: context }, key, bytes.slice(12));
      return new Uint8Array(text);
    } catch (e) {
      return null;
    }
  }

  // What a file hands over; null where it doesn't come.
  function ask(name, fresh) {
    var asked = {};
    asked.answer = new Promise(function (done) {
      asked.done = function (came) {
        if (came) used(name);
        done(came);
      };
      var script = document.createElement("script");
      script.src = root.dataset.root + name + ".js" + (fresh ? "?fresh=" + Date.now() : "");
      script.onload = script.onerror = function () {
        script.remove();
        done(null);
      };
      waiting[name] = asked;
      document.head.appendChild(script);
    });
    return asked.answer;
  }

  // The worker keeps what was used; on the first visit it wasn't there yet when this was asked for.
  function used(name) {
    if (navigator.serviceWorker && /^http/.test(location.protocol)) navigator.serviceWorker.ready.then(function (site) {
      site.active.postMessage({ used: [name + ".js"] });
    });
  }

  // The code in what somebody typed: its kind, number and key; or the name of the sentence that says what is wrong.
  async function read(typed) {
    var letters = typed.toUpperCase().replace(/[\s\-\u2010-\u2013]/g, "").replace(/[IL]/g, "1").replace(/O/g, "0");
    if (letters.length !== 32) return { wrong: "length", letters: letters.length };
    var bytes = new Uint8Array(20);
    for (var at = 0; at < 32; at++) {
      var value = alphabet.indexOf(letters[at]);
      if (value < 0) return { wrong: "letter" };
      for (var bit = 0; bit < 5; bit++) if (value & 16 >> bit) bytes[5 * at + bit >> 3] |= 128 >> (5 * at + bit & 7);
    }

    var said = bytes.slice(0, 19);
    said[18] &= 240;
    var check = new Uint8Array(await crypto.subtle.digest("SHA-256", join([new TextEncoder().encode("hb1 code"), said])));
    if ((check[0] << 4 | check[1] >> 4) !== ((bytes[18] & 15) << 8 | bytes[19])) return { wrong: "letter" };
    if (bytes[0] >> 4 !== 1) return { wrong: "version" };
    var key = new Uint8Array(16);
    for (var each = 0; each < 16; each++) key[each] = (bytes[2 + each] & 15) << 4 | bytes[3 + each] >> 4;
    return { letters: letters, kind: bytes[0] >> 3 & 1, number: (bytes[0] & 7) << 12 | bytes[1] << 4 | bytes[2] >> 4, key: key };
  }

  // On this device, or until the browser is closed where the reader wants that.
  function kept() {
    try {
      return JSON.parse(sessionStorage.getItem(store) || localStorage.getItem(store)) || { codes: [] };
    } catch (e) {
      return { codes: [] };
    }
  }

  function keep(what) {
    var brief = locked && locked.querySelector("[data-brief]");
    try {
      (brief && brief.checked || sessionStorage.getItem(store) ? sessionStorage : localStorage).setItem(store, JSON.stringify(what));
    } catch (e) { /* then the code is asked for on each page */ }
  }

  // What a card opens here: the box key for the whole box, the page key for one stage, and behind it the copy's own values. Asked once more past every
  // cache, since a card that was sold today must not wait for yesterday's file.
  async function slot(code, page) {
    var table = code.kind ? page : "";
    var known = code.letters + table;
    if (slots[known]) return slots[known];
    var name = "k/" + (table || "box") + "-" + (code.number >> 7);
    for (var fresh = 0; fresh < 2; fresh++) {
      var came = await ask(name, fresh);
      missing = !came;
      if (!came) return null;
      var all = unbase64(came[2]);
      var at = (code.number & 127) * came[1];
      var opened = came[0] === root.dataset.epoch
        && await open(code.key, fields(["slot", tag, epoch, table, code.number]), all.slice(at, at + came[1]));
      if (opened) return slots[known] = opened;
    }

    return null;
  }

  // The copy's own values in a slot, by their names.
  function ownIn(opened) {
    return opened.length > 20 ? JSON.parse(unpad(opened.slice(16))) : {};
  }

  // Behind 4 bytes with its length, and before zeros.
  function unpad(padded) {
    return new TextDecoder().decode(padded.slice(4, 4 + new DataView(padded.buffer).getUint32(0)));
  }

  // The key of a page; null where no card that is known opens it.
  async function keyOf(page, fresh) {
    if (pageKeys[page]) return pageKeys[page];
    var known = kept();
    // Of a box whose card was scanned before another's: the last one says what is the copy's own.
    var remembered = known.epoch === root.dataset.epoch && known.box && await derive(unhex(known.box), 16, ["page", page]);
    if (remembered && (!fresh || fresh === known.codes[0])) return pageKeys[page] = remembered;
    var codes = (fresh ? [fresh] : []).concat(known.codes);
    for (var each = 0; each < codes.length; each++) {
      var code = await read(codes[each]);
      var opened = code.key && await slot(code, page);
      if (!opened) continue;
      var key = opened.slice(0, 16);
      if (codes[each] !== fresh || known.codes.indexOf(code.letters) < 0) {
        known.codes = [code.letters].concat(known.codes.filter(function (one) { return one !== code.letters; }));
      }
      if (!code.kind) {
        known.epoch = root.dataset.epoch;
        known.box = hex(key);
        known.own = ownIn(opened);
      }

      keep(known);
      opener = code.letters;
      return pageKeys[page] = code.kind ? key : await derive(key, 16, ["page", page]);
    }

    return remembered ? pageKeys[page] = remembered : null;
  }

  // What the copy has of its own, from the card that was scanned last: as it is remembered at once, and as the site has it when that has come.
  async function showOwn(piece) {
    var places = all("[data-own]", piece);
    if (!places.length) return;
    var known = kept();
    put(known.own || {});
    for (var each = 0; each < known.codes.length; each++) {
      var code = await read(known.codes[each]);
      var opened = code.key && await slot(code, keyPage(piece));
      if (opened) return put(ownIn(opened));
    }

    function put(values) {
      places.forEach(function (place) {
        if (Object.prototype.hasOwnProperty.call(values, place.dataset.own)) place.textContent = values[place.dataset.own];
      });
    }
  }

  // On a page about several stages each piece has its own stage's key.
  function keyPage(piece) {
    return /^(solution|reset)$/.test(root.dataset.name) ? piece.dataset.sealed.split("-")[0] : root.dataset.name;
  }

  function contextOf(piece) {
    return fields(["piece", tag, epoch, root.lang, root.dataset.name, unhex(root.dataset.version), piece.dataset.sealed]);
  }

  // Two who want a piece at once get it once: what the first has found in it stays.
  function fill(piece) {
    if (!filling.has(piece)) filling.set(piece, fillNow(piece).finally(function () { filling.delete(piece); }));
    return filling.get(piece);
  }

  // Puts a piece's text in its place. Gives nothing where it is there or waits behind a gate, else the name of the sentence that says why not.
  async function fillNow(piece) {
    if ("filled" in piece.dataset) return "";
    var key = await keyOf(keyPage(piece));
    var bytes = key && (await open(key, contextOf(piece), unbase64(piece.dataset.text)) || await hintbook.gate.behind(key, piece));
    if (key && !bytes && hintbook.gate.keeps(piece)) return "";
    if (!bytes) return key ? "damaged" : missing ? "offline" : "partly";
    piece.innerHTML = unpad(bytes);
    piece.dataset.filled = "";
    showOwn(piece);
    all("img[data-sealed-files]", piece).forEach(show);
    if (hintbook.films) hintbook.films(piece);
    return "";
  }

  function own(details) {
    return all("[data-sealed]", details).filter(function (piece) { return piece.closest("details") === details; });
  }

  // Fills what stands in a fold that is open.
  function fillIn(details) {
    return Promise.all(own(details).map(fill)).then(function (came) {
      var wrong = came.filter(Boolean).sort()[0];
      if (wrong) say(wrong);
    });
  }

  // A sealed file: its name, key, number of segments and length are given. Null where a segment doesn't come or doesn't open.
  async function file(said, tell) {
    var segments = [];
    for (var each = 0; each < said[2]; each++) {
      var name = "p/" + said[0] + "-" + each;
      var came = await ask(name) || await ask(name, true);
      var bytes = came && await open(unhex(said[1]), fields(["file", tag, said[0], each, each == said[2] - 1 ? 1 : 0]), unbase64(came[0]));
      if (!bytes) return null;
      segments.push(bytes);
      if (tell) tell((each + 1) / said[2]);
    }

    return new Blob(segments).slice(0, said[3]);
  }

  // A picture in the smallest of its widths that does for this screen.
  async function show(picture) {
    var files = picture.dataset.sealedFiles.split(";").map(function (each) { return each.split(" "); });
    var wanted = Math.min(innerWidth, 640) * Math.min(devicePixelRatio || 1, 2);
    var file = files.filter(function (each) { return each[4] >= wanted; })[0] || files[files.length - 1];
    var bytes = await hintbook.file(file);
    if (bytes) picture.src = URL.createObjectURL(bytes.slice(0, bytes.size, "image/jpeg"));
  }

  function say(what, letters) {
    if (!locked) return;
    var line = locked.querySelector("[role=status]");
    line.textContent = (line.dataset[what] || "").replace("{letters}", letters || "");
  }

  // A letter to the maker names the number of the card that opened the page, never its code.
  async function number() {
    var code = await read(opener || kept().codes[0] || "");
    if (!code.key || !locked) return;
    var says = locked.querySelector("[role=status]").dataset.number.replace("{number}", code.number);
    all('a[href^="mailto:"][href*="body="]').forEach(function (letter) {
      letter.href += encodeURIComponent("\r\n" + says);
    });
  }

  async function tryOut(typed) {
    var code = typed ? await read(typed) : null;
    if (code && code.wrong) {
      say(code.wrong, code.letters);
      return false;
    }

    var late = setTimeout(function () { say("opening"); }, 400);
    var now = all("[data-sealed]").filter(function (piece) { return !piece.closest("details"); });
    var lists = /^(solution|reset)$/.test(root.dataset.name);
    var key = await keyOf(root.dataset.name, code && code.letters);
    clearTimeout(late);
    if (!key && !(lists && kept().codes.length)) {
      say(missing ? "offline" : typed || kept().codes.length ? "other" : "none");
      return false;
    }

    var came = await Promise.all(now.map(fill));
    if (came.some(Boolean) && !lists) {
      say("damaged");
      return false;
    }

    // Only now is the code out of the address, so that loading the page anew still has it where it didn't open.
    if (location.hash.length > 20) history.replaceState(null, "", location.pathname + location.search);
    var heading = document.querySelector("[data-sealed=head] h1");
    if (heading) document.title = heading.textContent + " · " + document.title;
    say("open");
    all("form, p:not([role])", locked).forEach(function (each) { each.hidden = true; });
    await number();
    await hintbook.gate.look();
    root.dataset.opened = "";
    if (hintbook.start) {
      hintbook.start();
      hintbook.start = null;
    }

    // What was unfolded before the page could be read.
    await Promise.all(all("details[open]").map(fillIn));
    return true;
  }

  function fragment() {
    return location.hash.length > 20 ? decodeURIComponent(location.hash.slice(1)) : "";
  }

  function forget() {
    try {
      [store, "hintbook:" + root.dataset.book].forEach(function (each) {
        localStorage.removeItem(each);
        sessionStorage.removeItem(each);
      });
    } catch (e) { /* nothing was kept */ }
    // Those of this book: others may lie on the same host.
    var home = new URL("./" + root.dataset.root, location.href).href;
    var gone = window.caches ? caches.keys().then(function (names) {
      return Promise.all(names.map(function (name) {
        return caches.open(name).then(function (cache) {
          return cache.keys().then(function (files) {
            var sealedFiles = files.filter(function (file) { return file.url.indexOf(home + "k/") === 0 || file.url.indexOf(home + "p/") === 0; });
            return Promise.all(sealedFiles.map(function (file) { return cache.delete(file); }));
          });
        });
      }));
    }) : Promise.resolve();
    // A page that leaves takes unfinished work with it: the keys would stay.
    gone.catch(function () { /* the browser keeps no files */ }).then(function () { location.replace(location.pathname); });
  }

  if (!window.crypto || !crypto.subtle) {
    say("plain");
    var link = locked && locked.querySelector("[data-https]");
    if (link) {
      link.href = "https:" + location.href.slice(location.protocol.length);
      link.hidden = false;
    }
  } else {
    var form = locked && locked.querySelector("form");
    if (form) form.addEventListener("submit", function (event) {
      event.preventDefault();
      tryOut(form.querySelector("input").value);
    });
    all("[data-forget]").forEach(function (button) {
      button.hidden = false;
      button.addEventListener("click", forget);
    });
    all("details").forEach(function (each) {
      each.addEventListener("toggle", function () { if (each.open && "opened" in root.dataset) fillIn(each); });
    });
    addEventListener("hashchange", async function () {
      if (!fragment()) return;
      if (!("opened" in root.dataset)) return tryOut(fragment());
      // Another card in a tab that is open: the page is loaded anew, as its copy has it.
      var code = await read(fragment());
      if (code.key && code.letters !== kept().codes[0]) location.reload();
    });
    addEventListener("click", function (event) {
      if (event.target.closest("[data-hide]")) all("details [data-filled]").forEach(function (piece) {
        piece.textContent = "";
        delete piece.dataset.filled;
      });
    });
    document.addEventListener("DOMContentLoaded", function () { tryOut(fragment()); });
  }
}());
