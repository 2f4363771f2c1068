namespace HintBook.Sittings.Page;

/// <summary>How the page and its plots look: on light and dark screens, and on A4.</summary>
internal static class PageStyle
{
    // Text stands out from the ground by 4.5 to 1 at least, what is drawn by 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11), except lines that only guide the eye.
    public const string Css =
        """
        :root {
          color-scheme: light dark;
          --ground: #fff; --ink: #1d1d1f; --quiet: #55565c; --rule: #c9c9d0; --half: #cfe0f5; --dot: #1f5fa8; --middle: #0b3a6f;
          --nudge: #5f8fc9; --clue: #2f6db5; --answer: #0d3f7a; --gave-up: #b3372e;
          --look-0: #1f5fa8; --look-1: #b3372e; --look-2: #2c7a3f; --look-3: #7b3fa0; --look-4: #8a5a00; --look-5: #3d3d45;
        }
        @media (prefers-color-scheme: dark) {
          :root {
            --ground: #16171a; --ink: #ececf0; --quiet: #b4b5bd; --rule: #4a4b52; --half: #2b4566; --dot: #8fbcf2; --middle: #e4effd;
            --nudge: #5a8ccb; --clue: #86b4ea; --answer: #cfe3fb; --gave-up: #ff8a7d;
            --look-0: #8fbcf2; --look-1: #ff8a7d; --look-2: #7fd095; --look-3: #d3a4f0; --look-4: #e5b95c; --look-5: #c9cad2;
          }
        }
        * { box-sizing: border-box; }
        body { margin: 0 auto; padding: 1.5rem 1rem 4rem; max-width: 56rem; background: var(--ground); color: var(--ink); }
        body { font: 1rem/1.5 system-ui, sans-serif; }
        h1, h2 { line-height: 1.2; text-wrap: balance; }
        h2 { margin: 2.5rem 0 .5rem; }
        figure { margin: 1rem 0; }
        figcaption, caption, .quiet { color: var(--quiet); }
        caption { text-align: start; padding-bottom: .4rem; }
        .wide { overflow-x: auto; }
        .wide:focus-visible { outline: 2px solid var(--dot); outline-offset: 2px; }
        svg { display: block; width: 100%; min-width: 40rem; height: auto; font: 13px system-ui, sans-serif; fill: var(--ink); }
        table { border-collapse: collapse; font-size: .9rem; }
        th, td { padding: .25rem .7rem .25rem 0; text-align: start; vertical-align: top; border-bottom: 1px solid var(--rule); }
        td.number, th.number { text-align: end; font-variant-numeric: tabular-nums; }
        td.number { white-space: nowrap; }
        th[scope=row] { min-width: 6em; font-weight: 600; }
        .key { display: flex; flex-wrap: wrap; gap: .3rem 1.2rem; margin: .5rem 0; padding: 0; list-style: none; }
        .key i { display: inline-block; width: 1.6em; height: .7em; margin-inline-end: .4em; background: var(--swatch); print-color-adjust: exact; }
        i.nudge { --swatch: var(--nudge); } i.clue { --swatch: var(--clue); } i.answer { --swatch: var(--answer); } i.gave-up { --swatch: var(--gave-up); }
        .below { text-anchor: middle; } .beside { text-anchor: end; }
        .mark { fill: var(--ink); } .count { fill: var(--quiet); font-size: 11px; }
        .grid { stroke: var(--rule); stroke-width: 1; }
        .half { fill: var(--half); } .median { stroke: var(--middle); stroke-width: 3; } .sure { stroke: var(--middle); stroke-width: 2; }
        .sitting { fill: var(--dot); fill-opacity: .75; }
        .nudge { fill: var(--nudge); } .clue { fill: var(--clue); } .answer { fill: var(--answer); } .gave-up { fill: var(--gave-up); }
        .trail { fill: none; stroke: var(--dot); stroke-width: 2; } .spread { stroke: var(--dot); stroke-width: 2; }
        .middle, .share { fill: var(--dot); }
        .line { fill: none; stroke-width: 1.8; } .end { stroke: none; }
        .look-0 { stroke: var(--look-0); } .look-1 { stroke: var(--look-1); stroke-dasharray: 7 3; } .look-2 { stroke: var(--look-2); stroke-dasharray: 2 3; }
        .look-3 { stroke: var(--look-3); stroke-dasharray: 10 3 2 3; }
        .look-4 { stroke: var(--look-4); } .look-5 { stroke: var(--look-5); stroke-dasharray: 4 4; }
        .end.look-0 { fill: var(--look-0); } .end.look-1 { fill: var(--look-1); } .end.look-2 { fill: var(--look-2); }
        .end.look-3 { fill: var(--look-3); } .end.look-4 { fill: var(--look-4); } .end.look-5 { fill: var(--look-5); }
        @page { size: A4; margin: 15mm; }
        @media print {
          :root {
            color-scheme: light;
            --ground: #fff; --ink: #000; --quiet: #444; --rule: #bbb; --half: #cfe0f5; --dot: #1f5fa8; --middle: #0b3a6f;
            --nudge: #5f8fc9; --clue: #2f6db5; --answer: #0d3f7a; --gave-up: #b3372e;
            --look-0: #1f5fa8; --look-1: #b3372e; --look-2: #2c7a3f; --look-3: #7b3fa0; --look-4: #8a5a00; --look-5: #3d3d45;
          }
          body { max-width: none; padding: 0; font-size: 10pt; }
          h2, h3, caption, thead, .key { break-after: avoid; }
          figure, tr, thead { break-inside: avoid; }
          tbody tr:first-child { break-before: avoid; }
          .wide { overflow: visible; }
          svg { min-width: 0; max-height: 230mm; print-color-adjust: exact; }
          table { font-size: 8.5pt; }
        }
        """;
}
