// How much of what was compared may differ, and what is told if it does.
import {sayTheSame, tolerance} from './compare.js';

/** Tight fits allowed, as a share of the parts compared: in one variant, and in all together. */
export const mostTight = {one: 0.0025, all: 0.001};
/** Texts that may say something else on lines of equal count, as a share of the parts compared. */
const mostTextsOff = 0.0001;
/** Balanced texts that may differ, as a share. Firefox's rule is matched wholly. */
const mostBalancedOff = {blink: 0.01, gecko: 0};

/** How many of `pairs` a share allows; where only `some` widths are laid out, three standard deviations more. */
export function most(share, pairs, some) {
  return share * pairs + (some ? 3 * Math.sqrt(share * pairs) : 0);
}

/** Line counts that differ in tight fits. */
export function countsOff({tightFits}) {
  return tightFits.filter(({what}) => what === 'lines').length;
}

/** Of the parts whose lines are not as wide as computed, those whose lines say something else. */
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
 * What is wrong with what `found` says of one variant, `texts` read: the differences to show, those of texts apart, and
 * whether tight fits are too many. `balanced` are the roles whose text is balanced.
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
