// Comparison of the layouts of two engines.

/** The number of text parts, over all widths, with different line counts in the two engines, and the number of all. */
export function mutual(one, other) {
  let differing = 0;
  let texts = 0;
  if (one.length !== other.length) throw new Error(`${one.length} widths by one engine, ${other.length} by the other`);
  one.forEach((counts, i) => {
    for (const [name, count] of Object.entries(counts)) {
      ++texts;
      if (other[i][name] !== count) ++differing;
    }
  });
  return {differing, texts};
}

const thousands = (number) => String(number).replace(/\B(?=(\d{3})+$)/g, ' ');
const share = (some, all) => `${thousands(some)} (${((100 * some) / all).toFixed(3)} %)`;
const px = (number) => `${number.toFixed(2)} px`;

/** A Markdown table of the results of check_layout.js for both engines: a row for each variant, and one for all. */
export function sideBySide(chromium, firefox) {
  const lines = [
    '| row | parts | Chromium: other line counts | largest box | Firefox: other line counts | largest box | the two with each other |',
    '| --- | ---: | ---: | ---: | ---: | ---: | ---: |',
  ];
  const sum = {chromium: {pairs: 0, tight: 0, largest: 0}, firefox: {pairs: 0, tight: 0, largest: 0}, differing: 0, texts: 0};
  const add = (to, {pairs, tight, largestBox}) => {
    to.pairs += pairs;
    to.tight += tight;
    to.largest = Math.max(to.largest, largestBox);
  };
  chromium.forEach((row, i) => {
    const other = firefox[i];
    if (`${row.sample} ${row.variant}` !== `${other?.sample} ${other?.variant}`) throw new Error(`${row.sample}, ${row.variant} was laid out by one engine only`);
    const {differing, texts} = mutual(row.counts, other.counts);
    lines.push(`| ${row.sample}, ${row.variant} | ${thousands(row.pairs)} | ${row.tight} | ${px(row.largestBox)} | ${other.tight} | ${px(other.largestBox)} | ${differing} |`);
    add(sum.chromium, row);
    add(sum.firefox, other);
    sum.differing += differing;
    sum.texts += texts;
  });
  lines.push(
    `| **all** | ${thousands(sum.chromium.pairs)} | ${share(sum.chromium.tight, sum.chromium.pairs)} | ${px(sum.chromium.largest)} | ` +
      `${share(sum.firefox.tight, sum.firefox.pairs)} | ${px(sum.firefox.largest)} | ${share(sum.differing, sum.texts)} |`,
  );
  return lines.join('\n');
}
