import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

// The analysis walks every element several times, which takes a slow machine long.
test.describe.configure({ timeout: 120_000 });

test.describe('accessibility', () => {
  test('the page as it opens has no accessibility problem', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await expectAccessible(page);
  });

  test('with a lane, a loop or a vehicle selected it has none', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    for (const thing of ['lane', 'loop', 'vehicle']) {
      await desk.outlineItem(thing).press('Enter');
      await desk.settled();
      await expectAccessible(page);
    }
  });

  test('with each table in sight, and a loop’s circuit, it has none', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.outlineItem('loop').press('Enter');
    await desk.details.getByRole('tab', { name: 'Circuit' }).click();
    for (const view of ['Frequencies', 'Passing', 'Quantities']) {
      await desk.tables.getByRole('tab', { name: view }).click();
      await desk.settled();
      await expectAccessible(page);
    }
  });

  test('the dialogs behind the header’s buttons have none', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    for (const name of ['New', 'Open', 'Help and keys', 'Settings']) {
      await page.getByRole('button', { name, exact: true }).click();
      // what it holds may still be loading when it opens
      await expect(page.getByRole('dialog').locator('button, select').nth(1)).toBeVisible();
      await expectAccessible(page, 'dialog');
      await page.keyboard.press('Escape');
      await expect(page.getByRole('dialog')).toHaveCount(0);
    }
  });

  test('the sites that are kept, one about to be renamed and one in the bin, have none', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    for (const site of ['Orchard gate', 'Depot yard']) {
      await desk.startFrom('Blank');
      await desk.type('Site name', site);
    }
    await desk.kept();
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    const sites = page.getByRole('dialog', { name: 'Open a site' });
    const row = (name: string) => sites.getByRole('listitem').filter({ hasText: name });
    await row('Orchard gate').getByRole('button', { name: 'Delete' }).click();
    await expect(sites.getByRole('status')).toContainText('is in the bin');
    await row('Depot yard').getByRole('button', { name: 'Rename' }).click();
    await expect(sites.getByLabel('New name')).toBeVisible();
    await expectAccessible(page, 'dialog');
  });

  test('a link to share has none', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await page.getByRole('button', { name: 'More about files' }).click();
    await page.getByRole('button', { name: /^Share as a link/ }).click();
    await expect(page.getByLabel('Link', { exact: true })).not.toHaveValue('');
    await expectAccessible(page, 'dialog');
  });

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
