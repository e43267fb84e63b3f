// Mutations of a page's rules: the rules that touch its row are moved, strengthened, marked important, put into a layer or
// into a media query. The same seed gives the same mutations.

/**
 * Runs in the browser: the style rules that match the element of class `rowClass`, something in it or one of its ancestors,
 * as JSON text of {around, selector, body}: the at-rules around it, its selector list and its declarations.
 */
export function rulesOfRow(rowClass) {
  const row = document.querySelector(`.${CSS.escape(rowClass)}`);
  const touched = [...row.querySelectorAll('*'), row];
  for (let up = row.parentElement; up; up = up.parentElement) touched.push(up);
  const rest = (selector) => selector.replace(/::?(before|after|first-letter|first-line|marker)\b/g, '').replace(/:(hover|focus|focus-visible|focus-within|active|visited)\b/g, '') || '*';
  const touches = (selector) => {
    try {
      return touched.some((element) => element.matches(rest(selector)));
    } catch {
      return true;
    }
  };
  const found = [];
  const walk = (rules, around) => {
    for (const rule of rules) {
      if (rule instanceof CSSStyleRule) {
        const body = rule.style.cssText;
        if (body && touches(rule.selectorText)) found.push({around, selector: rule.selectorText, body});
      } else if (rule instanceof CSSLayerStatementRule) found.push({around, statement: rule.cssText});
      else if (rule.cssRules && !(rule instanceof CSSKeyframesRule)) walk(rule.cssRules, [...around, rule.cssText.slice(0, rule.cssText.indexOf('{')).trim()]);
    }
  };
  for (const sheet of document.styleSheets) walk(sheet.cssRules, []);
  return JSON.stringify(found);
}

/** CSS text of rules. */
export function textOf(rules) {
  return rules
    .map(({around, selector, body, statement}) => {
      const inner = statement ?? `${selector} { ${body} }`;
      return around.reduceRight((text, at) => `${at} { ${text} }`, inner);
    })
    .join('\n');
}

const between = (random, least, most) => least + Math.floor(random() * (most - least + 1));

const conditions = (random) => {
  const width = between(random, 330, 1800);
  return [`@media (min-width: ${width}px)`, `@media (width < ${width}.5px)`, `@media screen and (max-width: ${width}px)`, `@media (${width}px <= width)`, '@supports (display: grid)', `@media not all and (min-width: ${width}px)`][between(random, 0, 5)];
};

const strengthened = (selector, random) =>
  [`:is(${selector}, #none)`, `html body :is(${selector})`, `:is(${selector}):not(.none, #none)`, `:is(${selector}):not(.none)`, `:where(${selector})`][between(random, 0, 4)];

/** One rule changed in one way; more rules if a copy is added. */
const ways = {
  first: (rules, i) => [rules[i], ...rules.filter((_, at) => at !== i)],
  last: (rules, i) => [...rules.filter((_, at) => at !== i), rules[i]],
  // :is() drops pseudo-elements.
  strong: (rules, i, random) => rules[i].selector.includes('::') ? rules : rules.with(i, {...rules[i], selector: strengthened(rules[i].selector, random)}),
  important: (rules, i) => rules.with(i, {...rules[i], body: important(rules[i].body)}),
  layer: (rules, i) => rules.with(i, {...rules[i], around: ['@layer mutated', ...rules[i].around]}),
  media: (rules, i, random) => rules.with(i, {...rules[i], around: [conditions(random), ...rules[i].around]}),
};

function important(body) {
  const parts = [];
  let depth = 0;
  let part = '';
  let quote = '';
  for (const character of body) {
    if (quote) quote = character === quote ? '' : quote;
    else if (character === '"' || character === "'") quote = character;
    else if (character === '(') ++depth;
    else if (character === ')') --depth;
    if (character === ';' && depth === 0 && !quote) {
      parts.push(part);
      part = '';
    } else part += character;
  }
  parts.push(part);
  return parts.filter((one) => one.trim()).map((one) => (/!\s*important\s*$/.test(one) ? one : `${one} !important`)).join(';');
}

/** From 1 to 6 mutations of `rules`; `done` says which. */
export function mutated(rules, random) {
  const names = Object.keys(ways);
  const done = [];
  for (let left = between(random, 1, 6); left > 0; --left) {
    const i = between(random, 0, rules.length - 1);
    if (rules[i].statement) continue;
    const way = names[between(random, 0, names.length - 1)];
    done.push(`${way} ${rules[i].selector.slice(0, 60)}`);
    rules = ways[way](rules, i, random);
  }
  return {rules, done};
}

/** The smallest part of `rules` for which `fails` is still true, found by leaving out ever smaller parts. */
export async function shrunk(rules, fails) {
  for (let size = Math.ceil(rules.length / 2); size >= 1; size = size === 1 ? 0 : Math.ceil(size / 2)) {
    for (let at = 0; at < rules.length; ) {
      const fewer = [...rules.slice(0, at), ...rules.slice(at + size)];
      if (await fails(fewer)) rules = fewer;
      else at += size;
    }
  }
  return rules;
}
