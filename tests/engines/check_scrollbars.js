// Rows on pages with a classic scrollbar: one that appears if the page is taller than the viewport, and one that the root
// always shows. Media conditions and `vw` may include it, percentages never do. An engine lays out the page, and Tenter's
// geometry must match. Source: the browser engine; CSS Values 4 § 6.1.2 and CSS Overflow 3 § 3 leave it to the engine.
import {mkdtemp, readFile, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';

import {countsOff, verdict} from './lib/bars.js';
import {classicBar, launch, profileOf} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {compareLayouts} from './lib/compare.js';
import {MeasuredPage} from './lib/measured_page.js';
import {PageServer} from './lib/page_server.js';
import {differenceLine, table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';
import {spreadWidths} from './lib/widths.js';

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, widths: '40'});

/** The kinds of scrollbar: the project's setting, and the rule that a theme would have for it. */
const ways = [
  {says: 'where the page scrolls', always: false, rule: ''},
  {says: 'always', always: true, rule: '<style>html { overflow-y: scroll }</style>'},
];

const profile = profileOf[given.engine];
const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-scrollbars-'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser, 1, true);
const rows = [];
let sound = true;
try {
  for (const one of await variantsIn(given.samples)) {
    const project = JSON.parse(await readFile(one.file, 'utf8'));
    // The copied project file is not in its folder, so it would not find its pictures.
    for (const card of project.cards) card.parts = card.parts.filter((part) => part.picture === undefined);
    const file = path.join(folder, 'project.tenter.json');
    for (const {says, always, rule} of ways) {
      project.page = {...project.page, scrollbar: {width: classicBar, always}};
      await writeFile(file, JSON.stringify(project));
      const widths = spreadWidths(one, Number(given.widths));
      const html = (await tenter.page(file, one.variant)).replace('</head>', `${rule}</head>`);
      const page = await MeasuredPage.open(browser, server, html, true);
      const found = compareLayouts(profile, await page.read(widths), await tenter.geometry(file, one.variant, widths, profile));
      await page.close();
      const {wrong, tooTight} = verdict({...found, texts: []}, {profile, balanced: one.balanced, some: true});
      for (const difference of wrong.slice(0, 6)) console.log(`${one.variant}, ${says}:${differenceLine(difference)}`);
      sound &&= wrong.length === 0 && !tooTight && found.pairs > 0;
      rows.push([one.variant, says, widths.length, found.pairs, countsOff(found), wrong.length, Number(found.largestBox.toFixed(3))]);
    }
  }
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}
console.log(`\nLaid out by ${given.engine}, scrollbar ${classicBar} px:`);
console.log(table(['variant', 'scrollbar', 'widths', 'parts', 'tight fits', 'differences', 'largest box px'], rows));
process.exit(sound && rows.length > 0 ? 0 : 1);
