#include "sheet/html_style.h"

namespace tenter::sheet {

std::string_view htmlStyle() {
    return R"css(
:root { color-scheme: light; --text: #1b2427; --quiet: #566267; --line: #b9c2c5; --faint: #e4e8e9; --accent: #0a5c6c; }
* { box-sizing: border-box; }
html { font: 400 16px/1.5 Inter, system-ui, sans-serif; color: var(--text); background: #eef0f0; }
body { margin: 0; }
main { max-width: 1040px; margin: 0 auto; padding: 64px 56px 80px; background: #fff; }
header { display: grid; grid-template-columns: 1fr auto; gap: 8px 32px; padding-bottom: 24px; border-bottom: 2px solid var(--text); }
header p { margin: 0; color: var(--quiet); }
header .date { text-align: end; font-variant-numeric: tabular-nums; }
h1 { grid-column: 1 / -1; margin: 8px 0 0; font-size: 44px; line-height: 1.1; font-weight: 700; letter-spacing: -0.015em; overflow-wrap: anywhere; }
.facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(150px, 1fr)); gap: 16px 24px; margin: 24px 0 0; }
.facts dt { font-size: 13px; color: var(--quiet); }
.facts dd { margin: 2px 0 0; font-weight: 600; overflow-wrap: anywhere; }
.facts dd span { display: inline-block; max-width: 100%; }
h2 { display: flex; flex-wrap: wrap; align-items: baseline; gap: 4px 16px; margin: 72px 0 0; padding-top: 16px; border-top: 1px solid var(--line); font-size: 28px; line-height: 1.2; letter-spacing: -0.01em; }
h3 { margin: 48px 0 16px; font-size: 18px; line-height: 1.3; }
h2 small, h3 small { font-size: 15px; font-weight: 400; letter-spacing: 0; color: var(--quiet); }
h3 small { margin-inline-start: 12px; }
p { max-width: 72ch; margin: 12px 0; }
.note { font-size: 13.5px; line-height: 1.45; color: var(--quiet); max-width: 88ch; }
.caution { padding: 16px 20px; border-inline-start: 4px solid var(--accent); background: #f2f5f5; }
.shelf { display: flex; flex-wrap: wrap; align-items: flex-end; gap: 24px; margin: 0 0 28px; }
figure { margin: 0; }
.shelf figure { display: flex; flex-direction: column; align-self: flex-start; }
.shelf svg { display: block; border: 1px solid var(--line); max-width: 100%; height: auto; }
figcaption { margin-bottom: 8px; font-size: 13.5px; line-height: 1.35; }
figcaption strong { display: block; }
figcaption span { color: var(--quiet); }
.plots { display: grid; grid-template-columns: repeat(auto-fit, minmax(400px, 1fr)); gap: 24px 40px; }
.plots svg { display: block; width: 100%; height: auto; font: 400 11px/1 Inter, system-ui, sans-serif; font-variant-numeric: tabular-nums; }
.scroll { overflow-x: auto; }
table { width: 100%; border-collapse: collapse; font-size: 13.5px; line-height: 1.4; font-variant-numeric: tabular-nums; }
caption { text-align: start; font-size: 18px; font-weight: 700; line-height: 1.3; padding: 40px 0 10px; }
th, td { padding: 6px 16px 6px 0; text-align: start; vertical-align: top; font-weight: 400; border-bottom: 1px solid var(--faint); overflow-wrap: break-word; }
th:last-child, td:last-child { padding-inline-end: 0; }
thead th { vertical-align: bottom; font-weight: 600; border-bottom: 1px solid var(--text); }
tbody th { font-weight: 600; }
.n { text-align: end; }
.findings { list-style: none; margin: 0; padding: 0; }
.findings li { display: grid; grid-template-columns: 7rem 1fr; gap: 0 16px; padding: 12px 0; border-top: 1px solid var(--faint); }
.findings li:first-child { border-top: 1px solid var(--text); }
.findings p { margin: 0; }
.findings .severity { font-weight: 700; }
.findings .note { margin-top: 4px; }
@media (max-width: 640px) { main { padding: 32px 20px 48px; } h1 { font-size: 32px; } .plots { grid-template-columns: 1fr; } .findings li { grid-template-columns: 1fr; } }
@media print {
  @page { margin: 16mm 14mm 18mm; }
  html { font-size: 12px; background: none; }
  main { max-width: none; padding: 0; }
  h2, h3, caption { break-after: avoid; }
  figure, tr, .findings li, .caution { break-inside: avoid; }
  thead { display: table-header-group; }
  .plots { grid-template-columns: 1fr 1fr; }
  .scroll { overflow: visible; }
}
)css";
}

}  // namespace tenter::sheet
