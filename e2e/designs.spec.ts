import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

// A comparison waits for every figure of every design.
test.describe.configure({ timeout: 180_000 });

const LONG = { timeout: 100_000 };

interface Saved {
  readonly variant?: string;
  readonly variants?: readonly { readonly name: string; readonly note?: string }[];
  readonly circuits: readonly { readonly leadIn: { readonly length: number } }[];
}
const saved = async (desk: Desk) => JSON.parse(await desk.savedText()) as Saved;
const names = async (desk: Desk) => (await saved(desk)).variants?.map(({ name }) => name);

const SAMPLE = readFileSync('samples/two-ways-to-guard-a-gate.kerfline.json', 'utf8');

/** One loop before a gate, nothing kept yet. */
function oneLoop(): string {
  const site = JSON.parse(SAMPLE) as { readonly variants: readonly { readonly design: object }[] };
  const loose = { ...site, ...site.variants[0]!.design, name: 'Harrow Lane gate' };
  return JSON.stringify({ ...loose, variants: undefined, variant: undefined });
}

async function atDesigns(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(oneLoop());
  await expect(page).toHaveTitle(/Harrow Lane/);
  await desk.lookAt('Circuits');
  await desk.tables.getByRole('button', { name: 'Before the gate', exact: true }).first().click();
  await desk.lookAt('Compare');
  await expect(desk.tables.getByText('Keep the present design under a name', { exact: false })).toBeVisible();
  return desk;
}

async function keep(desk: Desk, name: string) {
  await desk.tables.getByLabel('Name for the present design').fill(name);
  await desk.tables.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(desk.tables.getByRole('checkbox', { name: `Compare ${name}` })).toBeVisible();
}

const results = (desk: Desk) => desk.tables.getByRole('table', { name: 'Designs side by side' });

test('a design is kept, changed, compared, left for another and brought back', async ({ page }) => {
  const desk = await atDesigns(page);
  await keep(desk, 'As sketched');
  await expect(desk.tables.getByText('Change the drawing: what becomes', { exact: false })).toBeVisible();

  const turns = page.getByLabel('Turns', { exact: true });
  const before = Number(await turns.inputValue());
  await turns.fill(String(before - 1));
  await turns.press('Enter');
  await expect(desk.tables.getByText('changed since As sketched was kept')).toBeVisible();
  await expect(desk.tables.getByText(`turns ${before} → ${before - 1}`)).toBeVisible();
  await expect(results(desk).getByRole('row', { name: /Inductance L/ })).toBeVisible(LONG);
  await expect(
    results(desk)
      .getByRole('row', { name: /Motorcycle, response on the worst path/ })
      .first()
  ).toContainText(/better|worse/);
  // far above the threshold either way
  await expect(
    results(desk)
      .getByRole('row', { name: /Car, margin over the threshold/ })
      .first()
  ).toContainText('different');
  await expect(desk.tables.getByRole('slider', { name: /^Place along the way/ }).first()).toBeVisible();

  await keep(desk, 'One turn less');
  await desk.tables.getByRole('button', { name: /^Switch to As sketched/ }).click();
  await expect(turns).toHaveValue(String(before));
  await page.keyboard.press('Control+z');
  await expect(turns).toHaveValue(String(before - 1));
  await page.keyboard.press('Control+Shift+z');
  await expect(turns).toHaveValue(String(before));

  // going back to what was kept
  await turns.fill(String(before + 2));
  await turns.press('Enter');
  await desk.tables.getByRole('button', { name: 'Go back', exact: true }).click();
  await expect(turns).toHaveValue(String(before));

  await desk.tables.getByText('More about One turn less').click();
  await desk.tables.getByRole('button', { name: 'Remove', exact: true }).click();
  expect(await names(desk)).toEqual(['As sketched']);
  await page.keyboard.press('Control+z');
  expect(await names(desk)).toEqual(['As sketched', 'One turn less']);

  await page.reload();
  await desk.lookAt('Compare');
  await expect(desk.tables.getByRole('checkbox', { name: 'Compare One turn less' })).toBeVisible();
});

test('two designs of a sample stand side by side, by keyboard and for everybody', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(SAMPLE);
  await expect(page).toHaveTitle(/Sedgewell/);
  await desk.lookAt('Compare');
  await expect(results(desk).getByRole('row', { name: /^Saw cut/ })).toContainText('worse', LONG);
  await expect(results(desk).getByRole('row', { name: /misses a motorcycle/ })).toContainText('better');
  await expect(results(desk).getByRole('row', { name: /Lead-in cable/ })).toHaveCount(0);
  await desk.tables.getByLabel('Show what is the same too').check();
  await expect(results(desk).getByRole('row', { name: /Lead-in cable/ })).toBeVisible();

  const long = desk.tables.getByRole('button', { name: 'Loop Long', exact: true });
  await long.press('Enter');
  await expect(long).toHaveAttribute('aria-pressed', 'true');

  const place = desk.tables.getByRole('slider', { name: /^Place along the way/ });
  await place.focus();
  const at = await place.getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowRight');
  await expect(place).not.toHaveAttribute('aria-valuetext', at ?? '');
  await expect(place).toHaveAttribute('aria-valuetext', /One long rectangle .* %, Two in series .* %/);

  const file = page.waitForEvent('download');
  await desk.tables.getByRole('region', { name: 'Results' }).getByRole('button', { name: /CSV/ }).click();
  const text = readFileSync((await (await file).path()) ?? '', 'utf8');
  expect(text).toContain('One long rectangle');
  await expectAccessible(page, '.designs');
});

test('the palette keeps a design', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('keep the present design');
  await page.keyboard.press('Enter');
  const field = desk.tables.getByLabel('Name for the present design');
  await expect(field).toBeFocused();
  await field.press('Enter');
  expect(await names(desk)).toEqual(['Variant 1']);
});
