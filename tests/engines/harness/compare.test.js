// The comparison must find every kind of difference; each test plants one.
import assert from 'node:assert/strict';
import test from 'node:test';

import {compareLayouts, sayTheSame} from '../lib/compare.js';

const laidOut = () => [
  {
    framed: 700,
    row: [10, 20, 680, 300],
    cards: [[10, 20, 680, 300]],
    parts: [
      {name: '0.0', box: [10, 20, 680, 200], fontSize: null, lines: null},
      {name: '0.1', box: [10, 220, 680, 48], fontSize: 20, lines: [600, 300]},
    ],
  },
];

const computed = () => {
  const box = (x, y, width, height) => ({x, y, width, height});
  return [
    {
      width: 700,
      row: box(10, 20, 680, 300),
      cards: [
        {
          box: box(10, 20, 680, 300),
          parts: [
            {kind: 'picture', box: box(10, 20, 680, 200)},
            {kind: 'heading', box: box(10, 220, 680, 48), fontSize: 20, available: 680, slack: 0.02, lines: [{text: 'a', width: 600}, {text: 'b', width: 300}]},
          ],
        },
      ],
    },
  ];
};

const differencesAfter = (change) => {
  const engine = laidOut();
  const tenter = computed();
  change(engine[0], tenter[0]);
  return compareLayouts('blink', engine, tenter).differences.map(({where, what}) => `${where}: ${what}`);
};

test('layouts that agree have no differences and count every part', () => {
  const found = compareLayouts('blink', laidOut(), computed());
  assert.deepEqual(found.differences, []);
  assert.equal(found.pairs, 2);
});

test('a box that differs by half a pixel agrees, and one that differs by slightly more does not', () => {
  assert.deepEqual(differencesAfter((engine) => (engine.parts[1].box[1] += 0.5)), []);
  assert.deepEqual(differencesAfter((engine) => (engine.parts[1].box[1] += 0.51)), ['0.1 heading: y']);
});

test('the row, a card and a picture are compared too', () => {
  assert.deepEqual(differencesAfter((engine) => (engine.row[2] += 1)), ['row: width']);
  assert.deepEqual(differencesAfter((engine) => (engine.cards[0][3] -= 1)), ['card 0: height']);
  assert.deepEqual(differencesAfter((engine) => (engine.parts[0].box[0] -= 1)), ['0.0 picture: x']);
});

test('an extra line, or a size that differs by a fiftieth of a pixel, is a difference', () => {
  assert.deepEqual(differencesAfter((engine) => (engine.parts[1].lines = [600, 300, 20])), ['0.1 heading: lines']);
  assert.deepEqual(differencesAfter((engine) => (engine.parts[1].fontSize += 0.02)), ['0.1 heading: font size']);
});

test('lines that overlap are counted by the height of their box, and only those', () => {
  const seen = (lineHeight, height) => differencesAfter((engine, tenter) => {
    tenter.cards[0].parts[1].lineHeight = lineHeight;
    engine.parts[1].lines = [600, 300, 20];
    engine.parts[1].box[3] = height;
  });
  assert.deepEqual(seen(4, 48), []);
  assert.deepEqual(seen(4, 52), ['0.1 heading: lines']);
  assert.deepEqual(seen(24, 48), ['0.1 heading: lines']);
  assert.deepEqual(seen(1, 48), ['0.1 heading: lines']);
});

test('an excluded part of another height excuses the heights of its card and row, but no widths', () => {
  const change = (text, width) => (engine, tenter) => {
    tenter.cards[0].parts[1].lines[0].text = text;
    for (const box of [engine.row, engine.cards[0], engine.parts[1].box]) box[3] += 2;
    engine.row[2] += width;
  };
  const found = (text, width) => {
    const engine = laidOut();
    const tenter = computed();
    change(text, width)(engine[0], tenter[0]);
    return compareLayouts('gecko', engine, tenter).differences.map(({where, what}) => `${where}: ${what}`);
  };
  assert.deepEqual(found('น้ำ', 0), []);
  assert.deepEqual(found('น้ำ', 1), ['row: width']);
  assert.deepEqual(found('a', 0), ['row: height', 'card 0: height', '0.1 heading: height']);
});

test('a part or a card on one side only is a difference', () => {
  assert.deepEqual(differencesAfter((engine) => engine.parts.pop()), ['0.1 heading: part']);
  assert.deepEqual(differencesAfter((engine, tenter) => tenter.cards[0].parts.pop()), ['0.1: part']);
  assert.deepEqual(differencesAfter((engine) => engine.cards.push([0, 0, 0, 0])), ['row: cards']);
});

test('a missing figure is a difference', () => {
  assert.deepEqual(differencesAfter((engine, tenter) => delete tenter.cards[0].parts[1].box.height), ['0.1 heading: height']);
  assert.deepEqual(differencesAfter((engine, tenter) => delete tenter.cards[0].parts[1].fontSize), ['0.1 heading: font size']);
});

test('layouts at another width are refused', () => {
  assert.throws(() => differencesAfter((engine) => (engine.framed = 699)), /699/);
});

test('one line less with a quarter of a percent of slack is a difference, with less a tight fit', () => {
  const with_ = (slack) => {
    const engine = laidOut();
    const tenter = computed();
    engine[0].parts[1].lines = [680];
    engine[0].parts[1].box[3] = 24;
    tenter[0].cards[0].parts[1].slack = slack;
    return compareLayouts('blink', engine, tenter);
  };
  assert.deepEqual(with_(0.0025).differences.map(({what}) => what), ['lines']);
  const tight = with_(0.0024);
  assert.deepEqual(tight.differences, []);
  assert.deepEqual(tight.tightFits.map(({where}) => where), ['0.1 heading']);
});

test('a tight fit does not excuse horizontal differences', () => {
  const found = differencesAfter((engine, tenter) => {
    engine.parts[1].lines = [680];
    engine.cards[0][2] -= 1;
    tenter.cards[0].parts[1].slack = 0.00003;
  });
  assert.deepEqual(found, ['card 0: width']);
});

test('another height is excused only in a tight fit that breaks at other places', () => {
  const differing = (slack, lines) =>
    differencesAfter((engine, tenter) => {
      engine.parts[1].box[3] += 1;
      engine.parts[1].lines = lines;
      tenter.cards[0].parts[1].slack = slack;
    });
  assert.deepEqual(differing(0.002, [560, 340]), []);
  assert.deepEqual(differing(0.003, [560, 340]), ['0.1 heading: height']);
  assert.deepEqual(differing(0.002, [600, 300]), ['0.1 heading: height']);
});

test('a line with another width than computed makes its part a suspect', () => {
  const engine = laidOut();
  engine[0].parts[1].lines = [596, 304];
  assert.deepEqual(compareLayouts('blink', engine, computed()).suspects.map(({name}) => name), ['0.1']);
  // Lines that overlap cannot be told apart.
  const overlapping = computed();
  Object.assign(overlapping[0].cards[0].parts[1], {lineHeight: 8, fontSize: 20});
  assert.deepEqual(compareLayouts('blink', engine, overlapping).suspects, []);
});

test('text that Firefox breaks by its own dictionary is excluded, in Firefox only', () => {
  const found = (profile) => {
    const tenter = computed();
    tenter[0].cards[0].parts[1].lines[0].text = 'น้ำขึ้น';
    return compareLayouts(profile, laidOut(), tenter);
  };
  assert.equal(found('gecko').apart, 1);
  assert.equal(found('gecko').pairs, 1);
  assert.equal(found('blink').apart, 0);
});

test('lines are compared without letter case and characters that are not drawn', () => {
  assert.ok(sayTheSame('straße\u00AD ', 'STRASSE'));
  assert.ok(!sayTheSame('straße a', 'STRASSE'));
});
