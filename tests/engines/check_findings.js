// axe-core as a judge of what `check` finds: contrast by role and target size, at some widths of rows whose colours,
// sizes and spacing are drawn at random about the thresholds.
import {mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import {createRequire} from 'node:module';
import {tmpdir} from 'node:os';
import path from 'node:path';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';

const given = options({cli: undefined, samples: 'unused', browser: undefined, rows: '30'});

/** A small generator of numbers that is the same everywhere: mulberry32, public domain. */
function drawing(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const random = drawing(20261125);
const between = (least, most) => least + (most - least) * random();
const pick = (words) => words[Math.floor(random() * words.length)];
const hex = (value) => Math.round(value).toString(16).padStart(2, '0');
/** Greys and near greys: about half of such pairs are too faint. */
const grey = (least, most) => `#${[0, 0, 0].map(() => hex(between(least, most))).join('')}`;

function style(role) {
  const size = between(role === 'heading' ? 16 : 14, role === 'heading' ? 24 : 18);
  return {
    family: ['Karla', 'sans-serif'],
    weight: pick([400, 700]),
    size: [[400, Number(size.toFixed(2))], [1500, Number((size * between(1, 1.6)).toFixed(2))]],
    colour: grey(90, 150),
  };
}

/** Two cards, each with a heading, a paragraph and two buttons that may be small and near each other. */
function project() {
  const colours = {colour: grey(200, 255), background: grey(60, 140)};
  const button = {
    ...style('button'),
    ...colours,
    hover: colours,
    // Lines taller than their letters, or axe-core cannot tell what is behind them.
    size: Number(between(11, 13).toFixed(2)),
    lineHeight: `${between(16, 28).toFixed(1)}px`,
    padding: {top: '0', bottom: '0', left: '12px', right: '12px'},
    border: {width: '0'},
    margin: {top: '0', bottom: `${between(0, 8).toFixed(1)}px`},
  };
  const card = (n) => ({
    parts: [
      {role: 'heading', copy: `Low tide, walk ${n}`},
      {role: 'body', copy: 'Out over the flats, an hour on the island, home before the channel fills.'},
      {role: 'button', copy: `Book walk ${n}`, link: `#book-${n}`},
      {role: 'button', copy: `Read of walk ${n}`, link: `#read-${n}`},
    ],
  });
  return {
    format: 'tenter-project',
    version: 1,
    name: 'Judged findings',
    style: {
      row: {background: pick(['transparent', grey(200, 255)])},
      card: {background: pick(['transparent', '#ffffff', '#ffffff80', grey(225, 255)])},
      text: {heading: style('heading'), body: style('body'), button},
    },
    cards: [card(1), card(2)],
    variants: [{class: 'judged', bands: [{upTo: 700, set: {row: {columns: 1}}}, {set: {row: {columns: 2}}}]}],
  };
}

const holds = (finding, width) => finding.widths.some(([from, to]) => (width > from && width <= to) || (width === from && width === 320));

const words = (roles) => [...new Set(roles)].sort().join(' ');

/** What `check` finds at `width`: roles too faint but for `undecided` ones, and whether some target is too small. */
function found(findings, cards, width, undecided) {
  const here = findings.filter((finding) => holds(finding, width));
  const faint = here.filter((finding) => finding.check === 'contrast').map(({card, part}) => cards[card].parts[part].role);
  const small = here.some((finding) => finding.check === 'target' && finding.severity === 'error');
  return {faint: words(faint.filter((role) => !undecided.includes(role))), small};
}

/** The same as axe-core finds it, and the roles whose ground it cannot tell. */
async function judged(tab, cards) {
  const run = (rules) => window.axe.run(document, {runOnly: {type: 'rule', values: rules}, rules: {'target-size': {enabled: true}}});
  const {violations, incomplete} = await tab.evaluate(run, ['color-contrast', 'target-size']);
  const rolesIn = async (results) => {
    const nodes = results.filter((rule) => rule.id === 'color-contrast').flatMap((rule) => rule.nodes);
    const places = await tab.evaluate(
      (targets) => targets.map((target) => document.querySelector(target).closest('[data-tenter-part]').dataset.tenterPart.split('.')),
      nodes.map((node) => node.target[0]),
    );
    return places.map(([card, part]) => cards[card].parts[part].role);
  };
  const undecided = await rolesIn(incomplete);
  const faint = (await rolesIn(violations)).filter((role) => !undecided.includes(role));
  return {faint: words(faint), small: violations.some((rule) => rule.id === 'target-size'), undecided};
}

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(tmpdir(), 'tenter-findings-'));
const server = await new PageServer().start();
const browser = await launch('chromium', given.browser);
const counts = {looked: 0, faint: 0, small: 0, undecided: 0, faults: 0};

try {
  for (let i = 0; i < Number(given.rows); ++i) {
    const file = path.join(folder, `judged-${i}.tenter.json`);
    const drawn = project();
    await writeFile(file, JSON.stringify(drawn));
    const findings = await tenter.check(file, 'judged', 'blink');
    const tab = await browser.newPage();
    await tab.goto(server.add(await tenter.page(file, 'judged')).alone, {timeout: 600_000});
    await tab.evaluate(axe);
    for (const width of [360, 690, 710, 1100, 1600]) {
      await tab.setViewport({width, height: 2000});
      const theirs = await judged(tab, drawn.cards);
      const ours = found(findings, drawn.cards, width, theirs.undecided);
      counts.looked += 1;
      counts.faint += theirs.faint === '' ? 0 : 1;
      counts.small += theirs.small ? 1 : 0;
      counts.undecided += new Set(theirs.undecided).size;
      if (ours.faint === theirs.faint && ours.small === theirs.small) continue;
      counts.faults += 1;
      console.log(`row ${i}, ${width} px: found ${JSON.stringify(ours)}, axe-core ${JSON.stringify(theirs)}`);
      console.log(`  ${JSON.stringify(drawn.style)}`);
    }
    await tab.close();
  }
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true, force: true});
}
console.log(table(['layouts', 'too faint', 'too small', 'roles undecided', 'faults'], [Object.values(counts)]));
// A judge that always says the same proves nothing.
const telling = counts.faint > 0 && counts.faint < counts.looked && counts.small > 0 && counts.small < counts.looked && counts.undecided < counts.looked / 5;
process.exit(counts.faults === 0 && telling ? 0 : 1);
