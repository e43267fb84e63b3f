// What leaves the program, in a browser: the page folder of every sample at ten widths and two pixel ratios is as
// `geometry` computes it, requests only its own files and loads of each picture the file that its slot needs; every form
// of the stylesheet lays out the same row; and until fonts have loaded, `--late-fonts` moves fewer lines. Sources: the
// browser engine; HTML § 4.8.4 (srcset and sizes), CSS Cascade 5 (layers), CSS Custom Properties 1, CSS Fonts 5
// (size-adjust).
import {execFile} from 'node:child_process';
import {mkdtemp, readFile, readdir, rm} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import {countsOff, most, mostTight, verdict} from './lib/bars.js';
import {launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {compareLayouts, tolerance} from './lib/compare.js';
import {FolderServer} from './lib/folder_server.js';
import {forms} from './lib/forms.js';
import {readLayout} from './lib/read_layout.js';
import {judgeCandidates} from './lib/read_pictures.js';
import {differenceLine, table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {spreadWidths} from './lib/widths.js';

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, only: ''});
const run = promisify(execFile);
const profile = profileOf[given.engine];
const tenter = new Tenter(given.cli);

/** Marks the parts of the row as an exported page does, waits for fonts and pictures; returns what failed. */
async function settleFolder(className) {
  const inner = document.querySelector('iframe').contentDocument;
  const row = inner.querySelector(`.${className}`);
  row.dataset.tenterRow = '';
  [...row.children].forEach((card, c) => {
    card.dataset.tenterCard = c;
    [...card.children].forEach((part, p) => (part.dataset.tenterPart = `${c}.${p}`));
  });
  const failed = [];
  await Promise.all([...inner.fonts].map((face) => face.load().catch(() => failed.push(`font ${face.family} ${face.weight}`))));
  await inner.fonts.ready;
  await Promise.all([...inner.images].map((image) => image.decode().catch(() => failed.push(`picture ${image.src}`))));
  return failed;
}

/** Every file below a folder, as relative names. */
async function filesIn(folder) {
  const entries = await readdir(folder, {recursive: true, withFileTypes: true});
  return entries.filter((entry) => entry.isFile()).map((entry) => path.relative(folder, path.join(entry.parentPath ?? entry.path, entry.name)));
}

const temporary = await mkdtemp(path.join(os.tmpdir(), 'tenter-handover-'));
const server = await new FolderServer().start();
const faults = [];
const rows = [];
const lateRows = [];
const sum = {pairs: 0, tight: 0};
const shifts = {plain: 0, adjusted: 0};

/** Shows what the server serves in a new tab; returns the layouts at `widths` as text. */
async function layoutsOf(browser, one, widths, name) {
  const tab = await browser.newPage();
  const outside = [];
  tab.on('request', (request) => request.url().startsWith('data:') || request.url().startsWith(server.origin) || outside.push(request.url()));
  await tab.goto(server.origin, {waitUntil: 'load', timeout: 600_000});
  for (const what of await tab.evaluate(settleFolder, one.variant)) {
    if (server.fontsCome || !what.startsWith('font ')) faults.push(`${name}: ${what} failed to load`);
  }
  for (const url of outside) faults.push(`${name}: the page requested ${url}`);
  const text = await tab.evaluate(readLayout, widths);
  await tab.close();
  return text;
}

/** How much of `loaded` is different in `early`: parts with other line counts, and the mean change of the row's height. */
function shiftOf(loaded, early) {
  let lines = 0;
  let height = 0;
  loaded.forEach((layout, i) => {
    layout.parts.forEach((part, p) => (lines += part.lines !== null && part.lines.length !== early[i].parts[p].lines?.length ? 1 : 0));
    height += Math.abs(layout.row[3] - early[i].row[3]);
  });
  return {lines, height: height / loaded.length};
}

/**
 * The stylesheets of a folder with other names for its fonts: Chromium 156 draws an installed font of the same name if the
 * file of a web font cannot be loaded.
 */
async function renamedSheets(folder) {
  const sheets = {'fonts.css': await readFile(path.join(folder, 'fonts.css'), 'utf8'), 'row.css': await readFile(path.join(folder, 'row.css'), 'utf8')};
  const families = [...sheets['fonts.css'].matchAll(/font-family: ("[^"]*")/g)].map(([, family]) => family);
  for (const family of new Set(families)) {
    for (const name of Object.keys(sheets)) sheets[name] = sheets[name].replaceAll(family, `"Web ${family.slice(1)}`);
  }
  return sheets;
}

/** Compares the row before its fonts have loaded with the loaded row: as the folder is, and with fallback fonts. */
async function judgeLate(browser, one, folder) {
  const name = `${one.sample}, ${one.variant}, late fonts`;
  const widths = spreadWidths(one, 60);
  const measured = async (into, fontsCome) => {
    server.serve(into, await renamedSheets(into));
    server.fontsCome = fontsCome;
    const text = await layoutsOf(browser, one, widths, name);
    server.fontsCome = true;
    return JSON.parse(text);
  };
  const helped = path.join(temporary, `${one.variant}-late`);
  await run(given.cli, ['folder', one.file, '--variant', one.variant, '--into', helped, '--late-fonts']);
  const loaded = await measured(folder, true);
  const withFallback = shiftOf(await measured(helped, true), loaded);
  if (withFallback.lines > 0 || withFallback.height > 0) faults.push(`${name}: fallback fonts change the loaded row`);
  const plain = shiftOf(loaded, await measured(folder, false));
  const adjusted = shiftOf(loaded, await measured(helped, false));
  if (adjusted.lines > plain.lines) faults.push(`${name}: fallback fonts move ${adjusted.lines} texts instead of ${plain.lines}`);
  shifts.plain += plain.lines;
  shifts.adjusted += adjusted.lines;
  lateRows.push([one.sample, one.variant, widths.length, plain.lines, adjusted.lines, Number(plain.height.toFixed(1)), Number(adjusted.height.toFixed(1))]);
}

/** Loads the page of `folder` afresh at each width; each picture must be sharp. Returns how many there were. */
async function judgePictures(browser, folder, widths, ratio, name) {
  const tab = await browser.newPage();
  let count = 0;
  for (const width of widths) {
    // Paths of its own, so that no load finds the files of an earlier one.
    server.serve(folder);
    await tab.goto(`${server.origin}/?width=${width}`, {waitUntil: 'load', timeout: 600_000});
    const {seen, wrong} = await judgeCandidates(tab, ratio);
    if (seen.length === 0) faults.push(`${name}, ${width} px: no pictures`);
    count += seen.length;
    for (const what of wrong) faults.push(`${name}, ${width} px: ${what}`);
  }
  await tab.close();
  return count;
}

/**
 * True if layouts differ from the computed ones as little as those of the usual form may, and on the vertical by `more`
 * CSS px; prints what differs more.
 */
function isAsComputed(read, computed, one, name, more = 0) {
  const found = compareLayouts(profile, read, computed);
  const isSmall = ({what, expected, actual}) => ['y', 'height'].includes(what) && Math.abs(expected - actual) <= tolerance.box + more;
  found.differences = found.differences.filter((difference) => !isSmall(difference));
  const {wrong, tooTight} = verdict({...found, texts: []}, {profile, balanced: one.balanced, some: true});
  for (const difference of wrong.slice(0, 6)) console.log(`${name}:${differenceLine(difference)}`);
  return wrong.length === 0 && !tooTight;
}

/** Sizes that follow the card are those of the project at both ends of each band; between them they may differ. */
async function judgeFollowingCard(browser, one, name) {
  const folder = path.join(temporary, `${one.variant}-card`);
  await run(given.cli, ['folder', one.file, '--variant', one.variant, '--into', folder, '--follow', 'card']);
  const sheet = await readFile(path.join(folder, 'row.css'), 'utf8');
  if (!/font-size:[^;]*cqi/.test(sheet)) faults.push(`${name}: no font size follows the card with --follow card`);
  const ends = spreadWidths(one, 0);
  server.serve(folder);
  const laid = await layoutsOf(browser, one, ends, `${name}, --follow card`);
  const computed = await tenter.geometry(one.file, one.variant, ends, profile, 1);
  // Sizes are rounded to 0.0001 px in other places, so that heights and margins, of which a card has up to eight, may be
  // rounded to the next step of the engine's grid. They add up over the cards of a column.
  const more = (8 * computed[0].cards.length) / 60;
  if (!isAsComputed(JSON.parse(laid), computed, one, `${name}, --follow card`, more)) faults.push(`${name}: with --follow card the row differs at the ends of bands`);
}

async function judge(browser, one, ratio) {
  const name = `${one.sample}, ${one.variant}, ratio ${ratio}`;
  const folder = path.join(temporary, one.variant);
  if (ratio === 1) await run(given.cli, ['folder', one.file, '--variant', one.variant, '--into', folder]);
  const widths = spreadWidths(one, 10);
  server.serve(folder);
  const text = await layoutsOf(browser, one, widths, name);
  const asked = [...server.asked];
  const files = await filesIn(folder);
  for (const file of asked) if (!files.includes(file)) faults.push(`${name}: the page requested ${file}, which is not in the folder`);
  const page = await readFile(path.join(folder, 'index.html'), 'utf8');
  // Of a picture, a browser loads the candidates that it needs.
  const isUsed = (file) => asked.includes(file) || (file.startsWith('pictures/') && page.includes(`${file} `));
  const unasked = files.filter((file) => file !== 'tenter-folder.json' && !isUsed(file));
  for (const file of unasked) faults.push(`${name}: the page does not use ${file}`);
  const pictures = await judgePictures(browser, folder, widths, ratio, name);
  const computed = await tenter.geometry(one.file, one.variant, widths, profile, ratio);
  const found = compareLayouts(profile, JSON.parse(text), computed);
  const {wrong, tooTight} = verdict({...found, texts: []}, {profile, balanced: one.balanced, some: true});
  for (const difference of wrong.slice(0, 6)) console.log(`${name}:${differenceLine(difference)}`);
  if (wrong.length > 0) faults.push(`${name}: ${wrong.length} differences`);
  if (tooTight) faults.push(`${name}: too many tight fits`);
  sum.pairs += found.pairs;
  sum.tight += countsOff(found);
  let same = '–';
  if (ratio === 1) {
    same = 0;
    for (const form of forms) {
      const other = `${folder}-form`;
      await run(given.cli, ['folder', one.file, '--variant', one.variant, '--into', other, ...form]);
      server.serve(other);
      const laid = await layoutsOf(browser, one, widths, `${name}, ${form.join(' ')}`);
      // Numbers in px are rounded to other sizes than numbers in rem, so that a tight fit may break differently.
      if (laid === text || (form.includes('px') && isAsComputed(JSON.parse(laid), computed, one))) ++same;
      else faults.push(`${name}: the form ${form.join(' ')} lays out another row`);
    }
    same = `${same} of ${forms.length}`;
    await judgeFollowingCard(browser, one, name);
    await judgeLate(browser, one, folder);
  }
  rows.push([one.sample, one.variant, ratio, widths.length, found.pairs, countsOff(found), wrong.length, Number(found.largestBox.toFixed(3)), files.length, pictures, same]);
}

try {
  for (const ratio of [1, 2]) {
    const browser = await launch(given.engine, given.browser, ratio);
    try {
      for (const one of await variantsIn(given.samples)) if (one.variant.includes(given.only)) await judge(browser, one, ratio);
    } finally {
      await browser.close();
    }
  }
} finally {
  await server.stop();
  await rm(temporary, {recursive: true});
}
console.log(`\nPage folders in ${given.engine}:`);
console.log(table(['sample', 'variant', 'ratio', 'widths', 'parts', 'tight fits', 'differences', 'largest box px', 'files', 'pictures', 'same forms'], rows));
console.log('\nTexts with other line counts, and change of the height, until fonts have loaded:');
console.log(table(['sample', 'variant', 'widths', 'texts', 'texts with fallback', 'height px', 'height px with fallback'], lateRows));
console.log(`${shifts.plain} texts move; with fallback fonts ${shifts.adjusted}.`);
if (!(shifts.adjusted < shifts.plain / 2)) faults.push('fallback fonts do not halve the number of texts that move');
if (rows.length === 0) faults.push('nothing was compared');
if (sum.tight > most(mostTight.all, sum.pairs, true)) faults.push('in total: too many tight fits');
for (const fault of faults) console.log(fault);
console.log(faults.length === 0 ? 'All agree.' : `${faults.length} faults.`);
process.exit(faults.length === 0 ? 0 : 1);
