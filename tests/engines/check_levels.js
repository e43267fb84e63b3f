// Rows with parts aligned by subgrid, in the arrangements of tests/project/level_cases.h: an engine lays out the exported
// page, and boxes must be within 0.5 px of Tenter's geometry. Source: the browser engine.
import {copyFile, mkdtemp, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {compareLayouts} from './lib/compare.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';

/** Cards, as the letters of their parts: p(icture), h(eading), b(ody), B(utton). */
const rowsOfCards = [
  ['hbB', 'hB', 'B'],
  ['hBb', 'hb', 'phb'],
  ['hBb', 'hB', 'phbB'],
  ['hBB', 'hB'],
  ['phbB', 'hB'],
  ['hBp', 'hbB', 'pphB'],
];
const widths = [700, 900, 1100, 1400];
const words = 'Low tide and the long way round the saltmarsh by the old sea wall at dusk'.split(' ');

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined});

/** The part for a letter; `n` makes lengths differ. */
function part(letter, n) {
  if (letter === 'p') return {picture: 'creek.jpg', size: [1200, 800]};
  const role = {h: 'heading', b: 'body', B: 'button'}[letter];
  const copy = words.slice(0, letter === 'B' ? 2 : 2 + ((n * 5) % 13)).join(' ');
  return letter === 'B' ? {role, copy, link: '#book'} : {role, copy};
}

/** Each arrangement with the picture above and beside the text, full-bleed and not, with different row gaps and button margins. */
function* projects() {
  for (const [r, letters] of rowsOfCards.entries()) {
    const cards = letters.map((each, c) => ({parts: [...each].map((letter, p) => part(letter, c * 3 + p + 1))}));
    for (const [d, direction] of ['stacked', 'beside'].entries()) {
      for (const [b, bleed] of [true, false].entries()) {
        const gapped = (r + d + b) % 2 === 1;
        const top = ((r >> 1) + b) % 2 === 1 ? '10px' : 'auto';
        const padding = {top: '14px', right: bleed ? '18px' : '5%', bottom: '22px', left: '18px'};
        const style = {
          row: {level: 'subgrid', rowGap: gapped ? '26.234375px' : '0', columnGap: gapped ? '24px' : '3%', columns: 2},
          card: {direction, bleed, padding, border: {width: '2px'}},
          picture: {margin: {top: '3%', right: '4%', bottom: '2.1%', left: '7px'}},
          text: {heading: {size: 21}, body: {size: 16}, button: {size: 16, margin: {top}}},
        };
        const says = `${letters.join(' ')}, ${direction}, ${bleed ? 'full-bleed' : 'inset'}, gap ${style.row.rowGap}, button ${top}`;
        const variants = [{class: 'walks', bands: [{upTo: 800}, {set: {row: {columns: 3}}}]}];
        yield {says, project: {format: 'tenter-project', version: 1, name: 'Levels', style, cards, variants}};
      }
    }
  }
}

const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-levels-'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const profile = profileOf[given.engine];
let rows = 0;
let parts = 0;
let largest = 0;
let failures = 0;
try {
  await copyFile(path.join(given.samples, 'pictures/creek.jpg'), path.join(folder, 'creek.jpg'));
  const file = path.join(folder, 'levels.tenter.json');
  for (const {says, project} of projects()) {
    await writeFile(file, JSON.stringify(project));
    const computed = await tenter.geometry(file, 'walks', widths, profile);
    const page = await MeasuredPage.open(browser, server, await tenter.page(file, 'walks'));
    const found = compareLayouts(profile, await page.read(widths), computed);
    await page.close();
    ++rows;
    parts += found.pairs;
    largest = Math.max(largest, found.largestBox);
    if (found.differences.length === 0) continue;
    ++failures;
    console.log(`${says}:`);
    for (const difference of found.differences.slice(0, 6)) console.log(differenceLine(difference));
  }
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}
console.log(table(['rows', 'widths', 'parts', 'largest box px', 'rows that differ'], [[rows, widths.length, parts, Number(largest.toFixed(3)), failures]]));
process.exit(failures === 0 && parts > 0 ? 0 : 1);
