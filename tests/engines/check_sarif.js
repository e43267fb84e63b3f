// Validates `check --sarif` of every sample against the published schema of SARIF 2.1.0, which an npm package holds. Needs no
// browser.
import {execFileSync} from 'node:child_process';
import {mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {options} from './lib/command_line.js';

const given = options({cli: undefined, samples: undefined});
const require = createRequire(import.meta.url);
const Ajv = require('ajv');
const read = (path) => JSON.parse(readFileSync(require.resolve(path)));
const ajv = new Ajv({schemaId: 'auto', meta: false, allErrors: true, logger: false});
ajv.addMetaSchema(read('ajv/lib/refs/json-schema-draft-04.json'));
const isValid = ajv.compile(read('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'));

const sarif = (...files) => {
  try {
    return JSON.parse(execFileSync(given.cli, ['check', ...files, '--sarif'], {maxBuffer: 1 << 28}));
  } catch (error) {
    // Findings at or above --fail-on.
    if (error.status === 1) return JSON.parse(error.stdout);
    throw error;
  }
};
let failures = 0;
const expect = (condition, says) => {
  if (condition) return;
  failures += 1;
  console.log(says);
};
const check = (log, name) => expect(isValid(log), `${name}: ${JSON.stringify(isValid.errors?.slice(0, 3))}`);

const samples = readdirSync(given.samples).filter((name) => name.endsWith('.tenter.json'));
expect(samples.length >= 5, `only ${samples.length} samples`);
let results = 0;
for (const name of samples) {
  const log = sarif(join(given.samples, name));
  results += log.runs[0].results.length;
  check(log, name);
}
expect(results > 5, `only ${results} results`);
const whole = sarif(given.samples);
check(whole, 'the folder');
expect(whole.runs[0].results.length === results, 'the folder has other results than its files');

// Silenced findings are suppressions.
const folder = mkdtempSync(join(tmpdir(), 'tenter-sarif-'));
try {
  const project = JSON.parse(readFileSync(join(given.samples, 'shore-walks.tenter.json')));
  const rule = sarif(join(given.samples, 'shore-walks.tenter.json')).runs[0].results[0].ruleId;
  for (const card of project.cards) card.parts = card.parts.filter((part) => part.role !== undefined);
  project.checks = {silenced: [{check: rule, reason: 'a reason with "quotes" and <angles>'}]};
  writeFileSync(join(folder, 'silenced.tenter.json'), JSON.stringify(project));
  const log = sarif(join(folder, 'silenced.tenter.json'));
  expect(log.runs[0].results.some((result) => result.suppressions?.length === 1), 'no finding is suppressed');
  check(log, 'silenced');
} finally {
  rmSync(folder, {recursive: true});
}

// The schema must refuse what is wrong.
for (const spoil of [(log) => { log.runs[0].results[0].level = 'dreadful'; }, (log) => { delete log.version; },
                     (log) => { log.runs[0].results[0].locations[0].physicalLocation.region.startLine = 0; }]) {
  const log = structuredClone(whole);
  spoil(log);
  expect(!isValid(log), `the schema accepts a log that ${spoil} has changed`);
}
console.log(`${samples.length + 2} logs with ${results} results satisfy the schema of SARIF 2.1.0`);
process.exit(failures > 0 ? 1 : 0);
