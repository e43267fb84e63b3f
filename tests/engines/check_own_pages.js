// Opens what Tenter wrote: the page folders of random rows, in every form of the stylesheet, come back as projects that lay
// out the same row. Compares the layouts of both projects in each break profile at `widths` widths: font sizes within
// 0.01 px, boxes within 0.05 px. No browser takes part: each row's page in a browser is compared by check_random.js.
import {execFile} from 'node:child_process';
import {mkdir, mkdtemp, rm, writeFile} from 'node:fs/promises';
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

const given = options({cli: undefined, seed: '20261129', rows: '100', widths: '40', only: '', most: '0', keep: ''});
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

const sums = {rows: 0, layouts: 0, refused: 0, differing: 0};
const {rows} = randomRows(Number(given.seed), Number(given.rows));
try {
  for (const [i, {name, project}] of rows.entries()) {
    if (given.only !== '' && !given.only.split(',').includes(name.split('-')[1])) continue;
    const form = all[i % all.length];
    const file = path.join(folder, `${name}.tenter.json`);
    // Sizes in px are rounded to other numbers than sizes in rem, also in the layout.
    const unit = form[form.indexOf('--unit') + 1];
    await writeFile(file, JSON.stringify(form.includes('--unit') ? {...project, unit} : project, null, 1));
    const into = path.join(folder, name);
    const again = path.join(into, 'again.tenter.json');
    ++sums.rows;
    const variant = project.variants[0].class;
    try {
      await run(given.cli, ['folder', file, '--into', into, ...form]);
      await run(given.cli, ['intake', into, '--out', again]);
      const one = {from: project.range?.from ?? 320, to: project.range?.to ?? 1920, breakpoints: project.variants[0].bands.flatMap(({upTo}) => (upTo === undefined ? [] : [Math.floor(upTo)]))};
      const widths = spreadWidths(one, Number(given.widths));
      let first;
      for (const profile of ['blink', 'gecko']) {
        const before = await tenter.geometry(file, variant, widths, profile);
        const after = await tenter.geometry(again, variant, widths, profile);
        sums.layouts += widths.length;
        before.forEach((layout, w) => (first ??= differencesOf(layout, after[w]).map((what) => `${profile}, ${widths[w]} px, ${what}`)[0]));
      }
      if (first) {
        ++sums.differing;
        console.log(`${name} (${form.join(' ')}): ${first}`);
      }
    } catch (error) {
      ++sums.refused;
      console.log(`${name} (${form.join(' ')}): ${String(error.stderr || error.stack).split('\n')[0]}`);
    }
  }
} finally {
  if (!given.keep) await rm(folder, {recursive: true, force: true});
}
console.log(table(['rows', 'layouts', 'refused', 'differing'], [[sums.rows, sums.layouts, sums.refused, sums.differing]]));
if (sums.rows === 0) console.log('No rows.');
process.exitCode = sums.rows === 0 || sums.refused + sums.differing > Number(given.most) ? 1 : 0;
