// Functions that run in the browser. Each is sent to the page as text, so it uses nothing outside itself.

/** Waits for the fonts and pictures of the framed page; returns those that failed. */
export async function settle() {
  const inner = document.querySelector('iframe').contentDocument;
  const failed = [];
  const faces = [...inner.fonts];
  await Promise.all(faces.map((face) => face.load().catch(() => failed.push(`font ${face.family} ${face.weight}`))));
  await inner.fonts.ready;
  await Promise.all([...inner.images].map((image) => image.decode().catch(() => failed.push(`picture "${image.alt}"`))));
  return {failed, faces: faces.length, pictures: inner.images.length};
}

/**
 * Lays out the framed page at each of `widths` (CSS px) and returns JSON text: boxes as [x, y, width, height] from the
 * page's top left corner; for each text part the computed font size and the width of each line, in CSS px. Text, because
 * a browser's protocol is slow with large values. If `fresh`, the row is removed from the page before each width, because
 * Firefox 153 keeps the old `cqi` when a resize changes the padding of a container but not its width.
 */
export function readLayout(widths, fresh = false) {
  const frame = document.querySelector('iframe');
  const view = frame.contentWindow;
  const inner = frame.contentDocument;
  const row = inner.querySelector('[data-tenter-row]');
  const cards = [...inner.querySelectorAll('[data-tenter-card]')];
  const range = inner.createRange();
  const parts = [...inner.querySelectorAll('[data-tenter-part]')].map((element) => ({
    element,
    name: element.dataset.tenterPart,
    style: view.getComputedStyle(element),
    isText: element.localName !== 'img',
    inline: inlineNodes(element),
  }));

  // Nodes that have boxes on lines: text, and forced breaks, which make a line even without text.
  function inlineNodes(element) {
    const walker = inner.createTreeWalker(element, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    const nodes = [];
    while (walker.nextNode()) {
      const node = walker.currentNode;
      if (node.nodeType === Node.TEXT_NODE || node.localName === 'br') nodes.push(node);
    }
    return nodes;
  }

  // A line can be of no width, such as that of a zero-width space in a column without room.
  // Texts on one line may have boxes of different height (another font), but their middles are less than half a line
  // apart, and the middles of neighbouring lines are a line apart.
  function lineWidths(part) {
    const half = parseFloat(part.style.lineHeight) / 2;
    const rects = [];
    for (const node of part.inline) {
      range.selectNode(node);
      const all = range.getClientRects();
      for (let i = 0; i < all.length; ++i) {
        const {top, bottom, left, right} = all[i];
        if (bottom > top) rects.push({middle: (top + bottom) / 2, left, right});
      }
    }
    rects.sort((a, b) => a.middle - b.middle);
    const lines = [];
    let last = -Infinity;
    for (const {middle, left, right} of rects) {
      const line = lines[lines.length - 1];
      if (middle - last > half) {
        lines.push({left, right});
        last = middle;
      } else if (line.left === line.right) {
        // A space that collapses at a line's end has a box without width, which may be beside the text.
        Object.assign(line, {left, right});
      } else if (left < right) {
        line.left = Math.min(line.left, left);
        line.right = Math.max(line.right, right);
      }
    }
    return lines.map(({left, right}) => rounded(right - left));
  }

  /** The width of each line; null if lines have no height, because they then overlap and cannot be counted. */
  function linesOf(part) {
    return part.isText && parseFloat(part.style.lineHeight) >= 1 ? lineWidths(part) : null;
  }

  function rounded(number) {
    return Math.round(number * 1e4) / 1e4;
  }

  // From the corner of the page, which lies beside the scrollbar: Chromium 156 puts that of a page written from right to
  // left at the left, Firefox 153 at the right.
  function box(element) {
    const {x, y, width, height} = element.getBoundingClientRect();
    return [rounded(x - inner.documentElement.getBoundingClientRect().x), rounded(y), rounded(width), rounded(height)];
  }

  return JSON.stringify(
    widths.map((width) => {
      frame.style.width = `${width}px`;
      if (fresh) {
        row.style.display = 'none';
        row.getBoundingClientRect();
        row.style.display = '';
      }
      return {
        width: view.innerWidth,
        framed: rounded(frame.getBoundingClientRect().width),
        row: box(row),
        cards: cards.map(box),
        parts: parts.map((part) => ({
          name: part.name,
          box: box(part.element),
          fontSize: part.isText ? parseFloat(part.style.fontSize) : null,
          lines: linesOf(part),
        })),
      };
    }),
  );
}

/** The text of each line of part `name` in a frame `width` CSS px wide, one grapheme after the other: slow but exact. */
export function readLines(width, name) {
  const frame = document.querySelector('iframe');
  frame.style.width = `${width}px`;
  const inner = frame.contentDocument;
  const element = inner.querySelector(`[data-tenter-part="${name}"]`);
  const half = parseFloat(frame.contentWindow.getComputedStyle(element).lineHeight) / 2;
  const walker = inner.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  const range = inner.createRange();
  const graphemes = new Intl.Segmenter();
  const lines = [];
  let last = -Infinity;
  while (walker.nextNode()) {
    for (const {segment, index} of graphemes.segment(walker.currentNode.data)) {
      range.setStart(walker.currentNode, index);
      range.setEnd(walker.currentNode, index + segment.length);
      // The last, because in Chromium 156 the letter after a soft hyphen also has the box of the hyphen that is drawn.
      const rect = [...range.getClientRects()].findLast((one) => one.width > 0);
      if (rect) {
        const middle = (rect.top + rect.bottom) / 2;
        if (middle - last > half) {
          lines.push('');
          last = middle;
        }
      }
      if (lines.length > 0) lines[lines.length - 1] += segment;
    }
  }
  return lines;
}
