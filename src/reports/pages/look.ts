/**
 * The look of the pages: paper by day, slate by night, ink on white in print. Contrast of every pair of colours is
 * tested against WCAG 2.2 AA (4.5:1 for text, 3:1 for lines that carry meaning). Sizes are for reading at arm's length.
 */
export const STYLE = `:root {
  color-scheme: light dark;
  --paper: #faf8f3;
  --sheet: #f1ede3;
  --ink: #22262a;
  --faint: #5a5f63;
  --line: #cdc7b8;
  --link: #1d5666;
  --alarm: #9a2f16;
  --calm: #2c6142;
  --band: #d9e6dc;
  --mark: #7a5a10;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #171c20;
    --sheet: #20272c;
    --ink: #e6e2d8;
    --faint: #a9aeab;
    --line: #414b50;
    --link: #8ec7d6;
    --alarm: #f0a58f;
    --calm: #9bd0ae;
    --band: #27402f;
    --mark: #e2c274;
  }
}
* { box-sizing: border-box; }
html { font-size: 112.5%; -webkit-text-size-adjust: 100%; }
body {
  margin: 0 auto;
  max-width: 62rem;
  padding: 0 1.25rem 3rem;
  background: var(--paper);
  color: var(--ink);
  font-family: Charter, "Bitstream Charter", "Source Serif 4", Cambria, Georgia, "DejaVu Serif", serif;
  line-height: 1.55;
  font-variant-numeric: lining-nums tabular-nums;
  overflow-wrap: break-word;
}
h1, h2, h3, h4, dt, th, nav, .where, .state, .mark, caption, label, button {
  font-family: "Gill Sans", "Gill Sans Nova", Candara, "Noto Sans", "DejaVu Sans", sans-serif;
}
h1 { font-size: 1.9rem; line-height: 1.2; margin: 1.6rem 0 0.4rem; font-weight: 600; }
h1::first-letter { text-transform: uppercase; }
h2 { font-size: 1.3rem; line-height: 1.3; margin: 2.2rem 0 0.6rem; padding-top: 0.7rem; border-top: 1px solid var(--line); font-weight: 600; }
h3 { font-size: 1.05rem; margin: 1.4rem 0 0.4rem; font-weight: 600; }
h4 { font-size: 1rem; margin: 1rem 0 0.3rem; font-weight: 600; }
p, ul, ol, dl { margin: 0.5rem 0 0.9rem; max-width: 44rem; }
li { margin: 0.35rem 0; }
li li { margin: 0.15rem 0; }
a { color: var(--link); text-underline-offset: 0.18em; text-decoration-thickness: 0.06em; }
a:hover { text-decoration-thickness: 0.14em; }
:focus-visible { outline: 3px solid var(--mark); outline-offset: 2px; border-radius: 2px; }
main:focus { outline: none; }
q { quotes: "\\201c" "\\201d"; font-style: italic; unicode-bidi: isolate; }
.skip { position: absolute; left: -100rem; top: 0; padding: 0.6rem 1rem; background: var(--ink); color: var(--paper); z-index: 1; }
.skip:focus { left: 0; }
.top { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.2rem 1.6rem; padding: 0.9rem 0; border-bottom: 2px solid var(--ink); }
.project { margin: 0; font-weight: 600; }
.project a { color: inherit; text-decoration: none; }
.project a:hover { text-decoration: underline; }
.top ul { display: flex; flex-wrap: wrap; gap: 0.2rem 1.1rem; list-style: none; margin: 0; padding: 0; max-width: none; }
.top li { margin: 0; }
.top nav a { display: inline-block; padding: 0.3rem 0; text-decoration: none; color: var(--ink); border-bottom: 3px solid transparent; }
.top nav a:hover { border-bottom-color: var(--line); }
.top nav a[aria-current] { border-bottom-color: var(--mark); font-weight: 600; }
.lead p { margin-top: 0; color: var(--faint); }
.where, .detail, .time, .other, .id { color: var(--faint); }
.where, .detail, .id { font-size: 0.9rem; }
.where a, .detail a { color: inherit; }
time, .figure, .stands-at, .time, tbody th { white-space: nowrap; }
.stands-at { margin: 0.2rem 0 0.6rem; white-space: normal; }
.stands-at strong { font-size: 1.75rem; font-weight: 600; }
.stands-at .other { font-size: 1.25rem; }
.state { font-weight: 600; }
.in-doubt, .stale, .doubted, .rejected { color: var(--alarm); }
.stands, .standing, .agrees { color: var(--calm); }
.superseded, .series { color: var(--faint); }
dl { display: grid; gap: 0.3rem 0; }
dl > div { display: grid; grid-template-columns: 7rem minmax(0, 1fr); gap: 0 0.9rem; }
dt { color: var(--faint); font-size: 0.92rem; padding-top: 0.1rem; }
dd { margin: 0; }
.counts { grid-template-columns: repeat(auto-fit, minmax(15rem, 1fr)); gap: 0.6rem 1.4rem; max-width: none; padding: 0.8rem 1rem; background: var(--sheet); }
.counts > div { display: block; }
.counts dd { font-size: 1.05rem; }
.clash { margin: 1rem 0 1.4rem; padding: 0.1rem 0 0.1rem 1rem; border-left: 4px solid var(--line); }
.clash.open { border-left-color: var(--alarm); }
.clash h3, .clash h2 { margin: 0.3rem 0 0; padding: 0; border: 0; font-size: 1.1rem; }
.mark { margin: 0.1rem 0 0.4rem; font-size: 0.92rem; font-weight: 600; color: var(--calm); }
.open > .mark { color: var(--alarm); }
.mark .id { font-weight: 400; }
.memo { margin: 1rem 0 1.6rem; }
.memo .words { padding-left: 1rem; border-left: 2px solid var(--line); }
.memo .words p { margin: 0.3rem 0; }
.time { display: inline-block; min-width: 3.4rem; font-size: 0.85rem; }
.wide { overflow-x: auto; margin: 0.8rem 0 1.4rem; }
table { border-collapse: collapse; width: 100%; font-size: 0.95rem; }
caption { text-align: left; font-weight: 600; padding: 0.3rem 0; }
th, td { text-align: left; vertical-align: top; padding: 0.35rem 0.8rem 0.35rem 0; border-bottom: 1px solid var(--line); }
thead th { color: var(--faint); font-weight: 600; font-size: 0.9rem; border-bottom: 2px solid var(--line); }
tbody th { font-weight: 600; }
form { display: flex; flex-wrap: wrap; align-items: center; gap: 0.6rem; margin: 1rem 0; }
form[hidden] { display: none; }
input, button { font: inherit; color: var(--ink); background: var(--sheet); border: 1px solid var(--faint); border-radius: 3px; padding: 0.45rem 0.7rem; }
input { flex: 1 1 16rem; max-width: 32rem; }
button { cursor: pointer; }
.check { margin: 0 0 1.4rem; }
.check h2 { margin-bottom: 0.2rem; }
.picture { margin: 1rem 0 1.4rem; }
.picture .wide { margin: 0; }
.picture svg { display: block; max-width: none; font-family: "Gill Sans", "Gill Sans Nova", Candara, "Noto Sans", "DejaVu Sans", sans-serif; }
figcaption { max-width: 44rem; margin-top: 0.4rem; color: var(--faint); font-size: 0.9rem; }
svg text { fill: var(--ink); font-size: 15px; }
svg .small { font-size: 14px; }
svg .tiny { font-size: 12.5px; }
svg .faint { fill: var(--faint); }
svg .strong { font-weight: 600; }
svg .calm { fill: var(--calm); }
svg .alarm { fill: var(--alarm); }
svg .end { text-anchor: end; }
svg .middle { text-anchor: middle; }
svg .in-disc { fill: var(--paper); font-size: 13px; font-weight: 600; }
svg line, svg path, svg polyline { fill: none; stroke: var(--ink); stroke-width: 1.5; }
svg .grid { stroke: var(--line); stroke-width: 1; }
svg .thin { stroke: var(--faint); stroke-width: 1.4; }
svg .lead { stroke: var(--faint); stroke-width: 1; stroke-dasharray: 3 3; }
svg .limit { stroke: var(--alarm); stroke-width: 2; }
svg .whisker { stroke: var(--mark); stroke-width: 2.5; }
svg .hatch { stroke: var(--alarm); stroke-width: 1; opacity: 0.45; }
svg .paper-line { stroke: var(--paper); stroke-width: 1.5; }
svg .band { fill: var(--band); }
svg .stripe { fill: var(--sheet); }
svg .dot, svg .disc { fill: var(--link); }
svg .ring { fill: var(--paper); stroke: var(--link); stroke-width: 2.5; }
svg .doubt { fill: var(--paper); stroke: var(--alarm); stroke-width: 2.5; }
svg .tip { fill: var(--faint); stroke: none; }
svg .box { fill: var(--sheet); stroke: var(--faint); stroke-width: 1.2; }
svg .own { fill: var(--band); stroke: var(--ink); stroke-width: 2; }
svg .broken { stroke: var(--alarm); stroke-width: 2; stroke-dasharray: 6 4; }
svg .part { fill: var(--band); stroke: var(--calm); stroke-width: 1.5; }
svg .less { fill: var(--paper); stroke: var(--alarm); stroke-width: 1.5; }
svg .total { fill: var(--link); stroke: none; }
svg .hole { fill: var(--sheet); stroke: var(--ink); stroke-width: 3; }
svg .panel { fill: var(--band); stroke: var(--calm); stroke-width: 2; fill-opacity: 0.8; }
svg .stuck { fill: none; stroke: var(--alarm); stroke-width: 2.5; stroke-dasharray: 8 4; }
.around { margin-top: 2.5rem; border-top: 1px solid var(--line); }
footer { margin-top: 3rem; color: var(--faint); font-size: 0.9rem; border-top: 1px solid var(--line); }
@media (max-width: 34rem) {
  body { padding: 0 0.9rem 2rem; }
  h1 { font-size: 1.55rem; }
  dl > div { grid-template-columns: minmax(0, 1fr); }
  dt { padding-top: 0.3rem; }
}
@media print {
  :root {
    --paper: #ffffff; --sheet: #f4f4f4; --ink: #000000; --faint: #444444; --line: #999999; --link: #000000;
    --alarm: #7a1f08; --calm: #1d4a30; --band: #e2e2e2; --mark: #5c4200;
  }
  html { font-size: 10.5pt; }
  body { max-width: none; padding: 0; }
  .skip, .top nav, .around, form { display: none; }
  .top { border-bottom-width: 1px; }
  a { text-decoration: none; }
  h1, h2, h3 { break-after: avoid; }
  .clash, .picture, tr, li { break-inside: avoid; }
  .wide { overflow: visible; }
  .picture svg { max-width: 100%; height: auto; }
}
`;
