import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sirv from 'sirv';
import { Desk } from './hands';
import { expect, test } from './support/test';

test.use({ serviceWorkers: 'allow' });

const folder = fileURLToPath(new URL('../build/', import.meta.url));
const worker = readFileSync(`${folder}service-worker.js`, 'utf8');
const { version } = JSON.parse(readFileSync(`${folder}_app/version.json`, 'utf8')) as { version: string };

/** The built site, and from the moment of `publish` on a newer release of it. */
class Host {
  readonly #server: Server;
  #suffix = '';

  constructor() {
    const serve = sirv(folder, { dev: false });
    this.#server = createServer((request, response) => {
      if (request.url?.startsWith('/service-worker.js')) {
        response.writeHead(200, { 'Content-Type': 'text/javascript', 'Cache-Control': 'no-store' });
        response.end(worker.replaceAll(version, version + this.#suffix));
      } else {
        serve(request, response, () => {
          response.writeHead(404).end();
        });
      }
    });
  }

  async open(): Promise<string> {
    await new Promise<void>((resolve) => {
      this.#server.listen(0, 'localhost', resolve);
    });
    return `http://localhost:${(this.#server.address() as AddressInfo).port}/`;
  }

  publish() {
    this.#suffix = '-next';
  }

  close() {
    this.#server.closeAllConnections();
    this.#server.close();
  }
}

test('a new release waits, is offered, and takes over when it is asked to, with the work as it was', async ({
  page
}) => {
  expect(worker).toContain(version);
  const host = new Host();
  try {
    const desk = new Desk(page);
    await desk.open({ address: await host.open() });
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    await desk.settled();
    await desk.type('Site name', 'Before the update');
    host.publish();
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.ready).update();
    });
    const offer = page.getByText('A new release is ready.');
    await expect(offer).toBeVisible();
    // It waits: the release that runs is the one that was there.
    const kept = () => page.evaluate(async () => (await caches.keys()).sort());
    expect(await kept()).toEqual([`kerfline-${version}`, `kerfline-${version}-next`]);
    await desk.type('Site name', 'Still at work');
    await expect(page).toHaveTitle(/^Still at work/);
    const isLoadedAgain = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Reload and use it' }).click();
    await isLoadedAgain;
    await expect.poll(kept).toEqual([`kerfline-${version}-next`]);
    await desk.settled();
    await expect(page).toHaveTitle(/^Still at work/);
    await expect(offer).toHaveCount(0);
  } finally {
    host.close();
  }
});
