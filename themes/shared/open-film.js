// The films of a sealed page. A reader who wants to see one waits for all of it: its segments are opened one after another and put together in the page's
// memory, since no browser plays what is sealed. What is said in it comes the same way.
(function () {
  "use strict";

  var root = document.documentElement;
  var hintbook = window.hintbook;
  if (!hintbook) return;

  hintbook.films = function (piece) {
    all("video[data-sealed-film]", piece).forEach(function (video) {
      var button = video.parentNode.querySelector("[data-film-open]");
      if (button) button.addEventListener("click", function () { show(video, button); });
    });
  };

  function all(selector, within) {
    return [].slice.call(within.querySelectorAll(selector));
  }

  async function show(video, button) {
    var progress = video.parentNode.querySelector("progress");
    var line = video.parentNode.querySelector("[role=status]");
    var said = video.dataset.sealedFilm.split(" ");
    button.disabled = true;
    progress.value = 0;
    progress.hidden = false;
    line.textContent = line.dataset.coming;
    var film = await hintbook.file(said, function (part) { progress.value = part; });
    progress.hidden = true;
    button.disabled = false;
    line.textContent = film ? "" : line.dataset.failed;
    if (!film) return;
    button.hidden = true;
    video.controls = true;
    video.src = URL.createObjectURL(film.slice(0, film.size, said[4]));
    video.focus();
    // A browser that wants another touch for that shows its own button.
    video.play().catch(function () { });
    caption(video);
  }

  // Those in the page's language are shown, else in the first of the reader's. From a memory stick a browser loads no captions: they are made here.
  function caption(video) {
    var tracks = all("track[data-sealed-captions]", video);
    var shown = [root.lang].concat(navigator.languages || []).map(function (tag) {
      return tracks.filter(function (each) { return each.srclang.split("-")[0] === tag.split("-")[0]; })[0];
    }).filter(Boolean)[0];
    tracks.forEach(async function (each) {
      var captions = await hintbook.file(each.dataset.sealedCaptions.split(" "));
      if (!captions) return;
      var track = video.addTextTrack("captions", each.label, each.srclang);
      track.mode = "hidden";
      cuesIn(await captions.text()).forEach(function (cue) { track.addCue(cue); });
      track.mode = each === shown ? "showing" : "disabled";
      each.remove();
    });
  }

  // The script of a book that lies open has the same, and stays as it is.
  function cuesIn(captions) {
    return captions.trim().split("\n\n").map(function (block) {
      var lines = block.split("\n");
      var at = lines.findIndex(function (line) { return line.indexOf("-->") >= 0; });
      var times = at >= 0 && lines[at].match(/[0-9:.]+/g);
      return times && placed(new VTTCue(seconds(times[0]), seconds(times[1]), lines.slice(at + 1).join("\n")), lines[at]);
    }).filter(Boolean);
  }

  // Moments such as 00:02:16.000.
  function seconds(moment) {
    return moment.split(":").reduce(function (sum, part) { return 60 * sum + Number(part); }, 0);
  }

  // Where a cue stands (W3C, "WebVTT", section 3.4): "line:0 position:20%,line-left align:start".
  function placed(cue, times) {
    times.split(/\s+/).slice(3).forEach(function (setting) {
      var parts = setting.split(/[:,]/);
      var isWord = parts[0] === "align" || parts[0] === "vertical";
      if (["line", "position", "size", "align", "vertical"].indexOf(parts[0]) < 0) return;
      if (parts[0] === "line") cue.snapToLines = parts[1].indexOf("%") < 0;
      cue[parts[0]] = isWord ? parts[1] : parseFloat(parts[1]);
      if (parts[2]) cue[parts[0] + "Align"] = parts[2];
    });
    return cue;
  }
}());
