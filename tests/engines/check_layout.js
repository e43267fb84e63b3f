// Compares Tenter's geometry with a browser engine: every variant of every project, on the exported page, at every whole
// width and at fractional ones, under the break profile of the engine. lib/compare.js has the tolerances. Line counts may
// differ in tight fits only, and in few of them. Source: the browser engine itself.
import {writeFile} from 'node:fs/promises';

import {countsOff, most, mostTight, readSuspects, verdict} from './lib/bars.js';
import {launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {compareLayouts} from './lib/compare.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {everyWidth, fineRatio, fractionalWidths, spreadWidths} from './lib/widths.js';

const shown = 12;

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, widths: 'every', fractional: '200', only: '', keep: ''});
const some = given.widths !== 'every';
const profile = profileOf[given.engine];
const tenter = new Tenter(given.cli);
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const fractionalCount = Number(given.fractional);
const fineBrowser = fractionalCount > 0 ? await launch(given.engine, given.browser, fineRatio) : null;
const rows = [];
/** The results that engines_table.js combines. */
const kept = [];
const faults = [];
const sum = {pairs: 0, tight: 0};

try {
  for (const one of await variantsIn(given.samples)) {
    if (!`${one.sample} ${one.variant}`.includes(given.only)) continue;
    const range = {...one, from: Math.min(one.from, 320), to: Math.max(one.to, 1920)};
    const whole = some ? spreadWidths(range, Number(given.widths)) : everyWidth(range);
    const found = await judge(one, whole, fractionalWidths(range, fractionalCount));
    sum.pairs += found.pairs;
    sum.tight += countsOff(found);
    report(one, found);
  }
} finally {
  await browser.close();
  await fineBrowser?.close();
  await server.stop();
}

/** Lays out one variant in the engine and compares it. */
async function judge(one, whole, fractional) {
  const html = await tenter.page(one.file, one.variant);
  const found = await compared(browser, html, whole, await tenter.geometry(one.file, one.variant, whole, profile));
  if (!fineBrowser) return {...found, widths: whole.length};
  const fine = await compared(fineBrowser, html, fractional, await tenter.geometry(one.file, one.variant, fractional, profile, fineRatio));
  return {
    widths: whole.length + fractional.length,
    pairs: found.pairs + fine.pairs,
    apart: found.apart + fine.apart,
    apartOtherwise: found.apartOtherwise + fine.apartOtherwise,
    largestBox: Math.max(found.largestBox, fine.largestBox),
    largestSize: Math.max(found.largestSize, fine.largestSize),
    tightFits: [...found.tightFits, ...fine.tightFits],
    differences: [...found.differences, ...fine.differences],
    texts: [...found.texts, ...fine.texts],
    counts: [...found.counts, ...fine.counts],
  };
}

async function compared(browser, html, widths, computed) {
  const page = await MeasuredPage.open(browser, server, html);
  const read = await page.read(widths);
  const found = compareLayouts(profile, read, computed);
  found.counts = read.map(lineCounts);
  found.texts = await readSuspects(page, found);
  await page.close();
  return found;
}

/** The number of lines of each text part, by its name. */
function lineCounts({parts}) {
  return Object.fromEntries(parts.filter(({lines}) => lines !== null).map(({name, lines}) => [name, lines.length]));
}

function report(one, found) {
  const name = `${one.sample}, ${one.variant}`;
  const {wrong, others, balanced, tooTight} = verdict(found, {profile, balanced: one.balanced, some});
  if (tooTight) faults.push(`${name}: ${countsOff(found)} tight fits in ${found.pairs} parts, more than ${mostTight.one * 100} %`);
  if (wrong.length > 0) {
    faults.push(`${name}: ${wrong.length} differences`);
    console.log(`${name}:`);
    for (const difference of wrong.slice(0, shown)) console.log(differenceLine(difference));
    if (wrong.length > shown) console.log(`  and ${wrong.length - shown} more`);
  }
  kept.push({sample: one.sample, variant: one.variant, pairs: found.pairs, tight: countsOff(found), largestBox: found.largestBox, counts: found.counts});
  rows.push([one.sample, one.variant, found.widths, found.pairs, found.apartOtherwise === 0 ? found.apart : `${found.apart}, ${found.apartOtherwise} with other lines`, countsOff(found), others.length, balanced.length, wrong.length,
             Number(found.largestBox.toFixed(3)), Number(found.largestSize.toFixed(4))]);
}

console.log(`\nLaid out by ${given.engine}:`);
console.log(table(['sample', 'variant', 'widths', 'parts', 'excluded', 'tight fits', 'other texts', 'other balanced texts', 'differences', 'largest box px', 'largest size px'], rows));
if (rows.length === 0) {
  console.error('nothing was compared');
  process.exit(2);
}
console.log(`Tight fits: ${sum.tight} of ${sum.pairs} parts, ${((100 * sum.tight) / sum.pairs).toFixed(4)} %.`);
if (sum.tight > most(mostTight.all, sum.pairs, some)) faults.push(`in total: more tight fits than ${mostTight.all * 100} %`);
if (given.keep !== '') await writeFile(given.keep, JSON.stringify(kept));
for (const fault of faults) console.log(fault);
console.log(faults.length === 0 ? 'All agree.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
