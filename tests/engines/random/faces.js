// Compares the fonts that an engine draws text with with those that Tenter measured.
import {plainText} from '../lib/compare.js';

/** The name of a face; without the instance of a variable font, which engines name in their own way. */
const nameOf = ({name, variable}) => (variable ? name.split(/[-_]/)[0] : name);

/**
 * The parts of `layout` that Chromium draws with other fonts, by the `used` PostScript names of each part: with a font
 * that Tenter did not measure, or without one that Tenter measured letters with.
 */
export function otherFonts(used, layout, fonts) {
  const differences = [];
  layout.cards.forEach((card, c) => card.parts.forEach((part, p) => {
    const names = used.get(`${c}.${p}`);
    if (names === undefined || part.lines === undefined || part.lines.length === 0) return;
    const measured = part.fonts.map((i) => fonts[i]);
    const all = [...measured, ...part.spaceFonts.map((i) => fonts[i])];
    const isUsed = (font) => names.some((name) => name === font.name || (font.variable && name.split(/[-_]/)[0] === nameOf(font)));
    const isMeasured = (name) => all.some((font) => name === font.name || (font.variable && name.split(/[-_]/)[0] === nameOf(font)));
    if (measured.every(isUsed) && names.every(isMeasured)) return;
    differences.push({width: layout.width, name: `${c}.${p}`, where: `${c}.${p} ${part.kind}`, what: 'font', expected: names.join(', '), actual: measured.map(({name, file}) => `${name} (${file})`).join(', ')});
  }));
  return differences;
}

/**
 * The parts that an engine draws with other advances: a line has the computed text, but another width. `suspects` are
 * parts with other widths of lines (lib/compare.js), `lines` reads the texts and widths of the lines of a part in a fresh
 * layout at a width. Not at a soft hyphen: Firefox counts letter spacing after the hyphen for fit, but not in the box of
 * the text.
 */
export async function otherAdvances(suspects, lines) {
  const differences = [];
  const seen = new Set();
  for (const {width, name, where, part} of suspects) {
    if (seen.has(name)) continue;
    seen.add(name);
    const {texts, widths: read} = await lines(width, name);
    const at = part.lines.findIndex((line, i) => !line.text.endsWith('\u00AD') && plainText(texts[i] ?? '') === plainText(line.text) && Math.abs(read[i] - line.width) > 1 + 0.005 * line.width);
    if (at >= 0) differences.push({width, name, where, what: 'advances', expected: read[at], actual: part.lines[at].width});
  }
  return differences;
}
