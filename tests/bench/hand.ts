/** A real hand on the built page: opens a drawing and takes a loop of it. */
import type { Page } from '@playwright/test';
import { writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { address } from './served';

/** Milliseconds in which everything that follows the first answer has come. */
const REST = 10_000;

/** In a page that nobody has opened yet. */
export const openDrawing = async (page: Page, site: Site): Promise<void> => {
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
  });
  await page.goto(address);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open a file' }).click();
  const buffer = Buffer.from(writeSite(site));
  await (await choosing).setFiles({ name: 'bench.kerfline.json', mimeType: 'application/json', buffer });
  const [loops, lanes] = [site.loops.length, site.lanes.length];
  await page.getByRole('application', { name: new RegExp(`${loops} loops, ${lanes} lanes`) }).waitFor();
  await page.waitForTimeout(REST);
};

/** Brings a loop into the middle of the view, so that a hand finds it. */
export const lookAtLoop = async (page: Page, name: string): Promise<void> => {
  await page.locator('.outline').getByRole('button').filter({ hasText: name }).first().press('Enter');
  await page.keyboard.press('Shift+F');
  await page.keyboard.press('-');
};

interface Gesture {
  readonly moves: number;
  /** Milliseconds between them. */
  readonly pause: number;
  /** Pixels from the middle of the plan. */
  readonly from: readonly [x: number, y: number];
}

/** Drags what lies there about it, and holds it. */
export const dragAbout = async (
  page: Page,
  { moves, pause, from }: Gesture,
  onGrabbed: () => Promise<void>
): Promise<void> => {
  const plan = (await page.getByRole('application').boundingBox())!;
  const [x, y] = [plan.x + plan.width / 2 + from[0], plan.y + plan.height / 2 + from[1]];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 5, y + 5);
  await onGrabbed();
  for (let k = 0; k < moves; k++) {
    await page.mouse.move(x + 5 + 60 * Math.sin(k / 9), y + 5 + 40 * Math.sin(k / 14));
    await page.evaluate((wait) => new Promise((resolve) => setTimeout(resolve, wait)), pause);
  }
};
