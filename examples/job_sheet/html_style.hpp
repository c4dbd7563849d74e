#ifndef JOB_SHEET_HTML_STYLE_HPP
#define JOB_SHEET_HTML_STYLE_HPP

#include <string_view>

namespace job_sheet {

/// How the page looks: dark on white, wide on paper and narrow on a telephone. Every text has a
/// contrast of 4.5 to 1 or more.
inline constexpr std::string_view html_style = R"css(
:root { color-scheme: light; --ink: #1a1d21; --soft: #4a525b; --line: #b9c0c8; --hole: #cfe2f3; --hole-ink: #17507f;
  --shaft: #f7dfba; --shaft-ink: #7a4a00; --bad: #a1160f; --warn: #8a4b00; --good: #1d6332; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1rem; max-width: 62rem; color: var(--ink); background: #fff;
  font: 1rem/1.45 "Liberation Sans", Arial, Helvetica, sans-serif; }
h1 { font-size: 1.7rem; margin: 0 0 .4rem; line-height: 1.2; }
h2 { font-size: 1.2rem; margin: 1.6rem 0 .5rem; border-bottom: 2px solid var(--ink); padding-bottom: .15rem; }
h3 { font-size: 1.15rem; margin: 0; }
p { margin: .3rem 0; max-width: 46rem; }
ul { margin: .2rem 0; padding-left: 1.2rem; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--soft); font-size: .85rem; padding: .3rem 0; }
th, td { text-align: left; vertical-align: top; padding: .25rem .7rem .25rem 0; border-bottom: 1px solid var(--line); }
thead th { color: var(--soft); font-size: .85rem; font-weight: 600; }
td.number, th.number { text-align: right; white-space: nowrap; }
caption, .nowrap, .limits { white-space: nowrap; }
.limits { font-weight: 700; font-size: 1.05rem; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .1rem .9rem; margin: .3rem 0; }
dt { color: var(--soft); } dd { margin: 0 0 .15rem; grid-column: 2; }
.brief { border-left: 3px solid var(--hole-ink); padding-left: .6rem; font-size: 1.02rem; }
.brief dd { font-weight: 600; }
.wide { overflow-x: auto; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: .3rem .5rem; }
nav a { display: inline-block; padding: .25rem .6rem; border: 1px solid var(--line); border-radius: .3rem; color: var(--hole-ink); text-decoration: none; }
.cautions { border: 2px solid var(--bad); border-radius: .3rem; padding: .5rem .9rem; margin: 1rem 0; }
.cautions h2 { border: 0; margin: 0; padding: 0; color: var(--bad); }
.card { border: 1px solid var(--line); border-radius: .4rem; padding: .8rem 1rem; margin: 1rem 0; break-inside: avoid; }
.card header { display: flex; flex-wrap: wrap; gap: .2rem .8rem; align-items: baseline; justify-content: space-between; }
.card h4 { font-size: .85rem; color: var(--soft); margin: .7rem 0 .1rem; }
.status { font-weight: 700; font-size: .9rem; }
.answered { color: var(--good); } .look-at { color: var(--warn); } .refused { color: var(--bad); }
.sides { display: flex; flex-wrap: wrap; gap: .5rem 1.5rem; align-items: flex-start; }
.sides > div { flex: 1 1 20rem; min-width: 0; }
.sides > div:only-child { flex-basis: 100%; }
.sides > figure { flex: 0 1 19rem; margin: .4rem 0 0; }
.must { font-size: 1.02rem; }
.callout { font-weight: 700; }
.note, .source { color: var(--soft); font-size: .85rem; font-weight: 400; }
.aim { font-size: .9rem; }
svg { display: block; width: 100%; height: auto; font-family: inherit; }
svg text { font-size: 15px; fill: var(--ink); paint-order: stroke; stroke: #fff; stroke-width: 3px; }
svg .limit, svg .role { text-anchor: middle; }
svg .role { font-weight: 700; }
svg .deviation, svg .note { font-size: 12.5px; fill: var(--soft); }
svg .zero { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 9 3 2 3; }
svg .hole { fill: var(--hole); stroke: var(--hole-ink); stroke-width: 1.5; }
svg .shaft { fill: var(--shaft); stroke: var(--shaft-ink); stroke-width: 1.5; }
footer { margin-top: 1.5rem; border-top: 2px solid var(--ink); padding-top: .5rem; font-weight: 700; }
@media (max-width: 36rem) { body { padding: .7rem; } .card { padding: .7rem; } th, td { padding-right: .4rem; font-size: .88rem; } .limits { font-size: .92rem; } }
@page { size: A4; margin: 12mm; }
@media print {
  :root { font-size: 9pt; }
  body { padding: 0; max-width: none; line-height: 1.3; }
  p, .card h4 { margin: .2rem 0 .1rem; }
  th, td { padding-top: .1rem; padding-bottom: .1rem; }
  .wide { overflow: visible; }
  nav { display: none; }
  .card { margin: 3mm 0; padding: 2mm 3mm; }
  .sides > figure { flex-basis: 52mm; }
  h2 { break-after: avoid; }
}
)css";

} // namespace job_sheet

#endif
