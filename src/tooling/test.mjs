// The whole test: install, types, lint, what nobody uses, unit tests, build, a browser, end-to-end tests on the built site.
// A failed step does not stop the later ones; the closing lines name what failed and add both runners and every failed step.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './fingerprint.mjs';
import { build, install } from './setup.mjs';
import { addTallies, NOTHING, tallyEndToEnd, tallyStep, tallyUnit } from './tally.mjs';

/** @typedef {import('./tally.mjs').Tally} Tally */

const RESULTS = join(ROOT, 'test-results');

/** @param {string} name */
function announce(name) {
  console.log(`\n── ${name}`);
}

/** @param {string} name @param {() => void} act @returns {Tally} */
function perform(name, act) {
  announce(name);
  try {
    act();
    return NOTHING;
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem);
    return tallyStep(name, false, NOTHING);
  }
}

/** @param {string} command @param {string[]} args @param {NodeJS.ProcessEnv} [env] @returns {boolean} */
function run(command, args, env = {}) {
  const options = { cwd: ROOT, env: { ...process.env, ...env } };
  return spawnSync(command, args, { ...options, stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}

/** @param {string} script of package.json @param {string[]} [args] @param {NodeJS.ProcessEnv} [env] */
function runScript(script, args = [], env = {}) {
  const cli = process.env['npm_execpath'];
  const [command, first] = cli?.endsWith('npm-cli.js') ? [process.execPath, [cli]] : ['npm', []];
  return run(command, [...first, 'run', '--silent', script, '--', ...args], env);
}

/**
 * A step that writes a JSON report beside what it prints.
 * @param {string} name
 * @param {string} file where the report will stand
 * @param {(file: string) => boolean} act
 * @param {(report: any) => Tally} read
 * @returns {Tally}
 */
function performCounted(name, file, act, read) {
  announce(name);
  // A report left by an earlier run must not be counted for this one.
  rmSync(file, { force: true });
  const succeeded = act(file);
  if (!existsSync(file)) return tallyStep(name, false, NOTHING);
  return tallyStep(name, succeeded, read(JSON.parse(readFileSync(file, 'utf8'))));
}

/** @param {string} script */
function insistOn(script) {
  return () => {
    if (!runScript(script)) throw new Error(`npm run ${script} failed.`);
  };
}

function testUnits() {
  return performCounted(
    'unit tests',
    join(RESULTS, 'unit.json'),
    (file) => runScript('test:unit', ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`]),
    tallyUnit
  );
}

function testEndToEnd() {
  return performCounted(
    'end-to-end tests',
    join(RESULTS, 'end-to-end.json'),
    (file) => runScript('test:e2e', ['--reporter=list,json'], { PLAYWRIGHT_JSON_OUTPUT_FILE: file }),
    tallyEndToEnd
  );
}

function findBrowser() {
  if (!run(process.execPath, [join(ROOT, 'src', 'tooling', 'browser.mjs')])) throw new Error('No browser.');
}

/** @returns {Tally} */
function testEverything() {
  const installed = perform('install', install);
  if (installed.failed > 0) return installed;
  mkdirSync(RESULTS, { recursive: true });
  const early = [
    perform('types', insistOn('check')),
    perform('lint', insistOn('lint')),
    perform('unused', insistOn('unused')),
    testUnits()
  ];
  const ready = [perform('build', build), perform('browser', findBrowser)];
  const canBrowse = addTallies(ready).failed === 0;
  return addTallies([...early, ...ready, canBrowse ? testEndToEnd() : NOTHING]);
}

const { passed, failed, names } = testEverything();
if (names.length > 0) console.log(`\nWhat failed:\n${names.map((name) => `- ${name}`).join('\n')}`);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
