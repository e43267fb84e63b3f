// Every variant of every sample, laid out by an engine on the exported page, against Tenter's own geometry:
// boxes within 0.5 px, computed font sizes within 0.01 px, line counts equal but for tight fits (lib/grid.js), which
// are counted and may be few. Source: the browser engine itself.
import {launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {compareLayouts} from './lib/compare.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {spreadWidths} from './lib/widths.js';

const shown = 12;
/** Tight fits allowed, as a share of all parts compared. */
const tightShare = 0.005;

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, widths: '40', only: ''});
const tenter = new Tenter(given.cli);
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const rows = [];
let failures = 0;
let pairs = 0;
let tightFits = 0;

try {
  for (const one of await variantsIn(given.samples)) {
    if (!`${one.sample} ${one.variant}`.includes(given.only)) continue;
    const widths = spreadWidths(one, Number(given.widths));
    const profile = profileOf[given.engine];
    const [html, computed] = await Promise.all([
      tenter.page(one.file, one.variant),
      tenter.geometry(one.file, one.variant, widths, profile),
    ]);
    const page = await MeasuredPage.open(browser, server, html);
    const found = compareLayouts(profile, await page.read(widths), computed);
    pairs += found.pairs;
    tightFits += found.tightFits.length;
    rows.push([one.sample, one.variant, widths.length, found.pairs, found.tightFits.length, found.lineDifferences, found.differences.length,
               Number(found.largestBox.toFixed(3)), Number(found.largestSize.toFixed(4))]);
    for (const fit of found.tightFits) console.log(`${one.sample}, ${one.variant}: tight fit\n${differenceLine(fit)}`);
    if (found.differences.length > 0) {
      ++failures;
      console.log(`${one.sample}, ${one.variant}:`);
      for (const difference of found.differences.slice(0, shown)) console.log(differenceLine(difference));
      const more = found.differences.length - shown;
      if (more > 0) console.log(`  and ${more} more`);
      await showLines(page, computed, found.differences.filter((difference) => difference.what === 'lines').slice(0, 4));
    }
    await page.close();
  }
} finally {
  await browser.close();
  await server.stop();
}

/** Where lines differ, the lines themselves, so that the rule behind it can be seen. */
async function showLines(page, computed, differences) {
  for (const {width, where} of differences) {
    const name = where.split(' ')[0];
    const [c, p] = name.split('.').map(Number);
    const part = computed.find((layout) => layout.width === width).cards[c].parts[p];
    console.log(`  ${where} at ${width} px, ${part.available} px available, slack ${part.slack}:`);
    for (const line of await page.lines(width, name)) console.log(`    engine    ${JSON.stringify(line)}`);
    for (const line of part.lines) console.log(`    computed  ${JSON.stringify(line.text)}  ${line.width}`);
  }
}

console.log(`\nLaid out by ${given.engine}:`);
console.log(table(['sample', 'variant', 'widths', 'parts', 'tight fits', 'line counts differ', 'differences', 'largest box px', 'largest size px'], rows));
if (rows.length === 0) {
  console.error('nothing was compared');
  process.exit(2);
}
console.log(failures === 0 ? 'All agree.' : `${failures} of ${rows.length} variants differ.`);
console.log(`Tight fits: ${tightFits} of ${pairs} parts.`);
if (tightFits > tightShare * pairs) {
  console.log(`That is more than ${tightShare * 100} %.`);
  ++failures;
}
process.exit(failures === 0 ? 0 : 1);
