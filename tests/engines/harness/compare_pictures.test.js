// The comparison of pictures must find what a person sees; each test plants one difference.
import assert from 'node:assert/strict';
import test from 'node:test';

import {similarity} from '../lib/compare_pictures.js';

const side = 128;

/** A white picture with a black stripe of 2 px every 8 px, from `from` to `to` px across. */
function striped(from, to, shade = 255) {
  const bytes = new Uint8ClampedArray(4 * side * side).fill(shade);
  for (let y = 0; y < side; ++y) {
    for (let x = from; x < to; ++x) if (y % 8 < 2) bytes.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
  }
  return bytes;
}

test('equal pictures are equal', () => {
  const {structure, worst, colour} = similarity(striped(0, side), striped(0, side), side, side);
  assert.ok(Math.abs(structure - 1) < 1e-9);
  assert.equal(worst, 0);
  assert.equal(colour, 0);
});

test('a missing word shows in the worst place', () => {
  const {worst} = similarity(striped(0, side), striped(40, side), side, side);
  assert.ok(worst > 30, `worst is ${worst}`);
});

test('another ground shows in the colour', () => {
  const {colour} = similarity(striped(0, side), striped(0, side, 245), side, side);
  assert.ok(colour > 5, `colour is ${colour}`);
});

test('another direction of lines shows in the structure', () => {
  const turned = new Uint8ClampedArray(4 * side * side);
  const upright = striped(0, side);
  for (let y = 0; y < side; ++y) for (let x = 0; x < side; ++x) for (let c = 0; c < 4; ++c) turned[4 * (y * side + x) + c] = upright[4 * (x * side + y) + c];
  const {structure} = similarity(upright, turned, side, side);
  assert.ok(structure < 0.5, `structure is ${structure}`);
});
