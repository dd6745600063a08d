#include "sim/report/page_style.h"

namespace proofstand::report {

std::string_view page_style() {
  return R"(
@page { size: A4; margin: 14mm 15mm; }
* { box-sizing: border-box; }
html { background: #EFECE4; }
body { margin: 0 auto; max-width: 186mm; padding: 12mm 10mm; background: #FBF9F4; color: #1D2A33;
  font: 15px/1.5 Inter, "Source Sans 3", "Segoe UI", "Helvetica Neue", sans-serif; font-variant-numeric: tabular-nums; }
p { margin: 0 0 .5em; }
header .about { color: #4B5963; font-size: 14px; }
h1 { font-size: 40px; line-height: 1.15; margin: .15em 0 .1em; font-weight: 700; letter-spacing: -.01em; }
h2 { font-size: 17px; margin: 1.6em 0 .5em; padding-top: .7em; border-top: 1px solid #D8D3C6; font-weight: 600; }
h3 { font-size: 13px; margin: 0 0 .5em; font-weight: 600; color: #4B5963; }
.reason { font-size: 17px; margin: 0; }
.totals { color: #4B5963; margin: .2em 0 0; }
.bars { display: grid; grid-template-columns: 1fr 1fr; gap: 2px 26px; margin-top: 1em; }
.bar { display: grid; grid-template-columns: 92px 1fr 74px; align-items: center; gap: 10px; font-size: 14px; }
.bar .track { height: 10px; background: #E9E4D8; border-radius: 5px; overflow: hidden; }
.bar .full { height: 10px; background: #0B6E6E; border-radius: 5px; }
.bar .part { height: 10px; border-radius: 5px;
  background: repeating-linear-gradient(115deg, #9A4A00 0 5px, #B66A20 5px 8px); }
.bar .points { color: #4B5963; text-align: right; white-space: nowrap; }
.finding { margin: 0 0 1em; padding-left: 14px; border-left: 3px solid #D8D3C6; break-inside: avoid; }
.finding.critical { border-left: 6px double #9A4A00; padding-left: 11px; }
.finding.major { border-left-color: #9A4A00; }
.finding .head { font-weight: 600; }
.finding .cost { color: #4B5963; font-weight: 400; }
.finding.critical .cost, .finding.major .cost { color: #9A4A00; }
.finding .why { color: #4B5963; }
.finding ul { margin: .2em 0 0; padding: 0; list-style: none; color: #4B5963; font-size: 13px; }
.finding li b { color: #1D2A33; font-weight: 600; margin-right: .6em; }
.pictures { display: grid; grid-template-columns: repeat(2, 1fr); gap: 14px 26px; }
figure { margin: 0; break-inside: avoid; }
.curves { display: grid; grid-template-columns: repeat(3, 1fr); gap: 12px 18px; break-inside: avoid; margin-bottom: 1.2em; }
.wide figure { margin: 1em 0 .4em; }
.wide svg { max-width: 520px; }
figcaption { font-size: 13px; color: #4B5963; margin-bottom: 4px; }
svg { width: 100%; height: auto; display: block; font-family: inherit; }
.square svg { max-width: 260px; margin: 0 auto; }
table { border-collapse: collapse; width: 100%; font-size: 13.5px; margin: .4em 0 1.2em; }
th { text-align: left; font-weight: 600; color: #4B5963; }
th, td { padding: 4px 10px 4px 0; border-bottom: 1px solid #D8D3C6; vertical-align: top; }
td.number, th.number { text-align: right; }
td.off { color: #9A4A00; font-weight: 600; }
.small { font-size: 13px; color: #4B5963; }
.small li { margin-bottom: .25em; }
ul.plain { list-style: none; padding: 0; margin: 0; columns: 2; column-gap: 26px; font-size: 13.5px; }
ul.plain li { break-inside: avoid; margin-bottom: .35em; padding-left: 18px; text-indent: -18px; }
ul.plain li::before { content: "✓"; color: #0B6E6E; display: inline-block; width: 18px; text-indent: 0; }
ul.plain.aside li::before { content: "–"; color: #4B5963; }
.cautions { background: #F4EFE3; padding: 10px 16px; margin-top: 1.6em; break-inside: avoid; }
.cautions h2 { border: 0; margin: 0 0 .3em; padding: 0; font-size: 14px; }
@media (max-width: 640px) { .bars, .pictures, .curves { grid-template-columns: 1fr; } ul.plain { columns: 1; } }
@media print { html, body { background: #fff; } body { padding: 0; font-size: 12.5px; } .bar { font-size: 12px; }
  * { -webkit-print-color-adjust: exact; print-color-adjust: exact; } }
)";
}

}  // namespace proofstand::report
