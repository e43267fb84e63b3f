// Traps are removed from themes as text; nothing else of the page may change.
import assert from 'node:assert/strict';
import test from 'node:test';
import {fileURLToPath} from 'node:url';

import {apart, baseFor, themesIn, trapsIn, withoutRules, withStylesheet} from '../lib/themes.js';

const html = `<head><style>
/* trap: root-62.5 (a root) */
html { font-size: 62.5% }
/* end */
p { margin: 0; /* trap: paragraph-padding (room) */ padding-bottom: 1em; /* end */ color: red }
</style></head><!-- trap: outer-class (a level up) -->`;

test('traps are found in rules, within rules and in the markup', () => {
  assert.deepEqual(trapsIn(html), ['outer-class', 'paragraph-padding', 'root-62.5']);
});

test('one trap is removed and the others stay', () => {
  const without = withoutRules(html, 'paragraph-padding');
  assert.ok(!without.includes('1em'));
  assert.ok(without.includes('margin: 0;') && without.includes('color: red') && without.includes('62.5%'));
  assert.ok(!withoutRules(html, 'root-62.5').includes('62.5%'));
  assert.equal(withoutRules(html, 'outer-class'), html);
});

test('a stylesheet is added after the theme’s, whatever it contains', () => {
  assert.equal(withStylesheet('<head><style>a</style></head>', "b { content: '$&' }\n"), "<head><style>a</style><style>\nb { content: '$&' }\n</style>\n</head>");
  assert.throws(() => withStylesheet('<p>', ''), /head/);
});

test('there are twelve themes, half of them with the class on a wrapper, and they request nothing', async () => {
  const themes = await themesIn(fileURLToPath(new URL('../themes', import.meta.url)));
  assert.equal(themes.length, 12);
  assert.equal(themes.filter((theme) => theme.selectors.row !== '').length, 6);
  for (const theme of themes) {
    assert.equal(theme.traps.includes('outer-class'), theme.selectors.row !== '', theme.name);
    const asked = [...theme.html.matchAll(/(?:src|href)="([^"]*)"/g)].map(([, address]) => address);
    assert.deepEqual(asked.filter((address) => !/^(#|data:)/.test(address)), [], theme.name);
    assert.ok(!/@import|@layer|url\(/.test(theme.html), theme.name);
  }
});

test('a project is made for a theme without changing the base', () => {
  const base = {language: 'en', style: {text: {heading: {family: ['Vollkorn']}}}};
  const made = baseFor(base, {language: 'ar', rootSize: 10, families: {heading: ['Amiri']}});
  assert.deepEqual(made, {language: 'en', style: {text: {heading: {family: ['Amiri']}}}});
  assert.deepEqual(base.style.text.heading.family, ['Vollkorn']);
});

test('two readings differ by their farthest box and by parts with another look', () => {
  const reading = (height, colour) => [{boxes: {'card 0': [0, 0, 10, 10], 'body 1': [0, 4, 10, height]}, looks: {'body 1: color': colour}}];
  assert.deepEqual(apart(reading(20, 'red'), reading(20, 'red')), {largest: 0, looks: []});
  assert.deepEqual(apart(reading(20, 'red'), reading(17.5, 'blue')), {largest: 2.5, looks: ['body: color']});
});

test('a box in one reading only is refused', () => {
  assert.throws(() => apart([{boxes: {'card 1': [0, 0, 1, 1]}, looks: {}}], [{boxes: {}, looks: {}}]), /card 1/);
});
