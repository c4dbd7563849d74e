#ifndef JOB_SHEET_HTML_STYLE_HPP
#define JOB_SHEET_HTML_STYLE_HPP

#include <string_view>

namespace job_sheet {

/// How the page looks: dark on white, wide on paper and narrow on a telephone. Every text has a contrast of 4.5
/// to 1 or more, and what colour says is said in words or by a shape as well.
inline constexpr std::string_view html_style = R"css(
:root { color-scheme: light; --ink: #14181c; --soft: #454d55; --line: #b9c0c8; --pale: #f3f5f7;
  --link: #0b4a7d; --good: #17572b; --look: #7a4300; --cant: #3d3a86; --wont: #8f1207; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1rem; max-width: 60rem; color: var(--ink); background: #fff; overflow-wrap: anywhere;
  font: 1rem/1.45 "Liberation Sans", Arial, Helvetica, sans-serif; }
h1, h2, h3, h4 { line-height: 1.25; overflow-wrap: anywhere; }
h1 { font-size: 1.7rem; margin: 0 0 .4rem; }
h2 { font-size: 1.25rem; margin: 1.6rem 0 .5rem; border-bottom: 2px solid var(--ink); padding-bottom: .15rem; }
h3 { font-size: 1.1rem; margin: 1rem 0 .3rem; }
h4 { font-size: 1rem; margin: 0 0 .2rem; }
p { margin: .25rem 0; max-width: 48rem; }
ul { margin: .2rem 0; padding-left: 1.2rem; }
a { color: var(--link); }
.wide { overflow-x: auto; margin: .4rem 0; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--soft); font-size: .875rem; padding: .2rem 0; }
th, td { text-align: left; vertical-align: top; padding: .25rem .8rem .25rem 0; border-bottom: 1px solid var(--line); }
th a, td, tbody th { overflow-wrap: anywhere; }
thead th { color: var(--soft); font-size: .875rem; }
tbody th { font-weight: 600; }
.n { text-align: right; white-space: nowrap; }
dl { display: grid; grid-template-columns: 6.5rem 1fr; gap: .05rem .8rem; margin: .3rem 0; font-size: .94rem; }
dt { color: var(--soft); }
dd { margin: 0 0 .1rem; grid-column: 2; min-width: 0; }
.signs { position: absolute; }
.sign { width: 1.1em; height: 1.1em; vertical-align: -.18em; margin-right: .35em; flex: none; }
.verdict { font-weight: 700; white-space: nowrap; }
.good { color: var(--good); } .look { color: var(--look); } .cant { color: var(--cant); } .wont { color: var(--wont); }
.count { font-weight: 700; }
.cautions { border: 2px solid var(--wont); border-radius: .3rem; padding: .5rem .9rem; margin: 1rem 0; }
.cautions h2 { border: 0; margin: 0; padding: 0; color: var(--wont); }
.caution { border-left: .3rem solid var(--wont); background: #fdf1f0; padding: .2rem .6rem; max-width: none; }
.caution::before { content: "Mind: "; font-weight: 700; color: var(--wont); }
.card { border: 1px solid var(--line); border-top: 3px solid var(--ink); padding: .7rem 1rem 1rem; margin: 1.2rem 0; display: flow-root; }
.card > header { display: flex; flex-wrap: wrap; gap: .2rem 1rem; align-items: baseline; justify-content: space-between; }
.card h3 { font-size: 1.25rem; margin: 0; }
.card section { border-top: 1px solid var(--line); margin-top: .8rem; padding-top: .5rem; clear: both; display: flow-root; }
.must { color: var(--soft); }
.parts { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr)); gap: .6rem; margin: .5rem 0; }
.part { background: var(--pale); padding: .5rem .8rem .6rem; min-width: 0; }
.part h4 span { font-weight: 400; color: var(--soft); }
.part p { max-width: none; }
.size { font-size: 1.5rem; font-weight: 700; line-height: 1.2; font-variant-numeric: tabular-nums; }
.other { font-size: 1.05rem; font-variant-numeric: tabular-nums; }
.aim { font-weight: 700; }
.blank { display: flex; gap: .4rem; align-items: flex-end; color: var(--soft); min-height: 2.2rem; }
.blank span { flex: 3; border-bottom: 1px solid var(--ink); min-width: 2rem; }
.blank .who { flex: 1; }
.remarks { list-style: none; padding: 0; margin: .5rem 0; }
.remarks li { display: flex; font-weight: 600; }
.remarks li .sign { margin-top: .15em; }
.remarks li span { min-width: 0; }
figure { float: right; width: min(100%, 22.5rem); margin: .3rem 0 .6rem 1rem; }
figure svg { display: block; width: 100%; height: auto; }
figcaption { color: var(--soft); font-size: .875rem; }
.side { min-width: 0; }
.note, .source { color: var(--soft); font-size: .875rem; }
@media (max-width: 44rem) {
  body { padding: .6rem; }
  .card { padding: .6rem .6rem .8rem; margin: 1rem 0; }
  figure { float: none; margin: .5rem 0; }
  dl { grid-template-columns: 1fr; }
  dd { grid-column: 1; }
  dt { font-weight: 600; }
}
@page { size: A4; margin: 12mm; }
@media print {
  :root { font-size: 9pt; }
  body { padding: 0; max-width: none; line-height: 1.3; }
  .wide { overflow: visible; }
  table { max-width: 100%; }
  .n { white-space: normal; }
  th, td { padding-top: .1rem; padding-bottom: .1rem; }
  .part { background: none; border: 1px solid var(--line); }
  .blank { min-height: 9mm; }
  figure { width: 84mm; }
  figure, table, tr, .part, .remarks li, .caution { break-inside: avoid; }
  h2, h3, h4, caption { break-after: avoid; }
  .card { margin: 4mm 0; }
  .caution { background: none; }
}
)css";

} // namespace job_sheet

#endif
