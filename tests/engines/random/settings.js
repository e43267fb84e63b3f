// Every setting of a project that changes the layout, with the values that a random row may give it.
//
// A factor is one setting. Its levels are kinds of value; the first level of most factors leaves the setting out. A level
// is a function that gets a source of random numbers and returns the value.

const between = (least, most) => (random) => least + (most - least) * random();
const rounded = (value, digits = 2) => Number(value.toFixed(digits));
const length = (unit, least, most) => (random) => `${rounded(between(least, most)(random))}${unit}`;
const always = (value) => () => value;
const absent = always(undefined);

/** Four sides with different values; each may be missing. */
const sides = (one) => (random) => {
  const made = {};
  for (const side of ['top', 'right', 'bottom', 'left']) if (random() < 0.8) made[side] = one(random);
  return made;
};

const outside = [length('px', 0, 26), length('rem', 0, 1.6), length('em', 0, 1.6), length('vw', 0, 2.2), length('%', 0, 4)];
const inside = [length('px', 0, 14), length('rem', 0, 0.9), length('em', 0, 0.9), length('vw', 0, 1.1), length('cqi', 0, 4), length('%', 0, 4)];
/** Negative margins at top and bottom. Negative side margins would only make parts overlap the card. */
const pulled = (random) => ({top: `${rounded(between(-0.6, 0)(random))}em`, bottom: `${rounded(between(-8, 0)(random))}px`});
const borders = [length('px', 0.3, 4), length('rem', 0.02, 0.2), length('em', 0.02, 0.2)].map((one) => (random) => ({width: one(random), colour: '#567'}));
const spacings = (most) => [length('em', 0.005, most), length('em', -most / 3, -0.002), length('px', 0.05, most * 16), length('rem', 0.005, most), length('vw', 0.005, most), length('cqi', 0.02, most * 3)];

const rising = (least, most) => (random) => [[Math.round(between(300, 620)(random)), rounded(between(least, (least + most) / 2)(random), 3)], [Math.round(between(980, 1900)(random)), rounded(between((least + most) / 2, most)(random), 3)]];
const falling = (least, most) => (random) => rising(least, most)(random).map(([width, size], i, both) => [width, both[1 - i][1]]);
const byCard = (least, most) => (random) => [[Math.round(between(120, 260)(random)), rounded(between(least, (least + most) / 2)(random), 3)], [Math.round(between(420, 900)(random)), rounded(between((least + most) / 2, most)(random), 3)]];

/** The factors of a text role. */
function textFactors(role) {
  const [least, most] = {heading: [17, 30], body: [12.5, 20], button: [12, 18], note: [10, 15]}[role];
  const size = (value, follow) => (random) => ({size: value(random), ...(follow && {follow})});
  const factor = (name, levels) => ({name: `text.${role}.${name}`, kind: name, path: ['style', 'text', role, name], levels: [absent, ...levels]});
  return [
    {...factor('size', [size((random) => rounded(between(least, most)(random), 3)), size(rising(least, most)), size(falling(least, most)), size(byCard(least, most), 'card')]), merged: true, path: ['style', 'text', role]},
    factor('weight', [always(300), always(500), always(700), (random) => Math.round(between(100, 950)(random))]),
    factor('slant', [always('italic')]),
    factor('lineHeight', [(random) => rounded(between(1.05, 1.9)(random)), (random) => rounded(between(0.75, 1)(random)), length('px', most, most * 1.8), length('rem', most / 16, most / 9), length('em', 1, 1.8), length('vw', 2, 4), length('cqi', 5, 10)]),
    factor('letterSpacing', spacings(0.12)),
    factor('wordSpacing', spacings(0.3)),
    factor('case', [always('uppercase'), always('capitalize')]),
    factor('align', [always('center'), always('end')]),
    factor('wrap', [always('balance')]),
    factor('overflowWrap', [always('normal'), always('break-word'), always('anywhere')]),
    factor('hyphens', [always('none'), always('manual')]),
    factor('keepLines', [always(2), (random) => 3 + Math.floor(random() * 3)]),
    factor('margin', [...inside.map(sides), pulled, (random) => ({...sides(inside[0])(random), top: 'auto'})]),
    factor('padding', inside.map(sides)),
    factor('place', [always('start'), always('center'), always('end'), always('stretch')]),
    factor('border', borders),
  ];
}

/** Page ranges that end near `ends` (CSS px), with a container and mostly a root size of their own. */
const ranges = (...ends) => (random) => ends.map((end) => {
  const [px, rem, vw, percent] = [length('px', 300, 1100), length('rem', 25, 60), length('vw', 55, 98), length('%', 60, 100)];
  const one = (...lengths) => lengths[Math.floor(random() * lengths.length)](random);
  const root = [rounded(between(9, 22)(random)), '62.5%', 'calc(11px + 0.4vw)', undefined][Math.floor(random() * 4)];
  const sides = {left: one(length('px', 0, 24), length('rem', 0, 1.5), length('vw', 0, 2)), right: one(length('px', 0, 24), length('%', 0, 3))};
  return {upTo: Math.round(end + 120 * (random() - 0.5)), ...(root && {rootSize: root}), container: {width: one(px, rem, vw, percent), ...(random() < 0.4 && {maxWidth: one(px, rem, vw)}), ...(random() < 0.5 && {padding: sides})}};
});

export const roles = ['heading', 'body', 'button', 'note'];

export const factors = [
  {name: 'page.rootSize', kind: 'rootSize', path: ['page', 'rootSize'], levels: [absent, always(10), always(20), (random) => rounded(between(8, 24)(random))]},
  {name: 'page.container.width', kind: 'container', path: ['page', 'container', 'width'], levels: [absent, length('%', 70, 100), length('px', 500, 1400), length('rem', 30, 80), length('em', 30, 80), length('vw', 60, 100)]},
  {name: 'page.container.maxWidth', kind: 'container', path: ['page', 'container', 'maxWidth'], levels: [absent, length('px', 600, 1500), length('rem', 40, 90), length('em', 40, 90), length('vw', 70, 99), length('%', 70, 99)]},
  {name: 'page.container.padding', kind: 'container', path: ['page', 'container', 'padding'], levels: [absent, ...outside.map(sides)]},
  {name: 'page.ranges', kind: 'ranges', path: ['page', 'ranges'], levels: [absent, ranges(760), ranges(590, 1180)]},
  {name: 'row.columns', kind: 'columns', path: ['columns'], levels: [1, 2, 3, 4, 5, 6].map(always)},
  {name: 'row.width', kind: 'row.width', path: ['style', 'row', 'width'], levels: [absent, length('%', 60, 100), length('px', 300, 1500), length('rem', 20, 80), length('em', 20, 80), length('vw', 60, 105)]},
  {name: 'row.maxWidth', kind: 'row.maxWidth', path: ['style', 'row', 'maxWidth'], levels: [absent, length('px', 500, 1500), length('rem', 30, 90), length('em', 30, 90), length('vw', 70, 99), length('%', 70, 99)]},
  {name: 'row.columnGap', kind: 'gap', path: ['style', 'row', 'columnGap'], levels: [absent, ...outside]},
  {name: 'row.rowGap', kind: 'gap', path: ['style', 'row', 'rowGap'], levels: [absent, ...outside.slice(0, 4)]},
  {name: 'row.padding', kind: 'row.padding', path: ['style', 'row', 'padding'], levels: [absent, ...outside.map(sides)]},
  {name: 'row.lastLine', kind: 'lastLine', path: ['style', 'row', 'lastLine'], levels: [absent, always('center')]},
  {name: 'row.level', kind: 'level', path: ['style', 'row', 'level'], levels: [absent, always('subgrid')]},
  {name: 'card.padding', kind: 'card.padding', path: ['style', 'card', 'padding'], levels: [absent, ...outside.map(sides)]},
  {name: 'card.border', kind: 'card.border', path: ['style', 'card', 'border'], levels: [absent, ...borders]},
  {name: 'card.direction', kind: 'beside', path: ['style', 'card', 'direction'], levels: [absent, always('beside')]},
  {name: 'card.pictureShare', kind: 'beside', path: ['style', 'card', 'pictureShare'], levels: [absent, length('%', 20, 55)]},
  {name: 'card.bleed', kind: 'bleed', path: ['style', 'card', 'bleed'], levels: [absent, always(true)]},
  {name: 'card.linked', kind: 'linked', path: ['style', 'card', 'linked'], levels: [absent, always(true)]},
  {name: 'picture.ratio', kind: 'picture', path: ['style', 'picture', 'ratio'], levels: [absent, always('own'), (random) => `${rounded(between(1, 4)(random))}/${rounded(between(1, 3)(random))}`]},
  {name: 'picture.margin', kind: 'picture.margin', path: ['style', 'picture', 'margin'], levels: [absent, ...inside.map(sides), sides(length('px', -6, 6))]},
  {name: 'unit', kind: 'unit', path: ['unit'], levels: [absent, always('px'), always('rem')]},
  {name: 'cards', kind: 'cards', path: ['count'], levels: [1, 2, 3, 4, 5, 6, 7].map(always)},
  {name: 'pictures', kind: 'pictures', path: ['pictures'], levels: [always('none'), always('each'), always('some'), always('last')]},
  {name: 'breakpoints', kind: 'bands', path: ['bands'], levels: [always(1), always(2), always(3)]},
  {name: 'language', kind: 'language', path: ['language'], levels: ['en', 'de', 'cs', 'vi', 'el', 'ru', 'he', 'ar', 'hi', 'th', 'ja', 'zh', 'tr', 'nl', 'mixed'].map(always)},
  {name: 'family', kind: 'family', path: ['families'], levels: ['first', 'second', 'third', 'lacking', 'generic'].map(always)},
  {name: 'body.copy', kind: 'runs', path: ['bodyCopy'], levels: ['plain', 'strong', 'emphasis', 'link', 'break', 'all', 'hard'].map(always)},
  {name: 'heading.copy', kind: 'runs', path: ['headingCopy'], levels: ['plain', 'strong', 'emphasis', 'link', 'break'].map(always)},
  ...roles.flatMap(textFactors),
];
