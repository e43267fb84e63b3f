// Serves a folder on 127.0.0.1, and a frame around its page that can have any width (`/?width=860`).
import {readFile} from 'node:fs/promises';
import path from 'node:path';

import {LocalServer} from './local_server.js';

const types = {'.html': 'text/html; charset=utf-8', '.css': 'text/css; charset=utf-8', '.svg': 'image/svg+xml', '.ttf': 'font/ttf', '.otf': 'font/otf', '.woff2': 'font/woff2'};

/** Each folder that is served has paths of its own, so that browsers do not take its fonts from their caches. */
const framed = (number, width) => `<!doctype html>
<html lang="en"><title>Frame</title><link rel="icon" href="data:,">
<style>body { margin: 0 } iframe { border: 0; display: block; visibility: hidden; height: 600px; width: ${width}px }</style>
<iframe title="Row" scrolling="no" src="/${number}/index.html"></iframe>`;

export class FolderServer extends LocalServer {
  #folder = null;
  #number = 0;
  #replaced = new Map();
  /** Whether fonts are there; if not, the page stays as it is before they have loaded. */
  fontsCome = true;
  /** The paths asked for below the folder, in order. */
  asked = [];

  /** Serves `folder` from now on; `replaced` are texts of files to serve instead, by name. */
  serve(folder, replaced = {}) {
    this.#folder = folder;
    ++this.#number;
    this.#replaced = new Map(Object.entries(replaced));
    this.asked = [];
  }

  async answer(request, response) {
    const url = new URL(request.url, this.origin);
    const name = decodeURIComponent(url.pathname);
    if (name === '/') {
      const width = Number(url.searchParams.get('width') ?? 1000);
      response.writeHead(200, {'content-type': types['.html'], 'cache-control': 'no-store'}).end(framed(this.#number, width));
      return;
    }
    const file = name.replace(/^\/\d+\//, '');
    this.asked.push(file);
    if (!this.fontsCome && file.startsWith('fonts/')) {
      response.writeHead(404).end();
      return;
    }
    try {
      const bytes = this.#replaced.get(file) ?? (await readFile(path.join(this.#folder, file)));
      response.writeHead(200, {'content-type': types[path.extname(file)] ?? 'application/octet-stream', 'cache-control': 'no-store'}).end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  }
}
