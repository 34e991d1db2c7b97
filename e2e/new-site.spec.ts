import { Desk } from './hands';
import { expect, test } from './support/test';

test('each situation starts as a site that is read at once', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.getByRole('button', { name: 'New', exact: true }).click();
  const cards = page.getByRole('dialog').getByRole('listitem').getByRole('button');
  // the dialog is loaded when it is first asked for
  await expect(cards.first()).toBeVisible();
  const count = await cards.count();
  expect(count).toBeGreaterThanOrEqual(6);
  await page.keyboard.press('Escape');
  for (let at = 0; at < count; at++) {
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await cards.nth(at).click();
    await desk.settled();
    const loops = await desk.loopCount();
    const rows = await desk.tables.getByRole('row').filter({ hasText: 'µH' }).count();
    expect(rows > 0).toBe(loops > 0);
    await expect(desk.details.getByLabel('Site name')).not.toHaveValue('');
  }
});

test('what was open before a new site can be opened again', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Driveway gate');
  await desk.type('Site name', 'Hollow Court, gate');
  const text = await desk.savedText();
  await desk.startFrom('Blank');
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /Hollow Court, gate/ })
    .click();
  await desk.settled();
  expect(await desk.savedText()).toBe(text);
});
