// The command line of Tenter, which the engines judge.
import {execFile} from 'node:child_process';
import {promisify} from 'node:util';

const run = promisify(execFile);

export class Tenter {
  constructor(program) {
    this.program = program;
  }

  async #out(...words) {
    const {stdout} = await run(this.program, words, {maxBuffer: 1 << 30});
    return stdout;
  }

  /** Layouts at `widths` (CSS px), as `interface` says: one object for each width. `ratio`: device px to a CSS px. */
  async geometry(project, variant, widths, engine, ratio = 1) {
    const text = await this.#out('geometry', project, '--variant', variant, '--widths', widths.join(','), '--engine', engine, '--ratio', String(ratio));
    return JSON.parse(text).layouts;
  }

  page(project, variant) {
    return this.#out('page', project, '--variant', variant);
  }

  /** Widths at which a part's number of lines changes under one break profile. */
  async wraps(project, variant, engine) {
    return JSON.parse(await this.#out('wraps', project, '--variant', variant, '--engine', engine, '--json'));
  }

  /** What `check` finds under one break profile; findings that fail it are still told. */
  async check(project, variant, engine) {
    const words = ['check', project, '--variant', variant, '--engine', engine, '--json'];
    const {stdout} = await run(this.program, words, {maxBuffer: 1 << 30}).catch((error) => (error.code === 1 ? error : Promise.reject(error)));
    return JSON.parse(stdout);
  }

  /** The project `base` with the row of a saved page taken in, as text. */
  adopt(base, page) {
    return this.#out('adopt', base, page);
  }

  /** The stylesheet of one variant for the markup that its page prints. */
  stylesheetForGiven(project, variant) {
    return this.#out('stylesheet', project, '--variant', variant, '--markup', 'given');
  }

  /** The stylesheet of one variant, or of all if `variant` is null. */
  stylesheet(project, variant, unit) {
    const which = variant === null ? ['--all-variants'] : ['--variant', variant];
    return this.#out('stylesheet', project, ...which, '--unit', unit);
  }
}
