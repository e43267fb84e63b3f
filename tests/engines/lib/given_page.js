// Functions that run in the browser, on a page with a row of its own. Each is sent as text, so it uses nothing outside
// itself.

/**
 * Marks row, cards and parts with the attributes of an exported page, so that both are read in the same way. `selectors`
 * are by role, below the element of class `rowClass`; that element is the row if there is no selector for it. Returns the
 * kind and text of each part, card by card, and the number of elements with the class.
 */
export function markGiven(rowClass, selectors) {
  const inner = document.querySelector('iframe').contentDocument;
  const classed = inner.querySelectorAll(`.${CSS.escape(rowClass)}`);
  const {row, card, ...roles} = selectors;
  const under = (selector) => [...classed].flatMap((element) => [...element.querySelectorAll(selector)]);  // `:scope` is the element
  const rows = row ? under(row) : [...classed];
  rows.forEach((element) => (element.dataset.tenterRow = ''));
  const cards = under(card).map((element, c) => {
    element.dataset.tenterCard = c;
    const kindOf = new Map(Object.entries(roles).flatMap(([kind, selector]) => under(selector).map((part) => [part, kind])));
    const parts = [...element.querySelectorAll('*')].filter((part) => kindOf.has(part));
    return parts.map((part, p) => {
      part.dataset.tenterPart = `${c}.${p}`;
      return {kind: kindOf.get(part), text: part.localName === 'img' ? null : part.textContent};
    });
  });
  return {rows: rows.length, cards};
}

/**
 * Lays out the framed page at each of `widths` (CSS px) and returns boxes as JSON text, as [x, y, width, height] from the
 * page's top left corner: of the section of the row (for its distance to the neighbour), and of the neighbour and the
 * footer, each with all elements in it, itself first.
 *
 * If `rowSelector` is a string, the row is made a box of its own: a block formatting context without negative margins.
 * Tenter's row is a grid with its own gaps, so what sticks out of the page's row (margins of its cards, floats, negative
 * margins that undo gutters) is inside of it. The selector is below the element of class `rowClass`; empty: that element.
 */
export function readSurroundings(rowClass, neighbourSelector, footerSelector, widths, rowSelector = null) {
  const frame = document.querySelector('iframe');
  const inner = frame.contentDocument;
  const neighbour = inner.querySelector(neighbourSelector);
  const footer = inner.querySelector(footerSelector);
  const classed = inner.querySelector(`.${CSS.escape(rowClass)}`);
  let section = classed;
  while (!section.parentElement.contains(neighbour)) section = section.parentElement;
  const row = rowSelector ? classed.querySelector(rowSelector) : classed;
  const contained = rowSelector === null ? [] : [...new Set([classed, row])];
  const styles = contained.map((element) => element.getAttribute('style') ?? '');

  function box(element) {
    const {x, y, width, height} = element.getBoundingClientRect();
    return [x, y, width, height].map((number) => Math.round(number * 1e4) / 1e4);
  }

  function contain(element, i) {
    element.setAttribute('style', styles[i]);
    const {display, marginTop, marginBottom} = inner.defaultView.getComputedStyle(element);
    if (element === row && ['block', 'list-item'].includes(display)) element.style.setProperty('display', 'flow-root', 'important');
    if (parseFloat(marginTop) < 0) element.style.setProperty('margin-top', '0', 'important');
    if (parseFloat(marginBottom) < 0) element.style.setProperty('margin-bottom', '0', 'important');
  }

  const all = (element) => [element, ...element.querySelectorAll('*')].map(box);
  return JSON.stringify(
    widths.map((width) => {
      frame.style.width = `${width}px`;
      contained.forEach(contain);
      box(section);
      // A theme's transitions between two widths are not of interest.
      for (const animation of inner.getAnimations()) animation.finish();
      return {width, section: box(section), neighbour: all(neighbour), footer: all(footer)};
    }),
  );
}
