import type { Page } from '@playwright/test';
import { launchOptions } from '../src/tooling/browser.mjs';
import { Desk } from './hands';
import { junction } from './support/pictures';
import { expect, test } from './support/test';

/**
 * Whoever looks for a file takes minutes, and in them the browser clears away what nothing holds. Here it
 * clears away at once.
 */
const { args, ...browser } = launchOptions();
test.use({ launchOptions: { ...browser, args: [...args, '--js-flags=--expose-gc'] } });

const sweepWhileChoosing = (page: Page) =>
  page.addInitScript(() => {
    const { gc } = globalThis as unknown as { gc: () => void };
    const click: () => void = Reflect.get(HTMLElement.prototype, 'click');
    HTMLInputElement.prototype.click = function () {
      click.call(this);
      if (this.type === 'file') queueMicrotask(gc);
    };
  });

test('a picture that is looked for at length still comes in', async ({ page }) => {
  await sweepWhileChoosing(page);
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.plan.focus();
  const choosing = page.waitForEvent('filechooser');
  await page.keyboard.press('Shift+I');
  await (await choosing).setFiles({ name: 'Lot.png', mimeType: 'image/png', buffer: junction() });
  await expect(page.getByRole('form', { name: 'Scale the picture' })).toBeVisible();
});

test('a site that is looked for at length still opens', async ({ page }) => {
  await sweepWhileChoosing(page);
  const desk = new Desk(page);
  await desk.open();
  const text = await desk.savedText();
  await desk.startFrom('Blank');
  await desk.openText(text);
  await expect.poll(() => desk.loopCount()).toBeGreaterThan(0);
});
