// A page in a browser that can be measured at any width.
import {readLayout, readLines, settle} from './read_layout.js';

/** Number of widths for one call; the browser handles its protocol between calls. */
const atOnce = 200;

export class MeasuredPage {
  #tab;
  #server;
  #requests = [];
  #shown = null;

  /** Opens `html` in a frame that scrolls if `scrolled`. Throws as `show` does. */
  static async open(browser, server, html, scrolled = false) {
    const measured = await MeasuredPage.blank(browser, server);
    await measured.show(html, scrolled);
    return measured;
  }

  /** A page that shows nothing yet. */
  static async blank(browser, server) {
    const measured = new MeasuredPage();
    measured.#tab = await browser.newPage();
    measured.#server = server;
    measured.#tab.on('request', (request) => request.url().startsWith('data:') || measured.#requests.push(request.url()));
    return measured;
  }

  /** Shows `html` instead of what it showed. Throws if a font or picture fails, or if the page uses the network. */
  async show(html, scrolled = false) {
    this.#forget();
    const {framed, alone} = this.#server.add(html, scrolled);
    this.#shown = framed;
    this.#requests = [];
    await this.#tab.goto(framed, {waitUntil: 'load', timeout: 600_000});
    const state = await this.#tab.evaluate(settle);
    if (state.failed.length > 0) throw new Error(`the page failed to load ${state.failed.join(', ')}`);
    const outside = this.#requests.filter((url) => url !== framed && url !== alone && !this.#server.isFont(url));
    if (outside.length > 0) throw new Error(`the page asked for ${outside.join(', ')}; it must contain everything itself`);
    this.faces = state.faces;
    this.pictures = state.pictures;
  }

  #forget() {
    if (this.#shown !== null) this.#server.remove(this.#shown);
    this.#shown = null;
  }

  /** Layouts at `widths` (CSS px). If `fresh`, each is independent of the one before (readLayout). */
  async read(widths, fresh = false) {
    const layouts = [];
    for (let at = 0; at < widths.length; at += atOnce) {
      layouts.push(...JSON.parse(await this.#tab.evaluate(readLayout, widths.slice(at, at + atOnce), fresh)));
    }
    return layouts;
  }

  lines(width, part) {
    return this.#tab.evaluate(readLines, width, part);
  }

  /** The PostScript names of the fonts that Chromium draws each text part with, by part. */
  async fonts() {
    const session = await this.#tab.createCDPSession();
    const inner = "document.querySelector('iframe').contentDocument";
    const names = await this.#tab.evaluate(() => [...document.querySelector('iframe').contentDocument.querySelectorAll('[data-tenter-part]:not(img)')].map((one) => one.dataset.tenterPart));
    const fonts = new Map();
    try {
      await session.send('DOM.enable');
      await session.send('CSS.enable');
      await session.send('DOM.getDocument', {depth: -1, pierce: true});
      for (const name of names) {
        const {result} = await session.send('Runtime.evaluate', {expression: `${inner}.querySelector('[data-tenter-part="${name}"]')`});
        const {nodeId} = await session.send('DOM.requestNode', {objectId: result.objectId});
        const used = await session.send('CSS.getPlatformFontsForNode', {nodeId});
        fonts.set(name, used.fonts.map((font) => font.postScriptName));
      }
    } finally {
      await session.detach();
    }
    return fonts;
  }

  /** Runs a function in the page; it must use nothing outside itself. */
  run(work, ...values) {
    return this.#tab.evaluate(work, ...values);
  }

  close() {
    this.#forget();
    return this.#tab.close();
  }
}
