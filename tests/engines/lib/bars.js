// Limits: how many of the compared parts may differ, and which differences are reported.
import {sayTheSame, tolerance} from './compare.js';

/** Tight fits allowed, as a share of the compared parts: in one variant, and in total. */
export const mostTight = {one: 0.0025, all: 0.001};
/** Texts that may have other lines of the same number, as a share of the compared parts. */
const mostTextsOff = 0.0001;
/** Balanced texts that may differ, as a share. Firefox's rule must match completely. */
const mostBalancedOff = {blink: 0.01, gecko: 0};

/** The number of `pairs` that a share allows; three standard deviations more if only `some` widths are laid out. */
export function most(share, pairs, some) {
  return share * pairs + (some ? 3 * Math.sqrt(share * pairs) : 0);
}

/** The line counts that differ in tight fits. */
export function countsOff({tightFits}) {
  return tightFits.filter(({what}) => what === 'lines').length;
}

/** The parts with other text on their lines, of the parts whose lines have another width than computed. */
export async function readSuspects(page, {suspects, tightFits, differences}) {
  const texts = [];
  for (const {width, name, where, part} of suspects) {
    const lines = await page.lines(width, name);
    if (lines.length === part.lines.length && lines.every((line, i) => sayTheSame(line, part.lines[i].text))) continue;
    const one = {width, name, where, what: 'text', expected: lines, actual: part.lines.map((line) => line.text), slack: part.slack};
    if (part.slack < tolerance.slack) tightFits.push(one);
    else texts.push(one);
  }
  for (const one of [...tightFits, ...differences].filter(({what}) => what === 'lines').slice(0, 3)) one.read = await page.lines(one.width, one.name);
  return texts;
}

/**
 * The faults in the results `found` of one variant after `texts` were read: differences to show, parts with other
 * lines, and true if there are too many tight fits. `balanced` are the roles with balanced text.
 */
export function verdict(found, {profile, balanced, some}) {
  const isBalanced = ({where}) => balanced.has(where.split(' ')[1]);
  const even = found.texts.filter(isBalanced);
  const others = found.texts.filter((text) => !isBalanced(text));
  const wrong = [...found.differences];
  wrong.push(...(others.length > Math.max(1, mostTextsOff * found.pairs) ? others : []));
  wrong.push(...(even.length > mostBalancedOff[profile] * found.pairs ? even : []));
  return {wrong, others, balanced: even, tooTight: countsOff(found) > most(mostTight.one, found.pairs, some)};
}
