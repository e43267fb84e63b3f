// Solved rows in an engine: every variant of every sample, their type made far too large, and ten of the rows made at
// random that tests/solve proves, solved and laid out on the exported page. No text may have more lines than was wished,
// another size, more or fewer characters to a line, nor a word that is wider than its box. Source: the browser engine
// itself.
//
// Lines that are wished keep a slack, at every real width: tests/solve proves it. Engines break no line otherwise that
// has as much: engines.chromium and engines.firefox prove that, at every whole width. So what could break a wish at a
// whole width is found on both sides of each width at which some line count changes, and at every eighth besides; rows
// that wish no slack are laid out at every whole width, and all are with `--widths every`.
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
/** Lines from which on copy has a measure, as the core counts. */
const measuredLines = 3;
/** Slack, as a share of the line, with which no engine breaks otherwise: the bar of check_layout.js. */
const provedBy = 0.0025;
/** CSS px between widths at which rows are laid out anyway. */
const step = 8;
/** Widths to one call. */
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

/** Whole widths at which the row is laid out. */
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

/** What is asked of each part of text, by its name on the page. */
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
