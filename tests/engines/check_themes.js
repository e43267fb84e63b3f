// Whether each theme's traps bite: a stylesheet as one writes it who has not met the theme (a grid on the row, flex
// columns for cards, plain rules for parts, nothing reset) is read with the trap and with the trap alone taken out. At
// least one box must be off by more than 1 px, or something about a part's look be otherwise; and each theme as a whole
// must move a box from where the same rules put it in the page without the theme's. Source: the browser engine.
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

/** Plain rules; with the grid on the class's own element, or on the cards' common parent. */
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

/** Opens `html`, undoes `trap` in its markup if told to, and reads it at each width, the pointer on the first card. */
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

/** The page with nothing of the theme's but its markup. */
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
    if (!(whole.largest > noticed)) faults.push(`${theme.name}: moves nothing`);
    for (const trap of theme.traps) {
      const own = naiveFor(theme, trap);
      const without = await read(tab, server, theme, withStylesheet(withoutRules(theme.html, trap), own), trap);
      const with_ = own === css ? dressed : await read(tab, server, theme, withStylesheet(theme.html, own));
      const {largest, looks} = apart(with_, without);
      rows.push([theme.name, trap, Number(largest.toFixed(1)), looks.join(', ').slice(0, 90)]);
      if (!(largest > noticed) && looks.length === 0) faults.push(`${theme.name}: ${trap} does not bite`);
    }
  }
} finally {
  await browser.close();
  await server.stop();
}
console.log(table(['theme', 'trap', 'largest box px', 'looks otherwise'], rows));
for (const fault of faults) console.log(fault);
process.exit(faults.length === 0 && rows.length > 0 ? 0 : 1);
