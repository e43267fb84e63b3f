// Which level every factor takes in each of a series of rows, so that each pair of levels of two factors is met.

/** Random numbers from a seed: a generator of numbers from 0 up to 1. */
import {seeded} from '../corpus/random.js';

/** How likely a factor is left out where no pair asks for it. */
const leftOut = 0.62;

/** Whether the settings of two levels cannot stand together (core/project/conflicts.cpp). */
const never = () => false;

/** Pairs of levels that are met so far. */
export class Cover {
  #factors;
  #met = new Set();
  #excluded;
  total = 0;

  constructor(factors, excluded = never) {
    this.#factors = factors;
    this.#excluded = excluded;
    for (let a = 0; a < factors.length; ++a) {
      for (let b = a + 1; b < factors.length; ++b) {
        for (let i = 0; i < factors[a].levels.length; ++i) {
          for (let j = 0; j < factors[b].levels.length; ++j) this.total += excluded(a, i, b, j) ? 0 : 1;
        }
      }
    }
  }

  get met() {
    return this.#met.size;
  }

  add(levels) {
    for (let a = 0; a < levels.length; ++a) {
      for (let b = a + 1; b < levels.length; ++b) {
        if (!this.#excluded(a, levels[a], b, levels[b])) this.#met.add(key(a, levels[a], b, levels[b]));
      }
    }
  }

  /** Up to `count` pairs that are not met yet, from a random place on. */
  missing(random, count) {
    const found = [];
    const factors = this.#factors;
    const start = Math.floor(random() * factors.length);
    for (let n = 0; n < factors.length && found.length < count; ++n) {
      const a = (start + n) % factors.length;
      for (let b = a + 1; b < factors.length && found.length < count; ++b) {
        for (let i = 0; i < factors[a].levels.length; ++i) {
          for (let j = 0; j < factors[b].levels.length; ++j) {
            if (!this.#met.has(key(a, i, b, j)) && !this.#excluded(a, i, b, j)) found.push([a, i, b, j]);
          }
        }
      }
    }
    return found;
  }
}

function key(a, i, b, j) {
  return ((a * 16 + i) * 256 + b) * 16 + j;
}

/**
 * Levels for `count` rows. Each row first takes pairs that no row before it has, as long as they fit together, in some
 * factors; the rest is drawn: mostly left out, so that rows stay readable.
 */
export function series(factors, seed, count, excluded = never) {
  const random = seeded(seed);
  const cover = new Cover(factors, excluded);
  const rows = [];
  for (let n = 0; n < count; ++n) {
    const levels = new Array(factors.length).fill(-1);
    const allowed = (factor, level) => levels.every((other, f) => f === factor || other < 0 || !excluded(Math.min(f, factor), f < factor ? other : level, Math.max(f, factor), f < factor ? level : other));
    const put = (factor, level) => {
      if (levels[factor] === level) return true;
      if (levels[factor] >= 0 || !allowed(factor, level)) return false;
      levels[factor] = level;
      return true;
    };
    // The first rows meet most pairs by chance; later ones are made for what is still missing.
    const wanted = cover.met < 0.5 * cover.total ? [] : cover.missing(random, 400);
    for (const [a, i, b, j] of wanted) {
      const freeA = levels[a] < 0;
      if (put(a, i) && !put(b, j) && freeA) levels[a] = -1;
    }
    for (let factor = 0; factor < factors.length; ++factor) {
      if (levels[factor] >= 0) continue;
      const optional = factors[factor].levels[0]() === undefined;
      const draw = () => (optional && random() < leftOut ? 0 : Math.floor(random() * factors[factor].levels.length));
      let level = draw();
      for (let tries = 0; !allowed(factor, level) && tries < 20; ++tries) level = draw();
      levels[factor] = allowed(factor, level) ? level : 0;
    }
    cover.add(levels);
    rows.push({levels, seed: Math.floor(random() * 2 ** 31) + 1});
  }
  return {rows, cover};
}
