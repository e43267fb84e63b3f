// Rows of pictures for the checks and the bench of cut pictures, and the part of a source that is cut.
import path from 'node:path';

/**
 * A project with one picture in each card.
 * @param pictures `{file, size: [width, height], ratio, focus: [across, down]}`; a ratio such as `3/2`.
 */
export function rowOfPictures(pictures, folder) {
  const cards = pictures.map(({file, size, ratio, focus}) => ({
    parts: [{picture: path.relative(folder, file), size, alt: path.basename(file), ...(ratio ? {ratio} : {}), ...(focus ? {focus} : {})}],
  }));
  return {
    format: 'tenter-project',
    version: 1,
    name: 'Pictures',
    row: 'cut',
    range: {from: 320, to: 1600},
    style: {row: {width: '90%', columnGap: '24px'}, picture: {ratio: '3/2'}},
    cards,
    variants: [{class: 'cut-two', bands: [{upTo: 720, set: {row: {columns: 1}}}, {set: {row: {columns: 2}}}]}],
  };
}

/** The part of a file that is cut out: `object-fit: cover` with a focal point, in whole pixels. CSS Images 3 §§ 5.5, 5.6. */
export function partOf([width, height], ratio, [across, down] = [0.5, 0.5]) {
  const wide = Math.min(width, Math.round(ratio * height));
  const high = Math.min(height, Math.round(width / ratio));
  return {left: Math.round(across * (width - wide)), top: Math.round(down * (height - high)), width: wide, height: high};
}
