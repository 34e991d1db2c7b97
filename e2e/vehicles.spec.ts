import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

interface Saved {
  readonly vehicles: readonly {
    readonly id: string;
    readonly name: string;
    readonly parts: readonly {
      readonly kind: string;
      readonly name?: string;
      readonly centre: readonly number[];
      readonly height?: number;
    }[];
    readonly body?: { readonly width: number; readonly length: number };
    readonly calibration?: { readonly measured: number; readonly raised: number };
  }[];
  readonly probes: readonly { readonly vehicle: string; readonly at: readonly number[] }[];
}

const saved = async (desk: Desk): Promise<Saved> => JSON.parse(await desk.savedText()) as Saved;

/** The first site, and the tables on the vehicles. */
async function atTheVehicles(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.tables.getByRole('tab', { name: 'Vehicles' }).click();
  await expect(desk.tables.getByRole('heading', { name: 'Catalogue' })).toBeVisible();
  return desk;
}

const fieldIn = (desk: Desk, label: string): Locator => desk.tables.getByLabel(label, { exact: true });

async function typeIn(desk: Desk, label: string, text: string): Promise<void> {
  await fieldIn(desk, label).fill(text);
  await fieldIn(desk, label).press('Enter');
}

const choose = (desk: Desk, name: string): Promise<void> =>
  desk.tables.locator('label').filter({ hasText: name }).first().click();

/** Of the chosen vehicle on its first circuit, percent. */
async function bestResponse(desk: Desk): Promise<number> {
  await desk.settled();
  const cell = desk.tables
    .getByRole('region', { name: 'What it does' })
    .getByRole('row')
    .nth(1)
    .getByRole('cell')
    .first();
  return Number.parseFloat(await cell.innerText());
}

test('the catalogue is read with its sources, drawn to scale, and copied to be changed', async ({ page }) => {
  const desk = await atTheVehicles(page);
  await choose(desk, 'Articulated lorry, high trailer');
  await expect(
    desk.tables.getByRole('img', { name: /^Articulated lorry, high trailer, to scale/ })
  ).toBeVisible();
  await expect(desk.tables.getByText(/Directive 96\/53\/EC/)).toBeVisible();
  await expect(desk.tables.getByText('Effective heights: assumption', { exact: false })).toBeVisible();
  await expect(
    desk.tables.getByRole('row', { name: /Trailer floor 13\.60 × 2\.45 m −1\.45 m 1\.50 m/ })
  ).toBeVisible();
  await expect(fieldIn(desk, 'Vehicle name')).toHaveCount(0);

  await desk.tables.getByRole('button', { name: 'Copy to change' }).click();
  await typeIn(desk, 'Vehicle name', 'Low trailer');
  await desk.tables.getByRole('radio', { name: 'Trailer floor' }).check();
  await typeIn(desk, 'Effective height', '80cm');
  const { vehicles } = await saved(desk);
  expect(vehicles).toMatchObject([
    { name: 'Low trailer', body: { width: 2.55, length: 16.5 }, parts: { length: 8 } }
  ]);
  expect(vehicles[0]?.parts[4]).toMatchObject({ name: 'Trailer floor', height: 0.8 });
  await desk.undo();
  expect((await saved(desk)).vehicles[0]?.parts[4]?.height).toBe(1.5);
});

test('a part is chosen in the drawing as in the table', async ({ page }) => {
  const desk = await atTheVehicles(page);
  await choose(desk, 'Bicycle, aluminium rims');
  const front = desk.tables.getByRole('radio', { name: 'Front wheel rim' });
  const rear = desk.tables.getByRole('radio', { name: 'Rear wheel rim' });
  await expect(front).toBeChecked();
  const picture = desk.tables.getByRole('img', { name: /^Bicycle/ });
  await picture.scrollIntoViewIfNeeded();
  const box = (await picture.boundingBox())!;
  // the middle of the rear wheel: the left one of two circles above the road
  const rims = await picture.locator('ellipse').evaluateAll((all) =>
    all.map((each) => ({
      x: Number(each.getAttribute('cx')),
      y: Number(each.getAttribute('cy')),
      ry: Number(each.getAttribute('ry'))
    }))
  );
  // an ellipse of no height would not be drawn at all
  expect(rims.map(({ ry }) => ry > 0)).toEqual([true, true, true, true]);
  const wheel = rims.filter(({ ry }) => ry > 5).toSorted((a, b) => a.x - b.x);
  expect(wheel).toHaveLength(2);
  await page.mouse.click(box.x + wheel[0]!.x, box.y + wheel[0]!.y);
  await expect(rear).toBeChecked();
  // and by the keyboard in the table
  await rear.press('ArrowUp');
  await expect(front).toBeChecked();
});

test('a trailer is built from a plate, coupled behind a copy of the car, and stands on the plan', async ({
  page
}) => {
  const desk = await atTheVehicles(page);
  await desk.tables.getByRole('button', { name: 'New from a plate' }).click();
  await typeIn(desk, 'Vehicle name', 'Trailer');
  await typeIn(desk, 'Length', '2.5');
  await typeIn(desk, 'Effective height', '0.6');
  await desk.tables.getByRole('button', { name: 'Add a plate' }).click();
  await typeIn(desk, 'Part name', 'Axle');
  await desk.tables.getByRole('button', { name: 'Duplicate Axle' }).click();
  await desk.tables.getByRole('button', { name: 'Remove Axle' }).click();

  await choose(desk, 'Car');
  await desk.tables.getByRole('button', { name: 'Copy to change' }).click();
  await typeIn(desk, 'Vehicle name', 'Car and trailer');
  await desk.tables.getByRole('button', { name: 'Couple a trailer …' }).click();
  const dialog = page.getByRole('dialog', { name: 'Couple a vehicle behind Car and trailer' });
  await dialog.getByLabel('Vehicle behind').selectOption({ label: 'Trailer' });
  await dialog.getByLabel('Gap between the outlines').fill('1 m');
  await dialog.getByLabel('Gap between the outlines').press('Enter');
  // 4.40 + 1.00 + 2.50
  await expect(dialog.getByText('Together 7.90 m long and 1.80 m wide, 3 parts.')).toBeVisible();
  await expectAccessible(page, '[role="dialog"], dialog');
  await dialog.getByRole('button', { name: 'Couple', exact: true }).click();
  await expect(dialog).toHaveCount(0);
  const { vehicles } = await saved(desk);
  const train = vehicles.find(({ name }) => name === 'Car and trailer');
  expect(train?.body).toEqual({ width: 1.8, length: 7.9 });
  expect(train?.parts.map(({ centre }) => centre[1])).toEqual([1.75, -2.7, -2.7]);

  expect(await bestResponse(desk)).toBeGreaterThan(1);
  await desk.tables.getByRole('button', { name: 'Place on the plan' }).click();
  await expect(desk.tables.getByText(/^Placed where .* answers most\.$/)).toBeVisible();
  const placed = (await saved(desk)).probes;
  expect(placed.at(-1)?.vehicle).toBe(train?.id);
  expect(Math.max(...(await desk.responses()))).toBeGreaterThan(1);

  await desk.tables.getByRole('button', { name: 'Remove Car and trailer' }).click();
  await expect(
    desk.tables.getByText(/Removed Car and trailer with what named it: 1 placed on the plan/)
  ).toBeVisible();
  expect((await saved(desk)).probes).toHaveLength(placed.length - 1);
  await desk.undo();
  expect((await saved(desk)).probes).toHaveLength(placed.length);
});

test('a measured response calibrates the height, and forgetting it restores the catalogue', async ({
  page
}) => {
  const desk = await atTheVehicles(page);
  await choose(desk, 'Delivery van');
  const before = await bestResponse(desk);
  await desk.tables.getByRole('button', { name: 'Calibrate height …' }).click();
  const dialog = page.getByRole('dialog', { name: 'Calibrate the height of Delivery van' });
  const measured = dialog.getByLabel('Greatest −ΔL/L of the pass');
  await measured.fill('90');
  await measured.press('Enter');
  await expect(dialog.getByText(/it must be from/)).toBeVisible();
  await measured.fill('40');
  await measured.press('Enter');
  await expect(dialog.getByText(/No height gives 40\.0 %/)).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Move the parts' })).toBeDisabled();
  await measured.fill('2.0%');
  await measured.press('Enter');
  await expect(dialog.getByText('steel in the pavement that is not drawn', { exact: false })).toBeVisible();
  await expectAccessible(page, 'dialog');
  await dialog.getByRole('button', { name: /^Move the parts up/ }).click();
  await expect(dialog).toHaveCount(0);
  await expect(desk.tables.getByText(/Heights calibrated on .*: 2\.00 % measured/)).toBeVisible();
  await expect(async () => {
    expect(await bestResponse(desk)).toBe(2);
  }).toPass({ timeout: 20_000 });
  const { vehicles } = await saved(desk);
  expect(vehicles).toMatchObject([{ id: 'van', calibration: { measured: -0.02 } }]);

  await desk.tables.getByRole('button', { name: 'Forget the calibration' }).click();
  expect((await saved(desk)).vehicles).toEqual([]);
  expect(await bestResponse(desk)).toBe(before);
  await desk.undo();
  expect((await saved(desk)).vehicles).toHaveLength(1);
});

test('a ring of steel that leans is drawn by the keyboard alone', async ({ page }) => {
  const desk = await atTheVehicles(page);
  await desk.tables.getByRole('button', { name: 'New from a plate' }).focus();
  await page.keyboard.press('Enter');
  await desk.tables.getByRole('button', { name: 'Add a ring' }).focus();
  await page.keyboard.press('Enter');
  await desk.tables.getByLabel('Stands').focus();
  await page.keyboard.type('otherwise');
  await page.keyboard.press('Enter');
  await desk.tables.getByLabel('Metal').focus();
  await page.keyboard.type('mild');
  await page.keyboard.press('Enter');
  const { vehicles } = await saved(desk);
  expect(vehicles[0]?.parts[1]).toMatchObject({
    kind: 'ring',
    axis: [1, 0, 1],
    resistivity_ohm_m: 1.7e-7,
    relativePermeability: 100
  });
  await expect(fieldIn(desk, 'Resistivity, nΩ·m')).toHaveValue('170');
});

test(`vehicles are accessible`, async ({ page }) => {
  const desk = await atTheVehicles(page);
  await expectAccessible(page);
  await choose(desk, 'Motorcycle');
  await desk.tables.getByRole('button', { name: 'Copy to change' }).click();
  await desk.tables.getByRole('radio', { name: 'Front wheel rim' }).check();
  await desk.settled();
  await expectAccessible(page);
});
