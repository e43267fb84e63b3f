// Compares the pictures of `tenter-cli picture` with Chromium's own screenshots of the page, in the middle of each band:
// PNG at two pixel ratios and SVG.
import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {compareFiles} from './lib/compare_pictures.js';
import {PageServer} from './lib/page_server.js';
import {table} from './lib/report.js';
import {middlesOf, variantsIn} from './lib/samples.js';
import {Tenter} from './lib/tenter.js';

// Measured with Chromium 156 on the samples; what remains is the antialiasing of text and the resampling of photographs: up
// to 9 in a place. At ratio 2 edges of boxes can lie one device px apart, and one sample has 18.5 where a line breaks inside
// a ligature, which Chromium shapes again and a picture does not.
const bounds = {structure: 0.93, worst: {1: 12, 2: 20}, colour: 4};

/** The next width, from `width` down in steps, at which no line is a tight fit, which Chromium may break differently. */
async function calmUpTo(one, width, ratio) {
  const widths = Array.from({length: 120}, (_, i) => width - 4 * i).filter((one) => one >= 320);
  const layouts = await tenter.geometry(one.file, one.variant, widths, 'blink', ratio);
  const isCalm = (layout) => layout.cards.every((card) => card.parts.every((part) => part.slack === undefined || part.slack > 0.0025));
  const found = layouts.find(isCalm);
  if (found === undefined) throw new Error(`${one.sample}, ${one.variant}: tight fits at every width below ${width} px`);
  return found.width;
}

const given = options({cli: undefined, samples: undefined, browser: undefined, only: ''});
const tenter = new Tenter(given.cli);
const server = await new PageServer().start();
const rows = [];
let failures = 0;

for (const ratio of [1, 2]) {
  const browser = await launch('chromium', given.browser, ratio);
  try {
    const judge = await browser.newPage();
    for (const one of (await variantsIn(given.samples)).filter(({variant}) => variant.includes(given.only))) {
      const tab = await browser.newPage();
      await tab.goto(server.add(await tenter.page(one.file, one.variant)).alone, {timeout: 600_000});
      for (const middle of middlesOf(one)) {
        const width = await calmUpTo(one, middle, ratio);
        // Not `fullPage`, which moves pages that are written from right to left.
        await tab.setViewport({width, height: 100, deviceScaleFactor: ratio});
        const height = await tab.evaluate(() => document.documentElement.scrollHeight);
        await tab.setViewport({width, height, deviceScaleFactor: ratio});
        await tab.evaluate(() => Promise.all([document.fonts.ready, ...[...document.images].map((image) => image.decode())]));
        const shot = {type: 'image/png', bytes: await tab.screenshot()};
        const forms = [['png', {type: 'image/png', bytes: await tenter.picture(one.file, one.variant, width, ratio)}]];
        if (ratio === 1) forms.push(['svg', {type: 'image/svg+xml', bytes: await tenter.picture(one.file, one.variant, width, null)}]);
        for (const [form, picture] of forms) {
          const {structure, worst, colour, sizes} = await compareFiles(judge, shot, picture);
          // Chromium's page is whole CSS px tall.
          const sameSize = sizes[0][0] === sizes[1][0] && Math.abs(sizes[0][1] - sizes[1][1]) <= ratio;
          const fails = structure < bounds.structure || worst > bounds.worst[ratio] || colour > bounds.colour || !sameSize;
          failures += fails;
          rows.push([one.sample, one.variant, width, ratio, form, structure.toFixed(3), worst.toFixed(1), colour.toFixed(2), sizes.map((size) => size.join('×')).join(' '), fails ? 'FAILS' : '']);
        }
      }
      await tab.close();
    }
  } finally {
    await browser.close();
  }
}
await server.stop();
console.log(table(['sample', 'variant', 'width', 'ratio', 'form', 'structure', 'worst place', 'colour', 'sizes', ''], rows));
process.exit(failures === 0 && rows.length > 0 ? 0 : 1);
