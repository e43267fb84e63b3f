// Runs axe-core on the exported page of every variant, in the middle of each band: WCAG 2.2 A and AA, including contrast
// and target size. A sample that is meant to fail a rule is listed here, and must fail it.
import {readFile} from 'node:fs/promises';
import {createRequire} from 'node:module';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {middlesOf, variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';

/** Rules that a sample is meant to fail, by sample. */
const meant = {};

const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

const given = options({cli: undefined, samples: undefined, browser: undefined});
const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const tenter = new Tenter(given.cli);
const server = await new PageServer().start();
const browser = await launch('chromium', given.browser);
const rows = [];
let failures = 0;

try {
  for (const one of await variantsIn(given.samples)) {
    const tab = await browser.newPage();
    await tab.goto(server.add(await tenter.page(one.file, one.variant)).alone, {timeout: 600_000});
    await tab.evaluate(axe);
    for (const width of middlesOf(one)) {
      await tab.setViewport({width, height: 900});
      const result = await tab.evaluate(
        (tags) => window.axe.run(document, {runOnly: {type: 'tag', values: tags}, rules: {'target-size': {enabled: true}}}),
        standards,
      );
      const contrast = result.passes.find((rule) => rule.id === 'color-contrast')?.nodes.length ?? 0;
      const broken = result.violations.map((rule) => rule.id);
      const expected = meant[one.sample] ?? [];
      const wrong = result.violations.filter((rule) => !expected.includes(rule.id));
      const absent = expected.filter((id) => !broken.includes(id));
      rows.push([one.sample, one.variant, width, result.passes.length, contrast, wrong.length + absent.length]);
      if (wrong.length + absent.length === 0) continue;
      ++failures;
      console.log(`${one.sample}, ${one.variant}, ${width} px:`);
      for (const rule of wrong) {
        console.log(`  ${rule.id}: ${rule.help}`);
        for (const node of rule.nodes.slice(0, 3)) console.log(`    ${node.html.slice(0, 160)}\n      ${node.failureSummary.replaceAll('\n', ' ')}`);
      }
      for (const id of absent) console.log(`  ${id}: expected to fail, but passes`);
    }
    await tab.close();
  }
} finally {
  await browser.close();
  await server.stop();
}
console.log(table(['sample', 'variant', 'width', 'rules passed', 'texts with contrast', 'faults'], rows));
process.exit(failures === 0 && rows.length > 0 ? 0 : 1);
