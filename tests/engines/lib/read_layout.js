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
 * Lays the framed page out at each of `widths` (CSS px) and reads it: boxes as [x, y, width, height] from the
 * page's top left corner, and for each part of text its computed font size in CSS px and its number of lines.
 */
export function readLayout(widths) {
  const frame = document.querySelector('iframe');
  const inner = frame.contentDocument;
  const row = inner.querySelector('[data-tenter-row]');
  const cards = [...inner.querySelectorAll('[data-tenter-card]')];
  const parts = [...inner.querySelectorAll('[data-tenter-part]')].map((element) => ({
    element,
    name: element.dataset.tenterPart,
    style: frame.contentWindow.getComputedStyle(element),
    isText: element.localName !== 'img',
    inline: inlineNodes(element),
  }));
  const range = inner.createRange();

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
  function lineCount(part) {
    const half = parseFloat(part.style.lineHeight) / 2;
    const middles = [];
    for (const node of part.inline) {
      range.selectNode(node);
      for (const rect of range.getClientRects()) {
        if (rect.height > 0 && (rect.width > 0 || node.localName === 'br')) middles.push((rect.top + rect.bottom) / 2);
      }
    }
    middles.sort((a, b) => a - b);
    let count = 0;
    let last = -Infinity;
    for (const middle of middles) {
      if (middle - last > half) {
        ++count;
        last = middle;
      }
    }
    return count;
  }

  function box(element) {
    const rect = element.getBoundingClientRect();
    return [rect.x, rect.y, rect.width, rect.height];
  }

  return widths.map((width) => {
    frame.style.width = `${width}px`;
    return {
      width: frame.contentWindow.innerWidth,
      row: box(row),
      cards: cards.map(box),
      parts: parts.map((part) => ({
        name: part.name,
        box: box(part.element),
        fontSize: part.isText ? parseFloat(part.style.fontSize) : null,
        lines: part.isText ? lineCount(part) : null,
      })),
    };
  });
}

/** The text of each line of part `name` with the frame `width` CSS px wide, character by character: slow, exact. */
export function readLines(width, name) {
  const frame = document.querySelector('iframe');
  frame.style.width = `${width}px`;
  const inner = frame.contentDocument;
  const element = inner.querySelector(`[data-tenter-part="${name}"]`);
  const half = parseFloat(frame.contentWindow.getComputedStyle(element).lineHeight) / 2;
  const walker = inner.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  const range = inner.createRange();
  const lines = [];
  let last = -Infinity;
  while (walker.nextNode()) {
    const text = walker.currentNode.data;
    for (let at = 0; at < text.length; ++at) {
      range.setStart(walker.currentNode, at);
      range.setEnd(walker.currentNode, at + 1);
      const rect = [...range.getClientRects()].find((one) => one.width > 0);
      if (rect) {
        const middle = (rect.top + rect.bottom) / 2;
        if (middle - last > half) {
          lines.push('');
          last = middle;
        }
      }
      if (lines.length > 0) lines[lines.length - 1] += text[at];
    }
  }
  return lines;
}
