import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const SAMPLE = JSON.parse(readFileSync('samples/exit-lanes-that-beat.kerfline.json', 'utf8')) as object;

/** The lead-in of 20.05 m has 0.33 Ω and some 13 µH: what is left at Exit 1 is half of a lead-in. Exit 2 reads as designed. */
const READINGS = [
  {
    id: 'R1',
    circuit: 'C1',
    at: '2026-11-20T09:30',
    testPoint: 'cabinet',
    resistanceDc_ohm: 0.17,
    inductance_H: 6.5e-6,
    insulation_ohm: 4e8
  },
  {
    id: 'R2',
    circuit: 'C2',
    at: '2026-11-20T09:40',
    testPoint: 'cabinet',
    resistanceDc_ohm: 0.54,
    inductance_H: 88.9e-6,
    insulation_ohm: 4e8
  },
  {
    id: 'R3',
    circuit: 'C3',
    at: '2025-04-02T09:40',
    testPoint: 'cabinet',
    resistanceDc_ohm: 0.54,
    inductance_H: 60e-6
  },
  { id: 'R4', circuit: 'C3', at: '2024-04-02T09:40', testPoint: 'cabinet', resistanceDc_ohm: 0.54 }
];

async function atTheCauses(page: Page, circuit: string): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(JSON.stringify({ ...SAMPLE, readings: READINGS }));
  await desk.settled();
  await desk.lookAt('Field check');
  await desk.tables.getByText('Causes', { exact: true }).first().click();
  await desk.tables.getByLabel('Circuit', { exact: true }).selectOption({ label: circuit });
  return desk;
}

test('a short half way along the lead-in is found, with its distance, and shown on the plan', async ({
  page
}) => {
  const desk = await atTheCauses(page, 'Exit 1');
  const first = desk.tables.getByRole('button', {
    name: /^Short in the lead-in .* about \d+ m from the cabinet/
  });
  await expect(first).toBeVisible({ timeout: 20_000 });
  await expect(first).toHaveAttribute('aria-expanded', 'true');
  await expect(desk.tables.getByText('Speaks for it')).toBeVisible();
  // a third of what the copper has: a short reads so, and so does a meter that was not zeroed
  await expect(
    desk.tables.getByText(/^0\.170 Ω is less than half of what the copper of this circuit has/)
  ).toBeVisible();
  const bar = desk.tables.getByRole('img', {
    name: /^The lead-in of 20(\.\d)? m .* at about (9|10|11)(\.\d)? m/
  });
  await expect(bar.first()).toBeVisible();
  const show = desk.tables.getByRole('button', { name: 'Show the place on the plan' }).first();
  await show.click();
  await expect(desk.tables.getByRole('button', { name: 'Hide the place on the plan' })).toHaveAttribute(
    'aria-pressed',
    'true'
  );
  await first.click();
  await expect(desk.tables.getByText('Speaks for it')).toBeHidden();
});

test('readings that fit the design claim no fault; without readings the way to them is shown', async ({
  page
}) => {
  const desk = await atTheCauses(page, 'Exit 2');
  await expect(desk.tables.getByText('The readings fit the design: no fault is claimed.')).toBeVisible({
    timeout: 20_000
  });
  await expect(
    desk.tables.getByRole('button', { name: /^Nothing wrong: within what this design allows/ })
  ).toBeVisible();
  await desk.tables.getByLabel('Circuit', { exact: true }).selectOption({ label: 'Exit 4' });
  await expect(desk.tables.getByText(/^Nothing was measured on Exit 4 yet/)).toBeVisible();
  await desk.tables.getByRole('button', { name: 'Take readings' }).click();
  await expect(desk.tables.getByRole('radio', { name: 'Readings' })).toBeChecked();
});

test('an older visit can be looked at, and the next reading is one press away', async ({ page }) => {
  const desk = await atTheCauses(page, 'Exit 3');
  await expect(desk.tables.getByRole('heading', { name: 'Best next measurement' })).toBeVisible({
    timeout: 20_000
  });
  await expect(desk.tables.getByText('Before you do this')).toBeVisible();
  await expect(desk.tables.getByText('What each cause would read')).toBeVisible();
  await desk.tables.getByLabel('Visit').selectOption({ label: '2 Apr 2024, 1 reading' });
  await expect(desk.tables.getByRole('row', { name: /^Inductance/ })).toHaveCount(0, { timeout: 20_000 });
  await expect(desk.tables.getByRole('heading', { name: 'Best next measurement' })).toBeVisible({
    timeout: 20_000
  });
  await desk.tables.getByRole('button', { name: 'Take this reading down' }).click();
  await expect(desk.tables.getByRole('radio', { name: 'Readings' })).toBeChecked();
  await expect(desk.tables.getByLabel('Circuit', { exact: true })).toHaveValue('C3');
});

test('accessible, wide and narrow', async ({ page }) => {
  test.setTimeout(120_000);
  const desk = await atTheCauses(page, 'Exit 3');
  for (const [width, height, circuit] of [
    [1440, 900, 'Exit 3'],
    [820, 1180, 'Exit 3'],
    // with distances
    [820, 1180, 'Exit 1']
  ] as const) {
    await page.setViewportSize({ width, height });
    await desk.lookAt('Field check');
    await desk.tables.getByLabel('Circuit', { exact: true }).selectOption({ label: circuit });
    await expect(desk.tables.getByRole('heading', { name: 'Causes' })).toBeVisible({ timeout: 20_000 });
    await expectAccessible(page, '#lower-view');
  }
});
