// Compares random rows over all settings of a project file: the layouts of both engines at every `step`-th width from 320
// to 1920 px with Tenter's own. lib/compare.js has the tolerances. A failing row is written as a project file, reduced to
// the smallest project that still fails, with the width, the part and both values.
//
// Fails if the share of rows with a difference exceeds `mostRows`, or the share of wrong line counts of one engine exceeds
// `mostWrong`. --seed and --rows choose the rows; --only N compares only row N; --shrink 0 does not reduce failing rows.
import {mkdir, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {countsOff} from './lib/bars.js';
import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';
import {byKind, Judge, kindOf} from './random/judge.js';
import {greyPng} from './random/png.js';
import {randomRows} from './random/rows.js';
import {shrink} from './random/shrink.js';

const given = options({
  cli: undefined, chromium: '', firefox: '', seed: '20261129', rows: '100', step: '3', only: '', shrink: '3',
  into: path.join(os.tmpdir(), 'tenter-random-rows'), keep: '',
  mostRows: '0.01', mostWrong: '0.001',
});
const engines = ['chromium', 'firefox'].filter((engine) => given[engine] !== '');
const {rows, met, total} = randomRows(Number(given.seed), Number(given.rows));
console.log(`Seed ${given.seed}: ${rows.length} rows, ${met} of ${total} pairs of ways to set two settings.`);

await rm(given.into, {recursive: true, force: true});
await mkdir(given.into, {recursive: true});
await writeFile(path.join(given.into, 'picture.png'), greyPng(320, 213));
const widths = [];
for (let width = 320; width <= 1920; width += Number(given.step)) widths.push(width);

const server = await new PageServer(true).start();
const browsers = Object.fromEntries(await Promise.all(engines.map(async (engine) => [engine, await launch(engine, given[engine])])));
const judge = new Judge(new Tenter(given.cli), server, browsers, given.into);
const sums = Object.fromEntries(engines.map((engine) => [engine, {pairs: 0, tight: 0, loose: 0, apart: 0, failed: 0, largestBox: 0, kinds: new Map(), ms: 0}]));
const failed = [];
let unread = 0;

try {
  for (const {name, project} of rows) {
    if (given.only !== '' && !given.only.split(',').includes(name.split('-')[1])) continue;
    const file = await judge.save(project, name);
    // Both engines run at the same time.
    await Promise.all(engines.map((engine) => judged(name, project, file, engine)));
  }
  for (const one of failed.slice(0, Number(given.shrink))) await shrunk(one);
} finally {
  for (const browser of Object.values(browsers)) await browser.close();
  await server.stop();
}

async function judged(name, project, file, engine) {
  const sum = sums[engine];
  const start = performance.now();
  let found;
  try {
    found = await judge.judge(file, 'random-row', engine, widths);
  } catch (error) {
    ++unread;
    console.log(`${name}, ${engine}: ${String(error.stderr || error.stack || error.message).split('\n')[0]}`);
    return;
  }
  sum.ms += performance.now() - start;
  sum.pairs += found.pairs;
  sum.apart += found.apart;
  sum.tight += countsOff(found);
  sum.loose += found.differences.filter(({what}) => what === 'lines').length;
  sum.largestBox = Math.max(sum.largestBox, found.largestBox);
  if (found.differences.length === 0) return;
  ++sum.failed;
  const kinds = byKind(found.differences);
  failed.push({name, project, engine, first: found.differences[0], kinds});
  console.log(`${name}, ${engine}: ${kinds.map(({kind, count, most}) => `${kind} ${count} (${most.toFixed(2)})`).join('; ')}`);
  for (const {worst, first} of kinds.slice(0, 2)) console.log(differenceLine(worst ?? first));
}

/** Reduces a failing row to the smallest project that still fails in the same way at the same width, and writes it. */
async function shrunk({name, project, engine, kinds}) {
  const [{first, worst}] = kinds.sort((a, b) => b.most - a.most);
  const start = worst ?? first;
  const wanted = kindOf(start);
  const near = [start.width, ...[-4, -1, 1, 4].map((by) => start.width + by)].filter((width) => width >= 320);
  const failsAs = async (smaller) => {
    const file = await judge.save(smaller, `${name}-tried`);
    const {differences} = await judge.judge(file, 'random-row', engine, near);
    return differences.some((one) => kindOf(one) === wanted);
  };
  const {project: least, tries} = await shrink(project, failsAs);
  const file = await judge.save(least, `${name}-${engine}-least`);
  const {differences} = await judge.judge(file, 'random-row', engine, near);
  console.log(`\n${name}, ${engine}: after ${tries} tries, ${file} still fails:`);
  for (const one of differences.slice(0, 4)) console.log(differenceLine(one));
  console.log(JSON.stringify({style: least.style, page: least.page, cards: least.cards, bands: least.variants[0].bands, language: least.language, direction: least.direction}));
}

const judgedRows = given.only === '' ? rows.length : given.only.split(',').length;
console.log(table(
  ['engine', 'parts', 'line counts wrong', 'share %', 'with slack', 'apart', 'rows failing', 'largest box px', 's'],
  engines.map((engine) => {
    const {pairs, tight, loose, apart, failed: rowsFailed, largestBox, ms} = sums[engine];
    return [engine, pairs, tight + loose, Number(((100 * (tight + loose)) / pairs).toFixed(4)), loose, apart, rowsFailed, Number(largestBox.toFixed(2)), Math.round(ms / 1000)];
  }),
));
const failing = new Set(failed.map(({name}) => name));
console.log(`${failing.size} of ${judgedRows} rows differ${failing.size > 0 ? `: ${[...failing].join(', ')}` : ''}.`);
if (given.keep !== '') await writeFile(given.keep, JSON.stringify({failed: failed.map(({name, engine, kinds}) => ({name, engine, kinds})), sums}));
const tooWrong = engines.filter((engine) => sums[engine].tight + sums[engine].loose > Number(given.mostWrong) * sums[engine].pairs);
if (tooWrong.length > 0) console.log(`More than ${100 * given.mostWrong} % of the line counts are wrong: ${tooWrong.join(', ')}.`);
const tooMany = failing.size > Number(given.mostRows) * judgedRows;
if (tooMany) console.log(`More than ${100 * given.mostRows} % of the rows differ.`);
process.exit(unread === 0 && tooWrong.length === 0 && !tooMany && engines.every((engine) => sums[engine].pairs > 0) ? 0 : 1);
