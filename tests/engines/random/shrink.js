// Reduces a failing row to the fewest cards, parts, settings and words that still fail.

const clone = (project) => structuredClone(project);

/** All copies of a project that are one step smaller, the largest steps first. */
function* smaller(project) {
  const take = (change) => {
    const copy = clone(project);
    change(copy);
    return copy;
  };
  const {cards, variants} = project;
  const [{bands}] = variants;
  if (cards.length > 1) yield take((p) => (p.cards = p.cards.slice(0, Math.ceil(p.cards.length / 2))));
  for (let c = 0; c < cards.length && cards.length > 1; ++c) yield take((p) => p.cards.splice(c, 1));
  // One band at a time; the last has no end.
  for (let b = 0; b < bands.length && bands.length > 1; ++b) {
    yield take((p) => {
      p.variants[0].bands.splice(b, 1);
      delete p.variants[0].bands.at(-1).upTo;
    });
  }
  for (let c = 0; c < cards.length; ++c) {
    for (let n = 0; n < cards[c].parts.length && cards[c].parts.length > 1; ++n) yield take((p) => p.cards[c].parts.splice(n, 1));
  }
  // Settings, whole groups before their members.
  const groups = [];
  const walk = (value, path) => {
    for (const [key, inner] of Object.entries(value ?? {})) {
      groups.push([...path, key]);
      if (inner && typeof inner === 'object' && !Array.isArray(inner)) walk(inner, [...path, key]);
    }
  };
  for (const top of ['page', 'style', 'unit']) {
    if (project[top] === undefined) continue;
    groups.push([top]);
    if (typeof project[top] === 'object') walk(project[top], [top]);
  }
  bands.forEach((band, b) => walk(band.set, ['variants', 0, 'bands', b, 'set']));
  groups.sort((a, b) => a.length - b.length);
  for (const path of groups) {
    yield take((p) => delete path.slice(0, -1).reduce((at, step) => at[step], p)[path.at(-1)]);
  }
  for (const key of ['direction', 'language']) {
    const usual = {direction: 'ltr', language: 'en'}[key];
    if (project[key] !== usual) yield take((p) => (p[key] = usual));
  }
  for (const [b, band] of bands.entries()) {
    if ((band.set.row?.columns ?? 1) > 1) yield take((p) => (p.variants[0].bands[b].set.row.columns = 1));
  }
  // Words: join the runs, leave out runs, then shorten a run.
  for (let c = 0; c < cards.length; ++c) {
    for (let n = 0; n < cards[c].parts.length; ++n) {
      const said = cards[c].parts[n].copy;
      if (said === undefined) continue;
      const put = (copy) => take((p) => (p.cards[c].parts[n].copy = copy));
      if (Array.isArray(said)) {
        yield put(said.map(textOf).join(''));
        for (let r = 0; r < said.length && said.length > 1; ++r) yield put(said.filter((_, at) => at !== r));
      }
      const runs = Array.isArray(said) ? said : [said];
      for (let r = 0; r < runs.length; ++r) {
        const words = textOf(runs[r]).split(' ');
        if (words.length < 2) continue;
        const half = Math.ceil(words.length / 2);
        for (const kept of [words.slice(0, half), words.slice(half), words.slice(1), words.slice(0, -1)]) {
          const run = withText(runs[r], kept.join(' '));
          yield put(Array.isArray(said) ? said.map((each, at) => (at === r ? run : each)) : run);
        }
      }
    }
  }
}

function textOf(run) {
  if (typeof run === 'string') return run;
  return run.strong ?? run.emphasis ?? run.link ?? '';
}

function withText(run, text) {
  if (typeof run === 'string') return text;
  const key = ['strong', 'emphasis', 'link'].find((each) => each in run);
  return {...run, [key]: text};
}

/**
 * The smallest project found, within `most` tries, for which `fails` returns true. `fails` gets one project at a time;
 * a project for which it throws does not count.
 */
export async function shrink(project, fails, most = 400) {
  let least = project;
  let tries = 0;
  for (let again = true; again && tries < most; ) {
    again = false;
    for (const one of smaller(least)) {
      if (++tries > most) break;
      if (await fails(one).catch(() => false)) {
        least = one;
        again = true;
        break;
      }
    }
  }
  return {project: least, tries};
}
