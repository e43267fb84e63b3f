// Compares the layout of one project in an engine with Tenter's, and groups the differences by kind.
import {writeFile} from 'node:fs/promises';
import path from 'node:path';

import {profileOf} from '../lib/browsers.js';
import {compareLayouts} from '../lib/compare.js';
import {MeasuredPage} from '../lib/measured_page.js';

export class Judge {
  #tenter;
  #server;
  #browsers;
  #folder;
  #pages = {};
  #html = {file: '', text: null};

  /** `browsers`: by engine; `folder`: the folder for project files and the picture that they show. */
  constructor(tenter, server, browsers, folder) {
    this.#tenter = tenter;
    this.#server = server;
    this.#browsers = browsers;
    this.#folder = folder;
  }

  async save(project, name) {
    this.#html.file = '';
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
    if (found.differences.length === 0) return found;
    // A difference that only a resize causes is not a fault of the layout; only differences in a fresh layout count.
    const differing = new Set(found.differences.map(({width}) => width));
    const again = computed.filter(({width}) => differing.has(width));
    const fresh = compareLayouts(profile, await page.read(again.map(({width}) => width), true), again);
    return {...found, differences: fresh.differences, stale: found.differences.length - fresh.differences.length};
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
