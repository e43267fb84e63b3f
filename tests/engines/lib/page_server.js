// Serves pages on 127.0.0.1: each page, and a frame around it that can have any width.
import {createHash} from 'node:crypto';

import {LocalServer} from './local_server.js';

// The frame does not scroll; otherwise a page taller than it would lose the width of a scrollbar. For tests with a
// scrollbar every page is made taller. The frame is invisible, so that the engine does not paint it.
const frames = {
  frame: {height: 600, scrolling: 'no'},
  scrolled: {height: 40, scrolling: 'auto'},
};
const framed = ({height, scrolling}, number) => `<!doctype html>
<html lang="en"><title>Frame</title><link rel="icon" href="data:,">
<style>body { margin: 0 } iframe { border: 0; display: block; visibility: hidden; height: ${height}px }</style>
<iframe title="Row" scrolling="${scrolling}" src="/page/${number}"></iframe>`;

export class PageServer extends LocalServer {
  #pages = [];
  #fontFiles;
  #fonts = new Map();
  /** The requested paths, in order. */
  asked = [];

  /**
   * @param fontFiles true if the fonts that a page contains are served as files, which browsers keep. Pages of many rows
   *   have the same fonts, and opening a page then takes half the time.
   */
  constructor(fontFiles = false) {
    super();
    this.#fontFiles = fontFiles;
  }

  /** Serves `html`; returns its addresses, in a frame (that scrolls if `scrolled`) and alone. */
  add(html, scrolled = false) {
    const number = this.#pages.push(this.#fontFiles ? this.#withFontFiles(html) : html) - 1;
    return {framed: `${this.origin}/${scrolled ? 'scrolled' : 'frame'}/${number}`, alone: `${this.origin}/page/${number}`};
  }

  /** Drops a page that `add` added, because it may contain whole fonts. */
  remove(framedAddress) {
    this.#pages[Number(framedAddress.split('/').at(-1))] = undefined;
  }

  /** True for the address of a font that some page contained. */
  isFont(address) {
    return address.startsWith(`${this.origin}/font/`);
  }

  #withFontFiles(html) {
    return html.replaceAll(/url\("data:(font\/[\w-]+);base64,([^"]*)"\)/g, (_, type, base64) => {
      const name = createHash('sha1').update(base64).digest('hex');
      if (!this.#fonts.has(name)) this.#fonts.set(name, {type, bytes: Buffer.from(base64, 'base64')});
      return `url("/font/${name}")`;
    });
  }

  answer(request, response) {
    this.asked.push(request.url);
    const [, kind, number] = request.url.split('/');
    if (kind === 'font' && this.#fonts.has(number)) {
      const {type, bytes} = this.#fonts.get(number);
      response.writeHead(200, {'content-type': type, 'content-length': bytes.length, 'cache-control': 'max-age=86400, immutable'});
      response.end(bytes);
      return;
    }
    const html = this.#pages[Number(number)];
    if (html === undefined || !(kind === 'page' || kind in frames)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store'});
    response.end(kind === 'page' ? html : framed(frames[kind], number));
  }
}
