// Tests the stylesheet for existing markup in the markup of public CSS frameworks (frameworks/frameworks.js). Each row is
// imported from its page, which links the framework's stylesheet. The emitted stylesheet is then added to the page as a CMS
// does it. Row, cards, parts, sizes, lines and words must match Tenter's geometry, as in check_given.js. `--pages written`
// takes pages whose style sheets are written in different ways (frameworks/written.js) instead; some of them must have an
// error finding about their theme. Source: the browser engine itself.
import {mkdtemp, readFile, rm, writeFile, mkdir} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {frameworkPages, rowClass} from './frameworks/frameworks.js';
import {writtenPages} from './frameworks/written.js';
import {countsOff, most, mostTight, verdict} from './lib/bars.js';
import {launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {tolerance} from './lib/compare.js';
import {judgeGiven} from './lib/judge_given.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';
import {baseFor} from './lib/themes.js';

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, step: '20', pages: 'frameworks', only: '', shown: '4', keep: '', widths: ''});
const profile = profileOf[given.engine];
const widths = given.widths ? given.widths.split(',').map(Number) : [];
if (!given.widths) for (let width = 320; width <= 1920; width += Number(given.step)) widths.push(width);
const tenter = new Tenter(given.cli);
const folder = given.keep || (await mkdtemp(path.join(os.tmpdir(), 'tenter-frameworks-')));
// Families that are installed once: of two files with the same face each engine chooses its own.
const families = {heading: ['Vollkorn', 'serif'], body: ['Lato', 'sans-serif'], button: ['Lato', 'sans-serif']};
const base = JSON.stringify(baseFor(JSON.parse(await readFile(path.join(given.samples, 'base.tenter.json'), 'utf8')), {families}));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const setting = {browser, server, tenter, profile, widths};
const rows = [];
const faults = [];
const sum = {pairs: 0, tight: 0, wrong: 0};

/** The project file with the row of the page imported. */
async function adopted(page) {
  const own = path.join(folder, page.name);
  await mkdir(own, {recursive: true});
  const file = path.join(own, 'row.tenter.json');
  await writeFile(file, base);
  await writeFile(path.join(own, 'page.html'), page.linked);
  for (const [name, text] of page.sheets) await writeFile(path.join(own, name), text);
  const project = await tenter.adopt(file, path.join(own, 'page.html'));
  await writeFile(file, project);
  return {file, selectors: JSON.parse(project).given.selectors};
}

async function expectFinding(page, file) {
  const has = (await tenter.check(file, rowClass, profile)).some(({check, severity}) => check === 'theme-obstacle' && severity === 'error');
  if (!has) faults.push(`${page.name}: no error finding about its theme`);
}

// Firefox truncates a root size that follows the viewport to 1/60 px. Tenter subtracts the mean, so that every length
// stays linear in the width: a box of n rem can be off by n/120 px.
const widestRems = 75;
const isTruncation = (page, {expected, actual}) =>
  page.hasFluidRoot && given.engine === 'firefox' && Math.abs(expected - actual) <= tolerance.box + widestRems / 120;

function tell(page, {found, moved, copy}) {
  const {wrong: all, others, tooTight} = verdict(found, {profile, balanced: new Set(), some: true});
  const wrong = all.filter((difference) => !isTruncation(page, difference));
  const differences = [...wrong, ...moved];
  const own = [...copy];
  if (tooTight) own.push(`${countsOff(found)} tight fits in ${found.pairs} parts, more than ${mostTight.one * 100} %`);
  if (found.pairs === 0) own.push('nothing was compared');
  if (differences.length > 0) own.push(`${differences.length} differences`);
  const shown = Number(given.shown);
  if (own.length > 0 && shown > 0) {
    console.log(`${page.name}:`);
    for (const fault of own.slice(0, shown)) console.log(`  ${fault}`);
    for (const some of [wrong, moved]) for (const difference of some.slice(0, shown)) console.log(differenceLine(difference));
  }
  faults.push(...own.map((fault) => `${page.name}: ${fault}`));
  const lines = wrong.filter(({what}) => what === 'lines').length;
  sum.pairs += found.pairs;
  sum.tight += countsOff(found);
  sum.wrong += lines;
  rows.push([page.name, found.pairs, countsOff(found), lines, wrong.length - lines, moved.length, Number(found.largestBox.toFixed(2)), others.length]);
}

try {
  for (const page of given.pages === 'written' ? writtenPages() : await frameworkPages()) {
    if (!page.name.includes(given.only)) continue;
    try {
      const imported = await adopted(page);
      if (page.isObstacle) await expectFinding(page, imported.file);
      else tell(page, await judgeGiven(setting, page, imported));
    } catch (error) {
      faults.push(`${page.name}: ${error.message.split('\n').slice(0, 3).join(' ')}`);
      console.log(faults.at(-1));
      rows.push([page.name, 0, '', '', '', '', '', 'failed']);
    }
  }
} finally {
  await browser.close();
  await server.stop();
  if (!given.keep) await rm(folder, {recursive: true});
}

console.log(`\nLaid out by ${given.engine} at ${widths.length} widths:`);
console.log(table(['page', 'parts', 'tight fits', 'wrong line counts', 'other differences', 'surroundings moved', 'largest box px', 'other texts'], rows));
console.log(`${sum.wrong} of ${sum.pairs} line counts are wrong, ${sum.tight} in tight fits.`);
if (rows.length === 0) {
  console.error('nothing was compared');
  process.exit(2);
}
if (sum.tight > most(mostTight.all, sum.pairs, true)) faults.push(`in total: more tight fits than ${mostTight.all * 100} %`);
for (const fault of faults) console.log(fault);
console.log(faults.length === 0 ? 'All agree.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
