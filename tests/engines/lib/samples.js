// Project files to be judged, with what the checks need to know of them.
import {readdir, readFile} from 'node:fs/promises';
import path from 'node:path';

/** @returns every variant of every project in `folder`: file, sample, variant, breakpoints and range in CSS px. */
export async function variantsIn(folder) {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.tenter.json')).sort();
  if (files.length === 0) throw new Error(`${folder}: no project there`);
  const all = [];
  for (const name of files) {
    const file = path.join(folder, name);
    const project = JSON.parse(await readFile(file, 'utf8'));
    for (const variant of project.variants) {
      all.push({
        file,
        sample: name.replace('.tenter.json', ''),
        variant: variant.class,
        breakpoints: variant.bands.flatMap((band) => (band.upTo === undefined ? [] : [band.upTo])),
        from: project.range?.from ?? 320,
        to: project.range?.to ?? 1920,
      });
    }
  }
  return all;
}
