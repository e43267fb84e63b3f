// Project files for the checks, with the facts that the checks need.
import {readdir, readFile} from 'node:fs/promises';
import path from 'node:path';

/** Roles with balanced text in some band. */
function balancedRoles(project) {
  const layers = [project.style, ...project.variants.flatMap((variant) => [variant.set, ...variant.bands.map((band) => band.set)])];
  const roles = layers.flatMap((layer) => Object.entries(layer?.text ?? {}));
  return new Set(roles.filter(([, style]) => style.wrap === 'balance').map(([role]) => role));
}

/** @returns every variant of every project in `folder`: file, sample, variant, breakpoints and range in CSS px. */
export async function variantsIn(folder) {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.tenter.json')).sort();
  if (files.length === 0) throw new Error(`${folder}: no project in this folder`);
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
        balanced: balancedRoles(project),
      });
    }
  }
  return all;
}

/** The middle of each band within the range, in whole CSS px. */
export function middlesOf({from, to, breakpoints}) {
  const edges = [from, ...breakpoints.filter((edge) => edge > from && edge < to), to];
  return edges.slice(1).map((edge, i) => Math.round((edges[i] + edge) / 2));
}
