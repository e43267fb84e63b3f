// Prints how long `tenter-cli pictures` needs to cut pictures, compared with the package sharp for the same files at the
// same sizes and quality, in one run on one machine. It only reports; it has no pass mark.
//   build/draw/draw-pictures BIG 5
//   node bench_pictures.js --cli ../../build/bin/tenter-cli --pictures BIG
import {spawn} from 'node:child_process';
import {mkdtemp, mkdir, readdir, readFile, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import path from 'node:path';

import sharp from 'sharp';

import {options} from './lib/command_line.js';
import {partOf, rowOfPictures} from './lib/cut_rows.js';
import {table} from './lib/report.js';

const quality = 80;
const formats = ['jpeg', 'webp'];
const given = options({cli: undefined, pictures: undefined, count: '12', candidates: '4', rounds: '3'});
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Runs a program; returns its output, its seconds and the most memory that it held, in MB. */
async function measured(program, words) {
  const start = performance.now();
  const child = spawn(program, words, {stdio: ['ignore', 'pipe', 'inherit']});
  let out = '';
  let memory = 0;
  child.stdout.on('data', (data) => (out += data));
  const look = setInterval(async () => {
    const status = await readFile(`/proc/${child.pid}/status`, 'utf8').catch(() => '');
    memory = Math.max(memory, Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024);
  }, 20);
  const code = await new Promise((resolve) => child.on('close', resolve));
  clearInterval(look);
  if (code !== 0) throw new Error(`${program} ${words.join(' ')}: exit code ${code}`);
  return {out, seconds: (performance.now() - start) / 1000, memory};
}

/** The program of a child process: cuts what the plan in a file says, all files of one picture at a time. */
const sharpProgram = `
import {readFile} from 'node:fs/promises';
import sharp from ${JSON.stringify(import.meta.resolve('sharp'))};
const {plan, isLinear} = JSON.parse(await readFile(process.argv[2], 'utf8'));
for (const {file, part, outputs} of plan) {
  await Promise.all(outputs.map(({to, size, format, quality}) => {
    let image = sharp(file);
    if (isLinear) image = image.pipelineColourspace('scrgb');
    return image.extract(part).resize(size[0], size[1], {fit: 'fill', kernel: 'lanczos3'})[format]({quality}).toFile(to);
  }));
}`;

const folder = await mkdtemp(path.join(tmpdir(), 'tenter-bench-'));
try {
  const files = (await readdir(given.pictures)).filter((name) => name.endsWith('.jpg')).sort().slice(0, Number(given.count));
  const pictures = [];
  for (const name of files) {
    const file = path.resolve(given.pictures, name);
    const {width, height} = await sharp(file).metadata();
    pictures.push({file, size: [width, height], ratio: '3/2'});
  }
  const project = path.join(folder, 'bench.tenter.json');
  await writeFile(project, JSON.stringify(rowOfPictures(pictures, folder)));
  const program = path.join(folder, 'sharp.mjs');
  await writeFile(program, sharpProgram);
  const ways = {tenter: [], 'sharp, linear light': [], 'sharp, its defaults': []};
  for (let round = 0; round < Number(given.rounds); ++round) {
    const into = path.join(folder, `cut${round}`);
    const words = ['pictures', project, '--into', into, '--format', formats.join(','), '--quality', String(quality), '--candidates', given.candidates, '--json'];
    const own = await measured(given.cli, words);
    ways.tenter.push(own);
    const listing = JSON.parse(own.out);
    const plan = listing.pictures.map((listed) => ({
      file: pictures[listed.card].file,
      part: partOf(pictures[listed.card].size, 3 / 2),
      outputs: listed.formats.flatMap(({format, files: cut}) => cut.map(({name, size}) => ({to: path.join(folder, `sharp${round}`, name), size, format, quality}))),
    }));
    await mkdir(path.join(folder, `sharp${round}`));
    for (const [way, isLinear] of [['sharp, linear light', true], ['sharp, its defaults', false]]) {
      const task = path.join(folder, 'task.json');
      await writeFile(task, JSON.stringify({plan, isLinear}));
      ways[way].push(await measured(process.execPath, [program, task]));
    }
    await rm(into, {recursive: true});
  }
  const seconds = Object.fromEntries(Object.entries(ways).map(([way, runs]) => [way, median(runs.map((one) => one.seconds))]));
  console.log(`${files.length} pictures, ${given.candidates} candidates each, ${formats.join(' and ')}, quality ${quality}; median of ${given.rounds} rounds`);
  console.log(
    table(
      ['way', 'seconds', 'times Tenter', 'memory, MB'],
      Object.entries(ways).map(([way, runs]) => [
        way,
        Math.round(seconds[way] * 100) / 100,
        Math.round((seconds[way] / seconds.tenter) * 100) / 100,
        Math.round(Math.max(...runs.map((one) => one.memory))),
      ]),
    ),
  );
} finally {
  await rm(folder, {recursive: true, force: true});
}
