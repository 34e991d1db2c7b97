// Finds a Chromium for the end-to-end tests; run as a script, it also gets one where none is found.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';

// A test browser that looks up its maker's hosts makes runs slow and noisy where there is no network.
const ARGS = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  '--no-first-run'
];

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
const APPLICATIONS = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge'
];
const WINDOWS_PATHS = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'];

function installedCandidates() {
  const onPath = (process.env['PATH'] ?? '').split(delimiter).filter(Boolean);
  const windowsRoots = ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'].flatMap(
    (name) => process.env[name] ?? []
  );
  return [
    ...NAMES.flatMap((name) => onPath.map((folder) => join(folder, name))),
    ...APPLICATIONS,
    ...windowsRoots.flatMap((root) => WINDOWS_PATHS.map((path) => join(root, path)))
  ];
}

/**
 * A Chromium that is already on this machine. `own` is the one that Playwright downloaded for itself.
 * @returns {{ own: boolean, path: string } | undefined}
 * @throws when CHROMIUM_PATH names a file that does not exist
 */
function findChromium() {
  const named = process.env['CHROMIUM_PATH'];
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM_PATH names ${named}, where there is nothing.`);
    return { own: false, path: named };
  }
  const own = chromium.executablePath();
  if (existsSync(own)) return { own: true, path: own };
  const path = installedCandidates().find((candidate) => existsSync(candidate));
  return path === undefined ? undefined : { own: false, path };
}

/** What Playwright needs in order to start the Chromium that was found. */
export function launchOptions() {
  const found = findChromium();
  return { args: ARGS, ...(found && !found.own ? { executablePath: found.path } : {}) };
}

/** @param {string} command @param {string[]} args @returns {boolean} whether it succeeded */
function run(command, args) {
  const env = {
    DEBIAN_FRONTEND: 'noninteractive',
    PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: '10000',
    ...process.env
  };
  return (
    spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'], timeout: 600_000, env }).status === 0
  );
}

/** Ubuntu's package of the same name is only a stub, hence the exact name. */
function isDebian() {
  return existsSync('/etc/os-release') && /^ID="?debian"?$/m.test(readFileSync('/etc/os-release', 'utf8'));
}

function getChromium() {
  const isRoot = process.getuid?.() === 0;
  const playwright = fileURLToPath(import.meta.resolve('@playwright/test/cli'));
  console.log('No Chromium found; asking Playwright to download one …');
  if (run(process.execPath, [playwright, 'install', 'chromium'])) {
    // Only after the download has succeeded: this step changes the system's packages.
    if (isRoot && process.platform === 'linux')
      run(process.execPath, [playwright, 'install-deps', 'chromium']);
    return;
  }
  if (isDebian() && isRoot && run('apt-get', ['update'])) {
    console.log('The download failed; installing the system’s package instead …');
    run('apt-get', ['install', '--yes', '--no-install-recommends', 'chromium', 'fonts-liberation']);
  }
}

/**
 * Makes sure that a Chromium is there and starts.
 * @returns {Promise<string>} its version and where it stands
 */
async function ensureChromium() {
  if (!findChromium()) getChromium();
  const found = findChromium();
  if (!found) {
    throw new Error(
      'The end-to-end tests need Chromium, Chrome or Edge: install one, or set CHROMIUM_PATH to its program file.'
    );
  }
  const browser = await chromium.launch(launchOptions());
  const version = browser.version();
  await browser.close();
  return `Chromium ${version} (${found.path})`;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    console.log(await ensureChromium());
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exitCode = 1;
  }
}
