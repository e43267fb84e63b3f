// Arguments of the checks: `--name value` pairs.

/** @returns {Record<string, string>} options by name. Ends the process with a one-line message if they are wrong. */
export function options(known) {
  const given = {};
  const words = process.argv.slice(2);
  for (let i = 0; i < words.length; i += 2) {
    const name = words[i].replace(/^--/, '');
    if (!words[i].startsWith('--') || !(name in known) || words[i + 1] === undefined) {
      console.error(`${words[i]}: not an option with a value; the options are ${Object.keys(known).map((k) => '--' + k).join(', ')}`);
      process.exit(2);
    }
    given[name] = words[i + 1];
  }
  const result = {...known, ...given};
  for (const [name, value] of Object.entries(result)) {
    if (value === undefined) {
      console.error(`--${name} is missing`);
      process.exit(2);
    }
  }
  return result;
}
