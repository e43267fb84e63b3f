// Tests the stylesheet for existing markup. The row of every theme in `--samples` is imported from its saved page, and
// the stylesheet is added to the page as a CMS does it. Row, cards, parts, sizes, lines and words at every tenth width
// must match Tenter's geometry, with vertical positions counted from the row's top; lib/bars.js has the limits. The
// neighbour row and the footer of the theme may move up or down, but must not change otherwise. The page must make no
// network request. Source: the browser engine itself.
import {cp, mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {countsOff, most, mostTight, verdict} from './lib/bars.js';
import {launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {judgeGiven} from './lib/judge_given.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';
import {baseFor, themesIn} from './lib/themes.js';

const shown = 12;

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, step: '10', only: ''});
const profile = profileOf[given.engine];
const widths = [];
for (let width = 320; width <= 1920; width += Number(given.step)) widths.push(width);
const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-given-'));
const base = JSON.parse(await readFile(path.join(given.samples, 'base.tenter.json'), 'utf8'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const rows = [];
const faults = [];
const sum = {pairs: 0, tight: 0};
const setting = {browser, server, tenter, profile, widths};

/** The project file with the theme's row imported. */
async function adopted(theme) {
  const file = path.join(folder, `${theme.name}.tenter.json`);
  const page = path.join(folder, `${theme.name}.html`);
  await writeFile(file, JSON.stringify(baseFor(base, theme)));
  await cp(theme.file, page);
  const project = await tenter.adopt(file, page);
  await writeFile(file, project);
  return {file, selectors: JSON.parse(project).given.selectors};
}

function tell(theme, {found, moved, copy}) {
  const {wrong, others, tooTight} = verdict(found, {profile, balanced: new Set(), some: true});
  const differences = [...wrong, ...moved];
  if (tooTight) faults.push(`${theme.name}: ${countsOff(found)} tight fits in ${found.pairs} parts, more than ${mostTight.one * 100} %`);
  if (found.pairs === 0) faults.push(`${theme.name}: nothing was compared`);
  faults.push(...copy.map((fault) => `${theme.name}: ${fault}`));
  if (differences.length > 0) {
    faults.push(`${theme.name}: ${differences.length} differences`);
    console.log(`${theme.name}:`);
    for (const difference of differences.slice(0, shown)) console.log(differenceLine(difference));
    if (differences.length > shown) console.log(`  and ${differences.length - shown} more`);
  }
  sum.pairs += found.pairs;
  sum.tight += countsOff(found);
  rows.push([theme.name, found.pairs, countsOff(found), others.length, wrong.length, moved.length, Number(found.largestBox.toFixed(3)), Number(found.largestSize.toFixed(4))]);
}

try {
  await cp(path.join(given.samples, 'pictures'), path.join(folder, 'pictures'), {recursive: true});
  for (const theme of await themesIn(given.samples)) if (theme.name.includes(given.only)) tell(theme, await judgeGiven(setting, theme, await adopted(theme)));
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}

console.log(`\nLaid out by ${given.engine} at ${widths.length} widths:`);
console.log(table(['theme', 'parts', 'tight fits', 'other texts', 'differences', 'surroundings moved', 'largest box px', 'largest size px'], rows));
if (rows.length === 0) {
  console.error('nothing was compared');
  process.exit(2);
}
if (sum.tight > most(mostTight.all, sum.pairs, true)) faults.push(`in total: more tight fits than ${mostTight.all * 100} %`);
for (const fault of faults) console.log(fault);
console.log(faults.length === 0 ? 'All agree.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
