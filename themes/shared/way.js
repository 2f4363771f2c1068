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

  // Each step is noted behind all that come before it.
  var noted = [];
  var found = {};
  var left = place.dataset.did.split(" ").filter(Boolean);
  while (left.length) {
    var each = left[left.length - 1];
    if (found[each]) {
      left.pop();
      if (found[each] === "begun") noted.push(each);
      found[each] = "noted";
      continue;
    }

    found[each] = "begun";
    (before[each] || []).forEach(function (one) { if (!found[one]) left.push(one); });
  }

  place.dataset.did = noted.join(" ");
})();
