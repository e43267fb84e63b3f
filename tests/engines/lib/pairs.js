// Pairs of characters for measuring fonts.

const kerned = ['AV', 'AT', 'To', 'Te', 'Wa', 'We', 'Yo', 'Ya', 'LT', 'Ly', 'P.', 'F,', 'r.', 'y,', 'VA', 'Ky', 'RV', "L'", 'T-', '-T', 'A”', '“A', 'ov', 'xe', '11', '74', 'fi', 'fl', 'ff'];
const spaced = ['A V', 'T o', 'y, w', 'r. T', 'L Y', 'P A', '1 7', '“ W', 'V -', 'f j'];
const letters = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZéüøßçñžÅ';
const others = '0123456789.,;:!?-–—’‘“”()[]/&%+*€';
const arabic = 'ابتثجحخدذرزسشصضطظعغفقكلمنهويىةءأإآؤئ';
const arabicOthers = '٠١٢٣٤٥٦٧٨٩،؛؟.:()';

/** A generator of whole numbers below `most`, the same in each run. */
function draws(seed) {
  let state = seed;
  return (most) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * most);
  };
}

/**
 * `count` different pairs of characters for which `has` is true: kerned pairs, pairs with a space, and random pairs of
 * letters, digits and punctuation.
 */
export function pairsFor(count, rightToLeft, has) {
  const draw = draws(20261125);
  const writable = (text) => [...text].every((character) => has(character.codePointAt(0)));
  const mine = [...(rightToLeft ? arabic : letters)].filter(writable);
  const marks = [...(rightToLeft ? arabicOthers : others)].filter(writable);
  const any = (list) => list[draw(list.length)];
  const chosen = new Set(rightToLeft ? [] : [...kerned, ...spaced].filter(writable));
  while (chosen.size < count) {
    const kind = draw(4);
    if (kind === 0) chosen.add(any(mine) + any(marks));
    else if (kind === 1 && !rightToLeft) chosen.add(any(marks) + any(mine));
    else if (kind === 2) chosen.add(`${any(mine)} ${any(mine)}`);
    else chosen.add(any(mine) + any(mine));
  }
  return [...chosen];
}
