// Judges the stylesheet for existing markup on one page: the row is imported from the page, and the stylesheet is added to
// the page as a CMS does it.
import {readSuspects} from './bars.js';
import {compareLayouts} from './compare.js';
import {computedFromRow, copyFaults, readFromRow, surroundingsMoved} from './given.js';
import {markGiven, readSurroundings} from './given_page.js';
import {MeasuredPage} from './measured_page.js';
import {rowClass, withStylesheet} from './themes.js';

async function surroundings(page, theme, widths, rowSelector = null) {
  return JSON.parse(await page.run(readSurroundings, rowClass, theme.neighbour, theme.footer, widths, rowSelector));
}

/**
 * Compares row, cards, parts, sizes, lines and words of the page `theme.html` with the geometry of the project `file`,
 * whose row was imported from that page with `selectors`. Vertical positions are counted from the row's top.
 *
 * @returns the differences; what changed around the row; and faults of the imported text.
 */
export async function judgeGiven({browser, server, tenter, profile, widths}, theme, {file, selectors}) {
  const computed = (await tenter.geometry(file, rowClass, widths, profile)).map(computedFromRow);
  const plain = await MeasuredPage.open(browser, server, theme.html);
  const before = await surroundings(plain, theme, widths, selectors.row ?? '');
  await plain.close();

  const page = await MeasuredPage.open(browser, server, withStylesheet(theme.html, await tenter.stylesheetForGiven(file, rowClass)));
  const marked = await page.run(markGiven, rowClass, selectors);
  const found = compareLayouts(profile, (await page.read(widths)).map(readFromRow), computed);
  found.texts = await readSuspects(page, found);
  const moved = surroundingsMoved(before, await surroundings(page, theme, widths));
  await page.close();
  const copy = copyFaults(marked, computed[0]);
  if (marked.cards.length !== theme.cards) copy.push(`${marked.cards.length} cards imported of ${theme.cards}`);
  return {found, moved, copy};
}
