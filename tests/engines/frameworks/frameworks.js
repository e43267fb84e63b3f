// Pages in the markup of public CSS frameworks. The text is invented; class names are those that each framework documents.
// A framework's stylesheet is read from its package when a test runs. Every framework has three rows: cards that are
// children of the row, cards in columns, and cards in list items.
import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

const packages = fileURLToPath(new URL('../node_modules', import.meta.url));

/** The class that a person enters in the CMS for the row; it is a variant's class. */
export const rowClass = 'walks-3';

function drawing(width, height, ground, hill) {
  const svg = `<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 ${width} ${height}'><path fill='${ground}' d='M0 0h${width}v${height}H0z'/><path fill='${hill}' d='M0 ${height}L${width / 2} ${height / 4}L${width} ${height}z'/></svg>`;
  return `src="data:image/svg+xml,${encodeURIComponent(svg)}" width="${width}" height="${height}"`;
}

export const cards = [
  {
    picture: drawing(600, 400, '#dfe9ee', '#5d7f8c'),
    alt: 'A weir below a bridge',
    title: 'The upper sluice',
    text: ['Opened at first light, when the mill has no need of the water.', 'Bring boots; the path is <em>never</em> dry.'],
    link: 'Walk to the sluice',
  },
  {
    picture: drawing(400, 400, '#f1e6d3', '#a06a3b'),
    alt: 'Bricks drying in a yard',
    title: 'Brickworks and its tall chimney',
    text: ['Forty thousand bricks were burnt here in a summer, and every barn of the valley still shows their colour after rain.'],
    link: 'See the kiln',
  },
  {
    picture: drawing(500, 400, '#e3ead6', '#66803f'),
    alt: 'A hedge in spring',
    title: 'Hedge school',
    text: ['One afternoon, one billhook each, and a hedge that holds <strong>sheep</strong> by the evening.', 'Tea afterwards.'],
    link: 'Join a day of laying hedges',
  },
  {
    picture: drawing(400, 500, '#e8e2ef', '#6c5a86'),
    alt: 'The ferry at dusk',
    title: 'Last ferry',
    text: ['It crosses once more after the bell, whether or not anybody has rung for it.'],
    link: 'Times',
  },
];

const img = (card, classes = '') => `<img ${classes && `class="${classes}" `}${card.picture} alt="${card.alt}">`;
export const paragraphs = (card, classes = '') => card.text.map((text) => `<p${classes && ` class="${classes}"`}>${text}</p>`).join('\n');
const link = (card, classes = '') => `<a ${classes && `class="${classes}" `}href="#${card.title.toLowerCase().replaceAll(' ', '-')}">${card.link}</a>`;
const each = (card) => cards.map(card).join('\n');
const some = (card) => cards.slice(1, 3).map(card).join('\n');
/** The row of the page and a second row of the same kind, which must stay as it is. */
const twice = (row, card) => [row(rowClass, each(card)), row('', some(card))];
const named = (...classes) => classes.filter(Boolean).join(' ');

/** A markup: `section` puts a row into the page, `row` puts cards into a row, `card` writes a card. */
function markup(section, row, card, facts = {}) {
  const [main, other] = twice(row, card);
  return {body: `${section('works', 'What to see', main)}\n${section('more', 'Nearby', other)}`, cards: cards.length, ...facts};
}

const bootstrapSection = (container) => (id, title, row) => `<section id="${id}" class="py-4"><div class="${container}"><h2 class="mb-3">${title}</h2>\n${row}\n</div></section>`;
const bootstrapCard = (card) => `<div class="card h-100 shadow-sm">${img(card, 'card-img-top')}<div class="card-body d-flex flex-column"><h3 class="card-title h5">${card.title}</h3>\n${paragraphs(card, 'card-text')}\n${link(card, 'btn btn-primary mt-auto align-self-start')}</div></div>`;

const bulmaSection = (id, title, row) => `<section id="${id}" class="section"><div class="container is-max-desktop"><h2 class="title is-3">${title}</h2>\n${row}\n</div></section>`;
const bulmaCard = (card) => `<div class="card"><div class="card-image"><figure class="image is-4by3">${img(card)}</figure></div><div class="card-content"><h3 class="title is-5">${card.title}</h3><div class="content">${paragraphs(card)}</div>${link(card, 'button is-link')}</div></div>`;

const foundationCard = (card) => `<div class="card">${img(card)}<div class="card-section"><h3>${card.title}</h3>${paragraphs(card)}${link(card, 'button expanded')}</div></div>`;

const picoSection = (id, title, row) => `<section id="${id}"><h2>${title}</h2>\n${row}\n</section>`;
const picoCard = (card) => `<article><header>${img(card)}</header><h3>${card.title}</h3>${paragraphs(card)}<footer>${link(card)}</footer></article>`;

const tachyonsSection = (id, title, row) => `<section id="${id}" class="pa3 pa4-m pa5-l"><div class="mw8 center ph3-ns"><h2 class="f3 lh-title">${title}</h2>\n${row}\n</div></section>`;
const tachyonsCard = (tag, classes) => (card) => `<${tag} class="${classes}">${img(card, 'db w-100 br2')}<h3 class="f4 mt3 mb2 lh-title">${card.title}</h3>${paragraphs(card, 'f6 lh-copy measure mt2')}${link(card, 'f6 link dim br1 ph3 pv2 mb2 dib white bg-dark-blue')}</${tag}>`;

const milligramSection = (id, title, row) => `<section id="${id}"><div class="container"><h2>${title}</h2>\n${row}\n</div></section>`;
const milligramCard = (card) => `${img(card)}<h3>${card.title}</h3>${paragraphs(card)}${link(card, 'button button-outline')}`;

const pureSection = (id, title, row) => `<section id="${id}" style="margin: 0 auto; max-width: 1100px; padding: 0 1em"><h2>${title}</h2>\n${row}\n</section>`;
const pureCard = (card) => `${img(card, 'pure-img')}<h3>${card.title}</h3>${paragraphs(card)}${link(card, 'pure-button pure-button-primary')}`;

const uikitSection = (id, title, row) => `<div id="${id}" class="uk-section uk-section-muted"><div class="uk-container"><h2 class="uk-heading-small">${title}</h2>\n${row}\n</div></div>`;
const uikitCard = (card) => `<div class="uk-card uk-card-default"><div class="uk-card-media-top">${img(card)}</div><div class="uk-card-body"><h3 class="uk-card-title">${card.title}</h3>${paragraphs(card)}${link(card, 'uk-button uk-button-primary')}</div></div>`;

const spectreSection = (id, title, row) => `<section id="${id}"><div class="container grid-lg"><h2>${title}</h2>\n${row}\n</div></section>`;
const spectreCard = (card) => `<div class="card"><div class="card-image">${img(card, 'img-responsive')}</div><div class="card-header"><h3 class="card-title h5">${card.title}</h3></div><div class="card-body">${paragraphs(card)}</div><div class="card-footer">${link(card, 'btn btn-primary')}</div></div>`;

const materializeSection = (id, title, row) => `<div id="${id}" class="section"><div class="container"><h2 class="header">${title}</h2>\n${row}\n</div></div>`;
const materializeCard = (card) => `<div class="card hoverable"><div class="card-image">${img(card)}</div><div class="card-content"><span class="card-title">${card.title}</span>${paragraphs(card)}</div><div class="card-action">${link(card)}</div></div>`;

const missingSection = (id, title, row) => `<section id="${id}"><h2>${title}</h2>\n${row}\n</section>`;
const missingCard = (tag, classes) => (card) => `<${tag} class="${classes}">${img(card)}<h3>${card.title}</h3>${paragraphs(card)}${link(card, '<button>')}</${tag}>`;

const webtuiSection = (id, title, row) => `<section id="${id}"><h2>${title}</h2>\n${row}\n</section>`;
const webtuiCard = (card) => `<div box-="square">${img(card)}<h3>${card.title}</h3>${paragraphs(card)}${link(card)}</div>`;

const waterSection = picoSection;
const waterCard = (tag) => (card) => `<${tag}>${img(card)}<h3>${card.title}</h3>${paragraphs(card)}${link(card)}</${tag}>`;

const semanticSection = (id, title, row) => `<div id="${id}" class="ui vertical segment"><div class="ui container"><h2 class="ui header">${title}</h2>\n${row}\n</div></div>`;
const semanticCard = (card) => `<div class="image">${img(card)}</div><div class="content"><h3 class="header">${card.title}</h3><div class="description">${paragraphs(card)}</div></div><div class="extra content">${link(card, 'ui button')}</div>`;

const list = (classes, item, itemClasses = '') => [
  (own, inner) => `<ul class="${named(classes, own)}">\n${inner}\n</ul>`,
  (card) => `<li${itemClasses && ` class="${itemClasses}"`}>${item(card)}</li>`,
];
const div = (classes) => (own, inner) => `<div class="${named(classes, own)}">\n${inner}\n</div>`;
const column = (classes, card) => (one) => `<div${classes && ` class="${classes}"`}>${card(one)}</div>`;

/** Every framework by name: its stylesheet, what is particular about it, and its markups. */
const frameworks = {
  bootstrap: {
    css: 'bootstrap/dist/css/bootstrap.css',
    nature: 'flex columns, gutters and gaps by custom properties, container by breakpoint, utilities with !important',
    markups: {
      direct: markup(bootstrapSection('container'), div('card-group'), bootstrapCard),
      columns: markup(bootstrapSection('container-lg'), div('row row-cols-1 row-cols-md-2 row-cols-xl-4 g-4'), column('col', bootstrapCard)),
      list: markup(bootstrapSection('container-fluid'), ...list('row list-unstyled gx-5', bootstrapCard, 'col-sm-6 col-lg-3 mb-3')),
    },
  },
  bulma: {
    css: 'bulma/css/bulma.css',
    nature: 'custom properties everywhere, flex columns with negative margins, grid, sibling margins; the largest of the tests',
    markups: {
      direct: markup(bulmaSection, div('grid is-col-min-12'), bulmaCard),
      columns: markup(bulmaSection, div('columns is-multiline is-variable is-5'), column('column is-half-tablet is-one-quarter-widescreen', bulmaCard)),
      list: markup((id, title, row) => `<section id="${id}" class="section is-medium"><div class="container is-fluid"><div class="content"><h2>${title}</h2>\n${row}\n</div></div></section>`, ...list('columns is-mobile', bulmaCard, 'column is-narrow')),
    },
  },
  foundationFloat: {
    css: 'foundation-sites/dist/css/foundation-float.css',
    nature: 'floated columns with percentages and clearing boxes',
    markups: {
      direct: markup((id, title, row) => `<section id="${id}"><div class="row"><div class="columns"><h2>${title}</h2>\n${row}\n</div></div></section>`, div('clearfix'), foundationCard),
      columns: markup((id, title, row) => `<section id="${id}"><div class="row column"><h2>${title}</h2></div>\n${row}\n</section>`, div('row small-up-1 medium-up-2 large-up-4'), column('column column-block', foundationCard)),
      list: markup((id, title, row) => `<section id="${id}"><div class="row"><div class="small-12 large-10 large-centered columns"><h2>${title}</h2>\n${row}\n</div></div></section>`, ...list('row medium-unstack no-bullet', foundationCard, 'columns')),
    },
  },
  foundation: {
    css: 'foundation-sites/dist/css/foundation.css',
    nature: 'flex cells of calculated widths with margins or paddings for gutters, negative margins by breakpoint',
    markups: {
      direct: markup((id, title, row) => `<section id="${id}" class="grid-container"><h2>${title}</h2>\n${row}\n</section>`, div('grid-x grid-margin-x small-up-2 large-up-4'), (card) => `<div class="cell card">${img(card)}<div class="card-divider"><h3>${card.title}</h3></div><div class="card-section">${paragraphs(card)}${link(card, 'button')}</div></div>`),
      columns: markup((id, title, row) => `<section id="${id}" class="grid-container"><div class="grid-x grid-padding-x"><div class="cell large-10"><h2>${title}</h2>\n${row}\n</div></div></section>`, div('grid-x grid-padding-x'), column('cell medium-6 large-3', foundationCard)),
      list: markup((id, title, row) => `<section id="${id}" class="grid-container fluid"><h2>${title}</h2>\n${row}\n</section>`, ...list('grid-x grid-padding-x no-bullet', foundationCard, 'cell medium-auto')),
    },
  },
  pico: {
    css: '@picocss/pico/css/pico.css',
    nature: 'nearly classless; root size in percent by breakpoint through a custom property; :where() and :not()',
    markups: {
      direct: markup(picoSection, div('grid'), picoCard, {main: 'container'}),
      columns: markup(picoSection, div('grid'), column('', picoCard), {main: 'container-fluid'}),
      list: markup((id, title, row) => `<section id="${id}" class="container"><h2>${title}</h2>\n${row}\n</section>`, ...list('grid', picoCard)),
    },
  },
  picoClassless: {
    css: '@picocss/pico/css/pico.classless.css',
    nature: 'classless; container on main, header and footer by element',
    markups: {
      direct: markup(picoSection, div(''), picoCard),
      columns: markup(picoSection, div(''), column('', picoCard)),
      list: markup(picoSection, ...list('', picoCard)),
    },
  },
  tachyons: {
    css: 'tachyons/css/tachyons.css',
    nature: 'utility classes with breakpoints in em and ranges of two widths',
    markups: {
      direct: markup(tachyonsSection, div('flex-ns flex-wrap nl3 nr3 justify-between'), tachyonsCard('article', 'w-100 w-50-m w-25-l ph3 pb3 bg-near-white')),
      columns: markup(tachyonsSection, div('cf ph2-ns'), column('fl w-100 w-50-m w-25-l pa2', tachyonsCard('article', 'bg-white ba b--black-10 pa3'))),
      list: markup(tachyonsSection, ...list('list pl0 ml0 center mw7 flex flex-column flex-row-l', tachyonsCard('div', 'pa3 tc'), 'flex-auto mw5-l mb3')),
    },
  },
  milligram: {
    css: 'milligram/dist/milligram.css',
    nature: 'root size 62.5 %; flex columns with widths by class; margins by element',
    markups: {
      direct: markup(milligramSection, div('row row-wrap'), (card) => `<div class="column column-25">${milligramCard(card)}</div>`),
      columns: markup(milligramSection, div('row'), column('column', (card) => `<div>${milligramCard(card)}</div>`)),
      list: markup(milligramSection, ...list('', (card) => `<blockquote>${milligramCard(card)}</blockquote>`)),
    },
  },
  pure: {
    css: ['purecss/build/pure.css', 'purecss/build/grids-responsive.css'],
    nature: 'normalised elements, flex units with widths in percent, style attributes around the row',
    markups: {
      direct: markup(pureSection, div('pure-g'), (card) => `<div class="pure-u-1 pure-u-md-1-2 pure-u-lg-1-4">${pureCard(card)}</div>`),
      columns: markup(pureSection, div('pure-g'), column('pure-u-1 pure-u-sm-1-2 pure-u-xl-1-4', (card) => `<div style="padding: 0 1em 1em 0">${pureCard(card)}</div>`)),
      list: markup(pureSection, ...list('pure-g', pureCard, 'pure-u-1-2')),
    },
  },
  uikit: {
    css: 'uikit/dist/css/uikit.css',
    nature: 'negative margins by breakpoint, child selectors for unnamed columns, widths such as calc(100% / 3.001), * + * margins',
    markups: {
      direct: markup(uikitSection, div('uk-grid uk-child-width-1-1 uk-child-width-1-2@s uk-child-width-1-4@l'), (card) => `<div>${uikitCard(card)}</div>`),
      columns: markup((id, title, row) => `<div id="${id}" class="uk-section"><div class="uk-container uk-container-small"><h2>${title}</h2>\n${row}\n</div></div>`, div('uk-grid uk-grid-match uk-grid-small uk-child-width-expand@m'), column('', (card) => `<div class="uk-card uk-card-body uk-card-primary uk-light">${img(card)}<h3 class="uk-card-title">${card.title}</h3>${paragraphs(card)}${link(card, 'uk-button uk-button-text')}</div>`)),
      list: markup((id, title, row) => `<div id="${id}" class="uk-section uk-section-xsmall"><div class="uk-container uk-container-large"><h2>${title}</h2>\n${row}\n</div></div>`, ...list('uk-list uk-list-divider uk-child-width-1-3@m uk-grid uk-grid-large', uikitCard)),
    },
  },
  spectre: {
    css: 'spectre.css/dist/spectre.css',
    nature: 'root size 20 px; flex columns by max-width queries; utilities with !important',
    markups: {
      direct: markup(spectreSection, div('columns'), (card) => `<div class="column col-3 col-md-6 col-xs-12 card">${img(card, 'img-responsive')}<h3>${card.title}</h3>${paragraphs(card)}${link(card, 'btn')}</div>`),
      columns: markup(spectreSection, div('columns'), column('column col-3 col-lg-6 col-sm-12', spectreCard)),
      list: markup(spectreSection, ...list('columns col-gapless', spectreCard, 'column col-auto')),
    },
  },
  materialize: {
    css: 'materialize-css/dist/css/materialize.css',
    nature: 'floats with exact percentages, container of 90, 85 and 70 %, root size by breakpoint',
    markups: {
      direct: markup(materializeSection, div('row'), (card) => `<div class="col s12 m6 l3 card-panel">${img(card, 'responsive-img')}<h5>${card.title}</h5>${paragraphs(card)}${link(card, 'btn waves-effect')}</div>`),
      columns: markup(materializeSection, div('row'), column('col s12 m6 xl3', materializeCard)),
      list: markup((id, title, row) => `<div id="${id}" class="container"><div class="row"><div class="col s12 l10 offset-l1"><h4>${title}</h4>\n${row}\n</div></div></div>`, ...list('collection with-header', materializeCard, 'collection-item')),
    },
  },
  missing: {
    css: 'missing.css/dist/missing.css',
    nature: 'nested rules, @supports, rlh units, min() of custom properties, logical properties, grid',
    markups: {
      direct: markup(missingSection, div('grid-variable-cols'), missingCard('div', 'box')),
      columns: markup(missingSection, div('f-row flow-gap'), column('', missingCard('article', 'box info'))),
      list: markup((id, title, row) => `<section id="${id}" class="box ok"><h2>${title}</h2>\n${row}\n</section>`, ...list('f-switch', missingCard('div', 'bg'))),
    },
  },
  webtui: {
    css: '@webtui/css/dist/full.css',
    nature: 'everything in cascade layers; attributes instead of classes; ch and lh units; text that breaks anywhere',
    markups: {
      direct: markup(webtuiSection, div(''), webtuiCard),
      columns: markup(webtuiSection, div(''), column('', webtuiCard)),
      list: markup(webtuiSection, ...list('', webtuiCard)),
    },
  },
  water: {
    css: 'water.css/out/water.css',
    nature: 'classless; one column of limited width on the body',
    markups: {
      direct: markup(waterSection, div(''), waterCard('article')),
      columns: markup(waterSection, div(''), column('', waterCard('div'))),
      list: markup(waterSection, ...list('', waterCard('div'))),
    },
  },
  semantic: {
    css: 'fomantic-ui-css/semantic.css',
    nature: 'chains of classes with !important, flex cards with negative margins in em, container widths by breakpoint',
    markups: {
      direct: markup(semanticSection, div('ui four stackable cards'), (card) => `<div class="ui card">${semanticCard(card)}</div>`),
      columns: markup(semanticSection, div('ui four column doubling stackable grid'), column('column', (card) => `<div class="ui fluid card">${semanticCard(card)}</div>`)),
      list: markup((id, title, row) => `<div id="${id}" class="ui basic segment"><div class="ui text container"><h2>${title}</h2>\n${row}\n</div></div>`, ...list('ui divided items', semanticCard, 'item')),
    },
  },
};

/** A page with `body` in its main element, and `head`. */
export function documentOf({body, main = ''}, head) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Along the Wend</title>
${head}
</head>
<body>
<header><p>Along the Wend</p></header>
<main${main && ` class="${main}"`}>
${body}
</main>
<footer class="page-end"><p>Open from April to the first frost.</p></footer>
</body>
</html>
`;
}

/** The stylesheet without the fonts and sheets that it would request. */
function withoutFiles(css) {
  return css.replace(/@font-face\s*\{[^}]*\}/g, '').replace(/@import\s+url\([^)]*\)[^;]*;/g, '').replace('@charset "UTF-8";', '');
}

/**
 * Every page: its `name` (framework-markup), `linked` HTML and the `sheets` beside it as [name, text], `html` that contains
 * its stylesheets, and facts as in themes.json.
 */
export async function frameworkPages() {
  const pages = [];
  for (const [framework, {css, markups}] of Object.entries(frameworks)) {
    const files = [css].flat();
    const sheets = [];
    for (const file of files) sheets.push([path.basename(file), withoutFiles(await readFile(path.join(packages, file), 'utf8'))]);
    for (const [kind, markup] of Object.entries(markups)) {
      const links = sheets.map(([name]) => `<link rel="stylesheet" href="${name}">`).join('\n');
      const styles = sheets.map(([, text]) => `<style>${text}</style>`).join('\n');
      pages.push({framework, kind, name: `${framework}-${kind}`, linked: documentOf(markup, links), html: documentOf(markup, styles), sheets, cards: markup.cards, neighbour: '#more', footer: '.page-end'});
    }
  }
  return pages;
}
