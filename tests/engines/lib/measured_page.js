// A page in a browser that can be measured at any width.
import {readLayout, readLines, settle} from './read_layout.js';

/** Number of widths for one call; the browser handles its protocol between calls. */
const atOnce = 200;

export class MeasuredPage {
  #tab;
  #forget;

  /** Opens `html` in a frame that scrolls if `scrolled`. Throws if a font or picture fails, or if the page uses the network. */
  static async open(browser, server, html, scrolled = false) {
    const measured = new MeasuredPage();
    const tab = (measured.#tab = await browser.newPage());
    const {framed, alone} = server.add(html, scrolled);
    measured.#forget = () => server.remove(framed);
    const requests = [];
    tab.on('request', (request) => request.url().startsWith('data:') || requests.push(request.url()));
    await tab.goto(framed, {waitUntil: 'load', timeout: 600_000});
    const state = await tab.evaluate(settle);
    if (state.failed.length > 0) throw new Error(`the page failed to load ${state.failed.join(', ')}`);
    const outside = requests.filter((url) => url !== framed && url !== alone);
    if (outside.length > 0) throw new Error(`the page asked for ${outside.join(', ')}; it must contain everything itself`);
    measured.faces = state.faces;
    measured.pictures = state.pictures;
    return measured;
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

  /** Runs a function in the page; it must use nothing outside itself. */
  run(work, ...values) {
    return this.#tab.evaluate(work, ...values);
  }

  close() {
    this.#forget();
    return this.#tab.close();
  }
}
