import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

interface Saved {
  readonly estimate?: {
    readonly currency?: string;
    readonly wholePacks?: boolean;
    readonly prices?: readonly { readonly item: string; readonly price: number }[];
    readonly packs?: readonly { readonly item: string; readonly size: number }[];
    readonly extras?: readonly { readonly name: string; readonly unit: string; readonly price?: number }[];
    readonly waste?: Readonly<Record<string, number>>;
    readonly rates?: Readonly<Record<string, number>>;
  };
  readonly sheet?: { readonly baseline?: object };
}

const saved = async (desk: Desk): Promise<Saved> => JSON.parse(await desk.savedText()) as Saved;

async function atTheQuantities(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.lookAt('Quantities');
  await expect(desk.tables.getByRole('table', { name: 'Take-off, line by line' })).toBeVisible();
  return desk;
}

const mode = (desk: Desk, name: string): Locator => desk.tables.getByRole('radio', { name });
const look = async (desk: Desk, name: string): Promise<void> => {
  await desk.tables.getByText(name, { exact: true }).first().click();
  await expect(mode(desk, name)).toBeChecked();
};

const fieldIn = (desk: Desk, label: string): Locator => desk.tables.getByLabel(label, { exact: true });

async function typeIn(desk: Desk, label: string, text: string): Promise<void> {
  await fieldIn(desk, label).fill(text);
  await fieldIn(desk, label).press('Enter');
}

/** Pixels on the plan's topmost sheet in the colour of what is looked at. */
const highlighted = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const sheet = [...document.querySelectorAll<HTMLCanvasElement>('[role="application"] canvas')].at(-1)!;
    const { data } = sheet.getContext('2d')!.getImageData(0, 0, sheet.width, sheet.height);
    let count = 0;
    for (let at = 0; at < data.length; at += 4)
      if (data[at] === 156 && data[at + 1] === 27 && data[at + 2] === 102) count++;
    return count;
  });

const rowOf = (desk: Desk, name: string): Locator =>
  desk.tables.getByRole('row').filter({ has: desk.page.getByRole('button', { name, exact: true }) });

test.use({ colorScheme: 'light' });

test('an estimator checks the wire of a loop, sees how it came about and where it lies', async ({ page }) => {
  const desk = await atTheQuantities(page);
  await fieldIn(desk, 'Show').selectOption('loop L1');
  await fieldIn(desk, 'Grouped by').selectOption({ label: 'kind' });
  const row = rowOf(desk, 'Wire in the loop');
  // 1.8 m square less 0.15 m at both ends of each side, and four corners of 0.15 · √2: 6.8485 m, three times; 5 % of waste
  await expect(row).toHaveCount(1);
  await expect(row.getByRole('cell')).toHaveText(['Left, front', 'Wire 14 AWG', '20.55 m', '5 %', '21.57 m', '–']); // prettier-ignore
  expect(await highlighted(page)).toBe(0);

  const line = row.getByRole('button');
  await line.click();
  await expect(line).toHaveAttribute('aria-expanded', 'true');
  await expect(desk.tables.getByText('3 × 6.849 m: turns in the slot')).toBeVisible();
  await expect(desk.tables.getByText('20.55 m and 5 % of waste: 21.57 m')).toBeVisible();
  await expect(desk.field('Name')).toHaveValue('Left, front');
  await expect.poll(() => highlighted(page)).toBeGreaterThan(100);

  await page.keyboard.press('Escape');
  await expect(line).toHaveAttribute('aria-expanded', 'false');
  await expect.poll(() => highlighted(page)).toBe(0);

  await line.click();
  await expect.poll(() => highlighted(page)).toBeGreaterThan(100);
  await desk.lookAt('Circuits');
  await expect.poll(() => highlighted(page)).toBe(0);
});

test('prices it, adds a line, buys whole packs, and undoes', async ({ page }) => {
  test.slow();
  const desk = await atTheQuantities(page);
  await rowOf(desk, 'Wire in the loop').first().getByRole('button').click();
  await desk.tables.getByRole('button', { name: 'Enter it' }).click();
  const price = fieldIn(desk, 'Price of Wire 14 AWG, for one m');
  await expect(price).toBeFocused();
  await page.keyboard.type('0.80');
  await page.keyboard.press('Enter');
  await typeIn(desk, 'Currency', 'eur');
  expect((await saved(desk)).estimate).toEqual({
    currency: 'EUR',
    prices: [{ item: 'wire:awg14', price: 0.8 }]
  });
  const row = desk.tables
    .getByRole('row')
    .filter({ has: page.getByLabel('Price of Wire 14 AWG, for one m', { exact: true }) });
  await expect(row.getByRole('cell').last()).toContainText('EUR');
  const metres = Number.parseFloat(await row.getByRole('cell').first().innerText());
  const cost = Number.parseFloat(await row.getByRole('cell').last().innerText());
  expect(metres).toBeGreaterThan(100);
  expect(cost).toBeCloseTo(0.8 * metres, 1);

  await desk.tables.getByRole('checkbox', { name: 'Buy whole packs' }).check();
  // 130 m are two reels of 100 m
  await expect(row.getByRole('cell').first()).toHaveText('2 packs of 100.00 m');
  await expect(row.getByRole('cell').last()).toHaveText('160.00 EUR');
  await typeIn(desk, 'Pack of Wire 14 AWG', '500 ft');
  await expect(row.getByRole('cell').first()).toHaveText('1 pack of 152.40 m');
  await expect(row.getByRole('cell').last()).toHaveText('121.92 EUR');
  await fieldIn(desk, 'Pack of Wire 14 AWG').fill('');
  await fieldIn(desk, 'Pack of Wire 14 AWG').press('Enter');
  expect((await saved(desk)).estimate).not.toHaveProperty('packs');

  await desk.tables.getByRole('button', { name: 'Add a line' }).click();
  await expect(fieldIn(desk, 'Name of line 1')).toBeFocused();
  await page.keyboard.type('Traffic management');
  await page.keyboard.press('Enter');
  await fieldIn(desk, 'Unit of line 1').selectOption('day');
  await typeIn(desk, 'Amount of line 1', '1.5');
  await typeIn(desk, 'Price of line 1, for one day', '1200');
  await expect(desk.tables.getByText('1,800.00 EUR', { exact: true })).toBeVisible();
  // (160 + 1800) · 1.1
  await expect(desk.tables.getByText('1,960.00 EUR, with contingency 2,156.00 EUR')).toBeVisible();
  await typeIn(desk, 'Contingency', '25 %');
  await expect(desk.tables.getByText('1,960.00 EUR, with contingency 2,450.00 EUR')).toBeVisible();

  for (let step = 0; step < 5; step++) await desk.undo();
  expect((await saved(desk)).estimate).toMatchObject({ extras: [{ name: '', unit: 'each' }] });
  await desk.undo();
  expect((await saved(desk)).estimate).not.toHaveProperty('extras');
  await desk.redo();
  await desk.tables.getByRole('button', { name: 'Remove line 1' }).click();
  await expect(desk.tables.getByRole('button', { name: 'Add a line' })).toBeFocused();
  expect((await saved(desk)).estimate).not.toHaveProperty('extras');

  await look(desk, 'Take-off');
  await expect(desk.tables.getByText(/^Without a price, and so in no sum: Saw cut 50 mm deep/)).toBeVisible();
  await desk.tables.getByRole('button', { name: 'Enter prices' }).click();
  await expect(fieldIn(desk, 'Price of Saw cut 50 mm deep, 8 mm wide, for one m')).toBeFocused();
});

test('a currency that is none is refused with a sentence', async ({ page }) => {
  const desk = await atTheQuantities(page);
  await look(desk, 'Prices and rates');
  await typeIn(desk, 'Currency', 'e1');
  await expect(desk.tables.getByText('“e1” was not taken: a currency has three letters, such as EUR.')).toBeVisible(); // prettier-ignore
  await typeIn(desk, 'Price of Sealant, for one L', '−3');
  await expect(desk.tables.getByText(/it must be from 0/)).toBeVisible();
  expect((await saved(desk)).estimate).toBeUndefined();
});

test('prices and rates are typed in the units shown, or any other, and lead back to usual', async ({
  page
}) => {
  const desk = await atTheQuantities(page);
  await page.getByText('ft', { exact: true }).click();
  await look(desk, 'Prices and rates');
  await typeIn(desk, 'Price of Wire 14 AWG, for one ft', '0.25');
  await typeIn(desk, 'Laying wire', '100 m/h');
  await typeIn(desk, 'Splicing once', '1 h');
  await typeIn(desk, 'Waste of wire', '8');
  await typeIn(desk, 'Blade across', '14"');
  const { estimate } = await saved(desk);
  expect(estimate?.prices?.[0]?.price).toBeCloseTo(0.25 / 0.3048, 9);
  expect(estimate).toMatchObject({
    rates: { laying_m_per_h: 100, splice_s: 3600 },
    waste: { wire: 0.08 },
    bladeDiameter_m: 0.3556
  });
  await desk.tables.getByRole('button', { name: 'Back to usual: Crew and rates' }).click();
  expect((await saved(desk)).estimate).not.toHaveProperty('rates');
  await expect(fieldIn(desk, 'Laying wire')).toHaveValue('');
});

test('the figures follow a loop that is moved, and the row stays where a person was', async ({ page }) => {
  const desk = await atTheQuantities(page);
  await fieldIn(desk, 'Show').selectOption({ label: 'what is selected' });
  await expect(desk.tables.getByText('Nothing is selected: the whole site is shown.')).toBeVisible();
  await desk.outlineItem('loop').press('Enter');
  await desk.settled();
  const line = rowOf(desk, 'Wire in the loop').getByRole('button');
  await line.click();
  await desk.type('Turns', '4');
  await desk.settled();
  await expect(desk.tables.getByText('4 × 6.849 m: turns in the slot')).toBeVisible();
  await expect(line).toHaveAttribute('aria-pressed', 'true');
});

test('the cutting plan shows its order on the drawing, and a row its cut', async ({ page }) => {
  const desk = await atTheQuantities(page);
  await look(desk, 'Cutting plan');
  await expect(desk.tables.getByText(/^Station: along .* from its start, the 0 on the plan/)).toBeVisible();
  const rows = desk.tables.getByRole('table', { name: 'Cuts in the order of sawing' }).getByRole('row');
  // four loops of four sides and four corners, and their home runs, beside the head
  expect(await rows.count()).toBeGreaterThan(32);
  const third = rows.nth(3).getByRole('button');
  await third.click();
  await expect(third).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(() => highlighted(page)).toBeGreaterThan(100);
  const before = await rows.nth(1).innerText();
  await fieldIn(desk, 'Cuts are measured from').selectOption({ index: 2 });
  await expect(rows.nth(1)).not.toHaveText(before);
  expect((await saved(desk)).sheet?.baseline).toMatchObject({ kind: 'lane' });
  await desk.undo();
  expect(await rows.nth(1).innerText()).toBe(before);
  await page.keyboard.press('Escape');
  await expect.poll(() => highlighted(page)).toBe(0);
});

test('what stands on the site is found by the same tape, so that the cuts can be tied to it', async ({
  page
}) => {
  const desk = await atTheQuantities(page);
  await look(desk, 'Cutting plan');
  const { marks } = JSON.parse(await desk.savedText()) as {
    marks: readonly { kind: string; points: readonly (readonly [number, number])[] }[];
  };
  const [line, box] = ['stop-line', 'pull-box'].map(
    (kind) => marks.find((mark) => mark.kind === kind)!.points
  );
  // The stop line runs along x: along it is what x differs by, to its left what y does.
  const [along, left] = [0, 1].map((axis) =>
    (box![0]![axis]! - line![0]![axis]!).toFixed(2).replace('-', '−')
  );
  expect(line![1]![1]).toBe(line![0]![1]);
  const row = desk.tables
    .getByRole('table', { name: /^Reference points/ })
    .getByRole('row')
    .filter({ hasText: 'Pull box' });
  await expect(row.getByRole('cell')).toHaveText([along!, left!, '–', '–']);
  await row.getByRole('button').click();
  await expect(desk.details.getByRole('heading', { name: 'Pull box' })).toBeVisible();
  await expect.poll(() => highlighted(page)).toBeGreaterThan(20);
});

test('by the keyboard alone', async ({ page }) => {
  const desk = await atTheQuantities(page);
  await mode(desk, 'Take-off').focus();
  const press = async (key: string, times = 1) => {
    for (let time = 0; time < times; time++) await page.keyboard.press(key);
  };
  const focusIsOn = (name: string) =>
    page.evaluate((wanted) => document.activeElement?.textContent.trim() === wanted, name);
  for (let at = 0; at < 20 && !(await focusIsOn('Wire in the loop')); at++) await press('Tab');
  await press('Enter');
  await expect(desk.tables.getByText('3 × 6.849 m: turns in the slot')).toBeVisible();
  await expect.poll(() => highlighted(page)).toBeGreaterThan(100);
  await press('Escape');
  await expect.poll(() => highlighted(page)).toBe(0);
  await mode(desk, 'Take-off').focus();
  await press('ArrowRight');
  await expect(mode(desk, 'Prices and rates')).toBeChecked();
  await press('ArrowRight');
  await expect(fieldIn(desk, 'Cuts are measured from')).toBeVisible();
});

test('without a loop each view says what to do', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.lookAt('Quantities');
  await expect(desk.tables.getByText('Nothing to count yet: draw a loop.')).toBeVisible();
  await look(desk, 'Cutting plan');
  await expect(desk.tables.getByText('Nothing to cut yet: draw a loop.')).toBeVisible();
  await look(desk, 'Prices and rates');
  await expect(desk.tables.getByText('Nothing to buy yet: draw a loop.')).toBeVisible();
});

test('a file is called on its button what its dialog calls it', async ({ page }) => {
  const desk = await atTheQuantities(page);
  for (const ending of ['XLSX', 'CSV'])
    await expect(desk.tables.getByRole('button', { name: `Take-off as ${ending}` })).toHaveText(ending);
});

test('with texts of twice the size, what is said about the price book is not cut off', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  const session = await page.context().newCDPSession(page);
  await session.send('Page.enable');
  await session.send('Page.setFontSizes', { fontSizes: { standard: 32 } });
  const desk = await atTheQuantities(page);
  await look(desk, 'Prices and rates');
  const said = await desk.tables.getByText(/^What this site buys/).boundingBox();
  expect(said!.x + said!.width).toBeLessThanOrEqual(820);
});

test.describe('in German on a tablet', () => {
  test.use({ locale: 'de-DE', viewport: { width: 820, height: 1180 } });

  test('every column of the cutting plan is in sight', async ({ page }) => {
    await page.goto('./');
    await page.getByRole('button', { name: /^Tabellen/ }).click();
    await page.getByRole('tab', { name: 'Mengen' }).click();
    await page.getByText('Schnittplan', { exact: true }).first().click();
    const heads = page.getByRole('tabpanel').locator('thead th');
    // of the cuts, and of what they are tied to
    await expect(heads).toHaveCount(9 + 5);
    for (const head of await heads.all()) {
      const box = await head.boundingBox();
      expect(box!.x + box!.width).toBeLessThanOrEqual(820);
    }
  });
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });
  for (const width of [1440, 820])
    test(`the quantities have no problem, ${width} wide`, async ({ page }) => {
      await page.setViewportSize({ width, height: 1000 });
      const desk = await atTheQuantities(page);
      await rowOf(desk, 'Wire in the loop').first().getByRole('button').click();
      await desk.settled();
      await expectAccessible(page);
      await look(desk, 'Prices and rates');
      await typeIn(desk, 'Price of Sealant, for one L', '9');
      await desk.tables.getByRole('button', { name: 'Add a line' }).click();
      await desk.settled();
      await expectAccessible(page);
      await look(desk, 'Cutting plan');
      await desk.tables.getByRole('row').nth(2).getByRole('button').click();
      await desk.settled();
      await expectAccessible(page);
    });
});
