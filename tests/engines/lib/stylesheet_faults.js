// Faults of an emitted stylesheet.
import {generate, lexer, parse, walk} from 'css-tree';
import {transform} from 'lightningcss';

/** The faults that css-tree finds in `css`, one sentence each. */
function grammarFaults(css) {
  const faults = [];
  const tree = parse(css, {
    positions: true,
    parseCustomProperty: true,
    onParseError: (error) => faults.push(`line ${error.line}: ${error.message}`),
  });
  const declarations = [];
  walk(tree, (node) => {
    const line = `line ${node.loc?.start.line}`;
    if (node.type === 'Declaration') {
      declarations.push({line: node.loc.start.line, property: node.property, value: generate(node.value)});
      const {error} = lexer.matchDeclaration(node);
      if (error) faults.push(`${line}: ${node.property}: ${generate(node.value)}: ${error.message.split('\n')[0]}`);
    } else if (node.type === 'Atrule') {
      const {error} = lexer.matchAtrulePrelude(node.name, node.prelude);
      if (error) faults.push(`${line}: @${node.name}: ${error.message.split('\n')[0]}`);
    }
  });
  return {faults, declarations, tree};
}

/** The faults that let a stylesheet affect elements outside its row, or break the page that it is pasted into. */
function pastingFaults(css, tree, classes) {
  const faults = [];
  for (const sign of ['<', '>', '&']) if (css.includes(sign)) faults.push(`it contains a ${sign}`);
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

/** The errors and warnings of lightningcss. */
function parserFaults(css) {
  try {
    const {warnings} = transform({filename: 'row.css', code: Buffer.from(css), errorRecovery: false});
    return warnings.map((warning) => `line ${warning.loc.line}: ${warning.message}`);
  } catch (error) {
    return [`line ${error.loc?.line}: ${error.message}`];
  }
}

/**
 * All faults of `css`, one sentence each, and its declarations. `classes` are the classes that its selectors may start
 * with.
 */
export function stylesheetFaults(css, classes) {
  const {faults, declarations, tree} = grammarFaults(css);
  if (declarations.length === 0) faults.push('it declares nothing');
  faults.push(...pastingFaults(css, tree, classes), ...parserFaults(css));
  return {faults: [...new Set(faults)], declarations};
}
