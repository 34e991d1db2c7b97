import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

// The analysis walks every element several times, which takes a slow machine long.
test.describe.configure({ timeout: 120_000 });

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme}`, () => {
    test.use({ colorScheme });

    test('the page as it opens has no accessibility problem', async ({ page }) => {
      const desk = new Desk(page);
      await desk.open();
      await expectAccessible(page);
    });

    for (const thing of ['lane', 'loop', 'vehicle']) {
      test(`with a ${thing} selected it has none`, async ({ page }) => {
        const desk = new Desk(page);
        await desk.open();
        await desk.outlineItem(thing).press('Enter');
        await desk.settled();
        await expectAccessible(page);
      });
    }

    for (const view of ['Frequencies', 'Passing', 'Quantities']) {
      test(`with the ${view.toLowerCase()} in sight, and a loop’s circuit, it has none`, async ({ page }) => {
        const desk = new Desk(page);
        await desk.open();
        await desk.tables.getByRole('tab', { name: view }).click();
        await desk.outlineItem('loop').press('Enter');
        await desk.details.getByRole('tab', { name: 'Circuit' }).click();
        await desk.settled();
        await expectAccessible(page);
      });
    }

    for (const name of ['New', 'Open', 'Help and keys', 'Settings']) {
      test(`the dialog behind “${name}” has none`, async ({ page }) => {
        const desk = new Desk(page);
        await desk.open();
        await page.getByRole('button', { name, exact: true }).click();
        await expect(page.getByRole('dialog')).toBeVisible();
        await expectAccessible(page, 'dialog');
      });
    }

    for (const name of ['Ideas to try', 'Terms of the trade']) {
      test(`the dialog that help opens by “${name}” has none`, async ({ page }) => {
        const desk = new Desk(page);
        await desk.open();
        await page.getByRole('button', { name: 'Help and keys', exact: true }).click();
        await page.getByRole('button', { name, exact: true }).click();
        await expect(page.getByRole('dialog', { name: /^(Ideas|Terms of the trade)$/ })).toBeVisible();
        await expectAccessible(page, 'dialog');
      });
    }

    test('an explained term has none', async ({ page }) => {
      const desk = new Desk(page);
      await desk.open();
      await desk.outlineItem('loop').press('Enter');
      await page.getByRole('button', { name: 'What is this: Turns' }).click();
      await expect(page.getByText('How often the wire goes round')).toBeVisible();
      await expectAccessible(page);
    });

    test('the list of what is wrong with a file has none', async ({ page }) => {
      const desk = new Desk(page);
      await desk.open();
      await desk.openText('{}');
      await expect(page.getByRole('dialog')).toBeVisible();
      await expectAccessible(page, 'dialog');
    });
  });
}

test('the theme can be chosen against the system, and stays chosen', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const background = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const paper = () => desk.plan.evaluate((plan) => getComputedStyle(plan).backgroundColor);
  const [light, lightPaper] = [await background(), await paper()];
  await page.getByRole('button', { name: 'Settings', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Settings' });
  await dialog.getByLabel('Page', { exact: true }).selectOption('dark');
  expect(await background()).not.toBe(light);
  await expect.poll(paper).not.toBe(lightPaper);
  await dialog.getByLabel('Plan', { exact: true }).selectOption('light');
  await expect.poll(paper).toBe(lightPaper);
  await page.keyboard.press('Escape');
  const dark = await background();
  await page.reload();
  await desk.settled();
  expect(await background()).toBe(dark);
  expect(await paper()).toBe(lightPaper);
});

for (const [width, height] of [
  [1024, 768],
  [820, 1180],
  // A usual screen magnified twice.
  [640, 512]
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
