/** The built page, served as people get it. */
import { spawn } from 'node:child_process';

const PORT = 4391;

export const address = `http://localhost:${PORT}/`;

/** Resolves once it answers, with what ends it. */
export const serve = async (): Promise<() => void> => {
  const server = spawn(process.execPath, ['src/tooling/serve.mjs', '--port', String(PORT)], {
    stdio: ['ignore', 'pipe', 'inherit']
  });
  await new Promise((ready) => server.stdout.once('data', ready));
  return () => server.kill();
};
