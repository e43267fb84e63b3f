// The candidate that a browser loads for each picture of the samples, at many widths and pixel ratios, with the markup of
// `tenter-cli markup --pictures`: it is at least as wide as the slot in device pixels if there is such a candidate, and no
// wider than needed. So `sizes` is exact, too.
import {execFile} from 'node:child_process';
import {mkdtemp, readFile, rm} from 'node:fs/promises';
import {createServer} from 'node:http';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {judgeCandidates} from './lib/read_pictures.js';
import {table} from './lib/report.js';
import {variantsIn} from './lib/samples.js';

const run = promisify(execFile);
const types = {'.jpg': 'image/jpeg', '.png': 'image/png', '.webp': 'image/webp', '.avif': 'image/avif'};

/** A classic scrollbar would make slots narrower than the viewport width says. */
const noBar = 'html { scrollbar-width: none }';

/** Widths at both sides of every breakpoint and in between. */
function widthsOf({from, to, breakpoints}) {
  const edges = breakpoints.flatMap((edge) => [edge, edge + 1]);
  const all = [from, ...edges, to, Math.round((from + to) / 2), Math.round(from + (to - from) / 5), Math.round(to - (to - from) / 5)];
  return [...new Set(all.filter((width) => width >= from && width <= to))].sort((a, b) => a - b);
}

/** Serves files of `folder` below any first path segment, so that no load finds the files of an earlier one. */
async function serve(folder, pages) {
  const asked = [];
  const server = createServer(async (request, response) => {
    asked.push(request.url);
    const [, load, name] = request.url.split('/');
    if (load === 'page' && pages.has(name)) {
      response.writeHead(200, {'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store'}).end(pages.get(name));
      return;
    }
    const bytes = await readFile(path.join(folder, `cut${load.split('-')[2]}`, path.basename(name ?? ''))).catch(() => null);
    if (bytes === null) response.writeHead(404).end();
    else response.writeHead(200, {'content-type': types[path.extname(name)] ?? 'text/plain', 'cache-control': 'no-store'}).end(bytes);
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {origin: `http://127.0.0.1:${server.address().port}`, asked, stop: () => (server.closeAllConnections(), server.close())};
}

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined, only: ''});
const folder = await mkdtemp(path.join(tmpdir(), 'tenter-srcset-'));
const pages = new Map();
const server = await serve(folder, pages);
const rows = [];
let failures = 0;
const fail = (text) => {
  ++failures;
  console.log(text);
};

try {
  const prepared = [];
  for (const [i, one] of (await variantsIn(given.samples)).filter(({variant}) => variant.includes(given.only)).entries()) {
    const words = [one.file, '--variant', one.variant];
    const formats = i % 2 === 0 ? 'jpeg' : 'jpeg,webp';
    await run(given.cli, ['pictures', ...words, '--into', path.join(folder, `cut${i}`), '--format', formats, '--json'], {maxBuffer: 1 << 26});
    const markup = async (address) => (await run(given.cli, ['markup', ...words, '--pictures', path.join(folder, `cut${i}`), '--address', address])).stdout;
    const whole = (await run(given.cli, ['page', ...words], {maxBuffer: 1 << 28})).stdout;
    prepared.push({...one, markup, index: i, whole});
  }
  for (const ratio of [1, 2, 3]) {
    const browser = await launch(given.engine, given.browser, ratio);
    try {
      const tab = await browser.newPage();
      for (const one of prepared) {
        let loads = 0;
        let pictures = 0;
        for (const width of widthsOf(one)) {
          const load = `load-${ratio}-${one.index}-${width}`;
          const row = await one.markup(`/${load}`);
          // The page of the sample, with its container and fonts, but with the row that has candidates.
          const html = one.whole.replace(/<section[^]*<\/section>/, () => row).replace('<style>', `<style>${noBar}`);
          pages.set(load, html);
          await tab.setViewport({width, height: 900, deviceScaleFactor: ratio});
          await tab.goto(`${server.origin}/page/${load}`, {timeout: 600_000});
          const {seen, wrong} = await judgeCandidates(tab, ratio);
          pages.delete(load);
          ++loads;
          const where = `${one.sample}, ${one.variant}, ${width} px, ratio ${ratio}`;
          if (seen.length === 0) fail(`${where}: no pictures`);
          pictures += seen.length;
          for (const what of wrong) fail(`${where}: ${what}`);
        }
        rows.push([one.sample, one.variant, ratio, loads, pictures]);
      }
    } finally {
      await browser.close();
    }
  }
} finally {
  server.stop();
  await rm(folder, {recursive: true, force: true});
}
console.log(table(['sample', 'variant', 'ratio', 'widths', 'pictures'], rows));
process.exit(failures === 0 && rows.length > 0 ? 0 : 1);
