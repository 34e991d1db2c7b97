/** A loop dragged by a real hand in the built page, on a large drawing: how long the page works for each move. */
import { chromium } from '@playwright/test';
import type { Site } from '#plan/schema';
import { launchOptions } from '../../src/tooling/browser.mjs';
import { bigSite } from '../support/big-site';
import { dragAbout, lookAtLoop, openDrawing } from './hand';
import { serve } from './served';

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

export const measureDrag = async (): Promise<void> => {
  const stop = await serve();
  const browser = await chromium.launch(launchOptions());
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.addInitScript(watch);
    await openDrawing(page, drawing());
    await lookAtLoop(page, 'Loop 98');
    await dragAbout(page, { moves: MOVES, pause: 40, from: [0, 0] }, () =>
      page.evaluate(() => {
        (window as unknown as Watched).works = [];
      })
    );
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
