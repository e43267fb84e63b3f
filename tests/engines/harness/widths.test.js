import assert from 'node:assert/strict';
import test from 'node:test';

import {spreadWidths} from '../lib/widths.js';

test('the widths include the range ends and both sides of each breakpoint', () => {
  const widths = spreadWidths({from: 330, to: 1880, breakpoints: [590, 930.5]}, 40);
  assert.equal(widths.length, 40);
  for (const width of [330, 590, 591, 930, 931, 1880]) assert.ok(widths.includes(width), String(width));
});

test('the widths ascend without duplicates', () => {
  const widths = spreadWidths({from: 330, to: 1880, breakpoints: [590]}, 40);
  assert.deepEqual(widths, [...new Set(widths)].sort((a, b) => a - b));
});

test('no gap between two widths is much wider than an even spread', () => {
  const widths = spreadWidths({from: 330, to: 1880, breakpoints: [590, 930]}, 40);
  const widest = Math.max(...widths.slice(1).map((width, i) => width - widths[i]));
  assert.ok(widest <= (1880 - 330) / 34 + 1, String(widest));
});

test('a short range gives each of its widths once', () => {
  assert.deepEqual(spreadWidths({from: 400, to: 404, breakpoints: [402]}, 40), [400, 401, 402, 403, 404]);
});
