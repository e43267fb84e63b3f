// Which of its candidates a browser has loaded for each picture.

/**
 * The index of the candidate that browsers load: the narrowest that is wide enough for `needed` device px, or the widest.
 * HTML § 4.8.4.2.2 leaves the choice to them; both do this (measured: Chromium 156, Firefox 153).
 */
function chosen(widths, needed) {
  const enough = widths.findIndex((width) => width >= needed);
  return enough < 0 ? widths.length - 1 : enough;
}

/** Judges what `readPictures` has read at `ratio`; returns what is wrong, as sentences without a subject. */
function wrongCandidates(seen, ratio) {
  const wrong = [];
  for (const {current, natural, drawn, candidates} of seen) {
    const index = candidates.findIndex(({address}) => current.endsWith(address));
    if (index < 0) {
      wrong.push(`${current} is no candidate`);
      continue;
    }
    // Engines lay out on grids of 1/60 and 1/64 px, `sizes` is rounded to 0.01 px: near a tie both are right.
    const offered = candidates.map((candidate) => candidate.width);
    const right = new Set([drawn * 0.999, drawn, drawn * 1.001].map((size) => chosen(offered, ratio * size)));
    if (!right.has(index)) wrong.push(`${current} for a slot of ${drawn} px, not ${[...right].map((i) => offered[i])}`);
    const needed = drawn * ratio * 0.999;
    if (candidates.at(-1).width >= needed && candidates[index].width < needed) wrong.push(`${current} is narrower than its slot of ${drawn} px`);
    // With `w` descriptors the natural width is the source size that `sizes` gives, in whole px. HTML § 4.8.4.2.1.
    if (natural > drawn * 1.001 + 1.01 || natural < drawn * 0.999 - 1.01) wrong.push(`sizes says ${natural} px, the slot is ${drawn} px`);
  }
  return wrong;
}

/**
 * Reads the pictures of the page in `tab` and judges them at `ratio`; returns `{seen, wrong}`. A browser may choose once more
 * just after loading, when a frame gets its width: what is wrong is read again until it is right or `patience` ms are over.
 */
export async function judgeCandidates(tab, ratio, patience = 10_000) {
  const end = Date.now() + patience;
  for (;;) {
    const seen = await tab.evaluate(readPictures);
    const wrong = wrongCandidates(seen, ratio);
    if (wrong.length === 0 || Date.now() > end) return {seen, wrong};
    await new Promise((later) => setTimeout(later, 200));
  }
}

/** Runs in the browser: what the page shows of each picture. `drawn` is the width under `object-fit: cover`, CSS px. */
const readPictures = () =>
  Promise.all(
    [...(document.querySelector('iframe')?.contentDocument ?? document).images].map(async (image) => {
      await image.decode().catch(() => null);
      const {width, height} = image.getBoundingClientRect();
      const [wide, high] = [Number(image.getAttribute('width')), Number(image.getAttribute('height'))];
      // Sides of files are whole pixels, so their ratio differs a little from that of the slot.
      const isWhole = Math.abs((width * high) / (height * wide) - 1) < 0.005;
      const source = [...(image.parentElement.matches('picture') ? image.parentElement.querySelectorAll('source') : []), image].find(
        (one) => one === image || ['image/webp', 'image/avif', 'image/png', 'image/jpeg'].includes(one.type),
      );
      return {
        current: image.currentSrc,
        natural: image.naturalWidth,
        drawn: isWhole ? width : Math.max(width, (height * wide) / high),
        candidates: source.srcset.split(', ').map((one) => one.split(' ')).map(([address, w]) => ({address, width: parseInt(w)})),
      };
    }),
  );
