import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const TURNS = 'lessons/01-turns.kerfline-lesson.json';

const lessonsOf = (page: Page): Locator => page.getByRole('dialog', { name: 'Lessons' });

/** Microhenries; the lesson shows no other unit. */
async function inductance(dialog: Locator): Promise<number> {
  const row = dialog.getByRole('row', { name: /Inductance of the loop alone/ });
  return Number.parseFloat(await row.getByRole('cell').innerText());
}

test('a class runs a lesson to its outcome by keyboard, in large type on the whole screen', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  const name = await page.getByRole('textbox', { name: 'Site name' }).first().inputValue();
  await page.keyboard.press('Control+K');
  await expect(page.getByRole('combobox', { name: 'What do you want to do?' })).toBeFocused();
  await page.keyboard.type('lessons');
  await page.keyboard.press('Enter');
  const dialog = lessonsOf(page);
  await dialog.getByRole('button', { name: /^Why turns square/ }).press('Enter');
  const heading = dialog.getByRole('heading', { name: 'Why turns square' });
  await expect(heading).toBeFocused();

  await dialog.getByRole('button', { name: 'Full screen, large type' }).press('Enter');
  const question = dialog.getByText('It is wound with four instead');
  const size = () => question.evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
  expect(await size()).toBeGreaterThanOrEqual(24 * 1.5);
  await page.keyboard.press('Escape');
  await expect(dialog.getByRole('button', { name: 'Full screen, large type' })).toBeVisible();
  expect(await size()).toBe(24);

  // nothing of the outcome before the prediction, and no way to it
  await expect(dialog.getByText(/c[ao]me true/)).toHaveCount(0);
  for (const step of ['Experiment', 'Outcome'])
    await expect(dialog.getByRole('button', { name: step })).toBeDisabled();
  const commit = dialog.getByRole('button', { name: 'This is my prediction' });
  await commit.press('Enter');
  await expect(dialog.getByRole('alert')).toHaveText(/Choose one first/);
  await page.keyboard.press('1');
  await expect(dialog.getByRole('radio', { name: /It doubles/ })).toBeChecked();
  await page.keyboard.press('Enter');

  const slider = dialog.getByRole('slider', { name: 'Turns of A', exact: true });
  await slider.press('Home');
  await slider.press('ArrowRight');
  await expect(slider).toHaveAttribute('aria-valuetext', '2');
  const two = await inductance(dialog);
  await slider.press('ArrowRight');
  await slider.press('ArrowRight');
  const four = await inductance(dialog);
  // FHWA-IP-90-002's rule of thumb L ∝ N² + N gives 20/6 for four turns against two; it is good to a tenth
  expect(four / two).toBeGreaterThan((20 / 6) * 0.9);
  expect(four / two).toBeLessThan((20 / 6) * 1.1);
  await expect(dialog.getByRole('img', { name: /^Plan/ })).toContainText('4 turns');

  await dialog.getByRole('button', { name: 'What came out?' }).press('Enter');
  await expect(dialog.getByText('It came out differently from your prediction.')).toBeVisible();
  await expect(
    dialog.getByRole('listitem').filter({ hasText: /(?<!not )came true|^.*\bcame true$/ })
  ).toContainText(['more than two and a half times']);
  await expect(dialog.getByText(/the inductance goes from/)).toHaveText(
    new RegExp(`from ${two.toFixed(2)}\\sµH to ${four.toFixed(1)}\\sµH`)
  );
  await dialog.getByRole('button', { name: 'All lessons' }).press('Enter');
  await expect(dialog.getByRole('button', { name: /^Why turns square/ })).toBeFocused();
  await expect(dialog.getByText('1 of 12 done in this visit')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('textbox', { name: 'Site name' }).first()).toHaveValue(name);
});

test('a lesson of one’s own with a fault is refused with the place, and opens once it is mended', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.lookAt('Compare');
  await desk.tables.getByRole('button', { name: 'Lessons' }).click();
  const dialog = lessonsOf(page);
  const own = JSON.parse(readFileSync(TURNS, 'utf8')) as {
    id: string;
    title: { en: string };
    site: { loops: { turns: number }[] };
  };
  own.id = 'mine';
  own.title.en = 'Turns of my own';
  const choose = (lesson: unknown) =>
    dialog.getByLabel('Open a lesson from a file').setInputFiles({
      name: 'mine.json',
      mimeType: 'application/json',
      buffer: Buffer.from(typeof lesson === 'string' ? lesson : JSON.stringify(lesson))
    });
  await choose({ ...own, site: { ...own.site, loops: [{ ...own.site.loops[0], turns: 0 }] } });
  const refusal = dialog.getByRole('alert');
  await expect(refusal).toContainText('“mine.json” is not a lesson');
  await expect(refusal.getByRole('rowheader')).toHaveText(['site.loops[0].turns']);
  await choose(
    JSON.stringify(own, null, 1).replace('"format": "kerfline-lesson",', '"format": "kerfline-lesson"')
  );
  await expect(refusal).toContainText('line 3, column 2');
  await choose(own);
  await expect(dialog.getByRole('heading', { name: 'Turns of my own' })).toBeFocused();
  await dialog.getByRole('radio').nth(1).check();
  await dialog.getByRole('button', { name: 'This is my prediction' }).click();
  await dialog.getByRole('button', { name: 'What came out?' }).click();
  await expect(dialog.getByText('Your prediction came true.')).toBeVisible();
  await dialog.getByRole('button', { name: 'Open this site' }).click();
  await expect(dialog).toBeHidden();
  await desk.settled();
  await expect(page.getByRole('textbox', { name: 'Site name' }).first()).toHaveValue('Turns of my own');
});

test('every step of a lesson is accessible in both themes', async ({ page }) => {
  test.setTimeout(120_000);
  const desk = new Desk(page);
  await desk.open();
  await page.getByRole('button', { name: 'Help and keys', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Lessons' }).click();
  const dialog = lessonsOf(page);
  const lesson = dialog.getByRole('button', { name: /figure of eight/ });
  await expect(lesson).toBeVisible();
  await expectAccessible(page, 'dialog');
  await lesson.click();
  await dialog.getByRole('radio').first().check();
  await expectAccessible(page, 'dialog');
  await dialog.getByRole('button', { name: 'This is my prediction' }).click();
  await expect(dialog.getByRole('slider', { name: /Field under the road/ })).toBeVisible();
  await dialog.getByText('Take the pictures and figures away').click();
  // the file is of the lesson, not of the site that is open behind it
  const file = page.waitForEvent('download');
  await dialog.getByRole('button', { name: /CSV/ }).click();
  expect((await file).suggestedFilename()).toMatch(/^Why-a-figure-of-eight/);
  await expectAccessible(page, 'dialog');
  await dialog.getByRole('button', { name: 'What came out?' }).click();
  await expect(dialog.getByRole('heading', { name: 'Why', exact: true })).toBeVisible();
  await expectAccessible(page, 'dialog');
});
