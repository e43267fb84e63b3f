#include "compare/measuring_page.h"

namespace tenter::desktop::compare {

// The frame must not scroll: the scroll bar of a tall page would reduce its width.
QByteArray measuringPage() {
    return R"(<!doctype html>
<html lang="en"><meta charset="utf-8"><title>Measuring</title><link rel="icon" href="data:,">
<style>body { margin: 0 } iframe { border: 0; display: block; height: 600px; width: 320px }</style>
<iframe title="Row" scrolling="no" src="row"></iframe>
<script>
'use strict';
const post = (to, what) => fetch(to, {method: 'POST', cache: 'no-store', body: what});

const familyOf = (face) => face.family.replace(/["']/g, '').toLowerCase();

// A saved page may refer to fonts and pictures that are missing. Those of the row must load.
async function settle(inner) {
  const row = inner.querySelector('[data-tenter-row]');
  const faces = [...inner.fonts];
  await Promise.all(faces.map((face) => face.load().catch(() => {})));
  await inner.fonts.ready;
  const loaded = new Set(faces.filter((face) => face.status === 'loaded').map(familyOf));
  const used = [row, ...row.querySelectorAll('*')].map((element) =>
    inner.defaultView.getComputedStyle(element).fontFamily.toLowerCase()).join();
  const failed = faces.filter((face) => !loaded.has(familyOf(face)) && used.includes(familyOf(face)))
    .map((face) => 'the font ' + face.family + ' ' + face.weight);
  await Promise.all([...row.querySelectorAll('img')].map((image) =>
    image.decode().catch(() => failed.push('the picture "' + image.alt + '"'))));
  if (failed.length > 0) throw new Error('these files did not load: ' + failed.join(', '));
}

// The nodes that make lines: text, and <br>, which makes a line even without text.
function inlineNodes(element) {
  const walker = element.ownerDocument.createTreeWalker(element, NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT);
  const nodes = [];
  while (walker.nextNode()) {
    const node = walker.currentNode;
    if (node.nodeType === Node.TEXT_NODE || node.localName === 'br') nodes.push(node);
  }
  return nodes;
}

function reader(frame) {
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
  const box = (element) => {
    const rect = element.getBoundingClientRect();
    return [rect.x, rect.y, rect.width, rect.height];
  };
  // Boxes on the same line can differ in height, but their centres are less than half a line apart.
  const lineCount = (part) => {
    const half = parseFloat(part.style.lineHeight) / 2;
    const middles = [];
    for (const node of part.inline) {
      range.selectNode(node);
      for (const rect of range.getClientRects())
        if (rect.height > 0 && (rect.width > 0 || node.localName === 'br')) middles.push((rect.top + rect.bottom) / 2);
    }
    middles.sort((a, b) => a - b);
    let count = 0;
    let last = -Infinity;
    for (const middle of middles) {
      if (middle - last <= half) continue;
      ++count;
      last = middle;
    }
    return count;
  };
  return (width) => {
    frame.style.width = width + 'px';
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
  };
}

addEventListener('load', async () => {
  try {
    const frame = document.querySelector('iframe');
    await settle(frame.contentDocument);
    const read = reader(frame);
    let layouts = [];
    for (;;) {
      const answer = await post('layouts', JSON.stringify({layouts}));
      const {widths} = await answer.json();
      if (widths.length === 0) return;
      layouts = widths.map(read);
    }
  } catch (error) {
    await post('failed', String(error.message));
  }
});
</script>
</html>
)";
}

}  // namespace tenter::desktop::compare
