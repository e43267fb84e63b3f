// Prints the README's accuracy table: how far Tenter's layouts are from each engine's, and the engines' from each other.
// check_layout.js lays out every variant of every project in both engines, at every whole width and at fractional ones.
// Takes its options, except `--engine` and `--browser`; `--chromium` and `--firefox` are the paths of the browsers.
import {spawn} from 'node:child_process';
import {mkdtemp, readFile, rm} from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {options} from './lib/command_line.js';
import {sideBySide} from './lib/side_by_side.js';

const given = options({cli: undefined, samples: undefined, chromium: '/usr/bin/chromium', firefox: '/usr/bin/firefox-esr', widths: 'every', fractional: '200', only: ''});
const folder = await mkdtemp(path.join(os.tmpdir(), 'tenter-table-'));

/** The results of check_layout.js for one engine, and true if it passed. */
async function laidOut(engine) {
  const keep = path.join(folder, `${engine}.json`);
  const {cli, samples, widths, fractional, only} = given;
  const taken = Object.entries({cli, samples, widths, fractional, only, engine, browser: given[engine], keep}).flatMap(([name, value]) => [`--${name}`, value]);
  const child = spawn(process.execPath, [fileURLToPath(new URL('check_layout.js', import.meta.url)), ...taken], {stdio: ['ignore', 'pipe', 'inherit']});
  let said = '';
  child.stdout.on('data', (data) => (said += data));
  const code = await new Promise((resolve) => child.on('close', resolve));
  if (code !== 0) process.stderr.write(said);
  if (code > 1) throw new Error(`${engine} laid out nothing`);
  return {rows: JSON.parse(await readFile(keep, 'utf8')), sound: code === 0};
}

try {
  const [chromium, firefox] = await Promise.all([laidOut('chromium'), laidOut('firefox')]);
  console.log(sideBySide(chromium.rows, firefox.rows));
  process.exitCode = chromium.sound && firefox.sound ? 0 : 1;
} finally {
  await rm(folder, {recursive: true});
}
