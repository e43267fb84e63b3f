// Viewport widths to check at.

/**
 * `count` whole widths in CSS px, rising: the range's ends, both sides of each breakpoint, the rest spread evenly
 * over what is left between them.
 */
export function spreadWidths({from, to, breakpoints}, count) {
  const chosen = new Set([from, to]);
  for (const breakpoint of breakpoints) {
    for (const width of [Math.floor(breakpoint), Math.floor(breakpoint) + 1]) {
      if (width >= from && width <= to) chosen.add(width);
    }
  }
  const rest = Math.max(0, Math.min(count, to - from + 1) - chosen.size);
  for (let i = 1; i <= rest; ++i) {
    let width = Math.round(from + ((to - from) * i) / (rest + 1));
    while (chosen.has(width)) width = width < to ? width + 1 : from;
    chosen.add(width);
  }
  return [...chosen].sort((a, b) => a - b);
}

/** Every whole width in CSS px from `from` to `to`. */
export function everyWidth({from, to}) {
  return Array.from({length: to - from + 1}, (_, i) => from + i);
}

/** Device px to a CSS px at which fractional widths are laid out. */
export const fineRatio = 4;

/** `count` widths that are no whole CSS px, but whole device px at `fineRatio`, rising and evenly spread. */
export function fractionalWidths({from, to}, count) {
  const widths = [];
  for (let i = 0; i < count; ++i) {
    const whole = Math.floor(from + ((to - from) * (i + 0.5)) / count);
    widths.push(whole + (1 + (i % (fineRatio - 1))) / fineRatio);
  }
  return [...new Set(widths)];
}
