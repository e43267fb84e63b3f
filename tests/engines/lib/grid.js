// Engines lay text out on grids of numbers, Tenter in real numbers: a line that misses its box by less than the
// grid's step may fit after all, or the reverse. That is the only ground on which line counts may differ.

// Chromium floors a size to 1/100 px and then to 1/64 px, and a line fits if it is at most 1/64 px too wide, each side
// on the grid of 1/64 px. Measured, see the design's table of two engines.
function blink({fontSize, available}) {
  const size = Math.floor((Math.floor(fontSize * 100 + 1e-6) / 100) * 64) / 64;
  return (fontSize - size) / fontSize + 2 / 64 / available;
}

// Firefox rounds a size to 1/60 px, and every advance too: measured, its lines are within 0.125 % of real numbers.
function gecko() {
  return 0.00125;
}

const steps = {blink, gecko};

/**
 * Whether the grid of `profile`'s engine may break a part otherwise than real numbers do: if its tightest line has
 * less slack, as a share of the line, than the grid moves it.
 */
export function mayBreakOtherwise(profile, part) {
  return part.slack <= steps[profile](part);
}
