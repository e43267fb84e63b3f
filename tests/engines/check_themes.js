// Checks that each trap of each theme has an effect. A simple stylesheet that knows nothing of the theme (a grid on the
// row, flex columns for cards, plain rules for parts, no resets) is laid out with the trap and with this trap alone
// removed. At least one box must move by more than 1 px, or the look of a part must change. Each theme as a whole must
// move a box from its place in the page without the theme. Source: the browser engine.
import {fileURLToPath} from 'node:url';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {apart, rowClass, themesIn, withoutRules, withStylesheet} from './lib/themes.js';
import {nameParts, readNaive, undoings} from './lib/trap_pages.js';

const widths = [380, 610, 1400];
const noticed = 1;

const given = options({browser: undefined, only: ''});

/** Simple rules, with the grid on the element of the class, or on the cards' common parent. */
function naive(row) {
  return `.${rowClass}${row} { display: grid; gap: 1.5rem }
    @media (min-width: 701px) { .${rowClass}${row} { grid-template-columns: repeat(3, 1fr) } }
    .${rowClass} [data-role="card"] { display: flex; flex-direction: column; padding: 1.25rem }
    .${rowClass} [data-role="picture"] { width: 100%; height: 12rem; object-fit: cover; margin-bottom: 1rem }
    .${rowClass} [data-role="heading"] { font-family: Vollkorn, serif; font-size: 1.5rem; margin-bottom: 0.5rem }
    .${rowClass} [data-role="body"] { font-family: Karla, sans-serif; font-size: 1rem; margin-bottom: 1rem }
    .${rowClass} [data-role="button"] { margin-top: auto; width: 100%; padding: 0.75rem 1.25rem; background: #12575a; font-size: 1rem }\n`;
}

function naiveFor(theme, trap) {
  return naive(theme.selectors.row && trap !== 'outer-class' ? ' [data-role="row"]' : '');
}

/** Opens `html`, removes `trap` from its markup if given, and reads it at each width with the pointer on the first card. */
async function read(tab, server, theme, html, trap) {
  await tab.goto(server.add(html).alone);
  await tab.evaluate(nameParts, theme.selectors);
  if (trap in undoings) await tab.evaluate(undoings[trap], theme.selectors);
  await tab.evaluate(() => Promise.all([...document.images].map((image) => image.decode())));
  const layouts = [];
  for (const width of widths) {
    await tab.setViewport({width, height: 4000});
    const card = await tab.$('[data-role="card"]');
    const {x, y, width: across, height} = await card.boundingBox();
    await tab.mouse.move(x + across / 2, y + height / 2);
    layouts.push(await tab.evaluate(readNaive));
  }
  return layouts;
}

/** The page with the theme's markup but without its styles. */
function bare(html) {
  return html.replace(/<style>[^]*?<\/style>/, '').replace(' dir="rtl"', '');
}

const server = await new PageServer().start();
const browser = await launch('chromium', given.browser);
const rows = [];
const faults = [];
try {
  const tab = await browser.newPage();
  for (const theme of await themesIn(fileURLToPath(new URL('themes', import.meta.url)))) {
    if (!theme.name.includes(given.only)) continue;
    const css = naiveFor(theme);
    const dressed = await read(tab, server, theme, withStylesheet(theme.html, css));
    if (dressed[0].boxes[`card ${theme.cards - 1}`] === undefined || `card ${theme.cards}` in dressed[0].boxes) faults.push(`${theme.name}: not ${theme.cards} cards`);
    const whole = apart(dressed, await read(tab, server, theme, withStylesheet(bare(theme.html), css)));
    rows.push([theme.name, '(all)', Number(whole.largest.toFixed(1)), '']);
    if (!(whole.largest > noticed)) faults.push(`${theme.name}: changes nothing`);
    for (const trap of theme.traps) {
      const own = naiveFor(theme, trap);
      const without = await read(tab, server, theme, withStylesheet(withoutRules(theme.html, trap), own), trap);
      const with_ = own === css ? dressed : await read(tab, server, theme, withStylesheet(theme.html, own));
      const {largest, looks} = apart(with_, without);
      rows.push([theme.name, trap, Number(largest.toFixed(1)), looks.join(', ').slice(0, 90)]);
      if (!(largest > noticed) && looks.length === 0) faults.push(`${theme.name}: ${trap} has no effect`);
    }
  }
} finally {
  await browser.close();
  await server.stop();
}
console.log(table(['theme', 'trap', 'largest box px', 'other look'], rows));
for (const fault of faults) console.log(fault);
process.exit(faults.length === 0 && rows.length > 0 ? 0 : 1);
