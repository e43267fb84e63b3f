// Copy, alternative text, names and links that contain markup, style or script, on the exported page. Each part must show
// exactly its copy; the page must have the same elements and attributes as with harmless copy, run nothing and request
// nothing but itself. Names that would appear in selectors, and unpaired surrogates, must be refused when the project is
// read. Sources: the HTML and CSS parsers of the engines, WHATWG URL for addresses, WHATWG Infra for NUL.
import assert from 'node:assert/strict';
import {execFile} from 'node:child_process';
import {copyFile, mkdtemp, rm, writeFile} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import {launch} from './lib/browsers.js';
import {options} from './lib/command_line.js';
import {hostileTexts, pageWith, projectOf, refusedProjects} from './lib/hostile.js';
import {PageServer} from './lib/page_server.js';
import {Tenter} from './lib/tenter.js';

const schemes = ['http:', 'https:', 'mailto:', 'tel:'];

const given = options({cli: undefined, samples: undefined, engine: undefined, browser: undefined});
const tenter = new Tenter(given.cli);
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-hostile-'));
const server = await new PageServer().start();
const browser = await launch(given.engine, given.browser);

/** The contents of the page, read in the browser. */
function readPage() {
  const frame = document.querySelector('iframe');
  frame.style.width = '1200px';
  const inner = frame.contentDocument;
  const parts = [...inner.querySelectorAll('[data-tenter-part]')].map((element) => ({
    name: element.dataset.tenterPart,
    text: element.textContent,
    alt: element.getAttribute('alt'),
    links: [...element.querySelectorAll('a'), ...(element.localName === 'a' ? [element] : [])].map((link) => ({
      said: link.getAttribute('href'),
      protocol: link.protocol,
      label: link.getAttribute('aria-label'),
    })),
  }));
  const skeleton = [...inner.querySelectorAll('*')].map(
    (element) => `${element.localName} ${[...element.attributes].map((each) => each.name).sort().join(' ')}`,
  );
  const row = inner.querySelector('[data-tenter-row]');
  return {parts, skeleton, title: inner.title, scripts: inner.scripts.length, sheets: inner.styleSheets.length,
          columns: inner.defaultView.getComputedStyle(row).gridTemplateColumns.split(' ').length, hits: window.hits};
}

/** The result of a stylesheet pasted into a page: its elements, and its rules as selectors and properties. */
function pasteSheet(css) {
  const page = new DOMParser().parseFromString(`<!doctype html><style>${css}</style><p>`, 'text/html');
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(page.querySelector('style').textContent);
  const rules = (list) => [...list].flatMap((rule) => [`${rule.selectorText ?? rule.conditionText}: ${[...(rule.style ?? [])].join(' ')}`, ...rules(rule.cssRules ?? [])]);
  return {elements: [...page.querySelectorAll('*')].map((element) => element.localName), rules: rules(sheet.cssRules)};
}

/** Exports a project and opens it in a frame; returns the contents of the page and its requests. */
async function open(name, project) {
  const file = path.join(folder, `${name}.tenter.json`);
  await writeFile(file, JSON.stringify(project));
  const {framed} = server.add(await tenter.page(file, 'walks-pair'));
  const tab = await browser.newPage();
  let dialogs = 0;
  tab.on('dialog', (dialog) => (++dialogs, dialog.dismiss()));
  await tab.evaluateOnNewDocument(() => (window.hits = []));
  const before = server.asked.length;
  const requests = [];
  tab.on('request', (request) => request.url().startsWith('data:') || requests.push(new URL(request.url()).pathname));
  await tab.goto(framed, {waitUntil: 'load', timeout: 600_000});
  await new Promise((resolve) => setTimeout(resolve, 300));
  const held = await tab.evaluate(readPage);
  const pasted = await tab.evaluate(pasteSheet, await tenter.stylesheet(file, null, 'rem'));
  await tab.close();
  return {...held, pasted, dialogs, asked: server.asked.slice(before), requests};
}

/** The names of the elements of an exported file with those of their attributes, and what it ran and requested. */
async function openAlone(html) {
  const {alone} = server.add(html);
  const tab = await browser.newPage();
  let dialogs = 0;
  tab.on('dialog', (dialog) => (++dialogs, dialog.dismiss()));
  await tab.evaluateOnNewDocument(() => (window.hits = []));
  const requests = [];
  tab.on('request', (request) => request.url().startsWith('data:') || requests.push(request.url()));
  await tab.goto(alone, {waitUntil: 'load', timeout: 600_000});
  await new Promise((resolve) => setTimeout(resolve, 300));
  const held = await tab.evaluate(() => ({
    names: [...document.querySelectorAll('*')].flatMap((element) => [
      element.localName,
      ...[...element.attributes].map((each) => `${element.localName}[${each.name}]`),
    ]),
    protocols: [...document.querySelectorAll('a[href]')].map((link) => link.protocol),
    hits: window.hits,
  }));
  await tab.close();
  return {...held, names: new Set(held.names), dialogs, requests: requests.filter((address) => address !== alone && !address.endsWith('/favicon.ico'))};
}

/** What drawings have for some texts only: letters that are slanted, because their face has no italic. */
const drawn = ['use[transform]'];

/** An exported file runs nothing, requests nothing, and has no element or attribute that `allowed` lacks. */
async function checkExport(what, html, allowed) {
  const held = await openAlone(html);
  assert.equal(held.dialogs, 0, `${what}: no dialog`);
  assert.deepEqual(held.hits, [], `${what}: nothing ran`);
  assert.deepEqual(held.requests, [], `${what}: nothing was requested`);
  assert.ok(!held.names.has('script'), `${what}: no script`);
  for (const name of held.names) assert.doesNotMatch(name, /\[on/, `${what}: no handler of events`);
  for (const protocol of held.protocols) assert.ok([...schemes, ':'].includes(protocol), `${what}: ${protocol} is a scheme to follow`);
  if (allowed) assert.deepEqual([...held.names].filter((name) => !allowed.has(name) && !drawn.includes(name)), [], `${what}: the same kinds of elements and attributes as with harmless copy`);
  return held.names;
}

/** Spec sheet, picture and tokens of the hostile project, and the page of a hostile row that was imported. */
async function checkOtherExports() {
  const file = (name) => path.join(folder, `${name}.tenter.json`);
  const svg = async (name) => `<!doctype html><title>Picture</title><body>${await tenter.picture(file(name), 'walks-pair', 1200, null)}`;
  const sheet = await checkExport('sheet', await tenter.sheet(file('harmless')));
  await checkExport('sheet', await tenter.sheet(file('hostile')), sheet);
  const picture = await checkExport('picture', await svg('harmless'));
  await checkExport('picture', await svg('hostile'), picture);
  assert.ok(await tenter.tokens(file('hostile')), 'tokens are JSON');

  await writeFile(path.join(folder, 'page.html'), pageWith(hostileTexts));
  const {project} = await tenter.newFromPage(path.join(folder, 'page.html'));
  await writeFile(file('imported'), project);
  const variant = JSON.parse(project).variants[0].class;
  const names = await checkExport('page of an imported row', await tenter.page(file('imported'), variant));
  assert.ok(names.has('article') && names.has('h3'), 'the row was imported');
}

/** Text as HTML can represent it: NUL becomes U+FFFD. */
const held = (text) => text.replaceAll('\0', '\ufffd');

/** The addresses to which a link with `text` as its address may lead: that address, or none. */
function address(text) {
  if (text === '') return ['#'];
  if (!URL.canParse(held(text), `${server.origin}/page/0`)) return ['#', held(text)];
  return schemes.includes(new URL(held(text), `${server.origin}/page/0`).protocol) ? [held(text)] : ['#'];
}

function checkLinks(links, text, count) {
  assert.equal(links.length, count, 'as many links as were said');
  for (const link of links) {
    assert.ok(address(text).includes(link.said), `${JSON.stringify(text)} leads to ${JSON.stringify(link.said)}`);
    assert.ok([...schemes, ':'].includes(link.protocol), `${link.protocol} is a scheme to follow`);
    if (link.label !== null) assert.equal(link.label, held(text));
  }
}

try {
  await copyFile(path.join(given.samples, 'pictures/creek.jpg'), path.join(folder, 'creek.jpg'));
  const families = hostileTexts.filter((text) => !/[\u0000-\u001f\u007f]/.test(text));
  const harmless = await open('harmless', projectOf('creek.jpg', hostileTexts.map(() => 'Low tide'), families.map(() => 'No such family')));
  const page = await open('hostile', projectOf('creek.jpg', hostileTexts, families));

  for (const each of [harmless, page]) {
    assert.equal(each.scripts, 0, 'no script element');
    assert.equal(each.sheets, 1, 'one style element');
    assert.equal(each.columns, 3, 'the stylesheet holds');
    assert.equal(each.dialogs, 0, 'no dialog');
    assert.deepEqual(each.hits, [], 'nothing ran');
    assert.deepEqual(each.asked.map((one) => one.split('/')[1]), ['frame', 'page'], 'nothing was asked of the server but the page');
    assert.deepEqual(each.requests.map((one) => one.split('/')[1]), ['frame', 'page'], 'nothing was asked for at all but the page');
  }
  assert.deepEqual(page.skeleton, harmless.skeleton, 'the same elements and attributes as with harmless copy');
  assert.deepEqual(page.pasted, harmless.pasted, 'the stylesheet, pasted, has the same rules as with harmless names');
  assert.ok(page.pasted.rules.length > 10, 'it has rules');
  assert.equal(page.parts.length, hostileTexts.length * 5);
  hostileTexts.forEach((text, c) => {
    const [picture, heading, link, body, button] = page.parts.slice(c * 5, c * 5 + 5);
    assert.equal(picture.alt, held(text));
    assert.equal(heading.text, held(text));
    assert.equal(link.text, held(text));
    assert.equal(body.text, held(text).repeat(4));
    assert.equal(button.text, held(text));
    checkLinks(heading.links, text, 0);
    for (const part of [link, body, button]) checkLinks(part.links, text, 1);
  });
  const whitespace = /[\t\n\f\r ]+/g;  // HTML § 3.2.9: a document's title is stripped and collapsed
  assert.equal(page.title, `${held(hostileTexts[0])}, ${held(hostileTexts[1])}`.replace(whitespace, ' ').trim());

  await checkOtherExports();

  const refused = refusedProjects(projectOf('creek.jpg', ['Low tide'], []));
  for (const {what, json} of refused) {
    const file = path.join(folder, 'refused.tenter.json');
    await writeFile(file, json);
    const {code, stderr} = await promisify(execFile)(given.cli, ['page', file]).then(() => ({code: 0, stderr: ''}), (error) => error);
    assert.notEqual(code, 0, `${what} is refused`);
    assert.match(stderr, /^[^\n]*refused\.tenter\.json(:\d+:\d+)?: ([^\n]+\. [^\n]+\.|[^\n]+ must be [^\n]+; it is [^\n]+\.)\n$/, `${what} is reported on one line with place and fix`);
    assert.doesNotMatch(stderr, /[\u0000-\u0009\u000b-\u001f\u007f\u202e]/, `${what} is shown, not interpreted`);
  }
  console.log(`${given.engine}: ${page.parts.length} parts say what their copy says, ${page.skeleton.length} elements as with harmless copy; ${refused.length} projects refused.`);
} finally {
  await browser.close();
  await server.stop();
  await rm(folder, {recursive: true});
}
