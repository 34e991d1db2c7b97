// Serves build/ on this machine only, with the headers that a <meta> policy cannot carry.
import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import sirv from 'sirv';
import { ROOT } from './fingerprint.mjs';

const FIRST_PORT = 4173;
const PORTS_TO_TRY = 20;

/** @param {string} message @returns {never} */
function refuse(message) {
  console.error(message);
  process.exit(1);
}

/** @param {string | undefined} text @returns {number | undefined} */
function parsePort(text) {
  if (text === undefined) return undefined;
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > 65535) {
    refuse(`--port must be a whole number from 1 to 65535, found "${text}".`);
  }
  return port;
}

const { values } = parseArgs({ options: { port: { type: 'string' } } });
const asked = parsePort(values.port);
const folder = join(ROOT, 'build');
if (!existsSync(join(folder, 'index.html')))
  refuse('There is no build/ yet: run "npm start" or "npm run build".');

const serveFile = sirv(folder, {
  dotfiles: false,
  etag: true,
  setHeaders(response, path) {
    const unchanging = path.startsWith('/_app/immutable/');
    response.setHeader('Cache-Control', unchanging ? 'public, max-age=31536000, immutable' : 'no-cache');
    response.setHeader('X-Content-Type-Options', 'nosniff');
    response.setHeader('Referrer-Policy', 'no-referrer');
    response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
    response.setHeader('X-Frame-Options', 'DENY');
  }
});

const server = createServer((request, response) => {
  serveFile(request, response, () => {
    response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found\n');
  });
});

/** @param {number} port */
function listen(port) {
  server.once('error', (/** @type {NodeJS.ErrnoException} */ problem) => {
    const isTaken = problem.code === 'EADDRINUSE';
    if (isTaken && asked === undefined && port < FIRST_PORT + PORTS_TO_TRY) listen(port + 1);
    else refuse(isTaken ? `Port ${port} is taken; choose another with --port.` : problem.message);
  });
  server.listen(port, 'localhost', () => {
    server.removeAllListeners('error');
    console.log(`Ready: http://localhost:${port}/`);
  });
}

listen(asked ?? FIRST_PORT);
