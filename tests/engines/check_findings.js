// Compares the findings of `check` with axe-core: contrast by role, and target size, at several widths of random rows
// whose colours, sizes and spacing are near the limits.
import {mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import {createRequire} from 'node:module';
import {tmpdir} from 'node:os';
import path from 'node:path';

import {pick, seeded} from './corpus/random.js';
import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {Tenter} from './lib/tenter.js';

const given = options({cli: undefined, samples: 'unused', browser: undefined, rows: '200'});
/** Viewport widths in CSS px: both sides of the breakpoint, and both ends. */
const widths = [360, 690, 710, 1500];

const random = seeded(20261125);
const chance = (share) => random() < share;
const between = (least, most) => least + (most - least) * random();
const px = (least, most) => `${between(least, most).toFixed(1)}px`;
const hex = (value) => Math.round(value).toString(16).padStart(2, '0');
/** A colour whose channels are near one level, some far from it. Pairs of such colours often have too little contrast. */
const colour = (least, most) => {
  const level = between(least, most);
  const spread = pick(random, [0, 10, 60]);
  const channels = [0, 0, 0].map(() => Math.min(255, Math.max(0, level + between(-spread, spread))));
  return `#${channels.map(hex).join('')}`;
};
const translucent = (solid) => solid + hex(between(90, 250));

/** Sizes and weights on both sides of the limit for large text: 24 px, or 18.66 px in bold. */
function style(role, ink) {
  const size = between(role === 'heading' ? 15 : 13, role === 'heading' ? 24 : 19);
  return {
    family: ['Karla', 'sans-serif'],
    weight: pick(random, [400, 700]),
    size: [[400, Number(size.toFixed(2))], [1500, Number((size * between(1, 1.6)).toFixed(2))]],
    colour: ink,
  };
}

/** Two cards, each with a heading, a paragraph and two buttons that may be small and close to each other. */
function project() {
  const dark = chance(0.25);
  const ink = () => {
    const solid = dark ? colour(120, 200) : colour(50, 135);
    return chance(0.2) ? translucent(solid) : solid;
  };
  const ground = () => (dark ? colour(0, 60) : colour(205, 255));
  const buttonIsDark = chance(0.6);
  const colours = buttonIsDark ? {colour: colour(200, 255), background: colour(30, 130)} : {colour: colour(40, 130), background: colour(200, 255)};
  const button = {
    ...style('button', colours.colour),
    background: colours.background,
    hover: colours,
    // Lines must be taller than their letters; otherwise axe-core cannot determine the background.
    size: Number(between(11, 13).toFixed(2)),
    lineHeight: px(14, 25),
    padding: {top: px(0, 2), bottom: px(0, 2), left: px(0, 12), right: px(0, 12)},
    border: {width: pick(random, ['0', '1px', '2px']), colour: colours.background},
    place: pick(random, ['start', 'center', 'stretch']),
    margin: {top: '0', bottom: px(0, 9)},
  };
  const labels = pick(random, [['Go', 'On'], ['Book', 'Read'], ['Book this walk', 'Read about it']]);
  const card = (n) => ({
    parts: [
      {role: 'heading', copy: `Low tide, walk ${n}`},
      {role: 'body', copy: 'Out over the flats, an hour on the island, home before the channel fills.'},
      ...labels.map((label, i) => ({role: 'button', copy: `${label} ${n}`, link: `#${i}-${n}`})),
    ],
  });
  return {
    format: 'tenter-project',
    version: 1,
    name: 'Judged findings',
    page: {container: {background: ground()}},
    style: {
      row: {background: pick(random, ['transparent', ground()])},
      card: {background: pick(random, ['transparent', ground(), translucent(ground())])},
      text: {heading: style('heading', ink()), body: style('body', ink()), button},
    },
    cards: [card(1), card(2)],
    variants: [{class: 'judged', bands: [{upTo: 700, set: {row: {columns: 1}}}, {set: {row: {columns: 2}}}]}],
  };
}

const holds = (finding, width) => finding.widths.some(([from, to]) => (width > from && width <= to) || (width === from && width === 320));

const words = (roles) => [...new Set(roles)].sort().join(' ');

/** The findings of `check` at `width`: roles with too little contrast except `undecided` ones, and true if a target is too small. */
function found(findings, cards, width, undecided) {
  const here = findings.filter((finding) => holds(finding, width));
  const faint = here.filter((finding) => finding.check === 'contrast').map(({card, part}) => cards[card].parts[part].role);
  const small = here.some((finding) => finding.check === 'target' && finding.severity === 'error');
  return {faint: words(faint.filter((role) => !undecided.includes(role))), small};
}

/** The same by axe-core, and the roles whose background it cannot determine. */
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

/** One random row, with the findings of `check` and its page. */
async function prepared(i) {
  const file = path.join(folder, `judged-${i}.tenter.json`);
  const drawn = project();
  await writeFile(file, JSON.stringify(drawn));
  const [findings, page] = await Promise.all([tenter.check(file, 'judged', 'blink'), tenter.page(file, 'judged')]);
  return {drawn, findings, address: server.add(page).alone};
}

try {
  const rows = Number(given.rows);
  const tab = await browser.newPage();
  await tab.evaluateOnNewDocument(axe);
  let next = prepared(0);
  for (let i = 0; i < rows; ++i) {
    const {drawn, findings, address} = await next;
    // The next row is prepared while the browser checks this one.
    if (i + 1 < rows) next = prepared(i + 1);
    await tab.goto(address, {timeout: 600_000});
    for (const width of widths) {
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
  }
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true, force: true});
}
console.log(table(['layouts', 'too faint', 'too small', 'roles undecided', 'faults'], [Object.values(counts)]));
// A reference that always gives the same answer proves nothing.
const telling = counts.faint > 0 && counts.faint < counts.looked && counts.small > 0 && counts.small < counts.looked && counts.undecided < counts.looked / 5;
process.exit(counts.faults === 0 && telling ? 0 : 1);
