// Remembers, on this device only, what the reader has opened and done. The pages work without it: it opens nothing that a
// reader couldn't open by hand, and it stores nothing that the reader hasn't uncovered.
(function () {
  "use strict";

  var root = document.documentElement;
  var key = "hintbook:" + root.dataset.book;
  var page = root.dataset.page;
  var unsaved = null;

  // open: page -> names of opened details; used: page -> names of all ever opened; done: page -> pages of the steps that were done before it;
  // names: page -> language -> title and sign; next: page -> when it opens; ticks: task -> when it is ticked; cautions: text -> when it was
  // shown; began: page -> when it was opened and help was first asked for; took: page -> minutes from then until its step was done; language: as chosen.
  function load() {
    var kept = unsaved;
    try {
      kept = JSON.parse(localStorage.getItem(key)) || kept;
    } catch (e) { /* storage is switched off or full of something else: remember until the page is left */ }
    kept = kept || {};
    ["open", "used", "done", "names", "next", "ticks", "cautions", "began", "took"].forEach(function (part) {
      if (!kept[part] || typeof kept[part] !== "object") kept[part] = {};
    });
    return kept;
  }

  function change(how) {
    var kept = load();
    how(kept);
    unsaved = kept;
    try {
      localStorage.setItem(key, JSON.stringify(kept));
    } catch (e) { /* as above */ }
  }

  // Later visits work without a network, where the browser lets a site stay: over http, not from a memory stick.
  function stay() {
    if (!root.dataset.book || !/^http/.test(location.protocol)) return;
    var manifest = document.createElement("link");
    manifest.rel = "manifest";
    manifest.href = root.dataset.root + "manifest.webmanifest";
    document.head.appendChild(manifest);
    var worker = navigator.serviceWorker;
    if (!worker) return;
    // The worker keeps this page first of all, then the rest, and says whether all of it is kept.
    function ask() {
      worker.ready.then(function (site) { site.active.postMessage(location.href); });
    }
    worker.addEventListener("message", function (event) {
      root.dataset.kept = event.data;
      var line = document.querySelector("[data-kept-line]");
      if (line) line.hidden = event.data !== "kept";
    });
    worker.addEventListener("controllerchange", ask);
    worker.register(root.dataset.root + "sw.js").then(ask, function () { /* then every visit needs the network */ });
  }

  // The language that the reader chose, else the first of the browser's that the book has.
  function speak() {
    var links = all("[data-language]");
    if (!links.length) return;
    var chosen = load().language;
    var wanted = (chosen ? [chosen] : navigator.languages || []).map(function (tag) {
      return links.filter(function (link) { return link.dataset.language === tag || !chosen && link.dataset.language === tag.split("-")[0]; })[0];
    }).filter(Boolean)[0];
    // Printed addresses are those of the book's own language; who opens a page in another one has chosen it.
    if (wanted && !root.dataset.root && !wanted.hasAttribute("aria-current")) location.replace(wanted.href + location.hash);
    links.forEach(function (link) {
      link.addEventListener("click", function () {
        change(function (kept) { kept.language = link.dataset.language; });
      });
    });
  }

  function tellUse() {
    var place = document.querySelector("[data-used]");
    if (!place) return;
    tellAlone(load());
    var used = load().used;
    var line = place.querySelector("p");
    function count(tier) {
      return Object.keys(used).filter(function (each) { return used[each].indexOf(tier) >= 0; }).length;
    }
    var counts = ["nudge", "clue", "answer"].map(function (tier) { return [tier, count(tier)]; });
    line.textContent = counts.some(function (each) { return each[1]; })
      ? counts.reduce(function (text, each) { return text.replace("{" + each[0] + "}", each[1]); }, line.dataset.usedSome)
      : line.dataset.usedNone;
    place.hidden = false;
  }

  // From a memory stick a browser may keep each page by itself. It may if nothing that is kept here comes from another page.
  function tellAlone(kept) {
    var line = document.querySelector("[data-alone]");
    if (!line || location.protocol !== "file:") return;
    line.hidden = ["open", "used", "done"].some(function (part) {
      return Object.keys(kept[part]).some(function (each) { return each !== page; });
    });
  }

  function all(selector, within) {
    return Array.prototype.slice.call((within || document).querySelectorAll(selector));
  }

  function say(what) {
    var status = document.querySelector("[role=status][data-said]");
    status.textContent = status.dataset[what];
  }

  // "a,b c": one of a and b, and c as well.
  function opens(after, did) {
    return after.split(" ").every(function (group) {
      return !group || group.split(",").some(function (one) { return one in did; });
    });
  }

  // All that counts as done: what the reader said, and what each of these steps needs.
  function didIn(kept) {
    var did = {};
    Object.keys(kept.done).forEach(function (each) {
      [].concat(kept.done[each], each).forEach(function (one) { did[one] = 1; });
    });
    return did;
  }

  // What links to steps say, in each language that they say it in.
  function learn(kept, items) {
    items.forEach(function (item) {
      var names = kept.names[item.dataset.page] = kept.names[item.dataset.page] || {};
      var link = item.querySelector("a");
      names[link.lang || root.lang] = [link.textContent, item.querySelector("p").textContent];
      all("span[lang]", item).forEach(function (other) { names[other.lang] = [other.firstChild.textContent, other.lastChild.textContent]; });
    });
  }

  // What this page itself says of its step.
  function learnHere(kept) {
    var names = kept.names[page] = kept.names[page] || {};
    names[root.lang] = [document.querySelector("h1").textContent, document.querySelector(".sign bdi").textContent];
  }

  // In the language of this page, else in one that it was met in; undefined for what was never met.
  function nameIn(kept, page) {
    var names = kept.names[page] || {};
    var language = root.lang in names ? root.lang : Object.keys(names)[0];
    return language && { page: page, language: language, title: names[language][0], sign: names[language][1] };
  }

  function write(tag, text, language) {
    var element = document.createElement(tag);
    element.textContent = text;
    if (language !== root.lang) {
      element.lang = language;
      element.dir = "auto";
    }
    return element;
  }

  // Does something once a fold is filled: on a sealed page that takes a moment.
  function once(fold, then) {
    if (window.hintbook) window.hintbook.fill(fold).then(then);
    else then();
  }

  function stagePage() {
    var done = document.querySelector("[data-done]");
    var next, joined, besides, did;
    var undo = document.querySelector("[data-undo]");
    var hide = document.querySelector("[data-hide]");
    var keeps = all("details[data-keep]");

    // What stands in the fold of the next steps; on a sealed page nothing until it is opened.
    function lookUp() {
      var isNew = !did;
      next = document.querySelector("[data-next]");
      joined = document.querySelector("[data-joined]");
      besides = document.querySelector("[data-besides]");
      did = document.querySelector("[data-did]");
      if (isNew && joined) joined.addEventListener("toggle", function () {
        if (joined.open && done.open) change(function (kept) { keepNext(kept, items(joined), true); });
      });
    }

    lookUp();

    // An answer that asks once more counts when it shows itself.
    function tierOf(each) {
      if (each.dataset.keep === "now") return "answer";
      return each.dataset.keep === "answer" && each.querySelector("[data-keep]") ? "" : each.dataset.keep;
    }

    function items(list) {
      return list ? all("li[data-page]", list) : [];
    }

    // An attested step is open because the reader says so.
    function keepNext(kept, found, attested) {
      learn(kept, found);
      found.forEach(function (item) {
        kept.next[item.dataset.page] = attested || kept.next[item.dataset.page] === "" ? "" : item.dataset.after;
      });
    }

    // A step that needs several others moves into the open as soon as they are all done here, and what is done isn't open any more.
    function sort() {
      var did = didIn(load());
      items(joined).forEach(function (item) {
        if (opens(item.dataset.after, did)) next.appendChild(item);
      });
      if (joined) joined.hidden = !joined.querySelector("li");
      items(besides).forEach(function (item) { item.hidden = item.dataset.page in did; });
      if (besides) besides.hidden = !besides.querySelector("li:not([hidden])");
    }

    var before = load();
    // A page that is only opened leaves nothing on the device.
    var opened = page in didIn(before) ? 0 : Date.now();
    (before.open[page] || []).forEach(function (name) {
      keeps.forEach(function (each) { if (each.dataset.keep === name) each.open = true; });
    });
    if (page in didIn(before)) {
      done.open = true;
      once(done, tellUse);
    }
    if (did) sort();

    keeps.forEach(function (each) {
      each.addEventListener("toggle", function () {
        var names = keeps.filter(function (one) { return one.open; }).map(function (one) { return one.dataset.keep; });
        change(function (kept) {
          // What was opened last stands last.
          delete kept.open[page];
          if (each.open && opened && !(page in kept.began)) kept.began[page] = opened;
          if (names.length) {
            kept.open[page] = names;
            if (did) learn(kept, items(did).slice(-1));
            else learnHere(kept);
          }
          if (each.open && (kept.used[page] || []).indexOf(tierOf(each)) < 0) kept.used[page] = (kept.used[page] || []).concat(tierOf(each));
        });
        if (done.open) tellUse();
      });
    });

    done.addEventListener("toggle", function () {
      if (!done.open) return;
      once(done, function () {
        lookUp();
        if (!did) return;
        change(function (kept) {
          kept.done[page] = did.dataset.did.split(" ").filter(Boolean);
          learn(kept, items(did));
          if (!opened || page in kept.took) return;
          kept.began[page] = kept.began[page] || opened;
          kept.took[page] = Math.round((Date.now() - kept.began[page]) / 6000) / 10;
        });
        sort();
        change(function (kept) { keepNext(kept, items(next).concat(items(besides)), false); });
        tellUse();
      });
    });

    undo.hidden = false;
    undo.addEventListener("click", function () {
      change(function (kept) {
        // What was done after this step can't have been done either.
        Object.keys(kept.done).forEach(function (each) {
          if (each !== page && kept.done[each].indexOf(page) < 0) return;
          delete kept.done[each];
          delete kept.took[each];
        });
        items(next).concat(items(joined)).forEach(function (item) { kept.next[item.dataset.page] = item.dataset.after; });
      });
      done.open = false;
      say("undone");
      done.querySelector("summary").focus();
    });

    hide.hidden = false;
    hide.addEventListener("click", function () {
      all(".help details").concat(keeps).forEach(function (each) { each.open = false; });
      change(function (kept) { delete kept.open[page]; });
      say("said");
    });
  }

  function frontPage() {
    var way = document.querySelector("[data-way]");
    var start = document.querySelector("[data-start]");
    var unsaidStart = start && { href: start.getAttribute("href"), text: start.textContent };
    var first = all("[data-first] > li");
    var cautions = all("details[data-caution]");

    function fill(name, links) {
      var box = way.querySelector("[data-way-" + name + "]");
      var list = box.querySelector("ul");
      list.textContent = "";
      links.forEach(function (link) {
        var item = document.createElement("li");
        var anchor = write("a", link.title, link.language);
        anchor.href = link.page + ".html";
        item.appendChild(anchor);
        if (name === "open") item.appendChild(write("p", link.sign, link.language));
        list.appendChild(item);
      });
      box.hidden = !links.length;
    }

    // The step whose help was opened last, else the first that is open.
    function offer(kept, did, open) {
      if (!start) return;
      var last = Object.keys(kept.open).reverse().filter(function (each) { return !(each in did); }).concat(open)[0];
      var link = !way.hidden && last && nameIn(kept, last);
      start.setAttribute("href", link ? link.page + ".html" : way.hidden ? unsaidStart.href : "#way");
      start.textContent = link ? "" : way.hidden ? unsaidStart.text : start.dataset.begun;
      if (!link) return;
      var around = start.dataset.go.split("{step}");
      [document.createTextNode(around[0]), write("span", link.title, link.language), document.createTextNode(around[1] || "")]
        .forEach(function (piece) { start.appendChild(piece); });
    }

    function draw() {
      var kept = load();
      learn(kept, first);
      var did = didIn(kept);
      var open = first.map(function (item) { return item.dataset.page; });
      Object.keys(kept.next).forEach(function (each) {
        if (open.indexOf(each) < 0 && opens(String(kept.next[each]), did)) open.push(each);
      });
      open = open.filter(function (each) { return !(each in did); });
      function named(pages) {
        return pages.map(function (each) { return nameIn(kept, each); }).filter(Boolean);
      }

      way.hidden = !Object.keys(kept.done).length && !Object.keys(kept.open).length;
      fill("open", named(open));
      fill("done", named(Object.keys(did)));
      offer(kept, did, open);
      tellUse();
      document.querySelector(".first").hidden = !way.hidden;
    }

    // A danger stands open until this device has shown it in these words.
    function foldCautions() {
      var shown = load().cautions;
      cautions.forEach(function (each) { if (each.textContent in shown) each.open = false; });
      if (cautions.length) change(function (kept) {
        kept.cautions = {};
        cautions.forEach(function (each) { kept.cautions[each.textContent] = 1; });
      });
    }

    // A table of the way, a row for each step that was done or whose help was opened. Minutes that say nothing are left out: of a page that was opened
    // only to say that its step is done, and of one that was left open overnight. A table program takes what begins with "=" for a formula.
    function notes() {
      var kept = load();
      var did = didIn(kept);
      var who = way.querySelector("[data-who]").value.trim().replace(/^[=+@-]+/, "").replace(/"/g, '""');
      return ["who,stage,minutes,help,remarks"].concat(Object.keys(Object.assign(did, kept.used)).map(function (each) {
        var took = kept.took[each];
        var used = kept.used[each] || [];
        var most = ["answer", "clue", "nudge"].filter(function (tier) { return used.indexOf(tier) >= 0; })[0];
        return ['"' + who + '"', each, took > 0 && took <= 180 ? took : "", most || "none", ""].join(",");
      })).join("\r\n") + "\r\n";
    }

    function saveNotes() {
      var file = document.createElement("a");
      file.href = URL.createObjectURL(new Blob(["\uFEFF" + notes()], { type: "text/csv" }));
      var now = new Date();
      file.download = "sitting-" + new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 10) + ".csv";
      file.click();
      setTimeout(URL.revokeObjectURL, 60000, file.href);
      say("saved");
    }

    all("[data-notes]", way).forEach(function (button) { button.addEventListener("click", saveNotes); });
    document.querySelector("[data-again]").addEventListener("click", function () {
      var language = load().language;
      unsaved = null;
      try {
        localStorage.removeItem(key);
      } catch (e) { /* nothing was kept */ }
      if (language) change(function (kept) { kept.language = language; });
      cautions.forEach(function (each) { each.open = true; });
      draw();
      way.querySelector("details").open = false;
      say("said");
    });
    // Also when the browser brings the page back as it was left.
    addEventListener("pageshow", draw);
    foldCautions();
    draw();
  }

  function resetPage() {
    var boxes = all("[data-tick]");
    var untick = document.querySelector("[data-untick]");
    boxes.forEach(function (box) {
      box.checked = box.dataset.tick in load().ticks;
      box.addEventListener("change", function () {
        change(function (kept) {
          if (box.checked) kept.ticks[box.dataset.tick] = 1;
          else delete kept.ticks[box.dataset.tick];
        });
      });
    });
    if (!untick) return;
    untick.hidden = false;
    untick.addEventListener("click", function () {
      boxes.forEach(function (box) { box.checked = false; });
      change(function (kept) { kept.ticks = {}; });
      say("said");
    });
  }

  // A film that isn't cut is held to its part: what comes before and after it belongs to other steps. Its address says which part it is.
  function hold(video) {
    var part = /#t=([0-9.]+)(?:,([0-9.]+))?$/.exec(video.getAttribute("src") || "");
    if (!part) return;
    var from = Number(part[1]);
    var to = part[2] ? Number(part[2]) : Infinity;
    // A host that sends films in one piece lets nobody move within them: there the film begins at its beginning.
    function keep() {
      if (!video.seekable.length || video.seekable.end(video.seekable.length - 1) < from) return;
      if (video.currentTime < from - 0.05) video.currentTime = from;
      else if (video.currentTime > to) {
        video.pause();
        video.currentTime = to;
      }
    }
    ["loadedmetadata", "timeupdate", "seeking", "seeked"].forEach(function (each) { video.addEventListener(each, keep); });
    // At its end it starts again from its beginning, as a film does.
    video.addEventListener("play", function () {
      if (video.currentTime > to - 0.05) video.currentTime = from;
    });
  }

  // Moments such as 00:02:16.000, in seconds.
  function seconds(moment) {
    return moment.split(":").reduce(function (sum, part) { return 60 * sum + Number(part); }, 0);
  }

  function cuesIn(captions) {
    return captions.trim().split("\n\n").map(function (block) {
      var lines = block.split("\n");
      var at = lines.findIndex(function (line) { return line.indexOf("-->") >= 0; });
      var times = at >= 0 && lines[at].match(/[0-9:.]+/g);
      return times && placed(new VTTCue(seconds(times[0]), seconds(times[1]), lines.slice(at + 1).join("\n")), lines[at]);
    }).filter(Boolean);
  }

  // Where a cue stands, as its line of times says it: "line:0 position:20%,line-left align:start" (W3C, "WebVTT", section 3.4).
  function placed(cue, times) {
    times.split(/\s+/).slice(3).forEach(function (setting) {
      var parts = setting.split(/[:,]/);
      var number = parseFloat(parts[1]);
      if (parts[0] === "line") {
        cue.snapToLines = parts[1].indexOf("%") < 0;
        cue.line = number;
        if (parts[2]) cue.lineAlign = parts[2];
      } else if (parts[0] === "position") {
        cue.position = number;
        if (parts[2]) cue.positionAlign = parts[2];
      } else if (parts[0] === "size") cue.size = number;
      else if (parts[0] === "align") cue.align = parts[1];
      else if (parts[0] === "vertical") cue.vertical = parts[1];
    });
    return cue;
  }

  // Captions in the page's language are shown, else in the first of the reader's. WebKit leaves it to the script. From a memory stick no captions
  // are loaded, but scripts: the same captions come as one.
  function caption(video) {
    var tracks = all("track[kind=captions]", video);
    var shown = [root.lang].concat(navigator.languages || []).map(function (tag) {
      return tracks.filter(function (each) { return each.srclang.split("-")[0] === tag.split("-")[0]; })[0];
    }).filter(Boolean)[0];
    tracks.forEach(function (each) {
      var mode = each === shown ? "showing" : "disabled";
      if (location.protocol !== "file:") {
        each.track.mode = mode;
        return;
      }
      var script = document.createElement("script");
      handed[each.getAttribute("src").split("/").pop()] = function (captions) {
        var track = video.addTextTrack("captions", each.label, each.srclang);
        track.mode = "hidden";
        cuesIn(captions).forEach(function (cue) { track.addCue(cue); });
        track.mode = mode;
        each.remove();
      };
      script.src = each.src + ".js";
      document.head.appendChild(script);
    });
  }

  var handed = {};
  window.hintbookCaptions = function (name, captions) {
    if (handed[name]) handed[name](captions);
  };

  // Which edition a box is of, by its serial. The page has digests of the serials, so that searching it for one finds nothing.
  function askForSerial(form) {
    var said = form.querySelector("[role=status]");
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      var asked = digest(form.querySelector("input").value);
      var box = all("[data-serials]").filter(function (each) { return each.dataset.serials.split(" ").indexOf(asked) >= 0; })[0];
      if (box) location.href = box.href;
      else said.textContent = said.dataset.unknown;
    });
    form.hidden = false;
  }

  // FNV-1a, 32 bits, of the letters and figures in UTF-8; zeros at the front don't count.
  function digest(serial) {
    var narrow = serial.replace(/[\uFF01-\uFF5E]/g, function (wide) { return String.fromCharCode(wide.charCodeAt(0) - 0xFEE0); });
    var plain = narrow.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "").replace(/^0+(?=.)/, "");
    return new TextEncoder().encode(plain).reduce(function (hash, byte) {
      return Math.imul(hash ^ byte, 0x01000193) >>> 0;
    }, 0x811c9dc5).toString(16).padStart(8, "0");
  }

  function start() {
    all("video").forEach(hold);
    all("video").forEach(caption);
    all("[data-ask-serial]").forEach(askForSerial);
    if (page) stagePage();
    else if (document.querySelector("[data-tick]")) resetPage();
    else if (document.querySelector("[data-way]")) frontPage();
  }

  speak();
  stay();
  if (window.hintbook) window.hintbook.start = start;
  else start();
}());
