// Different line counts of the engines are counted for each part and width.
import assert from 'node:assert/strict';
import test from 'node:test';

import {mutual, sideBySide} from '../lib/side_by_side.js';

const row = (counts, tight, largestBox) => ({sample: 'walks', variant: 'pair', pairs: 4, tight, largestBox, counts});

test('parts with different line counts are counted at each width', () => {
  assert.deepEqual(mutual([{'0.1': 2, '0.2': 3}, {'0.1': 1, '0.2': 3}], [{'0.1': 2, '0.2': 4}, {'0.1': 2, '0.2': 3}]), {differing: 2, texts: 4});
  assert.throws(() => mutual([{}], []), /1 widths/);
});

test('the table has a row for each variant and one for all', () => {
  const lines = sideBySide([row([{'0.1': 2}], 1, 0.25)], [row([{'0.1': 3}], 0, 0.5)]).split('\n');
  assert.equal(lines.length, 4);
  assert.equal(lines[2], '| walks, pair | 4 | 1 | 0.25 px | 0 | 0.50 px | 1 |');
  assert.equal(lines[3], '| **all** | 4 | 1 (25.000 %) | 0.25 px | 0 (0.000 %) | 0.50 px | 1 (100.000 %) |');
});

test('a row from one engine only is refused', () => {
  assert.throws(() => sideBySide([row([], 0, 0)], []), /one engine only/);
});
