// Makes a clone ready to run. Only Node's own modules: it starts before node_modules exists.
// Everything it and its children say goes to standard error, so that `npm run --silent report` stays a clean pipe.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { BUILD_INPUTS, INSTALL_INPUTS, ROOT, fingerprint } from './fingerprint.mjs';

const INSTALL_STAMP = join(ROOT, 'node_modules', '.stamp-install');
const BUILD_STAMP = join(ROOT, 'node_modules', '.stamp-build');

/** @param {string} version of Node, as in process.versions.node */
export function isSupportedNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;
}

/** @param {string} stamp @param {string} value */
function isStamped(stamp, value) {
  return existsSync(stamp) && readFileSync(stamp, 'utf8') === value;
}

function installFingerprint() {
  const node = process.versions.node.split('.')[0] ?? '';
  return fingerprint(INSTALL_INPUTS, [process.platform, process.arch, node]);
}

/** @param {string} what @param {string} command @param {string[]} args @param {boolean} [shell] */
function run(what, command, args, shell = false) {
  const { status, error } = spawnSync(command, args, { cwd: ROOT, stdio: ['ignore', 2, 2], shell });
  if (status !== 0) throw new Error(`${what} failed${error ? `: ${error.message}` : ''}.`);
}

/** @param {string[]} args */
function runNpm(args) {
  const what = `npm ${args[0] ?? ''}`;
  const cli = process.env['npm_execpath'];
  if (cli?.endsWith('npm-cli.js')) run(what, process.execPath, [cli, ...args]);
  else run(what, 'npm', args, process.platform === 'win32');
}

/** Installs exactly what the lock says, unless that is what stands there already. */
export function install() {
  if (!isSupportedNode(process.versions.node)) {
    throw new Error(
      `Kerfline needs Node 20.19 or newer (or 22.12 or newer); this is Node ${process.versions.node}.`
    );
  }
  if (isStamped(INSTALL_STAMP, installFingerprint())) return;
  console.error('Installing what package-lock.json lists …');
  // Without --include=dev, NODE_ENV=production silently leaves out the build tools.
  runNpm(['ci', '--include=dev', '--no-audit', '--no-fund']);
  stampInstall();
}

function stampInstall() {
  mkdirSync(join(ROOT, 'node_modules'), { recursive: true });
  writeFileSync(INSTALL_STAMP, installFingerprint());
}

/** Builds the site, unless build/ already holds what the present sources give. */
export function build() {
  // Taken before the build: a file saved while it runs must count as a change.
  const inputs = fingerprint(BUILD_INPUTS);
  if (existsSync(join(ROOT, 'build', 'index.html')) && isStamped(BUILD_STAMP, inputs)) return;
  console.error('Building the site …');
  run('The build', process.execPath, [join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js'), 'build']);
  writeFileSync(BUILD_STAMP, inputs);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    // --installed: npm's own prepare step has just done the installation.
    if (process.argv.includes('--installed')) stampInstall();
    else install();
    if (process.argv.includes('--build')) build();
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exitCode = 1;
  }
}
