// What an engine laid out against what Tenter computed.

/** How far apart figures may be, in CSS px. Engines lay out on grids of 1/64 and 1/60 px. */
export const tolerance = {box: 0.5, fontSize: 0.01};

const sides = ['x', 'y', 'width', 'height'];

/**
 * Compares one engine's layouts with Tenter's at the same widths.
 * @returns differences in order of width, how many parts were compared, and the largest distances in CSS px.
 */
export function compareLayouts(engine, tenter) {
  const result = {pairs: 0, lines: 0, largestBox: 0, largestSize: 0, differences: []};
  if (engine.length !== tenter.length) throw new Error(`${tenter.length} layouts computed, ${engine.length} read`);
  for (let i = 0; i < engine.length; ++i) compareOne(engine[i], tenter[i], result);
  return result;
}

function compareOne(engine, tenter, result) {
  const width = tenter.width;
  if (engine.width !== width) throw new Error(`the engine laid out at ${engine.width} px instead of ${width} px`);
  const differ = (where, what, expected, actual) => result.differences.push({width, where, what, expected, actual});

  const box = (where, expected, actual) => {
    sides.forEach((side, index) => {
      const off = Math.abs(expected[index] - actual[side]);
      result.largestBox = Math.max(result.largestBox, off);
      // Written so that a figure that is no number is a difference too.
      if (!(off <= tolerance.box)) differ(where, side, expected[index], actual[side]);
    });
  };

  box('row', engine.row, tenter.row);
  if (engine.cards.length !== tenter.cards.length) differ('row', 'cards', engine.cards.length, tenter.cards.length);
  const parts = new Map(engine.parts.map((part) => [part.name, part]));
  tenter.cards.forEach((card, c) => {
    if (c < engine.cards.length) box(`card ${c}`, engine.cards[c], card.box);
    card.parts.forEach((part, p) => {
      const name = `${c}.${p}`;
      const where = `${name} ${part.kind}`;
      const read = parts.get(name);
      ++result.pairs;
      if (!read) {
        differ(where, 'part', 'no element', part.kind);
        return;
      }
      parts.delete(name);
      box(where, read.box, part.box);
      if (read.lines === null) return;
      const off = Math.abs(read.fontSize - part.fontSize);
      result.largestSize = Math.max(result.largestSize, off);
      if (!(off <= tolerance.fontSize)) differ(where, 'font size', read.fontSize, part.fontSize);
      if (read.lines !== part.lines.length) {
        ++result.lines;
        differ(where, 'lines', read.lines, part.lines.length);
      }
    });
  });
  for (const name of parts.keys()) differ(name, 'part', 'an element', 'nothing computed');
}
