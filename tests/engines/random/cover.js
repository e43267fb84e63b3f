// Chooses the level of every factor for a series of rows, so that every pair of levels of two factors occurs.

import {seeded} from '../corpus/random.js';

/** Probability that a factor is left out if no pair needs it. */
const leftOut = 0.62;

/** True if the settings of two levels exclude each other (core/project/conflicts.cpp); by default none do. */
const never = () => false;

/** The pairs of levels that have occurred. */
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

  /** Up to `count` pairs that have not occurred, from a random factor on. */
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
 * Levels for `count` rows. Each row first gets pairs that no earlier row has, as far as they fit together. The other
 * factors are random and mostly left out, so that rows stay readable.
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
    // The first rows have most pairs by chance; later rows get the pairs that are still missing.
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
