// Random CSS, valid and invalid, the same in every run.

/** @returns a function that returns whole numbers from 0 to below its argument. */
export function randomNumbers(seed) {
  let state = seed >>> 0;
  return (below) => {
    // Marsaglia's xorshift, 32 bits.
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

const pick = (random, list) => list[random(list.length)];

const pieces = [
  'a', 'tide', '-x', '--y', '.', '#', '#id', '#1', '@media', '@', '12', '-.5', '+1e3', '1e', '10px', '5%', '1.5em', '"s"', "'t'", '"',
  "'", '\\', '\\41 ', '\\0', '\n', ' ', '\t', '(', ')', '[', ']', '{', '}', ':', ';', ',', 'url(', 'url(a)', 'url( "a" )', 'url(a b)',
  '/*', '*/', '/* c */', '<!--', '-->', '<', '!', '*', '+', '-', '>', '~', '|', '=', '$', '^', '&', 'é', '日', '😀', 'calc(', 'U+26', '\r\n', '\f',
];

/** Any text. */
export function garble(random, most = 14) {
  return Array.from({length: 1 + random(most)}, () => pick(random, pieces)).join('');
}

const attributes = ['[lang]', '[href]', '[class~=wide]', '[data-tide=low]', '[data-tide|=high]', '[data-tide^="hi"]', '[data-tide$=ER i]', '[data-tide*="w"]', '[rel=NEXT]', '[id=""]', '[ data-tide = "LOW" I ]'];
const pseudos = [':first-child', ':last-child', ':only-child', ':first-of-type', ':last-of-type', ':only-of-type', ':root', ':empty', ':link', ':any-link', ':hover', ':focus-visible', ':active', ':visited', ':nth-child(2n+1)', ':nth-child(odd)', ':nth-last-child(-n + 2)', ':nth-of-type(2)', ':nth-last-of-type( even )', ':nth-child(2 of .card, p)', ':lang(en)', ':dir(ltr)', ':checked', ':scope'];
const wrongs = [':no-such', '::no-such', '..', ':nth-child(n of)', ':not()', '[=a]', '#1', ':is', ':hover()', ' > > a', ',', '|a', ':nth-child(+ 2n)', '!', '::before a', ':has(:has(a))'];

function compound(random, depth) {
  let text = pick(random, ['', '*', 'div', 'P', 'article', 'a', 'h3', 'section']);
  for (let n = random(3); n > 0; --n) {
    const kind = random(depth > 0 ? 8 : 5);
    if (kind < 2) text += pick(random, ['.card', '.wide', '.late', '#walks', '.none', '.\\63 ard']);
    else if (kind === 2) text += pick(random, attributes);
    else if (kind < 5) text += pick(random, pseudos);
    else text += `${pick(random, [':is(', ':where(', ':not(', ':has('])}${selector(random, depth - 1)})`;
  }
  return text || '.card';
}

/** A selector list; one in six is invalid. */
export function selector(random, depth = 2) {
  const lists = Array.from({length: 1 + random(2)}, () => {
    let text = compound(random, depth);
    for (let n = random(3); n > 0; --n) text += pick(random, [' ', ' > ', '+', ' ~ ', '>']) + compound(random, depth);
    return text;
  });
  if (random(8) === 0) lists[0] += pick(random, ['::before', ':after', '::marker']);
  if (random(6) === 0) lists[0] += pick(random, wrongs);
  return lists.join(pick(random, [',', ' , ']));
}

const declarations = ['color: red', 'COLOR:Blue', 'margin: 0 auto', 'padding-top:1em!important', '--x: { a: b }', '--y:', '--z:!important', 'color', ': red', 'color: red; ;', 'color red: x', 'width: calc(1px + (2px))', 'top: (', 'top: )', 'background: url(a b)', 'content: "a;}"', 'content: "a\nb"', 'left: 1px ! x', 'right: 2px /* c */', '--w: [a}', 'color:{}', 'gap: 1px ! /* */ important'];
const preludes = ['a', '.b > c', '#d, e', 'f:hover', 'g::before', 'h:no-such', '', '!', 'i,', '@font-face', '@keyframes j', '--k:hover', 'l{', '}'];

/** A stylesheet with many errors, but no nested rules. */
export function sheet(random, depth = 2) {
  let text = '';
  for (let n = 1 + random(5); n > 0; --n) {
    const kind = random(depth > 0 ? 10 : 7);
    if (kind < 6) {
      const body = Array.from({length: random(4)}, () => pick(random, declarations)).join(pick(random, [';', '; ', ';\n']));
      text += `${pick(random, preludes)} {${body}}`;
    } else if (kind === 6) {
      text += pick(random, ['@import "a.css";', '@x;', ';', '/* c */', '<!--', '-->', 'a;', 'b: c;', '}']);
    } else {
      text += `${pick(random, ['@media screen', '@media (max-width: 700px)', '@supports (color: red)', '@layer base', '@layer', '@container (width > 1px)', '@x'])} {${sheet(random, depth - 1)}}`;
    }
    text += pick(random, ['', ' ', '\n']);
  }
  return text;
}

const units = ['px', 'px', 'rem', 'em', 'vw', 'vw', 'vi', '%', 'cqi', 'cqw'];

/** A length or a calculation; one in ten is invalid. */
export function size(random, depth = 3) {
  const number = () => String((random(4000) - 800) / 100);
  const length = () => number() + pick(random, units);
  const inner = () => (depth > 0 && random(2) ? size(random, depth - 1) : length());
  const wrong = random(40) === 0;
  switch (random(7)) {
    case 0:
      return wrong ? `calc(${inner()}+${inner()})` : `calc(${inner()} + ${inner()})`;
    case 1:
      return wrong ? `calc(${inner()} - ${number()})` : `calc(${inner()} - ${inner()})`;
    case 2:
      return wrong ? `calc(${inner()} * )` : `calc(${inner()} * ${number()})`;
    case 3:
      return `calc((${inner()} + ${inner()}) / ${1 + random(9)})`;
    case 4:
      return `${pick(random, ['min', 'max', 'MIN'])}(${inner()}, ${inner()}${random(2) ? `, ${inner()}` : ''}${wrong ? ',' : ''})`;
    case 5:
      return `clamp(${random(6) ? inner() : 'none'}, ${inner()}, ${random(6) ? inner() : 'none'}${wrong ? ', 1px' : ''})`;
    default:
      return depth === 3 ? `max(1px, ${inner()})` : length();
  }
}

const features = ['(max-width: 700px)', '(min-width: 40em)', '(width > 500px)', '(width<=1000px)', '(300px < width < 900px)', '(900px >= width >= 400px)', '(width: 640px)', '(width)', '(min-width: calc(10em + 200px))', '(min-width: 0)', '(width = 640px)', '(640px = width)', '(min-width:20REM)', '(not (width < 600px))', '((width > 300px) and (width < 800px))', '((width < 300px) or (width > 800px))', '(width > 500)', '(min-width: -1px)'];

/** A list of media queries; some are invalid. */
export function media(random) {
  const query = () => {
    const conditions = Array.from({length: 1 + random(2)}, () => pick(random, features)).join(pick(random, [' and ', ' and ', ' or ', ' ']));
    return pick(random, ['', 'screen and ', 'only screen and ', 'not screen and ', 'print and ', 'not all and ', 'not ', 'and ']) + conditions;
  };
  return Array.from({length: 1 + random(2)}, query).join(', ');
}

/** True if a selector has an error on purpose. */
export const hasWrong = (text) => wrongs.some((wrong) => wrong !== ',' && text.includes(wrong)) || /,\s*[,)]|,$/.test(text);
