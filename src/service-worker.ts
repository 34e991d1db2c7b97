// Keeps one whole release for use without a network. A new release waits until the page asks for it: taking over at once
// would remove the old release's chunks under pages that are still open.
import { base, build, files, prerendered, version } from '$service-worker';

const worker = globalThis.self as unknown as ServiceWorkerGlobalScope;

const PREFIX = 'kerfline-';
const CACHE = PREFIX + version;

// Servers do not hand out dotfiles, and one refused file makes the whole installation fail.
const ASSETS = [...build, ...files, ...prerendered].filter((path) => !path.includes('/.'));

async function keepRelease(): Promise<void> {
  const cache = await caches.open(CACHE);
  // "no-cache": a page that a host allowed to be kept for a while must not enter a release that it is not part of.
  await cache.addAll(ASSETS.map((path) => new Request(path, { cache: 'no-cache' })));
}

async function dropOtherReleases(): Promise<void> {
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(others.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/**
 * The way out of a release that does not work: `?fresh` is answered by the network, and nothing that was kept of the
 * program is used again. Sites lie in the database and are not touched.
 */
async function retire(request: Request): Promise<Response> {
  await worker.registration.unregister();
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(PREFIX)).map((name) => caches.delete(name)));
  return fetch(request);
}

async function answer(request: Request): Promise<Response> {
  const isPage = request.mode === 'navigate';
  if (isPage && new URL(request.url).searchParams.has('fresh')) return retire(request);
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request, { ignoreSearch: isPage });
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (problem) {
    if (!isPage) throw problem;
    // Not the start page's own text: its relative addresses would lead astray from here.
    return Response.redirect(`${base}/`);
  }
}

worker.addEventListener('install', (event) => {
  event.waitUntil(keepRelease());
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(dropOtherReleases());
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answer(request));
});

worker.addEventListener('message', (event) => {
  const message: unknown = event.data;
  const isActivation =
    typeof message === 'object' && message !== null && 'type' in message && message.type === 'activate';
  if (isActivation) event.waitUntil(worker.skipWaiting());
});
