// Compares the layout of one project in an engine with Tenter's, and groups the differences by kind.
import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';

import {profileOf} from '../lib/browsers.js';
import {compareLayouts, sayTheSame} from '../lib/compare.js';
import {MeasuredPage} from '../lib/measured_page.js';

/** Scripts without spaces between words, in which engines find words by a dictionary. */
const byDictionary = /\p{Script=Thai}|\p{Script=Lao}|\p{Script=Khmer}|\p{Script=Myanmar}/u;

export class Judge {
  #tenter;
  #server;
  #browsers;
  #folder;
  #pages = {};
  #html = {file: '', text: null};
  #elsewhere = new Map();

  /** `browsers`: by engine; `folder`: the folder for project files and the picture that they show. */
  constructor(tenter, server, browsers, folder) {
    this.#tenter = tenter;
    this.#server = server;
    this.#browsers = browsers;
    this.#folder = folder;
  }

  async save(project, name) {
    this.#html.file = '';
    this.#elsewhere.clear();
    const file = path.join(this.#folder, `${name}.tenter.json`);
    await writeFile(file, `${JSON.stringify(project, null, 2)}\n`);
    return file;
  }

  /** The result of compareLayouts (lib/compare.js) for the project at `widths` in `engine`. */
  async judge(file, variant, engine, widths) {
    const profile = profileOf[engine];
    const [html, computed] = await Promise.all([this.#page(file, variant), this.#tenter.geometry(file, variant, widths, profile)]);
    const page = (this.#pages[engine] ??= await MeasuredPage.blank(this.#browsers[engine], this.#server));
    await page.show(html);
    const found = compareLayouts(profile, await page.read(widths), computed);
    await this.#setApart(found, file, engine, computed[0]);
    if (found.differences.length === 0) return found;
    // A difference that only a resize causes is not a fault of the layout; only differences in a fresh layout count.
    const differing = new Set(found.differences.map(({width}) => width));
    const again = computed.filter(({width}) => differing.has(width));
    const fresh = compareLayouts(profile, await page.read(again.map(({width}) => width), true), again);
    await this.#setApart(fresh, file, engine, computed[0]);
    return {...found, differences: fresh.differences, stale: found.differences.length - fresh.differences.length};
  }

  /**
   * Removes wrong line counts from `found` in text that the engine breaks by a dictionary of its own, and adds them to
   * `found.apart`. The text must be in a script without spaces, and break at other places than computed if it breaks
   * wherever it may.
   */
  async #setApart(found, file, engine, layout) {
    const parts = new Map();
    for (const {name} of [...found.differences, ...found.tightFits].filter(({what}) => what === 'lines')) {
      const [card, part] = name.split('.').map(Number);
      const text = layout.cards[card].parts[part].lines.map((line) => line.text).join('');
      if (byDictionary.test(text) && !parts.has(name)) parts.set(name, await this.#breaksElsewhere(file, engine, card, part));
    }
    const isOwn = ({what, name}) => what === 'lines' && parts.get(name) === true;
    for (const list of ['differences', 'tightFits']) {
      const kept = found[list].filter((one) => !isOwn(one));
      found.apart += found[list].length - kept.length;
      found.pairs -= found[list].length - kept.length;
      found[list] = kept;
    }
  }

  /** True if the engine breaks the text of a part at other places than computed in a column of 1 px. */
  async #breaksElsewhere(file, engine, card, part) {
    const key = `${file} ${engine} ${card}.${part}`;
    if (this.#elsewhere.has(key)) return this.#elsewhere.get(key);
    const project = JSON.parse(await readFile(file, 'utf8'));
    const only = project.cards[card].parts[part];
    const style = project.style.text[only.role] ?? {};
    project.style = {row: {width: '1px', padding: {}}, card: {padding: {}}, text: {[only.role]: {family: style.family, weight: style.weight, slant: style.slant, case: style.case, hyphens: style.hyphens, overflowWrap: 'normal'}}};
    project.cards = [{parts: [only]}];
    project.variants[0].bands = [{set: {row: {columns: 1}}}];
    const narrow = `${file}-narrow`;
    await writeFile(narrow, JSON.stringify(project));
    const [computed] = await this.#tenter.geometry(narrow, project.variants[0].class, [1000], profileOf[engine]);
    const page = await MeasuredPage.open(this.#browsers[engine], this.#server, await this.#tenter.page(narrow, project.variants[0].class));
    const read = await page.lines(1000, '0.0');
    await page.close();
    const {lines} = computed.cards[0].parts[0];
    const same = read.length === lines.length && read.every((line, i) => sayTheSame(line, lines[i].text));
    this.#elsewhere.set(key, !same);
    return !same;
  }

  /** The page of a project; both engines get the same, which may contain megabytes of fonts. */
  #page(file, variant) {
    if (this.#html.file !== file) this.#html = {file, text: this.#tenter.page(file, variant)};
    return this.#html.text;
  }
}

/** The kind of a difference: what differs, and in which kind of part. The numbers of cards and parts are left out. */
export function kindOf({where, what}) {
  const whom = where.replace(/^card \d+$/, 'card').replace(/^\d+\.\d+ /, '');
  return `${whom}: ${what === 'lines' ? 'lines' : what === 'x' || what === 'width' ? 'across' : what === 'y' || what === 'height' ? 'down' : what}`;
}

/** The differences of one row by kind: their number, the largest, and the first. */
export function byKind(differences) {
  const kinds = new Map();
  for (const one of differences) {
    const kind = kindOf(one);
    const off = typeof one.expected === 'number' && typeof one.actual === 'number' ? Math.abs(one.expected - one.actual) : Infinity;
    const known = kinds.get(kind) ?? {kind, count: 0, most: 0, first: one};
    known.count += 1;
    if (off > known.most) Object.assign(known, {most: off, worst: one});
    kinds.set(kind, known);
  }
  return [...kinds.values()];
}
