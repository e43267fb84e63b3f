// A page opened in a browser, ready to be measured at any width.
import {readLayout, readLines, settle} from './read_layout.js';

/** Widths to one call: the browser answers to its protocol between calls. */
const atOnce = 200;

export class MeasuredPage {
  #tab;
  #forget;

  /** Opens `html` framed, so that it scrolls if `scrolled`. Throws if a font or a picture fails, or if the page asks the network for anything. */
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
    if (outside.length > 0) throw new Error(`the page asked for ${outside.join(', ')}; it must hold everything itself`);
    measured.faces = state.faces;
    measured.pictures = state.pictures;
    return measured;
  }

  /** Layouts at `widths`, in CSS px; each `anew`, not from the one before (readLayout). */
  async read(widths, anew = false) {
    const layouts = [];
    for (let at = 0; at < widths.length; at += atOnce) {
      layouts.push(...JSON.parse(await this.#tab.evaluate(readLayout, widths.slice(at, at + atOnce), anew)));
    }
    return layouts;
  }

  lines(width, part) {
    return this.#tab.evaluate(readLines, width, part);
  }

  /** Runs a function that stands alone in the page. */
  run(work, ...values) {
    return this.#tab.evaluate(work, ...values);
  }

  close() {
    this.#forget();
    return this.#tab.close();
  }
}
