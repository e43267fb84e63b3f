// Checks every emitted stylesheet. css-tree's lexer: each property, value and media query matches the CSS grammar.
// lightningcss, a parser for browsers, accepts all of it. Chromium keeps each declaration, including the contents of
// calc() and clamp(), which the lexer does not check. And it is safe to paste into a page: scoped selectors, `max-width`
// queries in px, no `<`, `>` or `&`.
import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {stylesheetFaults} from './lib/stylesheet_faults.js';
import {Tenter} from './lib/tenter.js';

const given = options({cli: undefined, samples: undefined, browser: undefined});
const tenter = new Tenter(given.cli);
const variants = await variantsIn(given.samples);
const sheets = variants.flatMap(({file, sample, variant}) => ['rem', 'px'].map((unit) => ({file, sample, variant, unit, classes: [variant]})));
for (const file of new Set(variants.map((one) => one.file))) {
  const all = variants.filter((one) => one.file === file);
  sheets.push({file, sample: all[0].sample, variant: null, unit: 'rem', classes: all.map((one) => one.variant)});
}

const browser = await launch('chromium', given.browser);
const tab = await browser.newPage();

/** The declarations that the browser drops. */
async function unknownToBrowser(declarations) {
  const known = await tab.evaluate((all) => all.map(({property, value}) => CSS.supports(property, value)), declarations);
  return declarations.filter((_, i) => !known[i]).map(({line, property, value}) => `line ${line}: ${property}: ${value}: Chromium drops it`);
}

if ((await unknownToBrowser([{line: 1, property: 'width', value: 'calc(100% - 2)'}])).length === 0) {
  throw new Error('the browser accepts an invalid declaration');
}

const rows = [];
let failures = 0;
for (const {file, sample, variant, unit, classes} of sheets) {
  const css = await tenter.stylesheet(file, variant, unit);
  const {faults, declarations} = stylesheetFaults(css, classes);
  faults.push(...(await unknownToBrowser(declarations)));
  rows.push([sample, variant ?? 'all', unit, declarations.length, faults.length]);
  if (faults.length > 0) {
    ++failures;
    console.log(`${sample}, ${variant ?? 'all variants'}, ${unit}:`);
    for (const fault of faults.slice(0, 20)) console.log(`  ${fault}`);
  }
}
await browser.close();
console.log(table(['sample', 'variant', 'unit', 'declarations', 'faults'], rows));
process.exit(failures === 0 ? 0 : 1);
