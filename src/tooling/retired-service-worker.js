// Put in the place of a build's service-worker.js, this takes every visitor's browser off a release that must not run
// any more: it replaces the old worker, drops what was kept of the program, and removes itself. Sites are not touched.

/**
 * As much of a service worker's surroundings as is needed.
 * @typedef {object} Surroundings
 * @property {() => Promise<void>} skipWaiting
 * @property {{ unregister(): Promise<boolean> }} registration
 * @property {(type: string, listener: (event: { waitUntil(work: Promise<unknown>): void }) => void) => void} addEventListener
 */
const worker = /** @type {Surroundings} */ (/** @type {unknown} */ (globalThis));

async function retire() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('kerfline-')).map((name) => caches.delete(name)));
  await worker.registration.unregister();
}

worker.addEventListener('install', () => void worker.skipWaiting());
worker.addEventListener('activate', (event) => {
  event.waitUntil(retire());
});
