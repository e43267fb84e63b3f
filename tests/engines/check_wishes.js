// Solved rows in an engine: every variant of every sample and ten rows of the corpus, their type made far too large,
// solved, and laid out on the exported page at every whole width. No heading and no label may have more lines than was
// wished, and no type another size than wished. Source: the browser engine itself.
import {mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {everyWidth} from './lib/widths.js';

const given = options({cli: undefined, samples: undefined, corpus: undefined, engine: undefined, browser: undefined});
/** By how much ramps are too large. */
const tooLarge = 1.7;
/** What is wished, the first of these that can be kept together. Some rows are narrow on purpose. */
const wishes = [
  {heading: 2, button: 1, more: ['body.size=14-']},
  {heading: 3, button: 2, more: ['body.measure=12-']},
  {heading: 5, button: 3, more: ['body.measure=6-200', 'kicker.measure=1-1000', 'price.measure=1-1000']},
];
/** How far an engine's sizes may be from those that are emitted, CSS px: Firefox cuts down to 1/60. */
const sizeWithin = 0.03;
const fromCorpus = 10;

const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-wishes-'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const rows = [];
const faults = [];

try {
  const samples = await variantsIn(given.samples);
  const corpus = (await variantsIn(given.corpus)).filter(({file}) => !file.includes('packed'));
  for (const one of [...samples, ...corpus.slice(0, fromCorpus)]) await judge(one);
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}

/** The project without pictures, since away from its folder it would miss them, and with all ramps too large. */
function spoiled(project) {
  for (const card of project.cards) card.parts = card.parts.filter((part) => part.picture === undefined);
  const layers = [project.style, ...project.variants.flatMap((variant) => [variant.set, ...variant.bands.map((band) => band.set)])];
  for (const style of layers.flatMap((layer) => Object.values(layer?.text ?? {}))) {
    if (Array.isArray(style.size)) style.size = style.size.map(([width, size]) => [width, size * tooLarge]);
    else if (style.size !== undefined) style.size *= tooLarge;
  }
  return project;
}

/** Solves one variant by the first wishes that can be kept: those, and the solved project's file. */
async function solved(one, file, roles) {
  for (const wished of wishes) {
    const words = [`heading.lines=${wished.heading}`, `button.lines=${wished.button}`, ...wished.more];
    const text = await tenter.solve(file, one.variant, words.filter((word) => roles.has(word.split('.')[0])));
    if (text === null) continue;
    await writeFile(file, text);
    return wished;
  }
  return null;
}

async function judge(one) {
  const name = `${one.sample}, ${one.variant}`;
  const project = spoiled(JSON.parse(await readFile(one.file, 'utf8')));
  const file = path.join(folder, 'project.tenter.json');
  for (const font of project.fonts ?? []) await writeFile(path.join(folder, font.file), await readFile(path.join(path.dirname(one.file), font.file)));
  await writeFile(file, JSON.stringify(project));
  const roles = new Set(['heading', 'body', 'button', ...project.cards.flatMap((card) => card.parts.map((part) => part.role))]);
  const wished = await solved(one, file, roles);
  if (wished === null) {
    faults.push(`${name}: not solved`);
    return;
  }
  const widths = everyWidth(one);
  const page = await MeasuredPage.open(browser, server, await tenter.page(file, one.variant));
  const read = await page.read(widths);
  await page.close();
  let parts = 0;
  let full = 0;
  for (const [i, layout] of read.entries()) {
    for (const part of layout.parts) {
      const [card, index] = part.name.split('.').map(Number);
      const {role, copy} = project.cards[card].parts[index];
      const least = role === 'body' ? (wished.more.includes('body.size=14-') ? 14 : 12) : 11;
      ++parts;
      if (part.fontSize < least - sizeWithin) faults.push(`${name}: ${role} ${part.name} is ${part.fontSize} px at ${widths[i]}`);
      if (wished[role] === undefined || part.lines === null) continue;
      const forced = Array.isArray(copy) ? copy.filter((run) => run.break).length : 0;
      const most = Math.max(wished[role], forced + 1);
      if (part.lines.length === most) ++full;
      if (part.lines.length > most) faults.push(`${name}: ${role} ${part.name} has ${part.lines.length} lines at ${widths[i]}`);
    }
  }
  rows.push([one.sample, one.variant, wished.heading, wished.button, widths.length, parts, full]);
}

console.log(table(['row', 'variant', 'lines of headings', 'of labels', 'widths', 'parts', 'with all their lines'], rows));
if (rows.length === 0) faults.push('nothing was solved');
for (const fault of faults.slice(0, 20)) console.log(fault);
console.log(faults.length === 0 ? 'No wish is broken.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
