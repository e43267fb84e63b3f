// Random rows: projects over all settings of a project file. The same seed gives the same rows.
import {copy, hardWords} from '../corpus/copy.js';
import {pick, seeded} from '../corpus/random.js';
import {series} from './cover.js';
import {factors, roles} from './settings.js';

const latin = {first: ['EB Garamond'], second: ['Inter'], third: ['Roboto Slab'], lacking: ['League Spartan', 'Noto Sans'], generic: ['sans-serif']};
/** Families for each script: some that have all of it, one that lacks it and is followed by another, and a generic one. */
const familiesOf = {
  latin: [latin, {first: ['Lato'], second: ['Vollkorn'], third: ['Karla'], lacking: ['Cabin', 'Noto Serif'], generic: ['serif']}, {first: ['Manrope'], second: ['Lato'], third: ['Cabin'], lacking: ['Karla', 'EB Garamond'], generic: ['serif']}],
  greek: [{first: ['EB Garamond'], second: ['Inter'], third: ['Noto Sans'], lacking: ['Karla', 'Noto Serif'], generic: ['serif']}],
  cyrillic: [{first: ['Vollkorn'], second: ['EB Garamond'], third: ['Noto Serif'], lacking: ['Lato', 'Inter'], generic: ['sans-serif']}],
  hebrew: [{first: ['Noto Sans Hebrew', 'Lato'], second: ['Noto Serif Hebrew', 'Lato'], third: ['Noto Rashi Hebrew', 'Inter'], lacking: ['Lato', 'Noto Sans Hebrew'], generic: ['Noto Sans Hebrew', 'sans-serif']}],
  arabic: [{first: ['Amiri', 'Lato'], second: ['Noto Naskh Arabic', 'Lato'], third: ['Noto Kufi Arabic', 'Inter'], lacking: ['Lato', 'Noto Naskh Arabic'], generic: ['Noto Sans Arabic', 'sans-serif']}],
  devanagari: [{first: ['Noto Sans Devanagari'], second: ['Noto Serif Devanagari'], third: ['Noto Sans Devanagari', 'Lato'], lacking: ['Lato', 'Noto Serif Devanagari'], generic: ['Noto Sans Devanagari', 'serif']}],
  thai: [{first: ['Noto Sans Thai'], second: ['Noto Serif Thai'], third: ['Noto Looped Thai'], lacking: ['Inter', 'Noto Sans Thai'], generic: ['Noto Serif Thai', 'sans-serif']}],
  japanese: [{first: ['Noto Sans CJK JP'], second: ['Noto Serif CJK JP'], third: ['Lato', 'Noto Sans CJK JP'], lacking: ['Inter', 'Noto Serif CJK JP'], generic: ['Noto Sans CJK JP', 'sans-serif']}],
  chinese: [{first: ['Noto Sans CJK SC'], second: ['Noto Serif CJK SC'], third: ['Lato', 'Noto Sans CJK SC'], lacking: ['Inter', 'Noto Serif CJK SC'], generic: ['Noto Sans CJK SC', 'serif']}],
  mixed: [{first: ['Lato', 'Noto Naskh Arabic', 'Noto Sans Hebrew'], second: ['Inter', 'Noto Sans Hebrew', 'Amiri'], third: ['Karla', 'Noto Sans Hebrew', 'Noto Kufi Arabic'], lacking: ['Cabin', 'Noto Serif Hebrew', 'Noto Naskh Arabic'], generic: ['Noto Sans Hebrew', 'Noto Naskh Arabic', 'sans-serif']}],
};
const scriptOf = {en: 'latin', de: 'latin', cs: 'latin', vi: 'latin', tr: 'latin', nl: 'latin', el: 'greek', ru: 'cyrillic', he: 'hebrew', ar: 'arabic', hi: 'devanagari', th: 'thai', ja: 'japanese', zh: 'chinese', mixed: 'mixed'};
const rightToLeft = new Set(['he', 'ar']);

const index = Object.fromEntries(factors.map(({name}, i) => [name, i]));

/** The pairs of levels that a project must not have (core/project/conflicts.cpp). */
function excludedPairs() {
  const share = factors[index['card.padding']].levels.length - 1;  // percentages come last
  const cqi = new Map();
  for (const [f, {name, levels}] of factors.entries()) {
    for (const [i, level] of levels.entries()) {
      const value = JSON.stringify(level(() => 0.5)) ?? '';
      if (value.includes('cqi') || value.includes('"follow":"card"')) cqi.set(f * 16 + i, name);
    }
  }
  const is = (name, wanted) => (f, level) => f === index[name] && level === wanted;
  const level = is('row.level', 1);
  const clashes = (f, i, g, j) =>
    level(f, i) && (cqi.has(g * 16 + j) || is('row.lastLine', 1)(g, j) || is('card.padding', share)(g, j)) ||
    // With such padding only a full-bleed picture may be beside the text.
    is('card.direction', 1)(f, i) && is('card.padding', share)(g, j);
  return (a, i, b, j) => clashes(a, i, b, j) || clashes(b, j, a, i);
}

export const excluded = excludedPairs();

/** `count` rows of `seed`: name and project of each; the number of pairs of levels that occur, and of all pairs. */
export function randomRows(seed, count) {
  const {rows, cover} = series(factors, seed, count, excluded);
  return {rows: rows.map((row, n) => ({name: `${seed}-${n}`, project: projectOf(row, `${seed}-${n}`)})), met: cover.met, total: cover.total};
}

function projectOf({levels, seed}, name) {
  const random = seeded(seed);
  random();
  const project = {
    format: 'tenter-project',
    version: 1,
    name: `Random ${name}`,
    row: 'random',
    language: 'en',
    direction: 'ltr',
    range: {from: 320, to: 1920},
    style: {},
    cards: [],
    variants: [{class: 'random-row', bands: []}],
  };
  const drawn = {};
  factors.forEach((factor, f) => {
    const value = factor.levels[levels[f]](random);
    if (value === undefined) return;
    const holder = factor.path[0] === 'style' || factor.path[0] === 'page' || factor.path[0] === 'unit' ? project : drawn;
    if (factor.merged) Object.assign(nested(holder, factor.path), value);
    else nested(holder, factor.path.slice(0, -1))[factor.path.at(-1)] = value;
  });
  const {language} = drawn;
  project.language = language === 'mixed' ? 'en' : language;
  project.direction = rightToLeft.has(language) || (language === 'mixed' && random() < 0.4) ? 'rtl' : 'ltr';
  const families = pick(random, familiesOf[scriptOf[language]]);
  for (const role of roles) {
    const style = nested(project, ['style', 'text', role]);
    const kind = role === 'heading' || random() < 0.6 ? drawn.families : pick(random, Object.keys(families));
    style.family = families[kind];
  }
  project.cards = Array.from({length: drawn.count}, (_, card) => ({parts: partsOf(random, drawn, card)}));
  project.variants[0].bands = bandsOf(random, drawn, project);
  return project;
}

function nested(holder, path) {
  return path.reduce((at, step) => (at[step] ??= {}), holder);
}

function partsOf(random, drawn, card) {
  const parts = [];
  const picture = {picture: 'picture.png', size: [320, 213], alt: 'A drawing', ...(random() < 0.2 && {ratio: '5/4'})};
  const {pictures} = drawn;
  const has = pictures === 'each' || (pictures === 'some' && random() < 0.5) || (pictures === 'last' && random() < 0.8);
  if (has && pictures !== 'last') parts.push(picture);
  if (random() < 0.9) parts.push({role: 'heading', copy: copyOf(random, drawn, 'headings', drawn.headingCopy, card)});
  if (random() < 0.3) parts.push({role: 'note', copy: copyOf(random, drawn, 'buttons', 'plain', card)});
  if (random() < 0.9 || parts.length === 0) parts.push({role: 'body', copy: copyOf(random, drawn, 'paragraphs', drawn.bodyCopy, card)});
  if (random() < 0.15) parts.push({role: 'body', copy: copyOf(random, drawn, 'paragraphs', 'plain', card + 1)});
  if (random() < 0.75) parts.push({role: 'button', copy: copyOf(random, drawn, 'buttons', 'plain', card), link: '#'});
  if (has && pictures === 'last') parts.push(picture);
  return parts;
}

function textIn(random, language, kind) {
  if (language !== 'mixed') return pick(random, copy[language][kind]);
  const others = ['he', 'ar', 'ru', 'el', 'en'];
  return `${pick(random, copy.en[kind])} ${pick(random, copy[pick(random, others)][kind])}`;
}

/** Copy as plain text or, depending on `manner`, as runs. */
function copyOf(random, drawn, kind, manner) {
  const text = textIn(random, drawn.language, kind);
  if (manner === 'plain') return text;
  const words = text.split(' ');
  if (manner === 'hard') return words.flatMap((word) => (random() < 0.3 ? [word, pick(random, hardWords)] : [word])).join(' ');
  const kinds = manner === 'all' ? ['strong', 'emphasis', 'link', 'break'] : [manner];
  const runs = [];
  for (let at = 0; at < words.length; ) {
    const length = 1 + Math.floor(random() * 4);
    const said = words.slice(at, at + length).join(' ');
    at += length;
    const end = at < words.length ? ' ' : '';
    if (random() < 0.5) {
      runs.push(said + end);
      continue;
    }
    const one = pick(random, kinds);
    if (one === 'break') runs.push(said, {break: true});
    else runs.push(one === 'link' ? {link: said, to: '#'} : {[one]: said}, ...(end ? [end] : []));
  }
  return runs;
}

function bandsOf(random, drawn, project) {
  const {bands: count, columns} = drawn;
  const ends = [[], [760], [590, 1120]][count - 1].map((end) => Number((end + 80 * (random() - 0.5)).toFixed(random() < 0.3 ? 1 : 0)));
  const steps = count === 1 ? [columns] : count === 2 ? [Math.max(1, Math.floor(columns / 2)), columns] : [1, Math.max(1, Math.ceil(columns / 2)), columns];
  return steps.map((columnsHere, band) => {
    const set = {row: {columns: columnsHere}};
    // Settings in which a band may differ from the style.
    if (count > 1 && random() < 0.3) set.text = {[pick(random, roles)]: {lineHeight: Number((1.1 + 0.6 * random()).toFixed(2))}};
    if (count > 1 && random() < 0.2 && project.style.card?.direction === 'beside') set.card = {direction: pick(random, ['stacked', 'beside'])};
    return {...(band < ends.length && {upTo: ends[band]}), set};
  });
}
