import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ReleaseWatch } from '#app/update.svelte.ts';

class Release extends EventTarget {
  asked = 0;
  constructor(public state: ServiceWorkerState) {
    super();
  }
  become(state: ServiceWorkerState) {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
  postMessage() {
    this.asked++;
  }
}

class Registration extends EventTarget {
  installing: Release | null = null;
  waiting: Release | null = null;
}

let registration: Registration;
let container: EventTarget & { controller: object | null; ready: Promise<Registration> };

beforeEach(() => {
  registration = new Registration();
  container = Object.assign(new EventTarget(), { controller: {}, ready: Promise.resolve(registration) });
  vi.stubGlobal('navigator', { serviceWorker: container });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

function installed(release: Release) {
  registration.installing = null;
  registration.waiting = release;
  release.become('installed');
}

async function watching(): Promise<ReleaseWatch> {
  const watch = new ReleaseWatch();
  await watch.start();
  return watch;
}

test('a release that comes later is offered once it is whole', async () => {
  const watch = await watching();
  const release = new Release('installing');
  registration.installing = release;
  registration.dispatchEvent(new Event('updatefound'));
  expect(watch.hasUpdate).toBe(false);
  installed(release);
  expect(watch.hasUpdate).toBe(true);
});

test('a release that was being fetched before anybody watched is offered too', async () => {
  const release = new Release('installing');
  registration.installing = release;
  const watch = await watching();
  installed(release);
  expect(watch.hasUpdate).toBe(true);
});

test('it is used when it is in charge', async () => {
  const release = new Release('installed');
  registration.waiting = release;
  const watch = await watching();
  let isInCharge = false;
  const activation = watch.activate().then(() => {
    isInCharge = true;
  });
  await Promise.resolve();
  expect(release.asked).toBe(1);
  expect(isInCharge).toBe(false);
  container.dispatchEvent(new Event('controllerchange'));
  await activation;
  expect(isInCharge).toBe(true);
});

test('one that another tab has put in charge meanwhile is used at once', async () => {
  const release = new Release('installed');
  registration.waiting = release;
  const watch = await watching();
  registration.waiting = null;
  release.become('activated');
  container.dispatchEvent(new Event('controllerchange'));
  const patience = new Promise((resolve) => setTimeout(resolve, 200, 'waits for ever'));
  expect(await Promise.race([watch.activate(), patience])).toBeUndefined();
});
