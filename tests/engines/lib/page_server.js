// Serves pages on 127.0.0.1: each page, and a frame around it that can be set to any width.
import {createServer} from 'node:http';

// No scrolling, or a page taller than its frame loses a scrollbar's width; where it is to lose it, every page is taller.
// Unseen, or the engine paints what nobody looks at.
const frames = {
  frame: {height: 600, scrolling: 'no'},
  scrolled: {height: 40, scrolling: 'auto'},
};
const framed = ({height, scrolling}, number) => `<!doctype html>
<html lang="en"><title>Frame</title><link rel="icon" href="data:,">
<style>body { margin: 0 } iframe { border: 0; display: block; visibility: hidden; height: ${height}px }</style>
<iframe title="Row" scrolling="${scrolling}" src="/page/${number}"></iframe>`;

export class PageServer {
  #pages = [];
  #server = createServer((request, response) => this.#answer(request, response));
  /** Every path asked for, in order. */
  asked = [];

  async start() {
    await new Promise((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    this.origin = `http://127.0.0.1:${this.#server.address().port}`;
    return this;
  }

  stop() {
    this.#server.closeAllConnections();
    return new Promise((resolve) => this.#server.close(resolve));
  }

  /** Keeps `html` to be served; returns its addresses, framed (so that it scrolls, if `scrolled`) and alone. */
  add(html, scrolled = false) {
    const number = this.#pages.push(html) - 1;
    return {framed: `${this.origin}/${scrolled ? 'scrolled' : 'frame'}/${number}`, alone: `${this.origin}/page/${number}`};
  }

  /** Forgets a page of `add`, which may hold whole fonts. */
  remove(framedAddress) {
    this.#pages[Number(framedAddress.split('/').at(-1))] = undefined;
  }

  #answer(request, response) {
    this.asked.push(request.url);
    const [, kind, number] = request.url.split('/');
    const html = this.#pages[Number(number)];
    if (html === undefined || !(kind === 'page' || kind in frames)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-store'});
    response.end(kind === 'page' ? html : framed(frames[kind], number));
  }
}
