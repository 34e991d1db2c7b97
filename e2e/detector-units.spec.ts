import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

interface Saved {
  readonly units: readonly {
    readonly name: string;
    readonly settings_F: readonly number[];
    readonly calibrations?: readonly { readonly setting: number; readonly before_F: number }[];
  }[];
  readonly circuits: readonly {
    readonly name: string;
    readonly channel: { readonly unit: string; readonly number: number; readonly pinned?: boolean } | null;
  }[];
  readonly conduits: readonly { readonly circuits: readonly string[]; readonly length: number }[];
}

const saved = async (desk: Desk): Promise<Saved> => JSON.parse(await desk.savedText()) as Saved;

/** The first site with its two units, and the tables on the units. */
async function atTheUnits(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.lookAt('Detector units');
  await expect(desk.tables.getByRole('heading', { name: 'Channels of Left lane unit' })).toBeVisible();
  return desk;
}

const fieldIn = (desk: Desk, label: string): Locator => desk.tables.getByLabel(label, { exact: true });

async function typeIn(desk: Desk, label: string, text: string): Promise<void> {
  await fieldIn(desk, label).fill(text);
  await fieldIn(desk, label).press('Enter');
}

/** What the option that is chosen says. */
const chosenIn = (desk: Desk, label: string): Promise<string> =>
  fieldIn(desk, label).evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.label ?? '');

test('a unit comes from the catalogue, takes a circuit, and stays while it has it', async ({ page }) => {
  const desk = await atTheUnits(page);
  await fieldIn(desk, 'Add a unit').selectOption({ label: 'Post unit, one channel' });
  await expect(desk.tables.getByRole('heading', { name: 'Channels of Unit 3' })).toBeVisible();
  await expect(fieldIn(desk, 'Add a unit')).toHaveValue('');
  await typeIn(desk, 'Unit name', 'Gate post');
  await fieldIn(desk, 'Circuit on channel 1').selectOption({ index: 3 });
  const { circuits } = await saved(desk);
  expect(circuits.map(({ channel }) => channel?.unit)).toEqual(['U1', 'U2', 'U3', 'U2']);

  const remove = desk.tables.getByRole('button', { name: 'Remove Gate post' });
  await remove.click();
  await expect(desk.tables.getByText('Gate post stays: Left, rear is connected to it.')).toBeVisible();
  await fieldIn(desk, 'Circuit on channel 1').selectOption({ label: 'none' });
  await remove.click();
  const after = await saved(desk);
  expect(after.units.map(({ name }) => name)).toEqual(['Left lane unit', 'Right lane unit']);
  expect(after.circuits.map(({ channel }) => channel?.unit ?? null)).toEqual(['U1', 'U2', null, 'U2']);
});

test('circuits change places on channels, by the keyboard alone', async ({ page }) => {
  const desk = await atTheUnits(page);
  await fieldIn(desk, 'Circuit on channel 1').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  const { circuits } = await saved(desk);
  // the one after it in the list came from the other unit, which now has the one that was here
  expect(circuits.slice(0, 2).map(({ channel }) => [channel?.unit, channel?.number])).toEqual([
    ['U2', 1],
    ['U1', 1]
  ]);
  await desk.undo();
  expect((await saved(desk)).circuits[0]?.channel).toMatchObject({ unit: 'U1', number: 1 });
});

test('settings are stated as frequencies, and the circuit on one follows', async ({ page }) => {
  const desk = await atTheUnits(page);
  await expect(fieldIn(desk, 'Setting 3, capacitance')).toHaveValue('100 nF');
  await fieldIn(desk, 'Settings stated as').selectOption({ label: 'frequency' });
  await expect(fieldIn(desk, 'On an inductance of')).toHaveValue('100 µH');
  // 1/(2π√(100 µH · 100 nF)) = 50.3292 kHz
  await expect(fieldIn(desk, 'Setting 3, frequency')).toHaveValue('50.3292 kHz');
  await typeIn(desk, 'Setting 2, frequency', '40');
  const { units } = await saved(desk);
  // 1/((2π · 40 kHz)² · 100 µH) = 158.314 nF
  expect(units[0]?.settings_F[1]).toBeCloseTo(158.314e-9, 12);
  await desk.settled();
  // its circuit has not quite 92 µH, so that it runs higher by √(100/92)
  expect(await chosenIn(desk, 'Setting of channel 1')).toMatch(/^2 – 41\.\d\d kHz$/);
  await typeIn(desk, 'Setting 2, frequency', '0');
  await expect(desk.tables.getByText(/was not taken|it must be from/)).toBeVisible();
});

test('a measured frequency calibrates the setting, and the plan runs at what was measured', async ({
  page
}) => {
  const desk = await atTheUnits(page);
  expect(await chosenIn(desk, 'Setting of channel 1')).toBe('2 – 42.94 kHz');
  await desk.tables.getByRole('button', { name: 'Calibrate setting 2 from a measured frequency' }).click();
  const dialog = page.getByRole('dialog', { name: 'Calibrate setting 2 of Left lane unit' });
  await expect(dialog.getByLabel('Measured on circuit')).toHaveValue('C1');
  await expect(dialog.getByRole('button', { name: 'Use' })).toBeDisabled();
  await dialog.getByLabel('Measured frequency').fill('44.1');
  await dialog.getByLabel('Measured frequency').press('Enter');
  const use = dialog.getByRole('button', { name: /^Use 14\d\.\d nF$/ });
  await expect(use).toBeEnabled();
  await expect(dialog.getByText('42.94 kHz')).toBeVisible();
  await expectAccessible(page);
  await use.click();
  await desk.settled();
  await expect(desk.tables.getByRole('button', { name: 'Calibrate setting 2' })).toBeFocused();
  expect(await chosenIn(desk, 'Setting of channel 1')).toBe('2 – 44.10 kHz');
  await expect(
    desk.tables.getByText(/^✓ 44\.10 kHz read on Left, front \(91\.\d\d µH\); 150\.0 nF before$/)
  ).toBeVisible();
  expect((await saved(desk)).units[0]?.calibrations).toMatchObject([{ setting: 2, before_F: 1.5e-7 }]);
  await page.getByRole('button', { name: /^Undo/ }).hover();
  await desk.undo();
  expect((await saved(desk)).units[0]).not.toHaveProperty('calibrations');
  await desk.redo();

  await desk.tables.getByRole('button', { name: /^Back to 150\.0 nF/ }).click();
  await desk.settled();
  expect(await chosenIn(desk, 'Setting of channel 1')).toBe('2 – 42.94 kHz');
});

test('a reading that cannot be is told, and one on another circuit says that the plan will not follow', async ({
  page
}) => {
  const desk = await atTheUnits(page);
  await desk.tables.getByRole('button', { name: 'Calibrate setting 4 from a measured frequency' }).click();
  const dialog = page.getByRole('dialog', { name: 'Calibrate setting 4 of Left lane unit' });
  const frequency = dialog.getByLabel('Measured frequency');
  await frequency.fill('44');
  await frequency.press('Enter');
  await expect(dialog.getByText(/A change of more than 20 %/)).toBeVisible();
  await expect(dialog.getByText(/is not on this setting: it will not follow/)).toBeVisible();
  await frequency.fill('80 Hz');
  await frequency.press('Enter');
  await expect(dialog.getByText(/it must be from 1.* kHz to/)).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  expect((await saved(desk)).units[0]).not.toHaveProperty('calibrations');
});

test('a setting is added, and one that a circuit is on stays', async ({ page }) => {
  const desk = await atTheUnits(page);
  await desk.tables.getByRole('button', { name: 'Add a setting' }).click();
  // 68/100 of 68 nF, in two figures
  await expect(fieldIn(desk, 'Setting 5, capacitance')).toHaveValue('46 nF');
  await desk.tables.getByRole('button', { name: 'Remove setting 2' }).click();
  await expect(desk.tables.getByText('Setting 2 stays: Left, front is on it.')).toBeVisible();
  await desk.tables.getByRole('button', { name: 'Remove setting 3' }).click();
  expect((await saved(desk)).units[0]?.settings_F).toEqual([2.2e-7, 1.5e-7, 6.8e-8, 4.6e-8]);
});

test('a conduit begins with what the drawing shows, and its coupling is stated', async ({ page }) => {
  const desk = await atTheUnits(page);
  await desk.tables.getByRole('button', { name: 'Add a conduit' }).click();
  await expect(fieldIn(desk, 'Shared length')).toHaveValue('17.1 m');
  await expect(desk.tables.getByText('Adds up to 17 nH between every two of them.')).toBeVisible();
  await typeIn(desk, 'Shared length', '12 m');
  await typeIn(desk, 'Coupling, nH/m', '2');
  await expect(desk.tables.getByText('Adds up to 24 nH between every two of them.')).toBeVisible();
  const circuits = desk.tables.getByRole('group', { name: 'Circuits in it' });
  await circuits.getByLabel('Right, rear').uncheck();
  await desk.tables.getByRole('button', { name: 'Take 17.10 m from the drawing' }).click();
  expect((await saved(desk)).conduits).toMatchObject([{ circuits: ['C1', 'C2', 'C3'], length: 17.1 }]);
  await desk.tables.getByRole('button', { name: 'Remove conduit D1' }).click();
  await expect(desk.tables.getByText('No shared conduit')).toBeVisible();
});

test('the details of a circuit lead to its unit and pin its setting', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page
    .locator('.outline')
    .getByRole('button')
    .filter({ hasText: 'Right, front' })
    .first()
    .press('Enter');
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await desk.details.getByRole('checkbox', { name: /^Pinned/ }).check();
  await desk.details.getByRole('button', { name: 'Settings of Right lane unit' }).click();
  await expect(desk.tables.getByRole('heading', { name: 'Channels of Right lane unit' })).toBeVisible();
  await expect(desk.tables.getByLabel(/^Pin the setting of channel 1/)).toBeChecked();
  await desk.tables.getByLabel(/^Pin the setting of channel 1/).uncheck();
  expect((await saved(desk)).circuits[1]?.channel).not.toHaveProperty('pinned');
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 90_000 });
  for (const width of [1280, 820])
    test(`units and conduits have no problem, ${width} wide`, async ({ page }) => {
      await page.setViewportSize({ width, height: 1000 });
      const desk = await atTheUnits(page);
      await fieldIn(desk, 'Settings stated as').selectOption({ label: 'frequency' });
      await desk.tables.getByRole('button', { name: 'Add a conduit' }).click();
      await desk.tables.getByRole('button', { name: 'Remove Left lane unit' }).click();
      await desk.settled();
      await expect(page.locator('.stale')).toHaveCount(0, { timeout: 20_000 });
      await expectAccessible(page);
    });
});
