// Before it stands the way: each step's page, with the pages of the steps right before it. Tells this page all that comes before its step;
// what the page names by itself is right before it.
(function () {
  "use strict";

  var place = document.querySelector("[data-did]");
  if (!place) return;
  var before = {};
  way.forEach(function (line) {
    var pages = line.split(" ");
    before[pages[0]] = pages.slice(1);
  });

  var found = {};
  var left = place.dataset.did.split(" ").filter(Boolean);
  while (left.length) {
    var each = left.pop();
    if (each in found) continue;
    found[each] = 1;
    (before[each] || []).forEach(function (one) { left.push(one); });
  }

  place.dataset.did = way.map(function (line) { return line.split(" ")[0]; }).filter(function (page) { return page in found; }).join(" ");
})();
