import type { Locator, Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { Desk, type Place } from './hands';
import { expectAccessible } from './support/axe';
import { Fingers } from './support/fingers';
import { expect, test } from './support/test';

/** One lane along +y with a loop of three turns in its middle, and a car over it. */
const SITE = JSON.stringify({
  format: 'kerfline-site',
  version: 1,
  name: 'Alder Yard',
  lanes: [{ id: 'lane1', name: 'In', centreline: [[0, -20], [0, 20]], width: 3.5 }], // prettier-ignore
  loops: [
    {
      id: 'L1',
      name: 'Yard loop',
      turns: 3,
      wire: 'awg14',
      slot: { depth: 0.05, width: 0.008 },
      shape: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8 }
    }
  ],
  circuits: [
    { id: 'C1', strings: [[{ loop: 'L1' }]], leadIn: { cable: 'pair-14', length: 20 }, detect: ['car'] }
  ],
  probes: [{ vehicle: 'car', at: [0, 0], heading: 90 }]
});

/** µ0 / 4π, H/m: exact by definition until 2019, and to ten digits since. */
const MU0_OVER_4PI = 1e-7;

class FieldView {
  constructor(
    readonly page: Page,
    readonly desk = new Desk(page)
  ) {}

  async open(): Promise<void> {
    await this.desk.open();
    await this.desk.openText(SITE);
    await this.desk.lookAt('Compare');
    await this.desk.tables.getByRole('radio', { name: 'Field', exact: true }).check({ force: true });
    await this.fine();
  }

  async fine(): Promise<void> {
    await expect(this.plot).toBeVisible({ timeout: 20_000 });
    await expect(this.desk.tables.getByText('Coarse so far')).toHaveCount(0, { timeout: 20_000 });
    await this.desk.settled();
  }

  get plot() {
    return this.desk.tables.getByRole('slider', { name: /Yard loop/ });
  }

  /** What is read at the keyboard's place: metres along, metres up, µT per ampere. */
  async reading(): Promise<{ along: number; up: number; strength: number; direction: number }> {
    const text = (await this.plot.getAttribute('aria-valuetext')) ?? '';
    const found = /([\d.]+) m along, ([\d.]+) m up: ([\d.]+) µT\/A, direction (\d+)°/.exec(text);
    expect(found, text).not.toBeNull();
    const [along, up, strength, direction] = found!.slice(1).map(Number);
    return { along: along!, up: up!, strength: strength!, direction: direction! };
  }

  /** A sum over what the plan's top canvas shows. */
  overlay(): Promise<number> {
    return this.desk.plan
      .locator('canvas')
      .last()
      .evaluate((canvas) =>
        Array.from((canvas as HTMLCanvasElement).toDataURL()).reduce(
          (sum, letter) => (31 * sum + letter.charCodeAt(0)) % 1_000_003,
          7
        )
      );
  }
}

async function centreOf(grip: Locator): Promise<Place> {
  const { x, y, width, height } = (await grip.boundingBox())!;
  return [x + width / 2, y + height / 2];
}

/** Presses there and carries it along; the button stays down. */
async function grab(page: Page, [x, y]: Place, [right, down]: Place): Promise<void> {
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + right, y + down, { steps: 8 });
}

test('the field over a loop is read with the keyboard, and is what the law of Biot and Savart says', async ({
  page
}) => {
  const view = new FieldView(page);
  await view.open();
  const { tables } = view.desk;
  const shielded = await view.reading();
  await expect(tables.getByText(/^Car above: between road and metal the field is on average/)).toBeVisible();
  await tables.getByLabel('With a vehicle’s eddy currents').uncheck();
  await view.fine();
  await expect(tables.getByText(/^Car above/)).toHaveCount(0);
  const bare = await view.reading();
  // between road and sky, over the metal of the car, less is left
  expect(shielded.strength).toBeLessThan(bare.strength);
  // on the axis of a square of side a at height h: B = µ0·N·a² / (2π·(h² + a²/4)·√(h² + a²/2)); from the sides' law
  const [a, h] = [1.8, bare.up + 0.05];
  const square =
    (MU0_OVER_4PI * 8 * 3 * (a / 2) ** 2) / ((h ** 2 + a ** 2 / 4) * Math.sqrt(h ** 2 + a ** 2 / 2));
  expect(bare.strength / (square * 1e6)).toBeGreaterThan(0.95);
  expect(bare.strength / (square * 1e6)).toBeLessThan(1.05);
  expect(bare.direction).toBe(90);
  await view.plot.focus();
  for (let k = 0; k < 10; k++) await page.keyboard.press('ArrowRight');
  const beside = await view.reading();
  expect(beside.along).toBeGreaterThan(bare.along);
  // to the right of the middle the field leans to the right
  expect(beside.direction).toBeLessThan(90);
  await tables.getByText('Strength in µT/A as a table').click();
  await expect(
    tables.getByRole('table', { name: /^Strength of the field/ }).getByRole('row')
  ).not.toHaveCount(1);
});

test('a section follows the loop, and its numbers are taken away', async ({ page }) => {
  const view = new FieldView(page);
  await view.open();
  const { desk } = view;
  const { tables } = desk;
  const across = await view.overlay();
  await tables.getByLabel('Line of the section').selectOption({ label: 'Along the lane' });
  await view.fine();
  await expect.poll(() => view.overlay()).not.toBe(across);
  await tables.getByLabel('Line of the section').selectOption({ label: 'At an angle' });
  await tables.getByLabel('Angle of the line', { exact: true }).fill('30');
  await tables.getByLabel('Angle of the line', { exact: true }).press('Enter');
  await view.fine();
  await desk.outlineItem('loop').press('Enter');
  await desk.type('Width', '3 m');
  await view.fine();
  const waiting = page.waitForEvent('download');
  await tables
    .getByRole('group', { name: /Section A–A/ })
    .getByRole('button', { name: /CSV/ })
    .click();
  const rows = readFileSync(await (await waiting).path(), 'utf8')
    .trim()
    .split('\r\n');
  expect(rows[0]).toContain('B upwards (µT/A)');
  // a fine net: about 120 by 60
  expect(rows.length).toBeGreaterThan(6_500);
  const strengths = rows.slice(1).map((row) => row.split(',').map(Number));
  for (const row of strengths.slice(0, 50)) {
    const [up, sum] = [row.at(-3)!, row.at(-1)!];
    expect(Math.abs(up)).toBeLessThanOrEqual(sum * (1 + 1e-12));
  }
});

test('a section along the tape follows the tape', async ({ page }) => {
  const view = new FieldView(page);
  await view.open();
  const { desk } = view;
  const picture = () => desk.tables.locator('.plot svg').innerHTML();
  await desk.takeTool('Measure');
  await desk.drag([-90, 10], [90, -20]);
  const usual = await picture();
  await desk.tables.getByRole('button', { name: 'Section along the tape' }).click();
  await expect.poll(picture).not.toBe(usual);
  await view.fine();
  const first = await picture();
  await desk.drag([-60, -30], [120, 25]);
  await expect.poll(picture).not.toBe(first);
});

test('an end of the section is dragged on the plan: fields and picture follow, and Escape puts it back', async ({
  page
}) => {
  // three gestures, and a fine picture after each of two
  test.setTimeout(90_000);
  const view = new FieldView(page);
  await view.open();
  const { tables } = view.desk;
  const [first, middle, second] = ['First end', 'Middle', 'Second end'].map((name) =>
    page.getByRole('button', { name: new RegExp(`^${name} of section A–A`) })
  ) as [Locator, Locator, Locator];
  const line = tables.getByLabel('Line of the section');
  const number = async (label: string) =>
    Number.parseFloat((await tables.getByLabel(label, { exact: true }).inputValue()).replace('−', '-'));
  const picture = () => tables.locator('.plot svg').innerHTML();
  const usual = await picture();
  const [begun, fixed] = [await centreOf(second), await centreOf(first)];
  // Alt, so that nothing attracts and what is asked for is exact
  await page.keyboard.down('Alt');
  await grab(page, begun, [-30, -40]);
  await expect(line).toHaveValue('ends');
  const [x, y] = [begun[0] - 30 - fixed[0], begun[1] - 40 - fixed[1]];
  expect(await number('Angle of the line')).toBeCloseTo((-Math.atan2(y, x) * 180) / Math.PI, 0);
  const share = Math.hypot(x, y) / (begun[0] - fixed[0]);
  const length = await number('Length of the line');
  // the picture follows while the button is still down
  await expect.poll(picture).not.toBe(usual);
  await page.keyboard.press('Escape');
  await expect(line).toHaveValue('across');
  await page.mouse.move(begun[0] + 60, begun[1] + 60);
  await page.mouse.up();
  await page.keyboard.up('Alt');
  await view.fine();
  expect(await picture()).toBe(usual);
  expect(await centreOf(second)).toEqual(begun);

  // by the keyboard ten steps of a centimetre: what was there and what is now tell the length that the drag had
  await second.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect(line).toHaveValue('ends');
  expect(length).toBeCloseTo(share * ((await number('Length of the line')) - 0.1), 1);
  const angle = await number('Angle of the line');
  // with shift the middle goes sideways only
  await page.keyboard.down('Shift');
  await grab(page, await centreOf(middle), [40, -30]);
  await page.mouse.up();
  await page.keyboard.up('Shift');
  expect(await number('Beside the middle')).toBeGreaterThan(0.1);
  expect(await number('Angle of the line')).toBe(angle);
  // what is looked at is no part of the plan
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
});

test.describe('with a finger', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true });

  test('the end of a section is large enough to take hold of, and goes along', async ({ page }) => {
    const view = new FieldView(page);
    await view.open();
    const end = page.getByRole('button', { name: /^First end of section A–A/ });
    const box = (await end.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
    const begun = await centreOf(end);
    const plan = (await view.desk.plan.boundingBox())!;
    const at: Place = [begun[0] - plan.x - plan.width / 2, begun[1] - plan.y - plan.height / 2];
    const fingers = await Fingers.on(view.desk.plan, page);
    await fingers.drag([[at, [at[0] + 50, at[1] + 70]]]);
    await expect(view.desk.tables.getByLabel('Line of the section')).toHaveValue('ends');
    const now = await centreOf(end);
    // it may have snapped to something near
    expect(Math.hypot(now[0] - begun[0] - 50, now[1] - begun[1] - 70)).toBeLessThan(16);
  });
});

test('currents in a vehicle are drawn, laid on the plan and taken away again', async ({ page }) => {
  const view = new FieldView(page);
  await view.open();
  const { tables } = view.desk;
  await tables.getByRole('radio', { name: 'Currents', exact: true }).check({ force: true });
  const chart = tables.getByRole('img', { name: /^Car over Yard loop/ });
  await expect(chart).toBeVisible({ timeout: 20_000 });
  await expect(chart.locator('path.line').first()).toBeAttached();
  await expect(tables.getByText(/^Between two lines flow/)).toBeVisible();
  const laid = await view.overlay();
  await tables.getByLabel('Show the currents on the plan').uncheck();
  await expect.poll(() => view.overlay()).not.toBe(laid);
  const bare = await view.overlay();
  await tables.getByLabel('Show the currents on the plan').check();
  await expect.poll(() => view.overlay()).toBe(laid);
  // nothing of it stays when something else is looked at
  await tables.getByRole('radio', { name: 'Designs', exact: true }).check({ force: true });
  await expect.poll(() => view.overlay()).toBe(bare);
});

test('a loop that is moved takes its field along', async ({ page }) => {
  const view = new FieldView(page);
  await view.open();
  const { desk } = view;
  await desk.tables.getByRole('radio', { name: 'From above', exact: true }).check({ force: true });
  await view.fine();
  const before = await desk.tables.locator('.plot svg').innerHTML();
  await desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('Shift+F');
  await desk.plan.focus();
  await page.keyboard.press('ArrowRight');
  await view.fine();
  await expect.poll(() => desk.tables.locator('.plot svg').innerHTML()).not.toBe(before);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme}`, () => {
    test.use({ colorScheme });
    test.describe.configure({ timeout: 120_000 });

    test('no picture of a field has an accessibility problem', async ({ page }) => {
      const view = new FieldView(page);
      await view.open();
      await view.desk.tables.getByText('Strength in µT/A as a table').click();
      await expectAccessible(page);
      await view.desk.tables.getByRole('radio', { name: 'Currents', exact: true }).check({ force: true });
      await expect(view.desk.tables.getByRole('img', { name: /^Car over Yard loop/ })).toBeVisible();
      await expectAccessible(page);
    });
  });
}
