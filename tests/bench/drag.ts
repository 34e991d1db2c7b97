/** A loop dragged by a real hand in the built page, on a large drawing: how long the page works for each move. */
import { chromium, type Page } from '@playwright/test';
import { writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { launchOptions } from '../../src/tooling/browser.mjs';
import { bigSite } from '../support/big-site';
import { address, serve } from './served';

const LOOPS = 200;
const LANES = 40;
const MOVES = 120;

const drawing = (): Site => {
  const site = bigSite(LOOPS);
  const lanes = Array.from({ length: LANES }, (_, k) => ({
    ...site.lanes[k % site.lanes.length]!,
    id: `lane${k + 1}`,
    name: `Lane ${k + 1}`,
    centreline: site.lanes[0]!.centreline.map(([, y]) => [3.5 * k, y] as const)
  }));
  return { ...site, lanes };
};

interface Watched extends Window {
  /** Milliseconds of work for each move: its listeners, what they set going, and the frame that shows it. */
  works: number[];
}

/** Before anything of the page runs. */
const watch = () => {
  const watched = window as unknown as Watched;
  watched.works = [];
  const nextFrame = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (callback) =>
    nextFrame((time) => {
      const start = performance.now();
      callback(time);
      const last = watched.works.length - 1;
      if (last >= 0) watched.works[last]! += performance.now() - start;
    });
  window.addEventListener(
    'pointermove',
    () => {
      const start = performance.now();
      const { port1, port2 } = new MessageChannel();
      const move = watched.works.push(0) - 1;
      // after every listener, and all that they left to do at once
      port1.onmessage = () => (watched.works[move]! += performance.now() - start);
      port2.postMessage(null);
    },
    { capture: true }
  );
};

const open = async (page: Page, text: string): Promise<void> => {
  await page.goto(address);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  const buffer = Buffer.from(text);
  await (await choosing).setFiles({ name: 'bench.kerfline.json', mimeType: 'application/json', buffer });
  await page.getByRole('application', { name: new RegExp(`${LOOPS} loops, ${LANES} lanes`) }).waitFor();
  await page.waitForTimeout(10_000);
};

export const measureDrag = async (): Promise<void> => {
  const stop = await serve();
  const browser = await chromium.launch(launchOptions());
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.addInitScript(() => {
      for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
    });
    await page.addInitScript(watch);
    await open(page, writeSite(drawing()));
    // the loop in the middle of the view, so that a hand finds it
    await page.locator('.outline').getByRole('button').filter({ hasText: 'Loop 98' }).first().press('Enter');
    await page.keyboard.press('Shift+F');
    await page.keyboard.press('-');
    const plan = (await page.getByRole('application').boundingBox())!;
    const [x, y] = [plan.x + plan.width / 2, plan.y + plan.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 5, y + 5);
    await page.evaluate(() => ((window as unknown as Watched).works = []));
    for (let k = 0; k < MOVES; k++) {
      await page.mouse.move(x + 5 + 60 * Math.sin(k / 9), y + 5 + 40 * Math.sin(k / 14));
      await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 40)));
    }
    const works = await page.evaluate(() => (window as unknown as Watched).works);
    const undo = page.getByRole('button', { name: /^Undo: Move/ });
    await page.mouse.up();
    await undo.waitFor();
    const sorted = [...works].sort((a, b) => a - b);
    const at = (share: number) =>
      sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!.toFixed(1);
    console.log(
      `page, a loop dragged among ${LOOPS} loops and ${LANES} lanes: ${works.length} moves, ` +
        `median ${at(0.5)} ms, p95 ${at(0.95)} ms (budget p95 20 ms)`
    );
  } finally {
    await browser.close();
    stop();
  }
};
