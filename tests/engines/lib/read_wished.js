// The function that checks wishes in the browser. It is sent to the page as text, so it uses nothing outside itself.

/**
 * Lays out the framed page at each of `widths` (CSS px) and returns where parts break the wishes `asked` of them: by part
 * name, as [from, to, value] for widths above `from`, up to `to`. A text with fewer than `measuredLines` lines has no
 * measure. It reads only what is needed, because a page has thousands of layouts.
 */
export function readWished(widths, asked, measuredLines) {
  // Tolerance of font sizes in CSS px: Firefox truncates to 1/60 px.
  const sizeWithin = 0.03;
  // Tolerance of widths: boxes and advances are on a grid of 1/64 or 1/60 px.
  const boxWithin = 0.6;
  // Relative tolerance of the measure: kerning at the ends of lines, and spacing in px.
  const measureWithin = 0.01;
  const readEvery = 8;

  const frame = document.querySelector('iframe');
  const view = frame.contentWindow;
  const inner = frame.contentDocument;
  const range = inner.createRange();
  const graphemes = new Intl.Segmenter();
  const read = {judged: 0, full: 0, measured: 0, faults: []};
  const all = [...inner.querySelectorAll('[data-tenter-part]')]
    .filter((element) => asked[element.dataset.tenterPart] !== undefined)
    .map((element) => ({
      element,
      name: element.dataset.tenterPart,
      asked: asked[element.dataset.tenterPart],
      style: view.getComputedStyle(element),
      card: element.closest('[data-tenter-card]'),
      graphemes: [...graphemes.segment(element.textContent.trim())].length,
      inline: inlineNodes(element),
    }));
  const cardStyles = new Map(all.map(({card}) => [card, view.getComputedStyle(card)]));

  function inlineNodes(element) {
    const walker = inner.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    const nodes = [];
    while (walker.nextNode()) nodes.push(walker.currentNode);
    return nodes;
  }
  function here(held, width) {
    return held?.find(([from, to]) => width > from && width <= to)?.[2];
  }
  function inside(style, rect) {
    const px = (key) => parseFloat(style[key]);
    const left = px('paddingLeft') + px('borderLeftWidth');
    const right = px('paddingRight') + px('borderRightWidth');
    return {left: rect.left + left, right: rect.right - right, width: rect.width - left - right};
  }
  /** Width of a space in em, measured on a line. */
  function spaceOf(part, size) {
    for (const node of part.inline) {
      for (let at = node.data.indexOf(' '); at >= 0; at = node.data.indexOf(' ', at + 1)) {
        range.setStart(node, at);
        range.setEnd(node, at + 1);
        const {width} = range.getBoundingClientRect();
        if (width > 0) return width / size;
      }
    }
    return undefined;
  }
  /**
   * Sum of the widths of the lines and of the spaces that hang at their ends, in CSS px. It is proportional to the size
   * until a line breaks differently, or nearly so. It is slow to read, so it is read again when the number of lines
   * changes, and sometimes in between.
   */
  function advance(part, lines, size) {
    if (part.lines !== lines || ++part.times === readEvery) {
      part.lines = lines;
      part.times = 0;
      part.ems = advanceRead(part, lines, size) / size;
    }
    return part.ems * size;
  }
  function advanceRead(part, lines, size) {
    part.space ??= spaceOf(part, size);
    let sum = (lines - 1) * (part.space ?? 0) * size;
    for (const node of part.inline) {
      range.selectNode(node);
      for (const {width} of range.getClientRects()) sum += width;
    }
    return sum;
  }

  for (const width of widths) {
    frame.style.width = `${width}px`;
    const columns = new Map();
    for (const [card, style] of cardStyles) columns.set(card, inside(style, card.getBoundingClientRect()));
    for (const part of all) {
      const {asked: wishes, style, name} = part;
      const say = (what) => read.faults.push(`${wishes.role} ${name} at ${width}: ${what}`);
      const rect = part.element.getBoundingClientRect();
      const size = parseFloat(style.fontSize);
      const heights = ['paddingTop', 'paddingBottom', 'borderTopWidth', 'borderBottomWidth'];
      const height = heights.reduce((left, key) => left - parseFloat(style[key]), rect.height);
      const lines = Math.round(height / parseFloat(style.lineHeight));
      ++read.judged;
      const wished = here(wishes.lines, width);
      if (wished !== undefined) {
        const most = Math.max(wished, wishes.leastLines);
        if (lines === most) ++read.full;
        if (lines > most) say(`${lines} lines, not ${most}`);
      }
      const least = here(wishes.leastSize, width);
      const greatest = here(wishes.mostSize, width);
      if (size < least - sizeWithin || size > greatest + sizeWithin) say(`${size} px`);
      range.selectNodeContents(part.element);
      const text = range.getBoundingClientRect();
      const box = inside(style, rect);
      const column = columns.get(part.card);
      const spacing = parseFloat(style.letterSpacing) || 0;
      if (text.width > box.width + boxWithin + spacing || rect.left < column.left - boxWithin || rect.right > column.right + boxWithin)
        say('wider than its box');
      const few = here(wishes.leastMeasure, width);
      const many = here(wishes.mostMeasure, width);
      if ((few === undefined && many === undefined) || lines < measuredLines) continue;
      ++read.measured;
      const measure = (box.width * part.graphemes) / advance(part, lines, size);
      if (measure < few * (1 - measureWithin) || measure > many * (1 + measureWithin)) say(`${measure.toFixed(1)} characters to a line`);
    }
  }
  return read;
}
