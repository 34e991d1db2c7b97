// The list of built files that the service worker keeps is made from the build's manifest, and that names of a worker
// only its first script. What a worker loads later has to be kept as well, or it is missing without a network.
import type { Plugin } from 'vite';

const MANIFEST = '.vite/manifest.json';
const OF_A_WORKER = /\/workers\/.+\.js$/;

/** Puts every script of a worker into the manifest of the build. */
export function workerChunks(): Plugin {
  return {
    name: 'worker-chunks',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const manifest = bundle[MANIFEST];
        if (manifest?.type !== 'asset') return;
        const entries = JSON.parse(String(manifest.source)) as Record<string, { file: string }>;
        for (const file of Object.keys(bundle)) if (OF_A_WORKER.test(file)) entries[file] ??= { file };
        manifest.source = JSON.stringify(entries, null, 2);
      }
    }
  };
}
