// Compares pages with themselves after their row was imported (tests/start/pages): row, cards and parts of the page as it is,
// and of the page with the stylesheet that Tenter prints for the imported project. Boxes must be the same within 1 px and
// sizes within 0.05 px at every width, except what `pages.json` says; that must be in the report of the import. Vertical
// positions are counted from the row's top. Source: the browser engine itself.
import {mkdtemp, readdir, readFile, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {readFromRow} from './lib/given.js';
import {markGiven} from './lib/given_page.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';
import {withStylesheet} from './lib/themes.js';

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, only: '', step: '49', shown: '6'});
const apart = {box: 1, size: 0.05};
const tenter = new Tenter(given.cli);
const widths = [];
for (let width = 320; width <= 1920; width += Number(given.step)) widths.push(width);
for (const edge of [559, 560, 599, 600, 639, 640, 767, 768, 800, 801, 959, 960, 1023, 1024, 1199, 1200]) widths.push(edge);
widths.sort((one, other) => one - other);

const expected = JSON.parse(await readFile(path.join(given.samples, 'pages.json'), 'utf8'));
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-import-'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);
const rows = [];
const faults = [];

/**
 * `box`: the element in each card that has its border on the page, if it is another one. `row`: the row of the page, if it
 * has no class of its own.
 */
async function layoutsOf(html, className, selectors, {box = '', row = ''}) {
  const page = await MeasuredPage.open(browser, server, html);
  if (row) await page.run(addClass, row, className);
  const {rows: found, cards} = await page.run(markGiven, className, selectors);
  if (box) await page.run(markBoxes, box);
  if (found !== 1 || cards.length === 0) throw new Error(`${found} rows and ${cards.length} cards found`);
  const layouts = (await page.read(widths)).map(readFromRow);
  await page.close();
  return layouts;
}

/** In the browser: gives the row the class that a person adds to it. */
function addClass(selector, className) {
  document.querySelector('iframe').contentDocument.querySelector(selector).classList.add(className);
}

/** In the browser: measures these elements as the cards. */
function markBoxes(selector) {
  for (const card of document.querySelector('iframe').contentDocument.querySelectorAll('[data-tenter-card]')) {
    card.querySelector(selector).dataset.tenterCard = card.dataset.tenterCard;
    delete card.dataset.tenterCard;
  }
}

/** The differences of two layouts at one width, as \`card.height\` with the values. */
function differences(before, after) {
  const found = [];
  const sides = ['x', 'y', 'width', 'height'];
  const compare = (what, where, one, other) =>
    sides.forEach((side, i) => Math.abs(one[i] - other[i]) > apart.box && found.push({what: `${what}.${side}`, where, before: one[i], after: other[i]}));
  compare('row', 'row', before.row, after.row);
  before.cards.forEach((box, c) => compare('card', `card ${c}`, box, after.cards[c]));
  before.parts.forEach((part, p) => {
    const other = after.parts[p];
    compare('part', `part ${part.name}`, part.box, other.box);
    if (part.fontSize !== null && Math.abs(part.fontSize - other.fontSize) > apart.size) found.push({what: 'part.size', where: `part ${part.name}`, before: part.fontSize, after: other.fontSize});
    if ((part.lines ?? []).length !== (other.lines ?? []).length) found.push({what: 'part.lines', where: `part ${part.name}`, before: part.lines.length, after: other.lines.length});
  });
  return found;
}

async function check(name) {
  const file = path.join(given.samples, name);
  const html = await readFile(file, 'utf8');
  const {project: text, report} = await tenter.newFromPage(file);
  const project = JSON.parse(text);
  const saved = path.join(folder, name.replace('.html', '.tenter.json'));
  await writeFile(saved, text);
  const className = project.variants[0].class;
  const {selectors} = project.given;
  const {listed = [], differs = [], box = '', row = ''} = expected[name.replace('.html', '')] ?? {};
  const before = await layoutsOf(html, className, selectors, {box, row});
  const after = await layoutsOf(withStylesheet(html, await tenter.stylesheetForGiven(saved, className)), className, selectors, {row});
  const warnings = report.split('\n').filter((line) => line.startsWith('Warning: '));
  for (const property of listed) if (!warnings.some((line) => line.includes(property))) faults.push(`${name}: ${property} is not in the report`);
  let largest = 0;
  const wrong = [];
  const excused = new Map(differs.map((what) => [what, 0]));
  before.forEach((layout, i) => {
    for (const difference of differences(layout, after[i])) {
      if (excused.has(difference.what)) {
        excused.set(difference.what, excused.get(difference.what) + 1);
        continue;
      }
      largest = Math.max(largest, Math.abs(difference.before - difference.after));
      wrong.push(`${name} at ${layout.width} px: ${difference.where} ${difference.what}: ${difference.before} on the page, ${difference.after} imported`);
    }
  });
  for (const [what, count] of excused) if (count === 0) faults.push(`${name}: ${what} does not differ`);
  for (const line of wrong.slice(0, Number(given.shown))) console.log(line);
  if (wrong.length > 0) faults.push(`${name}: ${wrong.length} differences`);
  rows.push([name, before.length, before[0].parts.length, project.variants[0].bands.length, wrong.length, Number(largest.toFixed(2)), differs.join(' '), warnings.length]);
}

try {
  for (const name of (await readdir(given.samples)).filter((one) => one.endsWith('.html') && one.includes(given.only)).sort()) {
    // Pages that an engine lays out in a way of its own, which the project does not follow.
    if (!(expected[name.replace('.html', '')]?.engines ?? [given.engine]).includes(given.engine)) continue;
    try {
      await check(name);
    } catch (error) {
      faults.push(`${name}: ${error.message.split('\n').slice(0, 3).join(' ')}`);
    }
  }
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}

console.log(table(['page', 'widths', 'parts', 'bands', 'differences', 'largest', 'listed differences', 'warnings'], rows));
if (rows.length === 0) faults.push('nothing was compared');
for (const fault of faults) console.log(fault);
console.log(faults.length === 0 ? 'All agree.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
