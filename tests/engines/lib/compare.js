// What an engine laid out against what Tenter computed.

/**
 * How far apart figures may be. In CSS px: engines lay out on grids of 1/64 and 1/60 px, and Firefox cuts what follows
 * the viewport down to its grid. `slack`, as a share of a line: below it another engine's numbers may break the line
 * otherwise (measured: every such difference vanished when the text was scaled by 0.15 %).
 */
export const tolerance = {box: 0.5, fontSize: {blink: 0.01, gecko: 0.02}, slack: 0.0025};

const allSides = ['x', 'y', 'width', 'height'];
const acrossOnly = ['x', 'width'];

/**
 * Compares one engine's layouts with Tenter's at the same widths, computed under break profile `profile`.
 *
 * A line count that differs with less slack than the tolerance is a tight fit, not a difference; the line more or less
 * moves what stands below, so at that width only what lies across is compared.
 *
 * @returns differences and tight fits in order of width; how many parts were compared; the largest distances in CSS px;
 *   and suspects, parts of equal count whose lines are not as wide as computed, so that their texts are to be read.
 */
export function compareLayouts(profile, engine, tenter) {
  const result = {pairs: 0, largestBox: 0, largestSize: 0, apart: 0, apartOtherwise: 0, differences: [], tightFits: [], suspects: []};
  if (engine.length !== tenter.length) throw new Error(`${tenter.length} layouts computed, ${engine.length} read`);
  for (let i = 0; i < engine.length; ++i) compareOne(profile, engine[i], tenter[i], result);
  return result;
}

function compareOne(profile, engine, tenter, result) {
  const width = tenter.width;
  if (Math.abs(engine.framed - width) > 1e-3) throw new Error(`the engine laid out at ${engine.framed} px instead of ${width} px`);
  const pairs = pairParts(engine, tenter);
  const sides = pairs.some((pair) => linesDiffer(pair)) ? acrossOnly : allSides;

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
    const {name, where, read, part} = pair;
    if (standsApart(profile, part)) {
      ++result.apart;
      result.apartOtherwise += linesDiffer(pair) ? 1 : 0;
      continue;
    }
    if (!read || !part) {
      differ(where, 'part', read ? 'an element' : 'no element', part ? 'computed' : 'nothing computed');
      continue;
    }
    ++result.pairs;
    if (read.lines !== null) {
      const off = Math.abs(read.fontSize - part.fontSize);
      result.largestSize = Math.max(result.largestSize, off);
      if (!(off <= tolerance.fontSize[profile])) differ(where, 'font size', read.fontSize, part.fontSize);
    }
    if (linesDiffer(pair)) {
      const one = {width, name, where, what: 'lines', expected: read.lines.length, actual: part.lines.length, slack: part.slack};
      (part.slack < tolerance.slack ? result.tightFits : result.differences).push(one);
      continue;
    }
    compareBox(where, read.box, part.box);
    if (read.lines?.some((line, i) => !isAsWide(line, part.lines[i].width))) result.suspects.push({width, name, where, part});
  }
}

/**
 * What Firefox has of its own, not to be had: a dictionary for scripts without spaces, and a font for emoji. Such parts
 * are counted apart.
 */
function standsApart(profile, part) {
  const own = /\p{Script=Thai}|\p{Script=Lao}|\p{Script=Khmer}|\p{Script=Myanmar}|\p{Emoji_Presentation}|\uFE0F/u;
  return profile === 'gecko' && part?.lines?.some(({text}) => own.test(text));
}

/** Whether a line may hold the text computed for it: narrower than the narrowest letter, and engines' grids. */
function isAsWide(read, computed) {
  return Math.abs(read - computed) <= 1 + 0.002 * computed;
}

/** Parts of both sides by name, in the order computed; `read` or `part` is missing where one side has none. */
function pairParts(engine, tenter) {
  const unpaired = new Map(engine.parts.map((part) => [part.name, part]));
  const pairs = tenter.cards.flatMap((card, c) =>
    card.parts.map((part, p) => {
      const name = `${c}.${p}`;
      const read = unpaired.get(name);
      unpaired.delete(name);
      return {name, where: `${name} ${part.kind}`, read, part};
    }),
  );
  return [...pairs, ...[...unpaired].map(([name, read]) => ({name, where: name, read}))];
}

function linesDiffer({read, part}) {
  return read && part && read.lines !== null && read.lines.length !== part.lines.length;
}

// Drawn or not as the engine likes: no part of what a line says.
const silent = /[\s\u00AD\u200B\u2060\uFEFF\u200C\u200D]/gu;

/** Whether two lines say the same, letter case aside: an element's text is told as written, a layout's as drawn. */
export function sayTheSame(read, computed) {
  const plain = (text) => text.replaceAll(silent, '').normalize('NFKD').toLocaleUpperCase();
  return plain(read) === plain(computed);
}
