// Prints how many times as long a browser engine needs to lay out a row at every whole width as Tenter needs for its
// sweep and its checks of the same row, from one run on one machine. It only reports; it has no pass mark.
import {execFile} from 'node:child_process';
import path from 'node:path';
import {promisify} from 'node:util';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {everyWidth} from './lib/widths.js';

/** The sample with twelve cards that the benchmark uses (tests/bench/samples.h). */
const sample = 'season';
const given = options({bench: undefined, cli: undefined, samples: undefined, chromium: '/usr/bin/chromium', firefox: '/usr/bin/firefox-esr', rounds: '7'});
const range = {from: 320, to: 1920};

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Runs in the page: lays out the framed page at each of `widths` (CSS px) and returns the milliseconds it took. */
function layOutAt(widths) {
  const frame = document.querySelector('iframe');
  const row = frame.contentDocument.querySelector('[data-tenter-row]');
  const start = performance.now();
  let height = 0;
  for (const width of widths) {
    frame.style.width = `${width}px`;
    height += row.getBoundingClientRect().height;
  }
  return {milliseconds: performance.now() - start, height};
}

/** Milliseconds that an engine needs for all widths: the median of several rounds, upwards and downwards in turn. */
async function engineTime(engine, server, html) {
  const browser = await launch(engine, given[engine]);
  try {
    const page = await MeasuredPage.open(browser, server, html);
    const widths = everyWidth(range);
    const rounds = [];
    for (let round = 0; round < Number(given.rounds); ++round) {
      rounds.push((await page.run(layOutAt, round % 2 === 0 ? widths : [...widths].reverse())).milliseconds);
    }
    return median(rounds);
  } finally {
    await browser.close();
  }
}

/** Median time of a benchmark in milliseconds. */
async function benchTime(name) {
  const words = [`--benchmark_filter=^${name}$`, '--benchmark_format=json'];
  const {stdout} = await promisify(execFile)(given.bench, words, {maxBuffer: 1 << 26, env: {...process.env, QT_QPA_PLATFORM: 'offscreen'}});
  const [found] = JSON.parse(stdout).benchmarks;
  if (found?.median_ms === undefined) throw new Error(`${given.bench} has no benchmark ${name} with a median`);
  return found.median_ms;
}

const one = (await variantsIn(given.samples)).find(({file}) => path.basename(file).startsWith(`${sample}.`));
const server = await new PageServer().start();
try {
  const html = await new Tenter(given.cli).page(one.file, one.variant);
  const engines = {chromium: await engineTime('chromium', server, html), firefox: await engineTime('firefox', server, html)};
  const rows = [];
  // Compares each engine with the benchmark that does the same work, under the engine's own break profile if there is one.
  const works = [
    ['whole sweep', 'sweepRow/12', 'sweepRow/12'],
    ["every check under the engine's profile, its sweep included", 'checkUnderProfile/0', 'checkUnderProfile/1'],
    ['every check under both profiles, their sweeps included', 'checkTwelveCards', 'checkTwelveCards'],
  ];
  for (const [what, ...names] of works) {
    const times = [];
    for (const name of names) times.push(await benchTime(name));
    rows.push([what, times.map((time) => time.toFixed(2)).join(', '), ...Object.values(engines).map((engine, i) => `${Math.round(engine / times[i])} times`)]);
  }
  rows.unshift([`laying out at ${range.to - range.from + 1} widths`, '', ...Object.values(engines).map((engine) => `${Math.round(engine)} ms`)]);
  console.log(table([`${one.sample}, ${one.variant}`, 'ms', ...Object.keys(engines)], rows));
} finally {
  await server.stop();
}
