import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme}`, () => {
    test.use({ colorScheme });

    test('the page has no accessibility problem, whatever is selected', async ({ page }) => {
      const desk = new Desk(page);
      await desk.open();
      await expectAccessible(page);
      const items = page.locator('.outline').getByRole('button');
      for (const name of [/ lane/, / loop/, / vehicle/]) {
        await items.filter({ hasText: name }).first().press('Enter');
        await desk.settled();
        await expectAccessible(page);
      }
    });

    test('every table and the circuit’s side of a loop have none', async ({ page }) => {
      const desk = new Desk(page);
      await desk.open();
      for (const view of ['Neighbours', 'Quantities', 'Circuits']) {
        await desk.tables.getByRole('tab', { name: view }).click();
        await expectAccessible(page);
      }
      await page.locator('.outline').getByRole('button', { name: / loop/ }).first().press('Enter');
      await desk.details.getByRole('tab', { name: 'Circuit' }).click();
      await desk.settled();
      await expectAccessible(page);
    });

    test('the dialogs have none', async ({ page }) => {
      const desk = new Desk(page);
      await desk.open();
      for (const name of ['New', 'Open', 'Help and keys']) {
        await page.getByRole('button', { name, exact: true }).click();
        await expect(page.getByRole('dialog')).toBeVisible();
        await expectAccessible(page);
        await page.keyboard.press('Escape');
      }
      await desk.openText('{}');
      await expect(page.getByRole('dialog')).toBeVisible();
      await expectAccessible(page);
    });
  });
}

test('the theme can be chosen against the system, and stays chosen', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const background = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const light = await background();
  await page.getByRole('radio', { name: 'Dark theme' }).check({ force: true });
  expect(await background()).not.toBe(light);
  const dark = await background();
  await page.reload();
  await desk.settled();
  expect(await background()).toBe(dark);
});

for (const [width, height] of [
  [1024, 768],
  [820, 1180]
] as const) {
  test(`at ${width} by ${height} nothing is cut off sideways`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const desk = new Desk(page);
    await desk.open();
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await expect(desk.plan).toBeInViewport({ ratio: 0.5 });
  });
}
