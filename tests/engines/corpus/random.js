// Numbers that are the same in every run.

/** A generator of numbers from 0 to below 1, by Marsaglia's xorshift (Journal of Statistical Software 8(14), 2003). */
export function seeded(seed) {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
}

export const pick = (random, list) => list[Math.floor(random() * list.length)];
