// Every emitted stylesheet is CSS: each property, value and media query matches the grammar (css-tree's lexer, which
// holds the CSS specifications' own), a parser for browsers (lightningcss) takes all of it, and what makes it safe
// to paste into a page holds: scoped selectors, `max-width` queries in px, no `<`, `>` or `&`.
import {lexer, parse, walk, generate} from 'css-tree';
import {transform} from 'lightningcss';

import {options} from './lib/command_line.js';
import {table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';

/** What css-tree finds wrong in `css`, one sentence each. */
function grammarFaults(css) {
  const faults = [];
  const tree = parse(css, {
    positions: true,
    parseCustomProperty: true,
    onParseError: (error) => faults.push(`line ${error.line}: ${error.message}`),
  });
  let declarations = 0;
  walk(tree, (node) => {
    const line = `line ${node.loc?.start.line}`;
    if (node.type === 'Declaration') {
      ++declarations;
      const {error} = lexer.matchDeclaration(node);
      if (error) faults.push(`${line}: ${node.property}: ${generate(node.value)}: ${error.message.split('\n')[0]}`);
    } else if (node.type === 'Atrule') {
      const {error} = lexer.matchAtrulePrelude(node.name, node.prelude);
      if (error) faults.push(`${line}: @${node.name}: ${error.message.split('\n')[0]}`);
    }
  });
  return {faults, declarations, tree};
}

/** What would let the stylesheet reach outside its row, or break where it is pasted. */
function pastingFaults(css, tree, classes) {
  const faults = [];
  for (const sign of ['<', '>', '&']) if (css.includes(sign)) faults.push(`it holds a ${sign}`);
  walk(tree, {
    visit: 'Rule',
    enter(rule) {
      for (const selector of rule.prelude.children ?? []) {
        const text = generate(selector);
        const first = selector.children?.first;
        if (first?.type !== 'ClassSelector' || !classes.includes(first.name)) faults.push(`${text} is not scoped to the row's class`);
      }
    },
  });
  walk(tree, {
    visit: 'Atrule',
    enter(rule) {
      const prelude = rule.prelude ? generate(rule.prelude) : '';
      const known = /^\((max-width:[\d.]+px|hover:hover|prefers-reduced-motion:no-preference|forced-colors:active)\)$/;
      if (rule.name !== 'media' || !known.test(prelude)) faults.push(`@${rule.name} ${prelude} is not expected there`);
    },
  });
  return faults;
}

/** What lightningcss refuses or warns of. */
function parserFaults(css) {
  try {
    const {warnings} = transform({filename: 'row.css', code: Buffer.from(css), errorRecovery: false});
    return warnings.map((warning) => `line ${warning.loc.line}: ${warning.message}`);
  } catch (error) {
    return [`line ${error.loc?.line}: ${error.message}`];
  }
}

const given = options({cli: undefined, samples: undefined});
const tenter = new Tenter(given.cli);
const variants = await variantsIn(given.samples);
const sheets = variants.flatMap(({file, sample, variant}) => ['rem', 'px'].map((unit) => ({file, sample, variant, unit, classes: [variant]})));
for (const file of new Set(variants.map((one) => one.file))) {
  const all = variants.filter((one) => one.file === file);
  sheets.push({file, sample: all[0].sample, variant: null, unit: 'rem', classes: all.map((one) => one.variant)});
}

const rows = [];
let failures = 0;
for (const {file, sample, variant, unit, classes} of sheets) {
  const css = await tenter.stylesheet(file, variant, unit);
  const {faults, declarations, tree} = grammarFaults(css);
  if (declarations === 0) faults.push('it declares nothing');
  faults.push(...pastingFaults(css, tree, classes), ...parserFaults(css));
  rows.push([sample, variant ?? 'all', unit, declarations, faults.length]);
  if (faults.length > 0) {
    ++failures;
    console.log(`${sample}, ${variant ?? 'all variants'}, ${unit}:`);
    for (const fault of [...new Set(faults)].slice(0, 20)) console.log(`  ${fault}`);
  }
}
console.log(table(['sample', 'variant', 'unit', 'declarations', 'faults'], rows));
process.exit(failures === 0 ? 0 : 1);
