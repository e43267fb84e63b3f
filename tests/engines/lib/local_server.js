// A server on 127.0.0.1.
import {createServer} from 'node:http';

export class LocalServer {
  // Subclasses answer requests.
  #server = createServer((request, response) => this.answer(request, response));

  async start() {
    await new Promise((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    this.origin = `http://127.0.0.1:${this.#server.address().port}`;
    return this;
  }

  stop() {
    this.#server.closeAllConnections();
    return new Promise((resolve) => this.#server.close(resolve));
  }
}
