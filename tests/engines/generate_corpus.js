// Writes the project files of the corpus, and the WOFF2 font and the picture that some of them use, into a folder.
import {execFile} from 'node:child_process';
import {copyFile, mkdir, rm, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {promisify} from 'node:util';

import {rows} from './corpus/rows.js';
import {options} from './lib/command_line.js';
import {greyPng} from './random/png.js';

const run = promisify(execFile);
const {into} = options({into: undefined});
await rm(into, {recursive: true, force: true});
await mkdir(into, {recursive: true});
for (const [name, project] of Object.entries(rows)) {
  await writeFile(path.join(into, `${name}.tenter.json`), `${JSON.stringify(project, null, 2)}\n`);
}
await writeFile(path.join(into, 'picture.png'), greyPng(320, 213));
const {stdout: source} = await run('fc-match', ['-f', '%{file}', 'Cabin:weight=80:slant=0']);
await copyFile(source, path.join(into, 'packed.otf'));
await run('woff2_compress', [path.join(into, 'packed.otf')]);
console.log(`${Object.keys(rows).length} rows in ${into}`);
