// Cut pictures compared with those of the package sharp: same part, same size, both resampled in linear light with a
// Lanczos filter. Both use libvips, but different releases of it, and arrange the work differently. PNG keeps every pixel.
import {execFile} from 'node:child_process';
import {mkdtemp, readdir, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';

import sharp from 'sharp';

import {options} from './lib/command_line.js';
import {partOf, rowOfPictures} from './lib/cut_rows.js';
import {table} from './lib/report.js';

const run = promisify(execFile);

/** Nobody sees a difference from this on. Common practice, no source. */
const leastPsnr = 50;
const ratios = ['3/2', '1/1', '3/4', '2/1'];
const focuses = [[0.5, 0.5], [0, 0.2], [1, 0.75], [0.3, 1]];
const ratioOf = (text) => text.split('/').reduce((a, b) => a / b);

/** Peak signal-to-noise ratio in dB of two arrays of bytes; infinite if they are equal. */
function psnr(a, b) {
  if (a.length !== b.length || a.length === 0) throw new Error(`${a.length} and ${b.length} bytes cannot be compared`);
  let sum = 0;
  for (let i = 0; i < a.length; ++i) sum += (a[i] - b[i]) ** 2;
  return 10 * Math.log10((255 * 255 * a.length) / sum);
}

const given = options({cli: undefined, samples: undefined});
const pictureFolder = path.join(given.samples, 'pictures');
const files = (await readdir(pictureFolder)).filter((name) => name.endsWith('.jpg')).sort();
const folder = await mkdtemp(path.join(tmpdir(), 'tenter-cuts-'));
const rows = [];
let failures = 0;

try {
  const pictures = [];
  for (const [i, name] of files.entries()) {
    const file = path.join(pictureFolder, name);
    const {width, height} = await sharp(file).metadata();
    pictures.push({file, size: [width, height], ratio: ratios[i % ratios.length], focus: focuses[i % focuses.length]});
  }
  const project = path.join(folder, 'cut.tenter.json');
  await writeFile(project, JSON.stringify(rowOfPictures(pictures, folder)));
  const into = path.join(folder, 'cut');
  const {stdout} = await run(given.cli, ['pictures', project, '--into', into, '--format', 'png', '--candidates', '3', '--json']);
  const listing = JSON.parse(stdout);
  for (const listed of listing.pictures) {
    const picture = pictures[listed.card];
    const part = partOf(picture.size, ratioOf(picture.ratio), picture.focus);
    for (const {name, size} of listed.formats[0].files) {
      const ours = await sharp(path.join(into, name)).removeAlpha().raw().toBuffer({resolveWithObject: true});
      const wanted = await sharp(picture.file)
        .pipelineColourspace('scrgb')
        .extract(part)
        .resize(size[0], size[1], {fit: 'fill', kernel: 'lanczos3'})
        .toColourspace('srgb')
        .removeAlpha()
        .raw()
        .toBuffer();
      const isSize = ours.info.width === size[0] && ours.info.height === size[1] && ours.info.channels === 3;
      const value = isSize ? psnr(ours.data, wanted) : 0;
      if (!(value >= leastPsnr)) ++failures;
      rows.push([path.basename(picture.file), picture.ratio, size.join(' × '), value === Infinity ? 99 : Math.round(value * 10) / 10]);
    }
  }
} finally {
  await rm(folder, {recursive: true, force: true});
}
console.log(table(['picture', 'ratio', 'size', 'PSNR, dB'], rows));
const seen = new Set(rows.map(([name]) => name)).size;
if (seen < 10) console.log(`only ${seen} pictures were compared; at least 10 are needed`);
process.exit(failures === 0 && seen >= 10 ? 0 : 1);
