import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

test.describe.configure({ timeout: 120_000 });

async function adviser(page: Page): Promise<{ readonly desk: Desk; readonly dialog: Locator }> {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  await desk.settled();
  await desk.details.getByRole('button', { name: 'Advise turns' }).click();
  const dialog = page.getByRole('dialog', { name: /^Turns and wire for circuit/ });
  await expect(dialog.getByText(/^Recommended: /)).toBeVisible({ timeout: 20_000 });
  return { desk, dialog };
}

const type = async (dialog: Locator, label: string, text: string): Promise<void> => {
  await dialog.getByLabel(label, { exact: true }).fill(text);
  await dialog.getByLabel(label, { exact: true }).press('Enter');
};

test('what is drawn is recommended where it suits, and why', async ({ page }) => {
  const { dialog } = await adviser(page);
  await expect(dialog.getByText(/^Recommended: 3 turns of 14 AWG/)).toBeVisible();
  await expect(dialog.getByText(/with one turn less, L of [\d.]+ µH is under 80/)).toBeVisible();
  await expect(dialog.getByRole('row', { name: /recommended; as drawn/ })).toBeVisible();
  await expect(dialog.getByRole('button', { name: /^Use / })).toBeDisabled();
});

test('more inductance takes more turns, used in one step that undo takes back', async ({ page }) => {
  const { desk, dialog } = await adviser(page);
  await type(dialog, 'Least inductance', '200');
  await expect(dialog.getByText(/^Recommended: 5 turns/)).toBeVisible();
  await dialog.getByRole('button', { name: /^Use 5 turns of 14 AWG/ }).click();
  await expect(dialog).toBeHidden();
  await desk.settled();
  await expect(desk.field('Turns')).toHaveValue('5');
  await desk.undo();
  await expect(desk.field('Turns')).toHaveValue('3');
});

test('by the keyboard alone another number of turns is chosen and used', async ({ page }) => {
  const { desk, dialog } = await adviser(page);
  await dialog.getByRole('radio', { checked: true }).focus();
  await page.keyboard.press('ArrowDown');
  const use = dialog.getByRole('button', { name: /^Use 4 turns of 14 AWG/ });
  await expect(use).toBeEnabled();
  await use.focus();
  await page.keyboard.press('Enter');
  await desk.settled();
  await expect(desk.field('Turns')).toHaveValue('4');
});

test('a wish that nothing satisfies shows what is nearest, and what is wrong with it', async ({ page }) => {
  const { dialog } = await adviser(page);
  await type(dialog, 'Least Q', '200');
  await expect(dialog.getByText(/^Nothing satisfies the wish\. Nearest: /)).toBeVisible();
  await expect(dialog.getByRole('listitem').filter({ hasText: /Q of [\d.]+ is under 200/ })).toBeVisible();
});

test('Escape leaves everything as it was', async ({ page }) => {
  const { desk, dialog } = await adviser(page);
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  await expect(desk.field('Turns')).toHaveValue('3');
});

test.describe('accessibility', () => {
  test('the adviser has no accessibility problem', async ({ page }) => {
    await adviser(page);
    await expectAccessible(page, 'dialog');
  });
});
