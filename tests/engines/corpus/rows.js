// The rows of the corpus. They spread the contents and settings that a row can have over few rows, so that every width can
// be laid out.
import {copy, hardWords} from './copy.js';
import {pick, seeded} from './random.js';

const random = seeded(20261125);

/** Bands from one column up to `most` columns, at uneven breakpoints. */
function bandsTo(most) {
  const steps = {1: [1], 2: [1, 2], 3: [1, 2, 3], 4: [1, 2, 4], 5: [1, 3, 5], 6: [2, 3, 6]}[most];
  return steps.map((columns, i) => ({...(i + 1 < steps.length && {upTo: [613, 1187][i] + most / 4}), set: {row: {columns}}}));
}

const style = (heading, body, button = {}) => ({
  row: {columnGap: '1.7rem', rowGap: '1.9rem', width: '92%'},
  card: {padding: {top: '1rem', right: '1.1rem', bottom: '1.3rem', left: '1.1rem'}, border: {width: '1px', colour: '#889'}, radius: '6px'},
  text: {
    heading: {size: [[360, 17.5], [1480, 25.25]], lineHeight: 1.22, ...heading},
    body: {size: [[340, 15], [1500, 17.75]], lineHeight: 1.53, ...body},
    button: {size: [[340, 14.5], [1500, 16.25]], overflowWrap: 'anywhere', ...button},
  },
});

/** A style without room between and in cards, for columns of a few letters. */
function narrow(text) {
  const none = {top: '0', right: '0', bottom: '0', left: '0'};
  return {row: {columnGap: '0', rowGap: '1rem', width: '35%'}, card: {padding: none, border: {width: '0'}}, text: Object.fromEntries(Object.entries(text).map(([role, one]) => [role, {size: 15, weight: 400, lineHeight: 1.4, margin: none, ...one}]))};
}

/** One project. `cards` are lists of parts; `most` is its largest column count. */
function row(name, {most = 3, cards, heading, body, button, ...rest}) {
  return {
    format: 'tenter-project',
    version: 1,
    name: `Corpus: ${name}`,
    row: 'corpus',
    language: 'en',
    range: {from: 320, to: 1920},
    style: style(heading, body, button),
    cards: cards.map((parts) => ({parts})),
    variants: [{class: `corpus-${name}`, bands: bandsTo(most)}],
    ...rest,
  };
}

const textPart = (role, text) => ({role, copy: text, ...(role === 'button' && {link: '#'})});

/** Heading, paragraph and button in each of three cards. */
function cardsIn(language) {
  const {headings, paragraphs, buttons} = copy[language];
  return headings.map((heading, i) => [textPart('heading', heading), textPart('body', paragraphs[i]), textPart('button', buttons[i])]);
}

function inLanguage(language, settings) {
  return row(language, {language, cards: cardsIn(language), ...settings});
}

/** A paragraph of plain words with hard ones between them. */
function hardParagraph(words) {
  const plain = copy.en.paragraphs.join(' ').split(' ');
  return Array.from({length: words}, () => (random() < 0.45 ? pick(random, hardWords) : pick(random, plain))).join(' ');
}

/** ASCII signs between letters and digits, on which the tables of the two engines differ. */
function signsParagraph(words) {
  const signs = '!"#$%&\'()*+,-./:;<=>?@[\\]^_`{|}~';
  const letters = 'abcdefghiklmnoprstuvw0123456789';
  const word = () => {
    let text = '';
    for (let i = 0; i < 5; ++i) text += pick(random, letters) + (random() < 0.6 ? pick(random, signs) : '') + (random() < 0.3 ? pick(random, signs) : '');
    return text + pick(random, letters);
  };
  return Array.from({length: words}, word).join(' ');
}

const sides = (top, right, bottom, left) => ({top, right, bottom, left});

export const rows = {
  diacritics: inLanguage('cs', {heading: {family: ['EB Garamond'], wrap: 'balance'}, body: {family: ['EB Garamond'], align: 'center'}, button: {family: ['EB Garamond']}}),
  compounds: inLanguage('de', {most: 4, heading: {family: ['Lato'], overflowWrap: 'break-word'}, body: {family: ['Lato'], hyphens: 'manual'}, button: {family: ['Lato'], place: 'center'}}),
  uncut: inLanguage('de', {most: 6, heading: {family: ['Roboto Slab'], overflowWrap: 'normal', hyphens: 'none'}, body: {family: ['Roboto Slab'], overflowWrap: 'normal', hyphens: 'none'}, button: {family: ['Roboto Slab'], place: 'stretch'}}),
  vietnamese: inLanguage('vi', {heading: {family: ['Inter'], weight: 633, wrap: 'balance'}, body: {family: ['Inter'], weight: 433, letterSpacing: '0.012em'}, button: {family: ['Inter'], weight: 571}}),
  greek: inLanguage('el', {heading: {family: ['EB Garamond'], case: 'uppercase', letterSpacing: '0.06em'}, body: {family: ['EB Garamond'], align: 'end'}, button: {family: ['EB Garamond'], place: 'end'}}),
  cyrillic: inLanguage('ru', {most: 4, heading: {family: ['Vollkorn'], case: 'capitalize', letterSpacing: '-0.3px'}, body: {family: ['Vollkorn'], wordSpacing: '0.12em'}, button: {family: ['Vollkorn'], case: 'uppercase'}}),
  hebrew: inLanguage('he', {direction: 'rtl', heading: {family: ['Noto Sans Hebrew', 'Lato']}, body: {family: ['Noto Serif Hebrew', 'Lato'], align: 'start'}, button: {family: ['Noto Sans Hebrew', 'Lato']}}),
  arabic: inLanguage('ar', {direction: 'rtl', most: 4, heading: {family: ['Amiri', 'Lato'], wrap: 'balance'}, body: {family: ['Noto Naskh Arabic', 'Lato'], align: 'end', lineHeight: '1.9rem'}, button: {family: ['Noto Naskh Arabic', 'Lato'], place: 'end'}}),
  mixed: row('mixed', {
    heading: {family: ['Lato', 'Noto Sans Hebrew']},
    body: {family: ['Lato', 'Noto Naskh Arabic', 'Noto Sans Hebrew']},
    cards: [0, 1, 2].map((i) => [
      textPart('heading', `${copy.en.headings[i]} · ${copy.he.headings[i]}`),
      {role: 'body', copy: [copy.en.paragraphs[i], ' ', {strong: copy.ar.paragraphs[i]}, ' ', {emphasis: copy.en.buttons[i]}, ' (12–14) ', copy.he.buttons[i]]},
    ]),
  }),
  hindi: inLanguage('hi', {heading: {family: ['Noto Sans Devanagari'], wrap: 'balance'}, body: {family: ['Noto Serif Devanagari']}, button: {family: ['Noto Sans Devanagari']}}),
  thai: inLanguage('th', {heading: {family: ['Noto Sans Thai']}, body: {family: ['Noto Serif Thai']}, button: {family: ['Noto Sans Thai']}}),
  japanese: inLanguage('ja', {most: 4, heading: {family: ['Noto Sans CJK JP'], weight: 400}, body: {family: ['Noto Sans CJK JP']}, button: {family: ['Noto Sans CJK JP'], weight: 400}}),
  chinese: inLanguage('zh', {most: 4, heading: {family: ['Noto Sans CJK SC'], weight: 400}, body: {family: ['Noto Sans CJK SC']}, button: {family: ['Noto Sans CJK SC'], weight: 400}}),
  turkish: inLanguage('tr', {heading: {family: ['Lato'], case: 'uppercase'}, body: {family: ['Lato'], case: 'capitalize'}, button: {family: ['Lato'], case: 'capitalize'}}),
  dutch: inLanguage('nl', {heading: {family: ['Lato'], case: 'capitalize'}, body: {family: ['Lato']}, button: {family: ['Lato'], case: 'uppercase'}}),
  cases: row('cases', {
    heading: {family: ['Inter'], case: 'uppercase'},
    body: {family: ['Inter'], case: 'capitalize'},
    cards: [
      [textPart('heading', 'Straße im Maße: ß, ŉ und ǆ'), textPart('body', 'die straße führt am großen fluß entlang, ŉ dag lank, ǆep i ǆungla, ﬁne ﬂow o.k. a.m. p.m. x@y 3rd 4th “quoted words” (in brackets)')],
      [textPart('heading', 'ΌΣΟΣ και Σίσυφος, ὈΔΥΣΣΕΎΣ'), textPart('body', 'ὁ σοφὸς ὀδυσσεύς, οἱ ἄνθρωποι — mother-in-law’s well-being, rock’n’roll, d’accord, l’été, o’clock')],
      [textPart('heading', 'İstanbul’da ılık ĳs'), textPart('body', 'mcdonald and o’neill, naïve café, ﬃ ligature ofﬁce, 1st 2nd élan ñandú œuvre æther þorn')],
    ],
  }),
  hard: row('hard', {
    most: 4,
    heading: {family: ['Lato'], wrap: 'balance', overflowWrap: 'break-word'},
    body: {family: ['Vollkorn'], overflowWrap: 'break-word'},
    cards: Array.from({length: 6}, () => [textPart('heading', hardParagraph(9)), textPart('body', hardParagraph(26))]),
  }),
  signs: row('signs', {
    most: 5,
    heading: {family: ['Inter'], overflowWrap: 'normal'},
    body: {family: ['EB Garamond'], overflowWrap: 'anywhere'},
    cards: Array.from({length: 5}, () => [textPart('heading', signsParagraph(3)), textPart('body', signsParagraph(14))]),
  }),
  overflow: row('overflow', {
    most: 6,
    heading: {family: ['League Spartan'], overflowWrap: 'normal'},
    body: {family: ['Cabin'], overflowWrap: 'break-word', hyphens: 'manual'},
    button: {family: ['Cabin'], overflowWrap: 'anywhere'},
    cards: ['Donaudampfschifffahrtsgesellschaftskapitän', 'https://station.example/walks/dawn/boots/and/jackets', 'AVAVAVATATATAWAWAWA', 'co\u00ADop\u00ADer\u00ADa\u00ADtion\u00ADal\u00ADise', 'under-12s-and-over-60s-together', 'ofﬁce-afﬁliates'].map((word) => [
      textPart('heading', word), textPart('body', `a ${word} b ${word}${word} c`), textPart('button', word),
    ]),
  }),
  spaces: row('spaces', {
    most: 4,
    heading: {family: ['Karla']},
    body: {family: ['Karla'], wordSpacing: '1.5px'},
    cards: [
      [textPart('heading', '  Runs   of    spaces \n and \t tabs  '), textPart('body', 'a line feed\nbetween words\r\nand \n\n two of them; 日本\n語 and 漢 \n 字 between ideographs')],
      [textPart('heading', ''), textPart('body', 'I'), textPart('body', 'no\u00A0break\u00A0space here\u00A0 and\u00A0\u00A0two at\u00A0')],
      [textPart('heading', 'A'), {role: 'body', copy: ['Forced', {break: true}, 'breaks ', {break: true}, ' here', {break: true}, {break: true}, 'and an empty line', {break: true}]}],
      [textPart('heading', 'Thin\u2009and\u2009em\u2003spaces\u2003here'), textPart('body', 'zero\u200Bwidth\u200Bspaces and\u2060word\u2060joiners, hair\u200Aspaces, figure\u2007spaces 1\u202F000\u202Fm; ideographic\u3000space')],
    ],
  }),
  emoji: row('emoji', {
    heading: {family: ['Karla', 'DejaVu Sans']},
    body: {family: ['Karla', 'DejaVu Sans']},
    cards: [
      [textPart('heading', 'Joined \u{1F469}\u200D\u{1F52C} and \u{1F468}\u200D\u{1F469}\u200D\u{1F467}'), textPart('body', 'Marks: e\u0301 a\u0308 o\u0328\u0301; keycaps 1\uFE0F\u20E3, flags \u{1F1E9}\u{1F1EA}\u{1F1EB}\u{1F1F7}, hearts ❤\uFE0F and ☎, tones \u{1F44B}\u{1F3FD}')],
    ],
  }),
  spacing: row('spacing', {
    heading: {family: ['EB Garamond'], letterSpacing: '-0.02em', wordSpacing: '-0.08em'},
    body: {family: ['EB Garamond'], letterSpacing: '0.6px', wordSpacing: '0.2rem', hyphens: 'manual'},
    button: {family: ['EB Garamond'], letterSpacing: '0.14em', case: 'uppercase'},
    cards: [...cardsIn('en'), ...cardsIn('cs')],
  }),
  lengths: row('lengths', {
    page: {rootSize: 20, container: {width: '96%', maxWidth: '1500px', padding: {top: '3px', right: '1.5%', bottom: '0.4rem', left: '2vw'}, background: '#eee'}},
    style: {
      row: {width: '94%', maxWidth: '61rem', columnGap: '2.3%', rowGap: '1.2vw', padding: sides('2%', '1.5vw', '7px', '0.35rem')},
      card: {padding: sides('3%', '0.6rem', '1.1vw', '4%'), border: {width: '3px', colour: '#557'}, radius: '1vw'},
      text: {
        heading: {family: ['Manrope'], weight: 741, size: [[400, 18], [1600, 27]], lineHeight: '1.65rem', margin: sides('0.7em', '3%', '2%', '5px'), padding: sides('1%', '0.3em', '0.2vw', '2px'), border: {width: '2px', colour: '#aab'}, background: '#fee'},
        body: {family: ['Manrope'], size: [[380, 16], [1500, 18.5]], lineHeight: 1.47, margin: sides('4px', '1vw', '0.6em', '0.2rem'), padding: sides('0.2rem', '2%', '3px', '0.4em')},
        button: {family: ['Manrope'], size: [[380, 15], [1500, 17]], padding: sides('0.4em', '4%', '0.3rem', '1.4vw'), margin: {top: 'auto', bottom: '3%', left: '0.5em'}, overflowWrap: 'anywhere', border: {width: '2px', colour: '#345'}},
      },
    },
    cards: cardsIn('en'),
  }),
  // A theme with containers and root sizes of its own: in px by breakpoint, in percent, and in px and vw.
  pages: row('pages', {
    page: {
      rootSize: 18,
      container: {maxWidth: '1320px', padding: {left: '1.5rem', right: '1.5rem'}},
      ranges: [
        {upTo: 575, rootSize: '100%', container: {maxWidth: 'none', padding: {left: '12px', right: '12px'}, background: '#eef'}},
        {upTo: 767.5, rootSize: '62.5%', container: {maxWidth: '540px'}},
        {upTo: 1100, rootSize: 'clamp(14px, 9px + 0.6vw, 15.2px)', container: {width: '94%', maxWidth: '960px', padding: {left: '1rem'}}},
        {upTo: 1399, rootSize: 'calc(22px - 0.4vw)', container: {maxWidth: '58rem'}},
      ],
    },
    style: {
      row: {width: '96%', columnGap: '1.4rem', rowGap: '1.1rem', padding: sides('0.5rem', '0.4rem', '0.3rem', '0.2rem')},
      card: {padding: sides('0.9rem', '1rem', '1.2rem', '1.1rem'), border: {width: '2px', colour: '#557'}, radius: '0.4rem'},
      text: {
        heading: {family: ['Manrope'], size: [[360, 17.5], [1480, 25.25]], lineHeight: '2rem', letterSpacing: '0.01rem', margin: {bottom: '0.5rem'}},
        body: {family: ['Manrope'], size: 16.5, lineHeight: 1.53, padding: {top: '0.3rem'}},
        button: {family: ['Manrope'], follow: 'card', size: [[180, 14], [500, 16.5]], padding: sides('0.5rem', '1rem', '0.5rem', '1rem'), border: {width: '3px', colour: '#345'}, overflowWrap: 'anywhere'},
      },
    },
    cards: cardsIn('en'),
  }),
  places: row('places', {
    most: 4,
    heading: {family: ['Vollkorn'], align: 'center', wrap: 'balance', place: 'center', size: [[360, 16], [1480, 22.5]]},
    body: {family: ['Vollkorn'], align: 'end', wrap: 'balance'},
    button: {family: ['Vollkorn'], place: 'end', align: 'start', letterSpacing: '0.03em'},
    cards: [...cardsIn('en'), ...cardsIn('cs'), [textPart('heading', 'We all go to ob\u00ADser\u00ADva\u00ADtory'), textPart('body', 'Half of the reef and the ob\u00ADser\u00ADva\u00ADtory')]],
  }),
  scale: row('scale', {
    most: 5,
    heading: {family: ['Karla'], follow: 'card', size: [[180, 15.5], [620, 28]], margin: {top: '2.5cqi', bottom: '0.3em'}},
    body: {family: ['Karla'], follow: 'card', size: [[160, 13.5], [560, 18.5]], padding: {right: '1.5cqi'}},
    button: {family: ['Karla'], follow: 'card', size: [[160, 13], [500, 16]]},
    cards: [...cardsIn('en'), ...cardsIn('nl')],
  }),
  falling: row('falling', {
    heading: {family: ['League Spartan'], size: [[400, 30], [1400, 17]]},
    body: {family: ['Cabin'], size: [[333.3, 19.75], [1777.7, 13.125]], keepLines: 5},
    cards: cardsIn('en'),
  }),
  long: row('long', {
    most: 2,
    heading: {family: ['Karla']},
    body: {family: ['Vollkorn']},
    cards: Array.from({length: 24}, (_, i) => [textPart('heading', copy.en.headings[i % 3]), {role: 'body', copy: [copy.en.paragraphs[i % 3], ' ', {strong: copy.en.buttons[i % 3]}, ' or ', {emphasis: 'stay'}]}, textPart('button', copy.en.buttons[i % 3])]),
  }),
  // Found by random rows (tests/engines/random) and reduced.
  cuts: row('cuts', {
    most: 6,
    style: narrow({heading: {family: ['Lato'], overflowWrap: 'break-word', hyphens: 'manual'}, body: {family: ['Lato'], overflowWrap: 'anywhere', hyphens: 'manual'}, note: {family: ['Lato'], overflowWrap: 'normal', hyphens: 'manual'}}),
    cards: ['Wind\u00ADjacken', 'Will\u00ADmm', 'xx aa-i\u00ADmm', 'i\u00ADi\u00ADmm ok', 'iilliiii\u00ADm', 'under-12s-over-60s', 'kişi aa\u00ADiktir', 'Sali\u00ADne, Fil\u00ADi'].map((word) => ['heading', 'body', 'note'].map((role) => textPart(role, word))),
  }),
  // Words with soft hyphens that are cut although hyphens are off, and boxes as wide as their widest letter.
  parted: row('parted', {
    most: 6,
    style: narrow({heading: {family: ['Lato'], overflowWrap: 'break-word', hyphens: 'none'}, body: {family: ['Inter'], weight: 700, letterSpacing: '-0.04em', overflowWrap: 'anywhere', hyphens: 'none', case: 'uppercase'}, note: {family: ['Karla'], weight: 870, letterSpacing: '-0.03em', case: 'uppercase', overflowWrap: 'anywhere', place: 'start'}}),
    cards: ['Watt\u00ADwan\u00ADderung', 'Wil\u00ADlmm', 'Sali\u00ADne, Fil\u00ADi', 'xx aa-i\u00ADmm', 'kişi aa\u00ADiktir', 'i\u00ADi\u00ADmm'].map((word) => ['heading', 'body', 'note'].map((role) => textPart(role, word))),
  }),
  // Ligatures that are cut in text from right to left.
  joined: row('joined', {
    most: 6,
    direction: 'rtl',
    language: 'ar',
    style: narrow({heading: {family: ['Noto Sans Arabic'], weight: 700, overflowWrap: 'anywhere'}, body: {family: ['Noto Naskh Arabic'], overflowWrap: 'anywhere'}}),
    cards: ['ي إلى المنى', 'ونصغي إلى الطيور', 'لا بلى'].map((text) => ['heading', 'body'].map((role) => textPart(role, text))),
  }),
  // A vowel that shaping splits into two characters, drawn with a fallback font.
  vowels: row('vowels', {
    language: 'th',
    heading: {family: ['Inter', 'Noto Sans Thai'], weight: 700},
    body: {family: ['Inter', 'Noto Serif Thai'], overflowWrap: 'anywhere'},
    cards: ['สิ่งที่ทะเลทิ้งไว้เมื่อน้ำลง', 'รุ่งเช้าเหนือบึงน้ำเค็ม', 'น้ำ'].map((text) => [textPart('heading', text), {role: 'body', copy: [text, ' ', {strong: text}]}]),
  }),
  brackets: row('brackets', {
    direction: 'rtl',
    language: 'ar',
    most: 5,
    heading: {family: ['Noto Sans Arabic', 'sans-serif'], weight: 700, letterSpacing: '0.07em'},
    body: {family: ['Noto Sans Hebrew', 'Noto Naskh Arabic', 'sans-serif'], place: 'start'},
    cards: ['المنارة (Gull Point) أبدًا.', 'اللسان [North Spit] والمنارة'].map((text) => [textPart('heading', text), textPart('body', '11:00.')]),
  }),
  viewport: row('viewport', {
    most: 2,
    style: {
      row: {columnGap: '0.9rem', rowGap: '1.31vw', padding: sides('3.8%', '1.43%', '0.52%', '0.24%')},
      card: {padding: sides('2.27%', '1.31%', '0.22%', '3.26%')},
      text: {
        heading: {family: ['Lato'], lineHeight: '3.16vw', keepLines: 2, margin: sides('0.47vw', '0.68vw', '0.59vw', '0.12vw')},
        body: {family: ['Lato'], lineHeight: '3.84vw', padding: sides('0.05vw', '0.47vw', '0.55vw', '0.55vw')},
        button: {family: ['Lato'], margin: {top: '2.09cqi', left: '0.61cqi'}, overflowWrap: 'anywhere'},
      },
    },
    cards: [...cardsIn('en'), ...cardsIn('cs'), ...cardsIn('nl')],
  }),
  strongest: row('strongest', {
    heading: {family: ['EB Garamond']},
    body: {family: ['EB Garamond'], lineHeight: '8.41cqi'},
    cards: cardsIn('el').map(([, {copy: text}, button]) => [{role: 'heading', copy: [{strong: text.split(' ').slice(0, 4).join(' ')}]}, {role: 'body', copy: [{strong: text}]}, button]),
  }),
  // Letters that are kerned with the space at a line's end, aligned to either side, and in a box with a border.
  kerned: row('kerned', {
    most: 6,
    style: narrow({heading: {family: ['Lato'], align: 'center', overflowWrap: 'anywhere'}, body: {family: ['Lato'], size: [[329, 21.4], [1565, 16.9]], wordSpacing: '0.03em'}, note: {family: ['Vollkorn'], letterSpacing: '-0.02em', align: 'end'}, button: {family: ['Lato'], align: 'start', padding: sides('0', '0', '0', '0'), border: {width: '1px', colour: '#567'}}}),
    cards: ['the ground stays soft after rain', 'ir yetişkinle gelir.', 'nikdy víc, někdy míň. Loďka'].map((text) => ['heading', 'body', 'note'].map((role) => textPart(role, text))).concat([[{role: 'body', copy: [{link: 'her river or over', to: '#'}, ' or ', {strong: 'over there'}, ' were our rivers']}, textPart('button', 'for her rivers or over')]]),
  }),
  // A hyphen at the start of a line that is cut, and a no-break hyphen in a face that has only the hyphen.
  hyphens: row('hyphens', {
    most: 6,
    language: 'hi',
    style: narrow({heading: {family: ['Noto Serif Devanagari'], overflowWrap: 'anywhere'}, body: {family: ['Lato'], place: 'start'}}),
    cards: ['एक-एक करके', 'एक-दो-तीन'].map((text) => [textPart('heading', text), textPart('body', 'well\u2011known words')]),
  }),
  // Text without a script of its own beside Arabic, balanced text with taller bold lines, hyphens that a face lacks, a
  // word joiner, and a fallback face that only one style has; in a centred row with shares of the card.
  pieces: row('pieces', {
    most: 4,
    language: 'ar',
    style: {
      row: {columnGap: '1.1rem', lastLine: 'center'},
      card: {padding: sides('0.5rem', '3.1%', '0.5rem', '2.3%')},
      text: {
        heading: {family: ['EB Garamond'], weight: 500, size: [[561, 18.759], [1688, 16.082]], wrap: 'balance'},
        body: {family: ['Amiri', 'Lato'], lineHeight: '9.09cqi', place: 'start', overflowWrap: 'anywhere'},
        note: {family: ['Noto Rashi Hebrew', 'Inter'], size: 14.65, letterSpacing: '0.25cqi'},
        button: {family: ['Karla', 'EB Garamond'], weight: 705, overflowWrap: 'anywhere'},
      },
    },
    cards: ['В группе не больше двенадцати — ', 'Дети до восьми лет приходят — '].map((text) => [
      {role: 'heading', copy: [text, {strong: 'так тише. Дети до'}, ' восьми лет приходят ', {strong: 'только со взрослыми.'}]},
      textPart('body', 'والريح لا تهدأ عند المنارة (Gull Point) أبدًا.'),
      textPart('note', 'הביאו מגפיים well\u2011known WORD\u2060JOIN\u2060ER הגשם.'),
      {role: 'button', copy: ['một ', {emphasis: 'một chiếc'}, ' bộ'], link: '#'},
    ]),
  }),
  // Cards that a picture beside the text makes wider than their column, in a row that wraps.
  wrapped: row('wrapped', {
    most: 6,
    style: {
      row: {columnGap: '0.4rem', lastLine: 'center'},
      card: {padding: sides('0.5rem', '1.6rem', '0.5rem', '1.6rem')},
      text: {heading: {family: ['Manrope'], size: 17}, body: {family: ['Manrope'], size: 14}},
    },
    cards: ['en', 'nl'].flatMap((language) => cardsIn(language).map((parts) => parts.slice(0, 2))),
    variants: [{class: 'corpus-wrapped', bands: [{set: {row: {columns: 4}}}]}],
  }),
  // Line heights and margins as shares of the card, which small roundings of its width change.
  shares: row('shares', {
    most: 4,
    style: {
      row: {padding: {left: '1.3%', right: '0.7%'}},
      card: {padding: sides('1.1%', '2.3%', '0.9%', '1.7%'), border: {width: '0.05rem', colour: '#567'}},
      text: {
        heading: {family: ['Inter'], size: [[360, 16], [1480, 21]], letterSpacing: '0.12vw', lineHeight: '8.77cqi', place: 'start'},
        body: {family: ['Inter'], size: [[531, 18.5], [1515, 15.9]], lineHeight: '7.06cqi', keepLines: 5, margin: {top: '1.1cqi', bottom: '0.9%'}},
      },
    },
    cards: [...cardsIn('en'), ...cardsIn('de'), ...cardsIn('cs')].map((parts) => parts.slice(0, 2)),
  }),
  // Aligned parts with shares of the card as margins of pictures, a gap whose half is rounded, and lines that are kept.
  margins: row('margins', {
    most: 4,
    style: {
      row: {level: 'subgrid', rowGap: '15.234375px', columnGap: '2%'},
      card: {padding: sides('0.5rem', '1.1rem', '0.7rem', '0.9rem'), border: {width: '1px', colour: '#567'}},
      picture: {margin: sides('3.1%', '0.5%', '2.04%', '3.4%')},
      text: {heading: {family: ['Lato'], size: 18, margin: sides('0.5em', '0', '0.9%', '0')}, body: {family: ['Lato'], size: 14.7, keepLines: 3, padding: {bottom: '1.1%'}}, note: {family: ['Lato'], size: 13}},
    },
    cards: ['en', 'nl', 'cs'].flatMap((language) => cardsIn(language).map(([heading, body, button], i) => [{picture: 'picture.png', size: [320, 213], alt: 'A drawing'}, i === 1 ? textPart('note', body.copy) : heading, body, ...(i === 2 ? [] : [button])])),
  }),
  // Breaks and soft hyphens inside ligatures and between fallback faces, and a maqaf at the start of a line.
  arrows: row('arrows', {
    most: 6,
    style: narrow({heading: {family: ['Manrope'], size: [[330, 15], [1900, 17]]}, body: {family: ['Noto Sans Hebrew', 'Lato'], hyphens: 'manual', letterSpacing: '0.09rem', overflowWrap: 'anywhere'}, note: {family: ['Lato', 'Noto Sans Hebrew'], slant: 'italic', overflowWrap: 'break-word'}}),
    cards: ['tuổi ab-12-cd left->right đi', 'co\u00ADop\u00ADer\u00ADate ב־6:30 under-12s'].map((text) => ['heading', 'body', 'note'].map((role) => textPart(role, text))),
  }),
  // `ij` is one glyph of Vollkorn in Dutch, and its `f` is kerned with a space.
  joined: row('joined', {
    language: 'nl',
    most: 6,
    style: narrow({heading: {family: ['Vollkorn'], slant: 'italic', letterSpacing: '0.07rem', place: 'end'}, body: {family: ['Vollkorn'], align: 'center', overflowWrap: 'break-word', letterSpacing: '-0.01em'}}),
    cards: ['ijsberen bij tij en wijn', 'hooguit twaalf of half elf'].map((text) => ['heading', 'body'].map((role) => textPart(role, text))),
  }),
  packed: row('packed', {
    fonts: [{family: 'Packed', file: 'packed.woff2', weight: 400}],
    heading: {family: ['Packed'], weight: 400},
    body: {family: ['Packed'], letterSpacing: '0.01em'},
    button: {family: ['Packed'], weight: 400},
    cards: cardsIn('en'),
  }),
};
