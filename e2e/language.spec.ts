/** The page in another language: chosen by hand, at once, and with nothing lost. */
import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

/** Small words that every English sentence has and no German one. */
const ENGLISH = /\b(the|of|is|are|its|and|with|than|would|that|which|turns?|loops?|wire|lane|save|undo|details)\b/i;

async function choose(page: Page, title: RegExp, field: RegExp, language: string): Promise<void> {
  await page.getByRole('banner').getByRole('button', { name: title }).click();
  await page.getByRole('dialog').getByLabel(field).selectOption({ label: language });
}

/** Everything that is written on the screen or said of it, line by line. */
const wordsOf = async (place: Locator): Promise<readonly string[]> =>
  place.evaluate((root) => {
    const said = [...root.querySelectorAll('*')].flatMap((each) =>
      ['aria-label', 'title', 'placeholder'].map((name) => each.getAttribute(name) ?? '')
    );
    const written = root instanceof HTMLElement ? root.innerText.split('\n') : [];
    return [...said, ...written].filter((text) => text.trim() !== '');
  });

test('a person works in German, types a comma, and goes back', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Stop line with two lanes');
  await desk.selectLoop('Left, front');
  const english = await page.getByRole('region', { name: 'Tables' }).innerText();
  expect(english).not.toMatch(/\d,\d/);

  await choose(page, /^Settings/, /^Language$/, 'Deutsch');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
});
