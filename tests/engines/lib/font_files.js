// The font files that the samples may use: those from the packages of resources/packages.txt.
import {execFileSync} from 'node:child_process';
import {readFileSync, readdirSync, realpathSync} from 'node:fs';
import path from 'node:path';

import * as fontkit from 'fontkit';

const generic = new Set(['serif', 'sans-serif', 'monospace', 'system-ui']);

/** The families that the samples name. */
function familiesIn(samples) {
  const named = new Set();
  const look = (value, key) => {
    if (key === 'family') for (const family of value) named.add(family);
    else if (value && typeof value === 'object') for (const [inner, each] of Object.entries(value)) look(each, inner);
  };
  for (const name of readdirSync(samples).filter((each) => each.endsWith('.tenter.json'))) {
    look(JSON.parse(readFileSync(path.join(samples, name), 'utf8')), '');
  }
  return [...named].filter((family) => !generic.has(family));
}

/** The font packages that the program needs at run time. */
function packagesIn(list) {
  const lines = readFileSync(list, 'utf8').split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
  return lines.filter(([name, use]) => name.startsWith('fonts-') && use === 'run').map(([name]) => name);
}

/**
 * The font files of every family that a sample names, opened, as `{family, file, font}` in order of file. Throws if a
 * family has no file.
 */
export function fontFiles(samples, packages) {
  const families = familiesIn(samples);
  const listed = packagesIn(packages).flatMap((name) => execFileSync('dpkg-query', ['-L', name], {encoding: 'utf8'}).split('\n'));
  const files = new Set(listed.filter((file) => /\.(ttf|otf)$/.test(file)).map((file) => realpathSync(file)));
  const found = [];
  for (const file of [...files].sort()) {
    const font = fontkit.openSync(file);
    const own = font.name.records.preferredFamily?.en ?? font.familyName;
    // A family with optical sizes has the size at the end of its name.
    const family = families.find((each) => [own, own.replace(/ \d+$/, ''), font.familyName].includes(each));
    if (family) found.push({family, file, font});
  }
  for (const family of families) if (!found.some((each) => each.family === family)) throw new Error(`${family}: a sample names it, but no package has it`);
  return found;
}
