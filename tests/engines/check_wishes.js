// Checks solved rows in an engine: every variant of every sample, with type made far too large before, and ten of the
// random rows that tests/solve proves. They are solved and laid out on the exported page. No text may break a wish for
// lines, size or measure, and no word may be wider than its box. Source: the browser engine itself.
//
// tests/solve proves that the lines of a wish keep a minimum slack at every real width, and engines.chromium and
// engines.firefox prove that no engine breaks a line differently with that slack. So this test lays out both sides of
// each width at which a line count changes, and every eighth width. Rows that wish no slack are laid out at every whole
// width; `--widths every` does that for all rows.
import {execFile} from 'node:child_process';
import {mkdtemp, readFile, rm} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {readWished} from './lib/read_wished.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {everyWidth} from './lib/widths.js';

const given = options({cli: undefined, samples: undefined, rows: undefined, engine: undefined, browser: undefined, widths: 'telling'});
const generated = 10;
/** The number of lines from which a text has a measure, as in the core. */
const measuredLines = 3;
/** Slack, as a share of the line, above which no engine breaks differently: the limit of check_layout.js. */
const provedBy = 0.0025;
/** CSS px between the widths that are laid out in any case. */
const step = 8;
/** Number of widths for one call. */
const atOnce = 400;

const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-wishes-'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const rows = [];
const faults = [];

try {
  const {stdout} = await promisify(execFile)(given.rows, [given.samples, folder, String(generated)], {maxBuffer: 1 << 24});
  const asked = JSON.parse(stdout);
  for (const one of await variantsIn(folder)) await judge(one, asked[one.sample]);
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}

/** The whole widths at which the row is laid out. */
async function widthsOf(one, asked) {
  const every = everyWidth(one);
  if (given.widths === 'every' || asked.slack < provedBy) return every;
  const chosen = new Set(every.filter((width) => (width - one.from) % step === 0));
  const wraps = (await Promise.all(['blink', 'gecko'].map((engine) => tenter.wraps(one.file, one.variant, engine)))).flat();
  for (const at of [...one.breakpoints, ...wraps.map(({width}) => width)]) {
    for (const width of [Math.floor(at), Math.floor(at) + 1]) chosen.add(width);
  }
  return every.filter((width) => chosen.has(width) || width === one.to);
}

/** The wishes for each text part, by its name on the page. */
function askedByPart(project, asked) {
  const parts = {};
  for (const [card, {parts: all}] of project.cards.entries()) {
    if (asked.without.includes(card)) continue;
    for (const [index, {role, copy}] of all.entries()) {
      const forced = Array.isArray(copy) ? copy.filter((run) => run.break).length : 0;
      parts[`${card}.${index}`] = {role, leastLines: forced + 1, ...asked.roles[role]};
    }
  }
  return parts;
}

async function judge(one, asked) {
  const parts = askedByPart(JSON.parse(await readFile(one.file, 'utf8')), asked);
  const page = await MeasuredPage.open(browser, server, await tenter.page(one.file, one.variant));
  const widths = await widthsOf(one, asked);
  const seen = {judged: 0, full: 0, measured: 0};
  for (let at = 0; at < widths.length; at += atOnce) {
    const read = await page.run(readWished, widths.slice(at, at + atOnce), parts, measuredLines);
    for (const key of Object.keys(seen)) seen[key] += read[key];
    for (const fault of read.faults) faults.push(`${one.sample}, ${one.variant}: ${fault}`);
  }
  await page.close();
  rows.push([one.sample, one.variant, widths.length, ...Object.values(seen)]);
}

console.log(table(['row', 'variant', 'widths', 'parts', 'with all their lines', 'measured'], rows));
for (const [what, key] of [['no line', 4], ['no measure', 5]]) if (rows.every((row) => row[key] === 0)) faults.push(`${what} was judged`);
for (const fault of faults.slice(0, 20)) console.log(fault);
console.log(faults.length === 0 ? 'No wish is broken.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
