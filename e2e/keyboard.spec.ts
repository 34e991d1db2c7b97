import { Desk } from './hands';
import { expect, test } from './support/test';

test('a loop is inserted, sized, selected, moved and deleted without a pointer', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');

  await desk.plan.focus();
  await page.keyboard.press('Shift+R');
  expect(await desk.loopCount()).toBe(1);
  expect(await desk.inductance()).toBeGreaterThan(10);

  await desk.field('Width').focus();
  await page.keyboard.type('2.4m');
  await page.keyboard.press('Enter');
  await expect(desk.field('Width')).toHaveValue('2.4 m');

  const item = page.locator('.outline').getByRole('button', { name: /rectangle loop/ });
  await desk.plan.focus();
  await page.keyboard.press('Escape');
  await expect(desk.details.getByLabel('Site name')).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(item).toBeFocused();
  await expect(item).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(item).toHaveAttribute('aria-pressed', 'true');

  const x = await desk.field('Centre x').inputValue();
  await page.keyboard.press('ArrowRight');
  await expect(desk.field('Centre x')).not.toHaveValue(x);

  await page.keyboard.press('Delete');
  expect(await desk.loopCount()).toBe(0);
});

test('the plan is one stop on the way of the Tab key, and keys work the tools from there', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.plan.focus();
  await expect(desk.plan).toBeFocused();
  await page.keyboard.press('c');
  await expect(page.getByRole('button', { name: 'Circle', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true'
  );
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Select', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true'
  );
});

test('the question mark opens a list of every command with its key, and Escape closes it', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.plan.focus();
  await page.keyboard.press('?');
  const help = page.getByRole('dialog', { name: 'Help and keys' });
  await expect(help.locator('dl > div').filter({ hasText: 'Draw a rectangle' })).toContainText('R');
  await page.keyboard.press('Escape');
  await expect(help).toHaveCount(0);
});
