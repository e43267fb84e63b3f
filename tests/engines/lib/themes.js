// The invented themes: saved pages with a row in them, and the facts about each in themes.json.
import {readFile} from 'node:fs/promises';
import path from 'node:path';

/** The class that a person enters in the CMS for the row; it is a variant's class. */
export const rowClass = 'walks-3';

const comment = /(?:\/\*|<!--) trap: ([\w.-]+)/g;

/** Names of the traps that the comments of a page list, sorted. */
export function trapsIn(html) {
  return [...new Set([...html.matchAll(comment)].map(([, name]) => name))].sort();
}

/** The page without the rules and declarations that the comments of the trap enclose. */
export function withoutRules(html, trap) {
  const enclosed = new RegExp(`/\\* trap: ${trap.replaceAll('.', '\\.')} [^*]*\\*/[^]*?/\\* end \\*/`, 'g');
  return html.replace(enclosed, '');
}

/** The page with `css` where a CMS prints it: in a style element of its own, last in the head. */
export function withStylesheet(html, css) {
  if (!html.includes('</head>')) throw new Error('the page has no </head>');
  return html.replace('</head>', () => `<style>\n${css}</style>\n</head>`);
}

/** The page with its pictures embedded. */
async function inlined(html, folder) {
  const files = [...new Set([...html.matchAll(/src="(pictures\/[^"]+\.png)"/g)].map(([, file]) => file))];
  for (const file of files) {
    const data = await readFile(path.join(folder, file), 'base64');
    html = html.replaceAll(`src="${file}"`, `src="data:image/png;base64,${data}"`);
  }
  return html;
}

/**
 * Every theme in `folder`: its facts, `name`, `file`, and `html` that requests nothing. Throws if a page and its facts
 * name different traps, or if a trap has no explanation.
 */
export async function themesIn(folder) {
  const {traps, themes} = JSON.parse(await readFile(path.join(folder, 'themes.json'), 'utf8'));
  const all = [];
  for (const [name, facts] of Object.entries(themes)) {
    const file = path.join(folder, `${name}.html`);
    const html = await readFile(file, 'utf8');
    const said = trapsIn(html).join(' ');
    if (said !== [...facts.traps].sort().join(' ')) throw new Error(`${name}.html holds ${said}; themes.json lists others`);
    all.push({...facts, name, file, html: await inlined(html, folder)});
  }
  const held = new Set(all.flatMap((theme) => theme.traps));
  const odd = [...Object.keys(traps).filter((trap) => !held.has(trap)), ...[...held].filter((trap) => !(trap in traps))];
  if (odd.length > 0) throw new Error(`themes.json: ${odd.join(', ')} not in any theme, or not explained`);
  return all;
}

/** The project `base` with the theme's font families. All other facts are read from the page. */
export function baseFor(base, theme) {
  const project = structuredClone(base);
  for (const [role, family] of Object.entries(theme.families ?? {})) project.style.text[role].family = family;
  return project;
}

/** The largest difference between boxes of two readings of a page, in CSS px, and the parts with another look. */
export function apart(one, other) {
  let largest = 0;
  const looks = new Set();
  one.forEach(({boxes, looks: look}, i) => {
    for (const [name, box] of Object.entries(boxes)) {
      const there = other[i].boxes[name];
      if (!there) throw new Error(`${name} is in one page only`);
      largest = Math.max(largest, ...box.map((side, s) => Math.abs(side - there[s])));
    }
    for (const [name, value] of Object.entries(look)) if (other[i].looks[name] !== value) looks.add(name.replace(/ \d+:/, ':'));
  });
  return {largest, looks: [...looks].sort()};
}
