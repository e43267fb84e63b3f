// Compares the widths of pairs of characters, with kerning and ligatures, in every font file that the samples may use:
// tenter-cli against fontkit, a font library that shares no code with HarfBuzz. Tolerance 0.001 em. fontTools first
// cuts a font with a weight axis to one weight, because fontkit 2.0.4 reads wrong kerning deltas from variable fonts
// ("To" in Karla at 800: 970 + 1173 units; cut to 800, fontkit and hb-shape both give 921 + 1173, as hb-shape does for
// the variable font). The cut font keeps only the glyphs that the pairs can become, with all features, because a whole
// font has thousands of glyphs. Sources: fontkit, fontTools; OpenType 1.9.
import {execFile} from 'node:child_process';
import {copyFile, mkdtemp, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import * as fontkit from 'fontkit';

import {options} from './lib/command_line.js';
import {fontFiles} from './lib/font_files.js';
import {pairsFor} from './lib/pairs.js';
import {table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';

const tolerance = 0.001;
const pairsPerFont = 200;
const partsPerCard = 50;
/** CSS px: the largest size that a project may have, so that a thousandth of it can be measured. */
const size = 400;

const given = options({cli: undefined, samples: undefined, packages: undefined, python: undefined, only: ''});
const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-advances-'));

/** Weights to test a font at: its own, or both ends of its weight axis and one between. */
function weightsOf(font) {
  const axis = font.variationAxes.wght;
  return axis ? [axis.min, Math.round(axis.min * 0.45 + axis.max * 0.55), axis.max] : [font['OS/2'].usWeightClass];
}

/** A row of one column in which every part is one pair, in the font file `file`. */
function projectOf(file, weight, axis, rightToLeft, pairs) {
  const cards = [];
  for (let at = 0; at < pairs.length; at += partsPerCard) {
    cards.push({parts: pairs.slice(at, at + partsPerCard).map((copy) => ({role: 'body', copy}))});
  }
  return {
    format: 'tenter-project',
    version: 1,
    name: 'Pairs',
    direction: rightToLeft ? 'rtl' : 'ltr',
    language: rightToLeft ? 'ar' : 'en',
    fonts: [{family: 'Measured', file, weight: axis ? [axis.min, axis.max] : weight}],
    style: {row: {columns: 1}, text: {body: {family: ['Measured'], size, weight}}},
    cards,
    variants: [{class: 'pairs', bands: [{}]}],
  };
}

/** Runs a program of fontTools. */
const fontTools = (program, ...words) => promisify(execFile)(given.python, ['-m', `fontTools.${program}`, ...words]);

/** The font at each of `weights`, without axes, with the glyphs that `pairs` can become. */
async function cut(file, font, weights, pairs) {
  const axes = Object.entries(font.variationAxes);
  if (axes.length === 0) return weights.map(() => font);
  const written = path.join(folder, 'written.ttf');
  await fontTools('subset', file, `--text=${pairs.join('')}`, '--layout-features=*', `--output-file=${written}`);
  return Promise.all(
    weights.map(async (weight) => {
      const out = path.join(folder, `cut-${weight}.ttf`);
      const pins = axes.map(([tag, axis]) => `${tag}=${tag === 'wght' ? weight : axis.default}`);
      await fontTools('varLib.instancer', '--quiet', '-o', out, written, ...pins);
      return fontkit.open(out);
    }),
  );
}

/** Widths of the pairs in em, by fontkit. */
function shaped(font, rightToLeft, pairs) {
  return pairs.map((pair) => font.layout(pair, undefined, undefined, undefined, rightToLeft ? 'rtl' : 'ltr').advanceWidth / font.unitsPerEm);
}

const rows = [];
let wrong = 0;
let kerned = 0;
try {
  for (const {family, file, font} of fontFiles(given.samples, given.packages)) {
    const name = path.basename(file);
    if (!name.includes(given.only)) continue;
    const own = `font${path.extname(file)}`;
    await copyFile(file, path.join(folder, own));
    const rightToLeft = font.hasGlyphForCodePoint(0x0628) && /Arabic|Amiri/.test(family);
    const pairs = pairsFor(pairsPerFont, rightToLeft, (code) => font.hasGlyphForCodePoint(code));
    const weights = weightsOf(font);
    const judges = await cut(file, font, weights, pairs);
    for (const [w, weight] of weights.entries()) {
      const project = path.join(folder, 'pairs.tenter.json');
      await writeFile(project, JSON.stringify(projectOf(own, weight, font.variationAxes.wght, rightToLeft, pairs)));
      const [layout] = await tenter.geometry(project, 'pairs', [4000], 'blink');
      const lines = layout.cards.flatMap((card) => card.parts.map((part) => part.lines));
      if (lines.length !== pairs.length || lines.some((each) => each.length !== 1)) throw new Error(`${name}: not one line for each pair`);
      const computed = lines.map(([line]) => line.width / size);
      const judge = judges[w];
      const expected = shaped(judge, rightToLeft, pairs);
      const alone = pairs.map((pair) => shaped(judge, rightToLeft, [...pair]).reduce((sum, each) => sum + each, 0));
      const off = expected.map((width, i) => Math.abs(width - computed[i]));
      const faults = off.flatMap((each, i) => (each <= tolerance ? [] : [i]));
      const moved = expected.filter((width, i) => Math.abs(width - alone[i]) > tolerance).length;
      kerned += moved;
      wrong += faults.length;
      rows.push([family, name, weight, pairs.length, moved, Number(Math.max(...off).toFixed(5)), faults.length]);
      for (const i of faults.slice(0, 8)) console.log(`${name}, weight ${weight}: ${JSON.stringify(pairs[i])} ${expected[i].toFixed(5)} em by fontkit, ${computed[i].toFixed(5)} em computed`);
    }
  }
} finally {
  await rm(folder, {recursive: true});
}
console.log(table(['family', 'file', 'weight', 'pairs', 'kerned or joined', 'largest difference em', 'wrong'], rows));
console.log(`${rows.reduce((sum, row) => sum + row[3], 0)} pairs, ${wrong} differ by more than ${tolerance} em.`);
if (rows.length === 0 || kerned === 0) {
  console.error('nothing was compared');
  process.exit(2);
}
process.exit(wrong === 0 ? 0 : 1);
