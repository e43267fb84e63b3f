// What an engine laid out against what Tenter computed.
import {mayBreakOtherwise} from './grid.js';

/** How far apart figures may be, in CSS px. Engines lay out on grids of 1/64 and 1/60 px. */
export const tolerance = {box: 0.5, fontSize: {blink: 0.01, gecko: 0.02}};

const allSides = ['x', 'y', 'width', 'height'];
const acrossOnly = ['x', 'width'];

/**
 * Compares one engine's layouts with Tenter's at the same widths, computed under break profile `profile`.
 *
 * A line count that differs where the engine's grid of numbers explains it is a tight fit, not a difference; the
 * line more or less moves what stands below, so at that width only what lies across is compared.
 *
 * @returns differences and tight fits in order of width, how many parts were compared, and the largest distances
 *   in CSS px.
 */
export function compareLayouts(profile, engine, tenter) {
  const result = {pairs: 0, lineDifferences: 0, largestBox: 0, largestSize: 0, differences: [], tightFits: []};
  if (engine.length !== tenter.length) throw new Error(`${tenter.length} layouts computed, ${engine.length} read`);
  for (let i = 0; i < engine.length; ++i) compareOne(profile, engine[i], tenter[i], result);
  return result;
}

function compareOne(profile, engine, tenter, result) {
  const width = tenter.width;
  if (engine.width !== width) throw new Error(`the engine laid out at ${engine.width} px instead of ${width} px`);
  const pairs = pairParts(engine, tenter);
  const isTight = ({read, part}) => linesDiffer(read, part) && mayBreakOtherwise(profile, part);
  const sides = pairs.some(isTight) ? acrossOnly : allSides;

  const differ = (where, what, expected, actual) => result.differences.push({width, where, what, expected, actual});
  const compareBox = (where, expected, actual) => {
    for (const side of sides) {
      const read = expected[allSides.indexOf(side)];
      const off = Math.abs(read - actual[side]);
      result.largestBox = Math.max(result.largestBox, off);
      // Written so that a figure that is no number is a difference too.
      if (!(off <= tolerance.box)) differ(where, side, read, actual[side]);
    }
  };

  compareBox('row', engine.row, tenter.row);
  if (engine.cards.length !== tenter.cards.length) differ('row', 'cards', engine.cards.length, tenter.cards.length);
  tenter.cards.slice(0, engine.cards.length).forEach((card, c) => compareBox(`card ${c}`, engine.cards[c], card.box));
  for (const pair of pairs) {
    const {where, read, part} = pair;
    if (!read || !part) {
      differ(where, 'part', read ? 'an element' : 'no element', part ? 'computed' : 'nothing computed');
      continue;
    }
    ++result.pairs;
    compareBox(where, read.box, part.box);
    if (read.lines === null) continue;
    const off = Math.abs(read.fontSize - part.fontSize);
    result.largestSize = Math.max(result.largestSize, off);
    if (!(off <= tolerance.fontSize[profile])) differ(where, 'font size', read.fontSize, part.fontSize);
    if (isTight(pair)) {
      result.tightFits.push({width, where, what: 'lines', expected: read.lines, actual: part.lines.length});
    } else if (linesDiffer(read, part)) {
      ++result.lineDifferences;
      differ(where, 'lines', read.lines, part.lines.length);
    }
  }
}

/** Parts of both sides by name, in the order computed; `read` or `part` is missing where one side has none. */
function pairParts(engine, tenter) {
  const unpaired = new Map(engine.parts.map((part) => [part.name, part]));
  const pairs = tenter.cards.flatMap((card, c) =>
    card.parts.map((part, p) => {
      const name = `${c}.${p}`;
      const read = unpaired.get(name);
      unpaired.delete(name);
      return {where: `${name} ${part.kind}`, read, part};
    }),
  );
  return [...pairs, ...[...unpaired].map(([name, read]) => ({where: name, read}))];
}

function linesDiffer(read, part) {
  return read && part && read.lines !== null && read.lines !== part.lines.length;
}
