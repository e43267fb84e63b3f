// Compares the layout of one project in an engine with Tenter's, and groups the differences by kind.
import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';

import {profileOf} from '../lib/browsers.js';
import {compareLayouts, plainText, sayTheSame} from '../lib/compare.js';
import {MeasuredPage} from '../lib/measured_page.js';
import {otherAdvances, otherFonts} from './faces.js';

/** Scripts without spaces between words, in which engines find words by a dictionary. */
const byDictionary = /\p{Script=Thai}|\p{Script=Lao}|\p{Script=Khmer}|\p{Script=Myanmar}/u;

export class Judge {
  #tenter;
  #server;
  #browsers;
  #folder;
  #pages = {};
  #html = {file: '', text: null};
  #wordsOf = new Map();

  /** `browsers`: by engine; `folder`: the folder for project files and the picture that they show. */
  constructor(tenter, server, browsers, folder) {
    this.#tenter = tenter;
    this.#server = server;
    this.#browsers = browsers;
    this.#folder = folder;
  }

  async save(project, name) {
    this.#html.file = '';
    this.#wordsOf.clear();
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
    await this.#setApart(found, file, engine, page, computed);
    const faces = engine === 'chromium' ? otherFonts(await page.fonts(), computed.at(-1), computed.fonts) : await otherAdvances(found.suspects, (width, name) => freshLines(page, width, name));
    if (found.differences.length === 0) return {...found, differences: faces};
    // A difference that only a resize causes is not a fault of the layout; only differences in a fresh layout count.
    const differing = new Set(found.differences.map(({width}) => width));
    const again = computed.filter(({width}) => differing.has(width));
    let fresh = compareLayouts(profile, await page.read(again.map(({width}) => width), true), again);
    if (engine === 'chromium' && fresh.differences.length > 0) fresh = await this.#loadedAgain(fresh, page, html, again);
    await this.#setApart(fresh, file, engine, page, again);
    return {...found, differences: [...fresh.differences, ...faces], stale: found.differences.length - fresh.differences.length};
  }

  /**
   * The comparison of those of `layouts` that have differences in `found`, each with a page that is loaded for it alone.
   * Chromium 156 keeps a web font by the hundredths of its size, which it computes in floats: of two sizes that are 0.01 px
   * apart, the page may draw both at the one that it had first, for as long as it is open. Text that gets its width from
   * its label is then up to 0.1 % narrower or wider.
   */
  async #loadedAgain(found, page, html, layouts) {
    const differing = new Set(found.differences.map(({width}) => width));
    const again = layouts.filter(({width}) => differing.has(width));
    const read = [];
    for (const {width} of again) {
      await page.show(html);
      read.push(...(await page.read([width])));
    }
    return compareLayouts('blink', read, again);
  }

  /**
   * Removes wrong line counts from `found` that an engine's own dictionary causes, and adds them to `found.apart`. Only
   * text in a script without spaces can be such a case, and only if the engine breaks it at other places than computed in
   * a column of 1 px, or if the first line that differs starts inside a word: Chromium then looks for words from the start
   * of that line.
   */
  async #setApart(found, file, engine, page, computed) {
    const layouts = new Map(computed.map((layout) => [layout.width, layout]));
    const isOwn = async ({what, name, width}) => {
      if (what !== 'lines') return false;
      const [card, part] = name.split('.').map(Number);
      const lines = layouts.get(width).cards[card].parts[part].lines.map(({text}) => text);
      if (!byDictionary.test(lines.join(''))) return false;
      const words = await this.#words(file, engine, card, part);
      if (words === null) return true;
      const read = await page.lines(width, name);
      const first = lines.findIndex((line, i) => read[i] === undefined || !sayTheSame(read[i], line));
      return first > 0 && !words.has(plainText(lines.slice(0, first).join('')).length);
    };
    for (const list of ['differences', 'tightFits']) {
      const kept = [];
      for (const one of found[list]) {
        if (await isOwn(one)) ++found.apart, --found.pairs;
        else kept.push(one);
      }
      found[list] = kept;
    }
  }

  /** The ends of the words of a part; null if the engine has other words than computed. Both are laid out in 1 px. */
  async #words(file, engine, card, part) {
    const key = `${file} ${engine} ${card}.${part}`;
    if (!this.#wordsOf.has(key)) this.#wordsOf.set(key, await this.#layOutWords(file, engine, card, part));
    return this.#wordsOf.get(key);
  }

  async #layOutWords(file, engine, card, part) {
    const project = JSON.parse(await readFile(file, 'utf8'));
    const only = project.cards[card].parts[part];
    const {family, weight, slant, case: letterCase, hyphens} = project.style.text[only.role] ?? {};
    const [variant] = project.variants;
    project.style = {row: {width: '1px'}, text: {[only.role]: {family, weight, slant, case: letterCase, hyphens, overflowWrap: 'normal'}}};
    project.cards = [{parts: [only]}];
    variant.bands = [{set: {row: {columns: 1}}}];
    const narrow = `${file}-${engine}-words`;
    await writeFile(narrow, JSON.stringify(project));
    const [computed] = await this.#tenter.geometry(narrow, variant.class, [1000], profileOf[engine]);
    const page = await MeasuredPage.open(this.#browsers[engine], this.#server, await this.#tenter.page(narrow, variant.class));
    const read = await page.lines(1000, '0.0');
    await page.close();
    const {lines} = computed.cards[0].parts[0];
    if (read.length !== lines.length || !read.every((line, i) => sayTheSame(line, lines[i].text))) return null;
    let at = 0;
    return new Set(read.map((line) => (at += plainText(line).length)));
  }

  /** The page of a project; both engines get the same, which may contain megabytes of fonts. */
  #page(file, variant) {
    if (this.#html.file !== file) this.#html = {file, text: this.#tenter.page(file, variant)};
    return this.#html.text;
  }
}

/** The texts and widths of the lines of a part in a fresh layout. */
async function freshLines(page, width, name) {
  const [layout] = await page.read([width], true);
  return {texts: await page.lines(width, name), widths: layout.parts.find((part) => part.name === name).lines};
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
