// Put in the place of a build's service-worker.js, this takes every visitor's browser off a release that must not run
// any more: it replaces the old worker, drops what was kept of the program, and removes itself. Sites are not touched.
globalThis.addEventListener('install', () => globalThis.skipWaiting());
globalThis.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(names.filter((name) => name.startsWith('kerfline-')).map((name) => caches.delete(name)))
      )
      .then(() => globalThis.registration.unregister())
  );
});
