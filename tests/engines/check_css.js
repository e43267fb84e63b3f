// Compares how core/css reads CSS with other readers. css-tree: tokens and specificities. Chromium: which selectors are
// valid and what they select, which rules and declarations of a sheet are kept, which media queries match, and the
// results of calculations. All texts are random, but the same in every run.
import {execFileSync} from 'node:child_process';
import * as cssTree from 'css-tree';
import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import * as make from './lib/random_css.js';
import {table} from './lib/report.js';

const given = options({probe: undefined, browser: undefined});
const ask = (questions) => JSON.parse(execFileSync(given.probe, {input: JSON.stringify(questions), maxBuffer: 1 << 28}).toString());
const some = (count, seed, maker) => {
  const random = make.randomNumbers(seed);
  return [...new Set(Array.from({length: count}, () => maker(random)))];
};
const rows = [];
let failures = 0;

/** Compares our results with theirs, text by text; equal means equal as JSON. */
function compare(what, judge, texts, ours, theirs) {
  const wrong = texts.map((text, i) => [text, JSON.stringify(ours[i]), JSON.stringify(theirs[i])]).filter(([, a, b]) => a !== b);
  rows.push([what, judge, texts.length, wrong.length]);
  failures += wrong.length;
  for (const [text, a, b] of wrong.slice(0, 8)) console.log(`${what} of ${JSON.stringify(text)}:\n  here  ${a}\n  there ${b}`);
}

// In the order of core/css/tokens.h.
const kinds = ['Ident', 'Function', 'AtKeyword', 'Hash', 'String', 'BadString', 'Url', 'BadUrl', 'Delim', 'Number', 'Percentage', 'Dimension', 'WhiteSpace', 'CDO', 'CDC', 'Colon', 'Semicolon', 'Comma', 'LeftSquareBracket', 'RightSquareBracket', 'LeftParenthesis', 'RightParenthesis', 'LeftCurlyBracket', 'RightCurlyBracket'];

function tokensThere(text) {
  const {BadString, Comment, WhiteSpace} = cssTree.tokenTypes;
  const out = [];
  const add = (type, start, end) => {
    const previous = out.at(-1);
    if (type === WhiteSpace && previous?.newline) previous.text += text.slice(start, end);
    else if (start < end) out.push({type, text: text.slice(start, end)});
  };
  cssTree.tokenize(text, (type, start, end) => {
    // css-tree includes the line end in a broken string; § 4.3.5 does not.
    const newline = type === BadString ? /(\r\n|[\r\n\f])?$/.exec(text.slice(start, end))[0].length : 0;
    if (type !== Comment) add(type, start, end - newline);
    if (newline) out.push({type: WhiteSpace, text: text.slice(end - newline, end), newline: true});
  });
  return out.map((token) => [token.type, token.text]);
}

function checkTokens() {
  // A backslash at the end of the text is an escape (§ 4.3.8), and `\url(` starts a URL (§ 4.3.4); css-tree differs.
  const texts = some(2000, 1, make.garble).filter((text) => !/\\$|\\url/.test(text));
  const ours = ask(texts.map((text) => ({what: 'tokens', text}))).map((tokens, i) => {
    const bytes = Buffer.from(texts[i]);
    return tokens.slice(0, -1).map(([kind, begin, end]) => [cssTree.tokenTypes[kinds[kind]], bytes.subarray(begin, end).toString()]);
  });
  compare('tokens', 'css-tree', texts, ours, texts.map(tokensThere));
}

const add = (a, b) => a.map((value, i) => value + b[i]);
const most = (list) => list.reduce((a, b) => (a[0] - b[0] || a[1] - b[1] || a[2] - b[2]) >= 0 ? a : b, [0, 0, 0]);
const oldPseudoElements = ['before', 'after', 'first-line', 'first-letter'];

/** The specificity by Selectors 4 § 17, from css-tree's syntax tree. */
function specificityOf(node) {
  const lists = (node.children?.toArray() ?? []).filter((child) => child.type === 'SelectorList').flatMap((list) => list.children.toArray());
  const nth = node.children?.first?.type === 'Nth' ? node.children.first.selector?.children.toArray() ?? [] : [];
  switch (node.type) {
    case 'Selector':
      return node.children.toArray().map(specificityOf).reduce(add, [0, 0, 0]);
    case 'IdSelector':
      return [1, 0, 0];
    case 'ClassSelector':
    case 'AttributeSelector':
      return [0, 1, 0];
    case 'TypeSelector':
      return node.name.endsWith('*') ? [0, 0, 0] : [0, 0, 1];
    case 'PseudoElementSelector':
      return [0, 0, 1];
    case 'PseudoClassSelector':
      if (oldPseudoElements.includes(node.name)) return [0, 0, 1];
      if (node.name === 'where') return [0, 0, 0];
      if (['is', 'not', 'has'].includes(node.name)) return most(lists.map(specificityOf));
      return add([0, 1, 0], most(nth.map(specificityOf)));
    default:
      return [0, 0, 0];
  }
}

const shore = `<section id=walks class="row wide" lang=en-GB>${[0, 1, 2, 3].map((i) => `<article class=card data-tide=${i % 2 ? 'low' : 'high-water'}><h3>Tide</h3><p>Out${i === 2 ? '<p class=late>Late' : ''}<a ${i === 3 ? '' : 'href=#'} rel=next></a></article>`).join('')}<div></div></section><div class="wide card"><div id=""> </div></div>`;

/** In the browser: the page's elements in the form that the probe expects. */
function readTree() {
  const all = [...document.querySelectorAll('*')];
  const place = (element) => (element ? all.indexOf(element) : null);
  return all.map((element) => ({
    tag: element.localName,
    attributes: Object.fromEntries([...element.attributes].map(({name, value}) => [name, value])),
    parent: place(element.parentElement),
    previous: place(element.previousElementSibling),
    next: place(element.nextElementSibling),
    first: place(element.firstElementChild),
    empty: element.matches(':empty'),
  }));
}

/** In the browser: which elements each selector selects; null if it is not valid. */
function readSelected(texts) {
  const all = [...document.querySelectorAll('*')];
  return texts.map((text) => {
    try {
      // A selector with a pseudo-element selects nothing: the browser returns elements only.
      return [...document.querySelectorAll(text)].map((element) => all.indexOf(element));
    } catch {
      return null;
    }
  });
}

async function checkSelectors(tab) {
  await tab.setContent(`<!doctype html><html lang=en><title>Tides</title><body>${shore}`);
  const tree = await tab.evaluate(readTree);
  const texts = some(3000, 2, make.selector);
  const answers = ask(texts.map((text) => ({what: 'selector', text, tree})));
  const selected = await tab.evaluate(readSelected, texts);
  compare('validity', 'Chromium', texts, answers.map((one) => one.valid), selected.map((one) => one !== null));
  const plain = texts.map((text, i) => i).filter((i) => answers[i].valid && selected[i] && !/::|:after/.test(texts[i]));
  compare('selected elements', 'Chromium', plain.map((i) => texts[i]), plain.map((i) => answers[i].selected), plain.map((i) => selected[i]));
  // css-tree treats the forgiving list of :is() differently.
  const valid = texts.map((text, i) => i).filter((i) => answers[i].valid && !make.hasWrong(texts[i]));
  compare('specificity', 'css-tree', valid.map((i) => texts[i]), valid.map((i) => answers[i].specificities),
    valid.map((i) => cssTree.parse(texts[i], {context: 'selectorList'}).children.toArray().map(specificityOf)));
}

/** In the browser: the style rules of each sheet; null for a sheet with nested rules. */
function readSheets(sheets) {
  const out = [];
  for (const text of sheets) {
    const style = document.createElement('style');
    style.textContent = text;
    document.head.append(style);
    let nested = false;
    const rules = [];
    const walk = (list) => {
      for (const rule of list) {
        if (rule instanceof CSSStyleRule) {
          nested = nested || rule.cssRules.length > 0;
          const properties = ['color', 'margin-left', 'padding-top', 'width', 'right', 'content', 'column-gap', '--x', '--y', '--z', '--w'];
          rules.push([rule.selectorText, properties.map((name) => (rule.style.getPropertyValue(name) || rule.style.getPropertyPriority(name) ? name : '') + rule.style.getPropertyPriority(name)).join()]);
        } else if (rule instanceof CSSMediaRule || rule instanceof CSSSupportsRule || rule instanceof CSSLayerBlockRule || rule instanceof CSSContainerRule) {
          walk(rule.cssRules);
        }
      }
    };
    walk(style.sheet.cssRules);
    style.remove();
    out.push(nested ? null : rules);
  }
  return out;
}

/** The rules that were read, as a sheet of their own. */
const written = (rules) => rules.map(({selector, declarations}) => `${selector}{${declarations.map(([name, value, important]) => `${name}:${value}${important ? '!important' : ''}`).join(';')}}`).join('\n');

async function checkSheets(tab) {
  const texts = some(3000, 3, make.sheet);
  const ours = ask(texts.map((text) => ({what: 'sheet', text})));
  // Chromium makes no rule of the rest of a block after a nested rule if it knows none of the declarations there.
  const withoutEmptyRests = (rules) => (Array.isArray(rules) ? rules.filter(([selector, known], n) =>
    n === 0 || !/^,*$/.test(known) || rules[n - 1][0] !== selector) : rules);
  const there = await tab.evaluate(readSheets, texts);
  const here = await tab.evaluate(readSheets, ours.map(written));
  const kept = texts.map((text, i) => i).filter((i) => there[i]);
  compare('rules and declarations', 'Chromium', kept.map((i) => texts[i]), kept.map((i) => withoutEmptyRests(here[i])), kept.map((i) => withoutEmptyRests(there[i])));
}

const widths = [320, 640, 777, 1280, 1920];

/** In the browser: computed font sizes and matching media queries at each width. */
async function readAtWidths(sizes, queries, atWidths) {
  const frame = document.createElement('iframe');
  frame.scrolling = 'no';
  document.body.replaceChildren(frame);
  const inside = frame.contentDocument;
  inside.body.style.margin = 0;
  inside.body.innerHTML = '<div style="container-type: inline-size; width: 50vw; font-size: 20px"></div>';
  const spans = sizes.map((value) => {
    const span = inside.createElement('span');
    span.style.fontSize = value;
    inside.body.firstChild.append(span);
    return span;
  });
  const out = {valid: spans.map((span) => span.style.fontSize !== ''), sizes: sizes.map(() => []), media: queries.map(() => [])};
  for (const width of atWidths) {
    frame.style.width = `${width}px`;
    spans.forEach((span, i) => out.sizes[i].push(parseFloat(frame.contentWindow.getComputedStyle(span).fontSize)));
    queries.forEach((query, i) => out.media[i].push(frame.contentWindow.matchMedia(query).matches));
  }
  return out;
}

async function checkAtWidths(tab) {
  await tab.setContent('<!doctype html><body>');
  const sizes = some(1500, 4, make.size);
  const queries = some(1000, 5, make.media);
  const there = await tab.evaluate(readAtWidths, sizes, queries, widths);
  const ours = ask(sizes.map((text) => ({what: 'sizes', text, em: 20, container: 0.5, widths})));
  compare('validity of sizes', 'Chromium', sizes, ours.map((one) => one.valid), there.valid);
  const valid = sizes.map((text, i) => i).filter((i) => ours[i].valid && there.valid[i]);
  // The engine stores sizes in 32 bits and limits them to 10000 px.
  const near = (a, b) => (Math.abs(Math.min(Math.max(a, 0), 10000) - b) <= 0.01 + 1e-5 * b ? b : a);
  compare('sizes at 5 widths', 'Chromium', valid.map((i) => sizes[i]), valid.map((i) => ours[i].sizes.map((size, n) => near(size, there.sizes[i][n]))), valid.map((i) => there.sizes[i]));
  const holds = ask(queries.map((text) => ({what: 'media', text, widths})));
  compare('media queries at 5 widths', 'Chromium', queries, holds.map((list) => list.map((truth) => truth === 2)), there.media);
}

checkTokens();
const browser = await launch('chromium', given.browser);
try {
  const tab = await browser.newPage();
  await checkSelectors(tab);
  await checkSheets(tab);
  await checkAtWidths(tab);
} finally {
  await browser.close();
}
console.log(table(['what', 'judge', 'texts', 'differences'], rows));
process.exit(failures === 0 && rows.every(([, , texts]) => texts > 100) ? 0 : 1);
