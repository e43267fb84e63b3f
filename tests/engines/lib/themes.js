// The invented themes: saved pages with a row of ours in them, and what themes.json knows of each.
import {readFile} from 'node:fs/promises';
import path from 'node:path';

/** The class that a person types into the box for it; a variant's. */
export const rowClass = 'walks-3';

const comment = /(?:\/\*|<!--) trap: ([\w.-]+)/g;

/** Names of the traps that a page says it holds, sorted. */
export function trapsIn(html) {
  return [...new Set([...html.matchAll(comment)].map(([, name]) => name))].sort();
}

/** The page without the rules and declarations that the trap's comments enclose. */
export function withoutRules(html, trap) {
  const enclosed = new RegExp(`/\\* trap: ${trap.replaceAll('.', '\\.')} [^*]*\\*/[^]*?/\\* end \\*/`, 'g');
  return html.replace(enclosed, '');
}

/** The page with `css` where a CMS prints what was pasted: in a style element of its own, last in the head. */
export function withStylesheet(html, css) {
  if (!html.includes('</head>')) throw new Error('the page has no end of its head');
  return html.replace('</head>', () => `<style>\n${css}</style>\n</head>`);
}

/** The page with the pictures that lie beside it held in it. */
async function inlined(html, folder) {
  const files = [...new Set([...html.matchAll(/src="(pictures\/[^"]+\.png)"/g)].map(([, file]) => file))];
  for (const file of files) {
    const data = await readFile(path.join(folder, file), 'base64');
    html = html.replaceAll(`src="${file}"`, `src="data:image/png;base64,${data}"`);
  }
  return html;
}

/**
 * Every theme in `folder`: its facts, `name`, `file`, and `html` that asks for nothing outside. Throws if a page and
 * its facts do not name the same traps, or one that is nowhere explained.
 */
export async function themesIn(folder) {
  const {traps, themes} = JSON.parse(await readFile(path.join(folder, 'themes.json'), 'utf8'));
  const all = [];
  for (const [name, facts] of Object.entries(themes)) {
    const file = path.join(folder, `${name}.html`);
    const html = await readFile(file, 'utf8');
    const said = trapsIn(html).join(' ');
    if (said !== [...facts.traps].sort().join(' ')) throw new Error(`${name}.html holds ${said}; themes.json says otherwise`);
    all.push({...facts, name, file, html: await inlined(html, folder)});
  }
  const held = new Set(all.flatMap((theme) => theme.traps));
  const odd = [...Object.keys(traps).filter((trap) => !held.has(trap)), ...[...held].filter((trap) => !(trap in traps))];
  if (odd.length > 0) throw new Error(`themes.json: ${odd.join(', ')} not in any theme, or not explained`);
  return all;
}

/** `base`, a project, made for the theme: its families where it says so. All else is read from the page. */
export function baseFor(base, theme) {
  const project = structuredClone(base);
  for (const [role, family] of Object.entries(theme.families ?? {})) project.style.text[role].family = family;
  return project;
}

/** How far apart boxes of two readings of a page are at most, CSS px, and what looks otherwise. */
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
