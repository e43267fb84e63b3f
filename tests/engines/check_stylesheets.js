// Every emitted stylesheet is CSS: each property, value and media query matches the grammar (css-tree's lexer, which
// holds the CSS specifications' own), a parser for browsers (lightningcss) takes all of it, Chromium knows
// each declaration (the insides of calc() and clamp() too, which the lexer lets pass), and what makes it safe
// to paste into a page holds: scoped selectors, `max-width` queries in px, no `<`, `>` or `&`.
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

/** Declarations that the browser would drop. */
async function unknownToBrowser(declarations) {
  const known = await tab.evaluate((all) => all.map(({property, value}) => CSS.supports(property, value)), declarations);
  return declarations.filter((_, i) => !known[i]).map(({line, property, value}) => `line ${line}: ${property}: ${value}: Chromium drops it`);
}

if ((await unknownToBrowser([{line: 1, property: 'width', value: 'calc(100% - 2)'}])).length === 0) {
  throw new Error('the browser takes a wrong declaration for a right one');
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
