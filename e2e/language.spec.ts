/** The page in another language: as the browser asks, or chosen by hand, at once, and with nothing lost. */
import type { Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

/** Small words and words of the trade that no German sentence has. */
const ENGLISH =
  /\b(the|of|is|are|its|and|with|than|would|be|that|which|this|no|to|by|at|turns?|loops?|wires?|lanes?|save|undo|details|settings?)\b/i;
/** What is the same in both: names of ours, of units, and of other languages. */
const SAME = /^(English|Kerfline)$/;

/** The number of a clause of a standard is a name: 8-20.3(14)D. */
const CLAUSE = /\d+-\d+\.\d+\(\d+\)[A-Z]?/gu;

/** Everything that is written on the screen or said of it. */
async function said(page: Page): Promise<readonly string[]> {
  const all = await page.evaluate(() => {
    const attributes = [...document.querySelectorAll('body *')].flatMap((each) =>
      ['aria-label', 'aria-description', 'aria-roledescription', 'title', 'placeholder', 'alt'].map(
        (name) => each.getAttribute(name) ?? ''
      )
    );
    return [...attributes, ...document.body.innerText.split('\n')];
  });
  return [...new Set(all.map((text) => text.trim()))].filter((text) => text !== '' && !SAME.test(text));
}

async function expectGerman(page: Page): Promise<void> {
  const words = await said(page);
  expect(words.length, 'something is said').toBeGreaterThan(20);
  expect(
    words.filter((text) => ENGLISH.test(text)),
    'English on the page'
  ).toEqual([]);
  expect(
    words.filter((text) => /\d\.\d/.test(text.replace(CLAUSE, '')) && !/^(Version|Ausgabe) /.test(text)),
    'decimal points'
  ).toEqual([]);
}

async function choose(page: Page, settings: string, field: string, language: string, close: string) {
  await page.getByRole('button', { name: settings, exact: true }).click();
  await page.getByRole('dialog').getByLabel(field, { exact: true }).selectOption({ label: language });
  await page.getByRole('dialog').getByRole('button', { name: close, exact: true }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
}

test.describe('a browser that asks for German', () => {
  test.use({ locale: 'de-AT' });

  test('is answered in German on every view, with decimal commas', async ({ page }) => {
    test.slow();
    await page.goto('./');
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await expect(page.getByRole('application')).toBeVisible();
    await expect(page.locator('[aria-busy="true"]')).toHaveCount(0, { timeout: 20_000 });
    await expectGerman(page);
    await expect(page.getByRole('tabpanel')).toContainText(/\d,\d+\s*µH/);

    for (const tab of await page.getByRole('tab').all()) {
      await tab.click();
      await expect(page.locator('[aria-busy="true"]')).toHaveCount(0, { timeout: 20_000 });
      await expectGerman(page);
    }
    await expectAccessible(page);
  });

  test('finds German situations, and the site that is begun has German names', async ({ page }) => {
    await page.goto('./');
    await page.getByRole('button', { name: 'Neu', exact: true }).click();
    const gate = page.getByRole('dialog').getByRole('button', { name: 'Tor an einer Einfahrt' });
    await expect(gate).toBeVisible();
    await expectGerman(page);
    await gate.click();
    await expect(page).toHaveTitle('Tor an einer Einfahrt – Kerfline');
    await expectGerman(page);
  });
});

test('German is chosen by hand, understands a comma, asks about a point, and gives way again', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  await desk.type('Width', '1.5 m');
  // thirty wires of 3.8 mm, one over the other, are 114 mm high
  await desk.type('Turns', '30');
  await desk.settled();
  const english = page.getByRole('button', { name: /The wires of L1 stand 64 mm out of a slot 50 mm deep/ });
  await expect(english).toBeVisible();

  await choose(page, 'Settings', 'Language', 'Deutsch', 'Schließen');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(
    page.getByRole('button', { name: /Die Drähte von L1 ragen 64 mm aus einer 50 mm tiefen Fuge/ })
  ).toBeVisible();
  await expect(english).toHaveCount(0);

  const width = page.getByLabel('Breite', { exact: true });
  await expect(width).toHaveValue('1,5 m');
  await width.fill('1,8');
  await width.press('Enter');
  await expect(width).toHaveValue('1,8 m');
  await width.fill('1.234');
  await width.press('Enter');
  await expect(page.getByText(/schreiben Sie 1,234 mit Komma oder 1234 ohne Punkt/)).toBeVisible();
  await width.fill('1,234 m');
  await width.press('Enter');
  await expect(width).toHaveValue('1,234 m');

  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await choose(page, 'Einstellungen', 'Sprache', 'English', 'Close');
  await desk.outlineItem('loop').press('Enter');
  await expect(desk.field('Width')).toHaveValue('1.234 m');
});

test('what was drawn can still be undone after the language has changed, by its name in that language', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  expect(await desk.loopCount()).toBe(1);
  await desk.type('Turns', '5');
  await choose(page, 'Settings', 'Language', 'Deutsch', 'Schließen');
  await page.getByRole('button', { name: /^Rückgängig: L1: Windungen ändern/ }).click();
  await page.getByRole('button', { name: /^Rückgängig: Rechteck zeichnen/ }).click();
  await expect(page.getByRole('button', { name: /^Wiederholen: Rechteck zeichnen/ })).toBeVisible();
  await choose(page, 'Einstellungen', 'Sprache', 'English', 'Close');
  expect(await desk.loopCount()).toBe(0);
});
