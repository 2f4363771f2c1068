// Remembers, on this device only, what the reader has opened and done. The pages work without it: it opens nothing that a
// reader couldn't open by hand, and it stores nothing that the reader hasn't uncovered.
(function () {
  "use strict";

  var root = document.documentElement;
  var key = "hintbook:" + root.dataset.book;
  var page = root.dataset.page;
  var unsaved = null;

  // open: page -> names of opened details; done: page -> title; next: page -> title, sign and when it opens.
  function load() {
    var kept = unsaved;
    try {
      kept = JSON.parse(localStorage.getItem(key)) || kept;
    } catch (e) { /* storage is switched off or full of something else: remember until the page is left */ }
    kept = kept || {};
    ["open", "done", "next"].forEach(function (part) {
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
    if (page in before.done) done.open = true;
    bringJoined();

    keeps.forEach(function (each) {
      each.addEventListener("toggle", function () {
        var names = keeps.filter(function (one) { return one.open; }).map(function (one) { return one.dataset.keep; });
        change(function (kept) {
          if (names.length) kept.open[page] = names;
          else delete kept.open[page];
        });
      });
    });

    done.addEventListener("toggle", function () {
      if (!done.open) return;
      change(function (kept) { kept.done[page] = document.querySelector("h1").textContent; });
      bringJoined();
      change(function (kept) { keepLinks(kept, links(next, false)); });
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
      document.querySelector(".first").hidden = !way.hidden;
    }

    document.querySelector("[data-again]").addEventListener("click", function () {
      unsaved = null;
      try {
        localStorage.removeItem(key);
      } catch (e) { /* nothing was kept */ }
      draw();
      way.querySelector("details").open = false;
      say();
    });
    // Also when the browser brings the page back as it was left.
    addEventListener("pageshow", draw);
    draw();
  }

  if (page) stagePage();
  else if (document.querySelector("[data-way]")) frontPage();
}());
