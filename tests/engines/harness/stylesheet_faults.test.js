// The stylesheet check must find every kind of fault; each test plants one.
import assert from 'node:assert/strict';
import test from 'node:test';

import {stylesheetFaults} from '../lib/stylesheet_faults.js';

const faultsOf = (css) => stylesheetFaults(css, ['walks-trio']).faults.join('\n');

test('a correct stylesheet has no faults and its declarations are counted', () => {
  const css = `.walks-trio { display: grid; width: min(100%, 60rem) }
    .walks-trio .walks-heading { font-size: clamp(1rem, 0.5rem + 2vw, 2rem); text-wrap: balance }
    @media (max-width: 620px) { .walks-trio { grid-template-columns: repeat(2, minmax(0, 1fr)) } }
    @media (hover: hover) { .walks-trio .walks-button:hover { color: #123 } }`;
  const {faults, declarations} = stylesheetFaults(css, ['walks-trio']);
  assert.deepEqual(faults, []);
  assert.equal(declarations.length, 6);
  assert.deepEqual(declarations[1], {line: 1, property: 'width', value: 'min(100%,60rem)'});
});

test('a value, a property or a query that CSS does not have is reported', () => {
  assert.match(faultsOf('.walks-trio { width: 12 }'), /width/);
  assert.match(faultsOf('.walks-trio { colour: #123 }'), /colour/);
  assert.match(faultsOf('@media (max-width: 620) { .walks-trio { width: 0 } }'), /@media/);
});

test('a rule that is not closed, or is empty, is reported', () => {
  assert.notEqual(faultsOf('.walks-trio { width: 12px; } }'), '');
  assert.match(faultsOf('.walks-trio { }'), /declares nothing/);
});

test('a selector that reaches outside the row is reported', () => {
  assert.match(faultsOf('h3 { margin: 0 }'), /not scoped/);
  assert.match(faultsOf('.walks-trio a, a { margin: 0 }'), /a is not scoped/);
  assert.match(faultsOf('.other .walks-heading { margin: 0 }'), /not scoped/);
});

test('what a CMS would mangle is reported', () => {
  assert.match(faultsOf('.walks-trio > .walks-card { margin: 0 }'), /contains a >/);
  assert.match(faultsOf('@media (width < 620px) { .walks-trio { margin: 0 } }'), /contains a </);
  assert.match(faultsOf('@import "other.css"; .walks-trio { margin: 0 }'), /@import/);
});
