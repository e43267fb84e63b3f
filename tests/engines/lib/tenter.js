// Tenter's command line, for the checks.
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

  /** Layouts at `widths` (CSS px), one object for each width, as `geometry` prints them, and their `fonts`. `ratio`: device px in a CSS px. */
  async geometry(project, variant, widths, engine, ratio = 1) {
    const text = await this.#out('geometry', project, '--variant', variant, '--widths', widths.join(','), '--engine', engine, '--ratio', String(ratio));
    const {layouts, fonts} = JSON.parse(text);
    return Object.assign(layouts, {fonts});
  }

  /** The spec sheet as HTML. */
  sheet(project) {
    return this.#out('sheet', project);
  }

  /** The design tokens, parsed. */
  async tokens(project) {
    return JSON.parse(await this.#out('tokens', project));
  }

  page(project, variant) {
    return this.#out('page', project, '--variant', variant);
  }

  /** The row at `width` (CSS px) as a PNG picture, or as SVG if `ratio` is null. */
  async picture(project, variant, width, ratio) {
    const form = ratio === null ? ['--svg'] : ['--ratio', String(ratio)];
    const words = ['picture', project, '--variant', variant, '--width', String(width), ...form];
    const {stdout} = await run(this.program, words, {maxBuffer: 1 << 30, encoding: 'buffer'});
    return stdout;
  }

  /** The widths at which the line count of a part changes, under one break profile. */
  async wraps(project, variant, engine) {
    return JSON.parse(await this.#out('wraps', project, '--variant', variant, '--engine', engine, '--json'));
  }

  /** The findings of `check` under one break profile, whatever its exit code. */
  async check(project, variant, engine) {
    const words = ['check', project, '--variant', variant, '--engine', engine, '--json'];
    const {stdout} = await run(this.program, words, {maxBuffer: 1 << 30}).catch((error) => (error.code === 1 ? error : Promise.reject(error)));
    return JSON.parse(stdout);
  }

  /** The project `base` with the row of a saved page imported, as text. */
  adopt(base, page) {
    return this.#out('adopt', base, page);
  }

  /** A new project with the row of a saved page, as text, and the report of the import. */
  async newFromPage(page) {
    const {stdout, stderr} = await run(this.program, ['new', '--page', page], {maxBuffer: 1 << 30});
    return {project: stdout, report: stderr};
  }

  /** The stylesheet of one variant for the markup of its page. */
  stylesheetForGiven(project, variant) {
    return this.#out('stylesheet', project, '--variant', variant, '--markup', 'given');
  }

  /** The stylesheet of one variant, or of all if `variant` is null. */
  stylesheet(project, variant, unit) {
    const which = variant === null ? ['--all-variants'] : ['--variant', variant];
    return this.#out('stylesheet', project, ...which, '--unit', unit);
  }
}
