// Tests the stylesheet for existing markup against mutations of the pages of check_frameworks.js: rules that touch the row
// are moved, strengthened, marked important, put into a layer or a media query (lib/mutations.js). A page fails if a box,
// a size or a line count differs, unless the project has an error finding about its theme. At most the share --most of the
// pages may fail. Source: the browser engine itself.
import {mkdir, mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {seeded} from './corpus/random.js';
import {frameworkPages, rowClass} from './frameworks/frameworks.js';
import {launch, profileOf} from './lib/browsers.js';
import {verdict} from './lib/bars.js';
import {options} from './lib/command_line.js';
import {judgeGiven} from './lib/judge_given.js';
import {mutated, rulesOfRow, shrunk, textOf} from './lib/mutations.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine} from './lib/report.js';
import {Tenter} from './lib/tenter.js';
import {baseFor, withStylesheet} from './lib/themes.js';

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, seed: '1', pages: '100', most: '0.01', only: '', shrink: '0', into: ''});
const profile = profileOf[given.engine];
const tenter = new Tenter(given.cli);
const folder = given.into || (await mkdtemp(path.join(os.tmpdir(), 'tenter-mutations-')));
const families = {heading: ['Vollkorn', 'serif'], body: ['Lato', 'sans-serif'], button: ['Lato', 'sans-serif']};
const base = JSON.stringify(baseFor(JSON.parse(await readFile(path.join(given.samples, 'base.tenter.json'), 'utf8')), {families}));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);

function widthsFor(random) {
  const widths = new Set([320, 1920]);
  while (widths.size < 12) widths.add(320 + Math.floor(random() * 1601));
  return [...widths].sort((one, other) => one - other);
}

/** The result for a page with `rules`: what differs, and whether an error finding about the theme says so. */
async function judged(page, rules, widths) {
  const html = withStylesheet(page.bare, textOf(rules));
  const own = path.join(folder, page.name);
  await mkdir(own, {recursive: true});
  const file = path.join(own, 'row.tenter.json');
  const saved = path.join(own, 'page.html');
  await writeFile(file, base);
  await writeFile(saved, html);
  const project = await tenter.adopt(file, saved);
  await writeFile(file, project);
  const {selectors} = JSON.parse(project).given;
  const {found, moved, copy} = await judgeGiven({browser, server, tenter, profile, widths}, {...page, html}, {file, selectors});
  const {wrong} = verdict(found, {profile, balanced: new Set(), some: true});
  const differences = [...wrong.map(differenceLine), ...moved.map(differenceLine), ...copy];
  const isFound = differences.length > 0 && (await tenter.check(file, rowClass, profile)).some(({check, severity}) => check === 'theme-obstacle' && severity === 'error');
  return {differences, isFound, pairs: found.pairs};
}

const pages = [];
const failures = [];
let obstacles = 0;
let pairs = 0;
try {
  for (const page of await frameworkPages()) {
    if (!page.name.includes(given.only)) continue;
    const tab = await browser.newPage();
    await tab.goto(server.add(page.html).alone, {waitUntil: 'load'});
    const rules = JSON.parse(await tab.evaluate(rulesOfRow, rowClass));
    await tab.close();
    if (rules.length > 0) pages.push({...page, rules, bare: page.html.replace(/<style>[^]*?<\/style>/g, '')});
  }
  const random = seeded(Number(given.seed));
  for (let n = 0; n < Number(given.pages); ++n) {
    const page = pages[Math.floor(random() * pages.length)];
    const {rules, done} = mutated(page.rules, random);
    const widths = widthsFor(random);
    let result;
    try {
      result = await judged(page, rules, widths);
    } catch (error) {
      result = {differences: [error.message.split('\n').slice(0, 2).join(' ')], isFound: false, pairs: 0};
    }
    pairs += result.pairs;
    if (result.differences.length === 0) continue;
    if (result.isFound) {
      ++obstacles;
      continue;
    }
    failures.push(n);
    console.log(`${n} ${page.name}: ${done.join('; ')}`);
    for (const line of result.differences.slice(0, 3)) console.log(`  ${line}`);
    if (failures.length <= Number(given.shrink)) {
      const few = await shrunk(rules, async (fewer) => {
        try {
          const {differences, isFound} = await judged(page, fewer, widths.slice(0, 12));
          return differences.length > 0 && !isFound;
        } catch {
          return false;
        }
      });
      console.log(textOf(few).replace(/^/gm, '    '));
    }
  }
} finally {
  await browser.close();
  await server.stop();
  if (!given.into) await rm(folder, {recursive: true});
}
console.log(`${given.engine}, seed ${given.seed}: ${failures.length} of ${given.pages} pages fail, ${obstacles} have an error finding instead; ${pairs} parts compared.`);
if (pairs === 0) process.exit(2);
process.exit(failures.length <= Number(given.most) * Number(given.pages) ? 0 : 1);
