// Compares the layouts of an engine with Tenter's.

/**
 * Tolerances in CSS px. Engines lay out on grids of 1/64 and 1/60 px, and Firefox truncates sizes that follow the
 * viewport to its grid. `slack` is a share of a line: below it another engine may break the line differently (measured:
 * all such differences disappeared when the text was scaled by 0.15 %).
 */
export const tolerance = {box: 0.5, fontSize: {blink: 0.01, gecko: 0.02}, slack: 0.0025};

const allSides = ['x', 'y', 'width', 'height'];
const acrossOnly = ['x', 'width'];

/**
 * Compares one engine's layouts with Tenter's at the same widths, computed under break profile `profile`.
 *
 * A different line count with less slack than the tolerance is a tight fit, not a difference. At such a width only
 * horizontal positions and widths are compared, because the extra or missing line moves the parts below it. The same is
 * done if a tight fit breaks at other places and has another height (isOtherwiseTall).
 *
 * @returns differences and tight fits by width; the number of compared parts; the largest differences in CSS px; and
 *   suspects: parts with the computed number of lines, but other widths of lines, whose texts must be read.
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
  const sides = pairs.some((pair) => linesDiffer(pair) || isOtherwiseTall(pair) || isApartAndTaller(profile, pair)) ? acrossOnly : allSides;

  const differ = (where, what, expected, actual) => result.differences.push({width, where, what, expected, actual});
  const compareBox = (where, expected, actual) => {
    for (const side of sides) {
      const read = expected[allSides.indexOf(side)];
      const off = Math.abs(read - actual[side]);
      result.largestBox = Math.max(result.largestBox, off);
      // Written so that NaN counts as a difference.
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
    if (read.lines?.length === part.lines?.length && !linesOverlap(part) && read.lines?.some((line, i) => !isAsWide(line, part.lines[i].width))) result.suspects.push({width, name, where, part, read: read.lines});
  }
}

/**
 * True for text that Firefox breaks or draws with data of its own: a dictionary for scripts without spaces, an emoji font.
 * Such parts are excluded.
 */
function standsApart(profile, part) {
  const own = /\p{Script=Thai}|\p{Script=Lao}|\p{Script=Khmer}|\p{Script=Myanmar}|\p{Emoji_Presentation}|\uFE0F/u;
  return profile === 'gecko' && part?.lines?.some(({text}) => own.test(text));
}

/** True if a line can contain the computed text: the widths differ by less than the narrowest letter plus rounding. */
function isAsWide(read, computed) {
  return Math.abs(read - computed) <= 1 + 0.002 * computed;
}

/** Parts of both sides by name, in computed order; `read` or `part` is missing if one side does not have it. */
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

/** True for an excluded part of another height: other words on a line can make it taller, and with it card and row. */
function isApartAndTaller(profile, {read, part}) {
  return read && part && standsApart(profile, part) && Math.abs(read.box[3] - part.box.height) > tolerance.box;
}

/**
 * True for a tight fit that breaks at other places into the same number of lines and so has another height: a line is
 * taller if it has a word in a face with other metrics.
 */
function isOtherwiseTall({read, part}) {
  if (!read || !part || read.lines === null || read.lines.length !== part.lines.length || !(part.slack < tolerance.slack)) return false;
  return Math.abs(read.box[3] - part.box.height) > tolerance.box && read.lines.some((line, i) => !isAsWide(line, part.lines[i].width));
}

function linesDiffer({read, part}) {
  return read && part && read.lines !== null && read.lines.length !== part.lines.length && !isCountedByHeight(read, part);
}

/** True for lines less than half a font size apart: boxes of text in several fonts do not tell them apart. */
function linesOverlap(part) {
  return part.lineHeight < part.fontSize / 2;
}

/** True if the number of lines agrees by the height of the box, where the boxes of lines do not tell it. */
function isCountedByHeight(read, part) {
  return part.lineHeight > 2 * tolerance.box && linesOverlap(part) && Math.abs(read.box[3] - part.box.height) <= tolerance.box;
}

// Characters that an engine may or may not draw; they do not count as text of a line.
const silent = /[\s\u00AD\u200B\u2060\uFEFF\u200C\u200D]/gu;

/** The characters of a line that count: an element has its text as written, a layout as drawn. */
export function plainText(line) {
  return line.replaceAll(silent, '').normalize('NFKD').toLocaleUpperCase();
}

/** True if two lines have the same text, ignoring case. */
export function sayTheSame(read, computed) {
  return plainText(read) === plainText(computed);
}
