// What runs inside the browser. Each function stands alone: it is sent to the page as text.

/** Waits until the framed page's fonts and pictures are there; returns what failed. */
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
 * Lays the framed page out at each of `widths` (CSS px) and reads it, as JSON text: boxes as [x, y, width, height]
 * from the page's top left corner, and for each part of text its computed font size and the width of each of its
 * lines, in CSS px. Text, since a browser's protocol is slow with large values. If `anew`, the row leaves the page
 * before each width: Firefox 153 keeps what cqi was where a resize changes a container's padding and not its width.
 */
export function readLayout(widths, anew = false) {
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

  // What makes boxes on lines: text, and forced breaks, which make a line even where there is no text.
  function inlineNodes(element) {
    const walker = inner.createTreeWalker(element, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
    const nodes = [];
    while (walker.nextNode()) {
      const node = walker.currentNode;
      if (node.nodeType === Node.TEXT_NODE || node.localName === 'br') nodes.push(node);
    }
    return nodes;
  }

  // Text on one line may have boxes of unlike height (another face), but their middles are less than half a
  // line apart, and the middles of neighbouring lines are a line apart.
  function lineWidths(part) {
    const half = parseFloat(part.style.lineHeight) / 2;
    const rects = [];
    for (const node of part.inline) {
      range.selectNode(node);
      const all = range.getClientRects();
      for (let i = 0; i < all.length; ++i) {
        const {top, bottom, left, right} = all[i];
        if (bottom > top && (right > left || node.localName === 'br')) rects.push({middle: (top + bottom) / 2, left, right});
      }
    }
    rects.sort((a, b) => a.middle - b.middle);
    const lines = [];
    let last = -Infinity;
    for (const {middle, left, right} of rects) {
      if (middle - last > half) {
        lines.push({left, right});
        last = middle;
      } else {
        const line = lines[lines.length - 1];
        line.left = Math.min(line.left, left);
        line.right = Math.max(line.right, right);
      }
    }
    return lines.map(({left, right}) => rounded(right - left));
  }

  /** Lines of no height stand on one another and cannot be counted. */
  function linesOf(part) {
    return part.isText && parseFloat(part.style.lineHeight) >= 1 ? lineWidths(part) : null;
  }

  function rounded(number) {
    return Math.round(number * 1e4) / 1e4;
  }

  function box(element) {
    const {x, y, width, height} = element.getBoundingClientRect();
    return [rounded(x), rounded(y), rounded(width), rounded(height)];
  }

  return JSON.stringify(
    widths.map((width) => {
      frame.style.width = `${width}px`;
      if (anew) {
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

/** The text of each line of part `name` with the frame `width` CSS px wide, grapheme by grapheme: slow, exact. */
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
      const rect = [...range.getClientRects()].find((one) => one.width > 0);
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
