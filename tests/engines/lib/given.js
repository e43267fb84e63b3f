// Comparison of a row in existing markup with Tenter's geometry, and of its surroundings with themselves without the
// stylesheet.
import {sayTheSame} from './compare.js';

/** How far boxes outside the row may move within their section, in CSS px: less than the engines' rounding adds up to. */
export const stillness = 0.1;

/** A box whose vertical position is counted from `top`. */
const arrayFrom = (top, [x, y, width, height]) => [x, y - top, width, height];
const objectFrom = (top, box) => ({...box, y: box.y - top});

/** A layout of an engine, with vertical positions counted from the row's top. */
export function readFromRow(layout) {
  const top = layout.row[1];
  return {
    ...layout,
    row: arrayFrom(top, layout.row),
    cards: layout.cards.map((box) => arrayFrom(top, box)),
    parts: layout.parts.map((part) => ({...part, box: arrayFrom(top, part.box)})),
  };
}

/** A computed layout, with vertical positions counted from the row's top. */
export function computedFromRow(layout) {
  const top = layout.row.y;
  return {
    ...layout,
    row: objectFrom(top, layout.row),
    cards: layout.cards.map((card) => ({
      ...card,
      box: objectFrom(top, card.box),
      parts: card.parts.map((part) => ({...part, box: objectFrom(top, part.box)})),
    })),
  };
}

/** The differences in kind, number and text between the selected and the computed parts; one sentence each. */
export function copyFaults(marked, computed) {
  const faults = [];
  if (marked.rows !== 1) faults.push(`${marked.rows} rows found`);
  if (marked.cards.length !== computed.cards.length) faults.push(`${marked.cards.length} cards found, ${computed.cards.length} computed`);
  marked.cards.slice(0, computed.cards.length).forEach((parts, c) => {
    const others = computed.cards[c].parts;
    const kinds = (list) => list.map(({kind}) => kind).join(' ');
    if (kinds(parts) !== kinds(others)) return faults.push(`card ${c}: found ${kinds(parts)}; computed ${kinds(others)}`);
    return parts.forEach(({kind, text}, p) => {
      const said = others[p].lines?.map((line) => line.text).join(' ');
      if (text !== null && !sayTheSame(text, said ?? '')) faults.push(`${c}.${p} ${kind}: ${JSON.stringify(text)} found, ${JSON.stringify(said)} computed`);
    });
  });
  return faults;
}

/** The differences of one box, one line each; empty if it did not change. */
function moved(where, before, after) {
  return ['x', 'y', 'width', 'height'].flatMap((side, i) =>
    Math.abs(after[i] - before[i]) <= stillness ? [] : [{where, what: side, expected: before[i], actual: after[i]}],
  );
}

/**
 * The changes that a stylesheet made to the surroundings of the row, read at the same widths `before` and `after`. The
 * neighbour and the footer must look the same and move by exactly the change of height of the row's section.
 */
export function surroundingsMoved(before, after) {
  if (before.length !== after.length) throw new Error(`${before.length} layouts before, ${after.length} after`);
  return before.flatMap((then, i) => {
    const now = after[i];
    if (then.width !== now.width) throw new Error(`${then.width} px before, ${now.width} px after`);
    const grown = now.section[3] - then.section[3];
    const within = (boxes) => boxes.map(([x, y, width, height]) => [x - boxes[0][0], y - boxes[0][1], width, height]);
    const found = moved('section', [...then.section.slice(0, 3), 0], [...now.section.slice(0, 3), 0]);
    for (const name of ['neighbour', 'footer']) {
      const [x, y, width, height] = then[name][0];
      found.push(...moved(name, [x, y + grown, width, height], now[name][0]));
      if (then[name].length !== now[name].length) found.push({where: name, what: 'boxes', expected: then[name].length, actual: now[name].length});
      const still = within(then[name]);
      within(now[name]).slice(0, still.length).forEach((box, b) => found.push(...moved(`${name}, box ${b}`, still[b], box)));
    }
    return found.map((one) => ({width: then.width, ...one}));
  });
}
