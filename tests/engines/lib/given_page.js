// What runs inside the browser on a page whose row was there before. Each function stands alone: it is sent as text.

/**
 * Names row, cards and parts as an exported page does, so that they are read alike: `selectors` by role, under the
 * element of class `rowClass`; the row is that element if its selector is empty or missing. Returns what each part is
 * and says, card by card, and how many elements had the class.
 */
export function markGiven(rowClass, selectors) {
  const inner = document.querySelector('iframe').contentDocument;
  const classed = inner.querySelectorAll(`.${CSS.escape(rowClass)}`);
  const {row, card, ...roles} = selectors;
  const under = (selector) => [...classed].flatMap((element) => [...element.querySelectorAll(selector)]);
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
 * Lays the framed page out at each of `widths` (CSS px) and reads boxes as [x, y, width, height] from the page's top
 * left: of the section that holds the row (what parts it from the neighbour), and of the neighbour and the footer,
 * each with everything in it, itself first. As JSON text.
 */
export function readSurroundings(rowClass, neighbourSelector, footerSelector, widths) {
  const frame = document.querySelector('iframe');
  const inner = frame.contentDocument;
  const neighbour = inner.querySelector(neighbourSelector);
  const footer = inner.querySelector(footerSelector);
  let section = inner.querySelector(`.${CSS.escape(rowClass)}`);
  while (!section.parentElement.contains(neighbour)) section = section.parentElement;

  function box(element) {
    const {x, y, width, height} = element.getBoundingClientRect();
    return [x, y, width, height].map((number) => Math.round(number * 1e4) / 1e4);
  }

  const all = (element) => [element, ...element.querySelectorAll('*')].map(box);
  return JSON.stringify(
    widths.map((width) => {
      frame.style.width = `${width}px`;
      return {width, section: box(section), neighbour: all(neighbour), footer: all(footer)};
    }),
  );
}
