// Compares two pictures as a person sees them: by structure and by colour.

/**
 * @param one,other RGBA bytes of `width` × `height` px.
 * @returns `structure`: mean structural similarity of the luminance over blocks of 8 × 8 px, 1 for equal pictures (Wang et
 *   al., "Image Quality Assessment: From Error Visibility to Structural Similarity", IEEE TIP 13 (4), 2004; constants from
 *   there); `colour`: mean absolute difference of the channels, 0 to 255; `worst`: the largest of it over squares of 32 px,
 *   each block of 8 × 8 px counting by its mean colour, so that antialiasing hardly counts and a missing word does.
 */
export function similarity(one, other, width, height) {
  const side = 8;
  const luminance = (bytes, at) => 0.299 * bytes[at] + 0.587 * bytes[at + 1] + 0.114 * bytes[at + 2];
  const c1 = (0.01 * 255) ** 2;
  const c2 = (0.03 * 255) ** 2;
  const across = Math.floor(width / side);
  const down = Math.floor(height / side);
  const blocks = [];
  for (let row = 0; row < down; ++row) {
    for (let column = 0; column < across; ++column) {
      let [a, b, aa, bb, ab] = [0, 0, 0, 0, 0];
      for (let y = row * side; y < (row + 1) * side; ++y) {
        for (let x = column * side; x < (column + 1) * side; ++x) {
          const at = 4 * (y * width + x);
          const p = luminance(one, at);
          const q = luminance(other, at);
          a += p;
          b += q;
          aa += p * p;
          bb += q * q;
          ab += p * q;
        }
      }
      const count = side * side;
      const [meanA, meanB] = [a / count, b / count];
      const varianceA = aa / count - meanA * meanA;
      const varianceB = bb / count - meanB * meanB;
      const covariance = ab / count - meanA * meanB;
      blocks.push(((2 * meanA * meanB + c1) * (2 * covariance + c2)) / ((meanA ** 2 + meanB ** 2 + c1) * (varianceA + varianceB + c2)));
    }
  }
  const mean = (list) => (list.length === 0 ? 1 : list.reduce((sum, value) => sum + value, 0) / list.length);
  const colourOf = (bytes, row, column) => {
    const sums = [0, 0, 0];
    for (let y = row * side; y < (row + 1) * side; ++y) {
      for (let x = column * side; x < (column + 1) * side; ++x) for (let c = 0; c < 3; ++c) sums[c] += bytes[4 * (y * width + x) + c];
    }
    return sums.map((sum) => sum / (side * side));
  };
  let worst = 0;
  for (let row = 0; row < down; row += 4) {
    for (let column = 0; column < across; column += 4) {
      const differences = [];
      for (let r = row; r < Math.min(down, row + 4); ++r) {
        for (let c = column; c < Math.min(across, column + 4); ++c) {
          const there = colourOf(other, r, c);
          differences.push(mean(colourOf(one, r, c).map((value, i) => Math.abs(value - there[i]))));
        }
      }
      worst = Math.max(worst, mean(differences));
    }
  }
  let difference = 0;
  for (let at = 0; at < 4 * width * height; ++at) if (at % 4 !== 3) difference += Math.abs(one[at] - other[at]);
  return {structure: mean(blocks), worst, colour: difference / (3 * width * height)};
}

/**
 * Compares two picture files, decoded by the browser of `tab`; an SVG is drawn at `ratio`. The larger picture is cut.
 * @param one,other `{type, bytes}`, `bytes` a Buffer.
 * @returns the similarity and both sizes.
 */
export function compareFiles(tab, one, other, ratio = 1) {
  const address = ({type, bytes}) => `data:${type};base64,${Buffer.from(bytes).toString('base64')}`;
  return tab.evaluate(
    async (addresses, source, scale) => {
      const compare = eval(`(${source})`);
      const pictures = await Promise.all(
        addresses.map(async (from) => {
          const picture = new Image();
          picture.src = from;
          await picture.decode();
          const factor = from.startsWith('data:image/svg') ? scale : 1;
          return {picture, width: picture.naturalWidth * factor, height: picture.naturalHeight * factor};
        }),
      );
      const width = Math.min(...pictures.map((one) => one.width));
      const height = Math.min(...pictures.map((one) => one.height));
      const pixels = pictures.map((one) => {
        const canvas = new OffscreenCanvas(width, height);
        const context = canvas.getContext('2d', {willReadFrequently: true});
        context.drawImage(one.picture, 0, 0, one.width, one.height);
        return context.getImageData(0, 0, width, height).data;
      });
      return {...compare(pixels[0], pixels[1], width, height), sizes: pictures.map((one) => [one.width, one.height])};
    },
    [address(one), address(other)],
    similarity.toString(),
    ratio,
  );
}
