// The comparison of fonts must find every kind of difference; each test plants one.
import assert from 'node:assert/strict';
import test from 'node:test';

import {otherAdvances, otherFonts} from '../random/faces.js';

const fonts = [{name: 'Lato-Bold', file: 'bold.ttf', variable: false}, {name: 'Manrope-ExtraLight', file: 'all.ttf', variable: true}, {name: 'Karla-Regular', file: 'karla.ttf', variable: false}];
const layout = {width: 700, cards: [{parts: [{kind: 'picture'}, {kind: 'heading', fonts: [0, 1], spaceFonts: [2], lines: [{text: 'a'}]}]}]};
const differencesWith = (names) => otherFonts(new Map([['0.1', names]]), layout, fonts).map(({what, expected}) => `${what}: ${expected}`);

test('the measured fonts agree, with any instance of a variable font, with or without the font of the spaces', () => {
  assert.deepEqual(differencesWith(['Lato-Bold', 'Manrope-Regular']), []);
  assert.deepEqual(differencesWith(['Lato-Bold', 'Manrope-ExtraLight', 'Karla-Regular']), []);
});

test('a font that was not measured, or a measured font that is not used, is a difference', () => {
  assert.deepEqual(differencesWith(['Lato-Bold', 'Manrope-Regular', 'Vollkorn-Regular']), ['font: Lato-Bold, Manrope-Regular, Vollkorn-Regular']);
  assert.deepEqual(differencesWith(['Lato-Regular', 'Manrope-Regular']), ['font: Lato-Regular, Manrope-Regular']);
});

test('a line with the computed text and another width is a difference, a line with other text is not', async () => {
  const suspect = {width: 700, name: '0.1', where: '0.1 heading', part: {lines: [{text: 'low tide', width: 100}, {text: 'at six', width: 60}]}};
  const found = async (texts) => (await otherAdvances([suspect], () => Promise.resolve({texts, widths: [100, 50]}))).map(({what, expected, actual}) => `${what}: ${expected} ${actual}`);
  assert.deepEqual(await found(['low tide', 'at six']), ['advances: 50 60']);
  assert.deepEqual(await found(['low', 'tide at six']), []);
});
