/** The built page in a real browser: from opening to the first live readout, and what the first load weighs. */
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { launchOptions } from '../../src/tooling/browser.mjs';
import { address, serve } from './served';

const RUNS = 5;

export const measurePage = async (): Promise<void> => {
  const stop = await serve();
  const browser = await chromium.launch(launchOptions());
  try {
    const times: number[] = [];
    let weight = 0;
    for (let run = 0; run < RUNS; run++) {
      const context = await browser.newContext({ serviceWorkers: 'block' });
      const page = await context.newPage();
      const bodies: Promise<Buffer>[] = [];
      page.on('response', (response) => bodies.push(response.body().catch(() => Buffer.alloc(0))));
      const start = performance.now();
      await page.goto(address, { waitUntil: 'commit' });
      await page.waitForFunction(() => /\d\s*µH/.test(document.body.innerText));
      times.push(performance.now() - start);
      await page.waitForLoadState('networkidle');
      weight = (await Promise.all(bodies)).reduce((sum, body) => sum + gzipSync(body).length, 0);
      await context.close();
    }
    const sorted = [...times].sort((a, b) => a - b);
    console.log(
      `page to first live readout: median ${sorted[RUNS >> 1]!.toFixed(0)} ms, ` +
        `slowest of ${RUNS} ${sorted[RUNS - 1]!.toFixed(0)} ms (budget 2000 ms); ` +
        `first load ${(weight / 1000).toFixed(0)} kB gzip (budget 400 kB)`
    );
  } finally {
    await browser.close();
    stop();
  }
};
