// The README's table: how far Tenter's layouts are from each engine's, and the engines' from each other. Lays out every
// variant of every project by both engines at every whole width and at fractional ones, by check_layout.js, whose options
// it takes but for `--engine` and `--browser`; `--chromium` and `--firefox` say where they are.
import {spawn} from 'node:child_process';
import {mkdtemp, readFile, rm} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {options} from './lib/command_line.js';
import {sideBySide} from './lib/side_by_side.js';

const given = options({cli: undefined, samples: undefined, chromium: '/usr/bin/chromium', firefox: '/usr/bin/firefox-esr', widths: 'every', fractional: '200', only: ''});
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-table-'));

/** What check_layout.js keeps of one engine, and whether all was as it should be. */
async function laidOut(engine) {
  const keep = path.join(folder, `${engine}.json`);
  const {cli, samples, widths, fractional, only} = given;
  const taken = Object.entries({cli, samples, widths, fractional, only, engine, browser: given[engine], keep}).flatMap(([name, value]) => [`--${name}`, value]);
  const child = spawn(process.execPath, [fileURLToPath(new URL('check_layout.js', import.meta.url)), ...taken], {stdio: ['ignore', 'pipe', 'inherit']});
  let said = '';
  child.stdout.on('data', (data) => (said += data));
  const code = await new Promise((resolve) => child.on('close', resolve));
  if (code !== 0) process.stderr.write(said);
  if (code > 1) throw new Error(`${engine} laid nothing out`);
  return {rows: JSON.parse(await readFile(keep, 'utf8')), sound: code === 0};
}

try {
  const [chromium, firefox] = await Promise.all([laidOut('chromium'), laidOut('firefox')]);
  console.log(sideBySide(chromium.rows, firefox.rows));
  process.exitCode = chromium.sound && firefox.sound ? 0 : 1;
} finally {
  await rm(folder, {recursive: true});
}
