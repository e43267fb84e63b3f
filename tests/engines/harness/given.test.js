// The comparison of rows in existing markup must find every kind of fault; each test plants one.
import assert from 'node:assert/strict';
import test from 'node:test';

import {compareLayouts} from '../lib/compare.js';
import {computedFromRow, copyFaults, readFromRow, surroundingsMoved} from '../lib/given.js';

const box = (x, y, width, height) => ({x, y, width, height});

/** A row at 500 px in the engine's page and at 0 px in the layout. */
const laidOut = () => ({
  framed: 700,
  row: [10, 500, 680, 300],
  cards: [[10, 500, 680, 300]],
  parts: [
    {name: '0.0', box: [10, 500, 680, 200], fontSize: null, lines: null},
    {name: '0.1', box: [10, 700, 680, 48], fontSize: 20, lines: [600, 300]},
  ],
});

const computed = () => ({
  width: 700,
  row: box(10, 12, 680, 300),
  cards: [
    {
      box: box(10, 12, 680, 300),
      parts: [
        {kind: 'picture', box: box(10, 12, 680, 200)},
        {kind: 'heading', box: box(10, 212, 680, 48), fontSize: 20, slack: 0.02, lines: [{text: 'Low', width: 600}, {text: 'tide', width: 300}]},
      ],
    },
  ],
});

const differencesAfter = (change) => {
  const engine = laidOut();
  change(engine);
  return compareLayouts('blink', [readFromRow(engine)], [computedFromRow(computed())]).differences.map(({where, what}) => `${where}: ${what}`);
};

test('a row at another height of its page is not a difference', () => {
  assert.deepEqual(differencesAfter(() => {}), []);
});

test('a card or a part that moves within the row is a difference, and so is a row that moves sideways', () => {
  assert.deepEqual(differencesAfter((engine) => (engine.cards[0][1] += 1)), ['card 0: y']);
  assert.deepEqual(differencesAfter((engine) => (engine.parts[1].box[1] += 1)), ['0.1 heading: y']);
  assert.deepEqual(differencesAfter((engine) => (engine.row[0] += 1)), ['row: x']);
  assert.deepEqual(differencesAfter((engine) => (engine.row[3] += 1)), ['row: height']);
});

const marked = () => ({rows: 1, cards: [[{kind: 'picture', text: null}, {kind: 'heading', text: ' Low\n tide '}]]});

const copyAfter = (change) => {
  const found = marked();
  change(found);
  return copyFaults(found, computed());
};

test('parts with the computed text have no faults, ignoring white space', () => {
  assert.deepEqual(copyAfter(() => {}), []);
});

test('another word or kind, and an extra or missing part, card or row, is a fault', () => {
  assert.match(copyAfter((found) => (found.cards[0][1].text = 'High tide')).join(), /0\.1 heading: "High tide" found, "Low tide" computed/);
  assert.match(copyAfter((found) => (found.cards[0][1].kind = 'body')).join(), /found picture body; computed picture heading/);
  assert.match(copyAfter((found) => found.cards[0].pop()).join(), /found picture; computed picture heading/);
  assert.match(copyAfter((found) => found.cards.push([])).join(), /2 cards found, 1 computed/);
  assert.match(copyAfter((found) => found.cards.pop()).join(), /0 cards found, 1 computed/);
  assert.match(copyAfter((found) => (found.rows = 0)).join(), /0 rows found/);
});

/** A section with a row, its neighbour below with one box in it, and a footer. */
const page = () => [{width: 700, section: [0, 100, 700, 400], neighbour: [[20, 500, 660, 200], [20, 520, 300, 40]], footer: [[0, 700, 700, 60]]}];

/** The page after a stylesheet that makes the section 50 px taller and then makes `change`. */
const movedAfter = (change) => {
  const [now] = page();
  now.section[3] += 50;
  [...now.neighbour, ...now.footer].forEach((each) => (each[1] += 50));
  change(now);
  return surroundingsMoved(page(), [now]).map(({where, what}) => `${where}: ${what}`);
};

test('neighbour and footer may move down by the growth of the section', () => {
  assert.deepEqual(movedAfter(() => {}), []);
});

test('a footer that moves by more or by less is reported', () => {
  assert.deepEqual(movedAfter((now) => (now.footer[0][1] += 1)), ['footer: y']);
  assert.deepEqual(movedAfter((now) => (now.footer[0][1] -= 50)), ['footer: y']);
});

test('a box that moves or grows within the neighbour is reported', () => {
  assert.deepEqual(movedAfter((now) => (now.neighbour[1][1] += 1)), ['neighbour, box 1: y']);
  assert.deepEqual(movedAfter((now) => (now.neighbour[1][2] -= 1)), ['neighbour, box 1: width']);
  assert.deepEqual(movedAfter((now) => now.neighbour.push([0, 0, 1, 1])), ['neighbour: boxes']);
});

test('a section that starts elsewhere or is narrower is reported', () => {
  assert.deepEqual(movedAfter((now) => (now.section[1] += 1)), ['section: y']);
  assert.deepEqual(movedAfter((now) => (now.section[2] -= 1)), ['section: width']);
});

test('layouts at different widths are refused', () => {
  assert.throws(() => movedAfter((now) => (now.width = 701)), /701/);
});
