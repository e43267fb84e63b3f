// Opens what Tenter wrote: the page folders of random rows, in every form of the stylesheet, and pages and stylesheets of
// the samples, each in every form, come back as projects that lay out the same row. Compares the layouts of both projects in
// each break profile at `widths` widths: font sizes within 0.01 px, boxes within 0.05 px. No browser takes part: each row's
// page in a browser is compared by check_random.js.
import {execFile} from 'node:child_process';
import {cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import {options} from './lib/command_line.js';
import {forms} from './lib/forms.js';
import {table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';
import {spreadWidths} from './lib/widths.js';
import {greyPng} from './random/png.js';
import {randomRows} from './random/rows.js';

const given = options({cli: undefined, seed: '20261129', rows: '100', widths: '40', only: '', most: '0', keep: '', samples: ''});
const run = promisify(execFile);
const tenter = new Tenter(given.cli);
const limits = {fontSize: 0.01, box: 0.05};

/** Each for every n-th row. */
const all = [[], ['--unit', 'rem'], ...forms];

const folder = given.keep || (await mkdtemp(path.join(os.tmpdir(), 'tenter-own-pages-')));
await mkdir(folder, {recursive: true});
await writeFile(path.join(folder, 'picture.png'), greyPng(320, 213));

/** The differences between two layouts of one width, as `what: before, after`. */
function differencesOf(before, after) {
  const found = [];
  const compare = (what, a, b, limit) => {
    // Written so that NaN counts as a difference.
    if (!(Math.abs(a - b) <= limit)) found.push(`${what}: ${a}, ${b} again`);
  };
  const boxes = (where, a, b) => ['x', 'y', 'width', 'height'].forEach((side) => compare(`${where} ${side}`, a[side], b[side], limits.box));
  boxes('row', before.row, after.row);
  compare('cards', before.cards.length, after.cards.length, 0);
  before.cards.slice(0, after.cards.length).forEach((card, c) => {
    const other = after.cards[c];
    boxes(`card ${c}`, card.box, other.box);
    compare(`parts of card ${c}`, card.parts.length, other.parts.length, 0);
    card.parts.slice(0, other.parts.length).forEach((part, p) => {
      const again = other.parts[p];
      const where = `${c}.${p} ${part.kind}`;
      boxes(where, part.box, again.box);
      if (part.kind === 'picture') return;
      compare(`${where} font size`, part.fontSize, again.fontSize, limits.fontSize);
      compare(`${where} lines`, part.lines.length, again.lines?.length, 0);
    });
  });
  return found;
}

/** The first difference of the layouts of two project files; empty if there is none. */
async function firstDifference(before, after, project, variant) {
  const one = {from: project.range?.from ?? 320, to: project.range?.to ?? 1920, breakpoints: project.variants[0].bands.flatMap(({upTo}) => (upTo === undefined ? [] : [Math.floor(upTo)]))};
  const widths = spreadWidths(one, Number(given.widths));
  for (const profile of ['blink', 'gecko']) {
    const expected = await tenter.geometry(before, variant, widths, profile);
    const found = await tenter.geometry(after, variant, widths, profile);
    sums.layouts += widths.length;
    for (const [w, layout] of expected.entries()) {
      const [first] = differencesOf(layout, found[w]);
      if (first) return `${variant}, ${profile}, ${widths[w]} px, ${first}`;
    }
  }
  return '';
}

const sums = {rows: 0, layouts: 0, refused: 0, differing: 0};

/** Counts one case; `compare` gives its first difference. */
async function count(name, form, compare) {
  ++sums.rows;
  try {
    const first = await compare();
    if (!first) return;
    ++sums.differing;
    console.log(`${name} (${form.join(' ')}): ${first}`);
  } catch (error) {
    ++sums.refused;
    console.log(`${name} (${form.join(' ')}): ${String(error.stderr || error.stack).split('\n')[0]}`);
  }
}

/** The page folder of a project, opened again. */
async function comparePage(file, project, into, form) {
  const again = path.join(into, 'again.tenter.json');
  await run(given.cli, ['folder', file, '--into', into, ...form]);
  await run(given.cli, ['intake', into, '--out', again]);
  return firstDifference(file, again, project, project.variants[0].class);
}

/** The stylesheet of a project alone, opened again. It has no cards, languages and pages: these are the project's. */
async function compareSheet(file, project, into, form) {
  await mkdir(into, {recursive: true});
  const sheet = path.join(into, 'row.css');
  const again = path.join(path.dirname(file), `${path.basename(into)}-again.tenter.json`);
  await run(given.cli, ['stylesheet', file, '--all-variants', '--out', sheet, ...form]);
  await run(given.cli, ['intake', sheet, '--out', again, '--root', String(project.page?.rootSize ?? 16)]);
  const read = JSON.parse(await readFile(again, 'utf8'));
  const {cards, language, direction, headingLevel, page, fonts} = project;
  await writeFile(again, JSON.stringify({...read, cards, language, direction, headingLevel, page, fonts}));
  for (const {class: variant} of project.variants) {
    const first = await firstDifference(file, again, project, variant);
    if (first) return first;
  }
  return '';
}

const {rows} = randomRows(Number(given.seed), Number(given.rows));
try {
  for (const [i, {name, project}] of rows.entries()) {
    if (given.only !== '' && !given.only.split(',').includes(name.split('-')[1])) continue;
    const form = all[i % all.length];
    const file = path.join(folder, `${name}.tenter.json`);
    // Sizes in px are rounded to other numbers than sizes in rem, also in the layout.
    const unit = form[form.indexOf('--unit') + 1];
    await writeFile(file, JSON.stringify(form.includes('--unit') ? {...project, unit} : project, null, 1));
    await count(name, form, () => comparePage(file, project, path.join(folder, name), form));
  }
  // Every sample in every form, as a page and as a stylesheet alone.
  if (given.samples) await cp(given.samples, path.join(folder, 'samples'), {recursive: true});
  for (const name of given.samples ? (await readdir(given.samples)).filter((one) => one.endsWith('.tenter.json')) : []) {
    const project = JSON.parse(await readFile(path.join(given.samples, name), 'utf8'));
    for (const [f, form] of all.entries()) {
      const unit = form.includes('--unit') ? form[form.indexOf('--unit') + 1] : project.unit;
      const file = path.join(folder, 'samples', `${f}-${name}`);
      await writeFile(file, JSON.stringify(unit ? {...project, unit} : project));
      await count(name, ['page', ...form], () => comparePage(file, project, path.join(folder, `page-${f}-${name}`), form));
      await count(name, ['stylesheet', ...form], () => compareSheet(file, project, path.join(folder, `sheet-${f}-${name}`), form));
    }
  }
} finally {
  if (!given.keep) await rm(folder, {recursive: true, force: true});
}
console.log(table(['rows', 'layouts', 'refused', 'differing'], [[sums.rows, sums.layouts, sums.refused, sums.differing]]));
if (sums.rows === 0) console.log('No rows.');
process.exitCode = sums.rows === 0 || sums.refused + sums.differing > Number(given.most) ? 1 : 0;
