// Remembers, on this device only, what the reader has opened and done. The pages work without it: it opens nothing that a
// reader couldn't open by hand, and it stores nothing that the reader hasn't uncovered.
(function () {
  "use strict";

  var root = document.documentElement;
  var key = "hintbook:" + root.dataset.book;
  var page = root.dataset.page;
  var unsaved = null;

  // open: page -> names of opened details; used: page -> names of all ever opened; done: page -> title;
  // next: page -> title, sign and when it opens; ticks: task -> when it is ticked; language: as chosen.
  function load() {
    var kept = unsaved;
    try {
      kept = JSON.parse(localStorage.getItem(key)) || kept;
    } catch (e) { /* storage is switched off or full of something else: remember until the page is left */ }
    kept = kept || {};
    ["open", "used", "done", "next", "ticks"].forEach(function (part) {
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
    if ("serviceWorker" in navigator) navigator.serviceWorker.register(root.dataset.root + "sw.js").catch(function () { /* then every visit needs the network */ });
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

  function all(selector, within) {
    return Array.prototype.slice.call((within || document).querySelectorAll(selector));
  }

  function say() {
    var status = document.querySelector("[data-said]");
    status.textContent = status.dataset.said;
  }

  // "a,b c": one of a and b, and c as well.
  function opens(after, done) {
    return after.split(" ").every(function (group) {
      return !group || group.split(",").some(function (one) { return one in done; });
    });
  }

  function stagePage() {
    var done = document.querySelector("[data-done]");
    var next = document.querySelector("[data-next]");
    var joined = document.querySelector("[data-joined]");
    var hide = document.querySelector("[data-hide]");
    var keeps = all("details[data-keep]");

    // An answer that asks once more counts when it shows itself.
    function tierOf(each) {
      if (each.dataset.keep === "now") return "answer";
      return each.dataset.keep === "answer" && each.querySelector("[data-keep]") ? "" : each.dataset.keep;
    }

    function links(list, attested) {
      return all("li[data-page]", list).map(function (item) {
        return {
          page: item.dataset.page,
          title: item.querySelector("a").textContent,
          sign: item.querySelector("p").textContent,
          after: attested ? "" : item.dataset.after
        };
      });
    }

    function keepLinks(kept, found) {
      found.forEach(function (link) {
        var old = kept.next[link.page];
        kept.next[link.page] = { title: link.title, sign: link.sign, after: old && !old.after ? "" : link.after };
      });
    }

    // A step that needs several others moves into the open as soon as they are all done here.
    function bringJoined() {
      if (!joined) return;
      var did = load().done;
      all("li[data-page]", joined).forEach(function (item) {
        if (opens(item.dataset.after, did)) next.appendChild(item);
      });
      joined.hidden = !joined.querySelector("li");
    }

    var before = load();
    (before.open[page] || []).forEach(function (name) {
      keeps.forEach(function (each) { if (each.dataset.keep === name) each.open = true; });
    });
    if (page in before.done) {
      done.open = true;
      tellUse();
    }
    bringJoined();

    keeps.forEach(function (each) {
      each.addEventListener("toggle", function () {
        var names = keeps.filter(function (one) { return one.open; }).map(function (one) { return one.dataset.keep; });
        change(function (kept) {
          if (names.length) kept.open[page] = names;
          else delete kept.open[page];
          if (each.open && (kept.used[page] || []).indexOf(tierOf(each)) < 0) kept.used[page] = (kept.used[page] || []).concat(tierOf(each));
        });
        if (done.open) tellUse();
      });
    });

    done.addEventListener("toggle", function () {
      if (!done.open) return;
      change(function (kept) { kept.done[page] = document.querySelector("h1").textContent; });
      bringJoined();
      change(function (kept) { keepLinks(kept, links(next, false)); });
      tellUse();
    });

    if (joined) joined.addEventListener("toggle", function () {
      if (joined.open && done.open) change(function (kept) { keepLinks(kept, links(joined, true)); });
    });

    hide.hidden = false;
    hide.addEventListener("click", function () {
      all("details").forEach(function (each) { each.open = false; });
      change(function (kept) {
        delete kept.open[page];
        delete kept.done[page];
      });
      say();
    });
  }

  function frontPage() {
    var way = document.querySelector("[data-way]");
    var first = all("[data-first] > li");

    function fill(name, links) {
      var box = way.querySelector("[data-way-" + name + "]");
      var list = box.querySelector("ul");
      list.textContent = "";
      links.forEach(function (link) {
        var item = document.createElement("li");
        var anchor = document.createElement("a");
        anchor.href = link.page + ".html";
        anchor.textContent = link.title;
        item.appendChild(anchor);
        if (link.sign) {
          var sign = document.createElement("p");
          sign.textContent = link.sign;
          item.appendChild(sign);
        }
        list.appendChild(item);
      });
      box.hidden = !links.length;
    }

    function draw() {
      var kept = load();
      var done = Object.keys(kept.done).map(function (each) { return { page: each, title: kept.done[each] }; });
      var open = first.map(function (item) {
        return { page: item.dataset.page, title: item.querySelector("a").textContent, sign: item.querySelector("p").textContent, after: "" };
      });
      Object.keys(kept.next).forEach(function (each) {
        var link = kept.next[each];
        if (opens(String(link.after), kept.done)) open.push({ page: each, title: link.title, sign: link.sign });
      });
      way.hidden = !done.length && !Object.keys(kept.open).length;
      fill("open", open.filter(function (link) { return !(link.page in kept.done); }));
      fill("done", done);
      tellUse();
      document.querySelector(".first").hidden = !way.hidden;
    }

    document.querySelector("[data-again]").addEventListener("click", function () {
      var language = load().language;
      unsaved = null;
      try {
        localStorage.removeItem(key);
      } catch (e) { /* nothing was kept */ }
      if (language) change(function (kept) { kept.language = language; });
      draw();
      way.querySelector("details").open = false;
      say();
    });
    // Also when the browser brings the page back as it was left.
    addEventListener("pageshow", draw);
    draw();
  }

  function resetPage() {
    all("[data-tick]").forEach(function (box) {
      box.checked = box.dataset.tick in load().ticks;
      box.addEventListener("change", function () {
        change(function (kept) {
          if (box.checked) kept.ticks[box.dataset.tick] = 1;
          else delete kept.ticks[box.dataset.tick];
        });
      });
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

  speak();
  stay();
  all("video").forEach(hold);
  if (page) stagePage();
  else if (document.querySelector("[data-tick]")) resetPage();
  else if (document.querySelector("[data-way]")) frontPage();
}());
