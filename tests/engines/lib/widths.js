// Viewport widths for the checks.

/**
 * `count` whole widths in CSS px, ascending: both ends of the range, both sides of each breakpoint, the others evenly
 * between them.
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

/** Device px in a CSS px for fractional widths. */
export const fineRatio = 4;

/** `count` widths that are not whole CSS px but whole device px at `fineRatio`, ascending and evenly spaced. */
export function fractionalWidths({from, to}, count) {
  const widths = [];
  for (let i = 0; i < count; ++i) {
    const whole = Math.floor(from + ((to - from) * (i + 0.5)) / count);
    widths.push(whole + (1 + (i % (fineRatio - 1))) / fineRatio);
  }
  return [...new Set(widths)];
}
