import type { Page, Route } from '@playwright/test';
import { Desk } from './hands';
import { expect, test } from './support/test';

const MISSING = 'This part of the program could not be loaded.';

/**
 * Puts somebody between the page and the parts that it asks for. From the start: a page that is busy may fetch past a watch
 * that is set later.
 */
async function between(page: Page) {
  let answer = (route: Route): Promise<void> | undefined => route.continue();
  await page.route('**/_app/immutable/**/*.js', (route) => answer(route));
  return {
    /** As after a newer release has taken the place of this one on the server. */
    replace() {
      answer = (route) =>
        route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("not this release");' });
    },
    /** As on a network that has lost its way; the result lets everything through. */
    hold() {
      const held: Route[] = [];
      answer = (route) => {
        held.push(route);
        return undefined;
      };
      return async () => {
        answer = (route) => route.continue();
        await Promise.all(held.map((route) => route.continue()));
      };
    }
  };
}

async function blankWithLoop(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.plan.focus();
  await page.keyboard.press('Shift+R');
  await desk.settled();
  await expect.poll(() => desk.loopCount()).toBe(1);
  return desk;
}

test('a part of the program that cannot be had is said, and the keys stay with the drawing', async ({
  page
}) => {
  const server = await between(page);
  const desk = await blankWithLoop(page);
  server.replace();
  await page.keyboard.press('?');
  await expect(page.getByText(MISSING).first()).toBeVisible();
  await page.keyboard.press('Control+Z');
  await expect.poll(() => desk.loopCount()).toBe(0);
  await desk.lookAt('Compare');
  await expect(desk.tables.getByText(MISSING)).toBeVisible();
  const plan = page.getByRole('region', { name: 'Plan', exact: true });
  await plan.getByRole('button', { name: 'Snapping' }).click();
  await expect(plan.getByText(MISSING).last()).toBeVisible();
});

test('a part that does not come is waited for with a word, and can be given up', async ({ page }) => {
  const server = await between(page);
  const desk = await blankWithLoop(page);
  const release = server.hold();
  await page.keyboard.press('?');
  const word = page.getByText('Loading …');
  await expect(word).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(word).toBeHidden();
  await page.keyboard.press('Control+Z');
  await expect.poll(() => desk.loopCount()).toBe(0);
  await release();
  await page.keyboard.press('Control+Shift+Z');
  await expect.poll(() => desk.loopCount()).toBe(1);
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Help and keys' })).toBeVisible();
});
