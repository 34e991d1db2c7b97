import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { oneLoop } from './support/one-loop';
import { expect, test } from './support/test';

/** One lane along +y with one loop in its middle, a car well before it, and a lane beside. */
const SITE = oneLoop({
  ...{ name: 'Fuller Row', loop: 'Middle loop', circuit: 'Counter', turns: 4, detect: ['car', 'bicycle'] },
  over: {
    lanes: [
      { id: 'lane1', name: 'Inbound', centreline: [[0, -20], [0, 20]], width: 3.5 }, // prettier-ignore
      { id: 'lane2', name: 'Outbound', centreline: [[3.5, 20], [3.5, -20]], width: 3.5 } // prettier-ignore
    ],
    probes: [{ vehicle: 'car', at: [0, -12], heading: 90 }]
  }
});

interface Saved {
  readonly probes: readonly { readonly vehicle: string; readonly at: readonly [number, number] }[];
  readonly paths: readonly { readonly name: string; readonly points: readonly unknown[] }[];
}

class Passing {
  /** The plot of the circuit: its line is a slider. */
  readonly plot: Locator;
  readonly said: Locator;

  constructor(
    readonly page: Page,
    readonly desk = new Desk(page)
  ) {
    this.plot = desk.tables.getByRole('slider', { name: 'Counter: place along the way' });
    this.said = desk.tables.getByRole('status').filter({ hasText: 'Counter:' });
  }

  async open(mode = 'Along the lane'): Promise<void> {
    await this.desk.open();
    await this.desk.openText(SITE);
    await this.desk.lookAt('Passing');
    await this.desk.tables.getByRole('radio', { name: mode }).check({ force: true });
    await this.desk.settled();
  }

  /** Ends of the car's zone, metres along the lane. */
  async zone(): Promise<readonly [number, number]> {
    const found = /from ([\d.]+) m to ([\d.]+) m/.exec(await this.said.innerText());
    return [Number(found?.[1]), Number(found?.[2])];
  }

  async saved(): Promise<Saved> {
    return JSON.parse(await this.desk.savedText()) as Saved;
  }

  /** What the ground of the plan shows; pictures lie below it on a canvas of their own. */
  ground(): Promise<string> {
    return this.page
      .locator('canvas')
      .nth(1)
      .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
  }
}

test('the curve says where a car is detected, under the pointer too, and a click puts it there', async ({
  page
}) => {
  const passing = new Passing(page);
  await passing.open();
  await expect(passing.said).toContainText('Car is detected over');
  const [from, to] = await passing.zone();
  // even about the loop, whose middle is 20 m from the lane's start; where it releases lies a little further out
  expect(from).toBeGreaterThan(16);
  expect(20 - from).toBeLessThan(to - 20 + 0.02);
  expect(to - 20 - (20 - from)).toBeLessThan(0.3);

  const box = (await passing.plot.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + 40);
  await expect(passing.desk.tables.getByText(/^At \d+\.\d\d m: Car [\d.]+ %/)).toBeVisible();
  const [before] = await passing.desk.responses();
  expect(before).toBeLessThan(0.01);
  await page.mouse.click(box.x + box.width / 2 + 20, box.y + 14);
  const [after] = await passing.desk.responses();
  expect(after).toBeGreaterThan(0.16);
  const { probes } = await passing.saved();
  expect(probes).toHaveLength(1);
  expect(probes[0]!.at[0]).toBe(0);
  expect(Math.abs(probes[0]!.at[1])).toBeLessThan(3);
  await passing.desk.undo();
  expect((await passing.saved()).probes[0]!.at).toEqual([0, -12]);
});

test('with the keyboard alone: move the line, change the vehicle, put it on the plan', async ({ page }) => {
  const passing = new Passing(page);
  await passing.open();
  await passing.plot.focus();
  await page.keyboard.press('Home');
  const start = Number(await passing.plot.getAttribute('aria-valuenow'));
  for (let n = 0; n < 3; n++) await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('ArrowLeft');
  await expect(passing.plot).toHaveAttribute('aria-valuenow', String(Number((start + 2.9).toFixed(2))));
  await expect(passing.plot).toHaveAttribute('aria-valuetext', /^[\d.]+ m, Car\. At/);
  await page.keyboard.press('ArrowDown');
  await expect(passing.plot).toHaveAttribute('aria-valuetext', /m, Bicycle/);
  await page.keyboard.press('Enter');
  await passing.desk.settled();
  const { probes } = await passing.saved();
  expect(probes).toMatchObject([{ vehicle: 'bicycle' }]);
  expect(probes[0]!.at[1]).toBeCloseTo(start + 2.9 - 20, 6);

  const offset = passing.desk.tables.getByLabel('Offset, typed');
  await offset.fill('0.8');
  await offset.press('Enter');
  await passing.plot.focus();
  await page.keyboard.press('Enter');
  await passing.desk.settled();
  expect((await passing.saved()).probes[0]!.at[0]).toBeCloseTo(0.8, 6);
});

test('the zone follows the loop while it is still in the hand, and goes back with Escape', async ({
  page
}) => {
  const passing = new Passing(page);
  await passing.open();
  const before = await passing.zone();
  await passing.desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('Shift+F');
  await passing.desk.settled();
  // the loop fills the view: its upper side is taken, which moves the whole loop
  await passing.desk.grab([0, 0]);
  await passing.desk.carry([0, -60]);
  await expect.poll(async () => (await passing.zone())[0]).not.toBe(before[0]);
  await passing.desk.settled();
  const during = await passing.zone();
  expect(during[0] - before[0]).toBeCloseTo(during[1] - before[1], 1);
  expect(during[0]).toBeGreaterThan(before[0]);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect.poll(async () => (await passing.zone())[0]).toBe(before[0]);
});

test('other vehicles, one circuit alone, a linear scale, and the table that says the same', async ({
  page
}) => {
  const passing = new Passing(page);
  await passing.open();
  const { tables } = passing.desk;
  await tables.getByRole('checkbox', { name: 'Car', exact: true }).uncheck();
  await expect(passing.said).toContainText('Bicycle');
  await tables.getByLabel('Another vehicle').selectOption({ label: 'Lorry' });
  await expect(tables.getByRole('checkbox', { name: 'Lorry' })).toBeChecked();
  await passing.desk.settled();
  await expect(passing.said).toContainText('Lorry is detected');
  await tables.getByRole('radio', { name: 'Linear' }).check({ force: true });
  await tables.getByLabel('Circuit', { exact: true }).selectOption({ label: 'Counter' });
  await tables.getByText('Zones and strongest places as a table').click();
  const row = tables.getByRole('table', { name: /^Zones/ }).getByRole('row', { name: /Lorry/ });
  const [from, to] = await passing.zone();
  await expect(row).toContainText(`${from.toFixed(1)}`);
  await expect(row).toContainText(`${to.toFixed(1)}`);
});

test('a response map is laid under the plan and taken away again', async ({ page }) => {
  const passing = new Passing(page);
  await passing.open();
  const { tables } = passing.desk;
  const bare = await passing.ground();
  await tables.getByLabel('Response map on the plan').check();
  await passing.desk.settled();
  await expect(tables.getByText('Inside the strong line the vehicle makes a call.')).toBeVisible();
  await expect(tables.getByText('Coarse so far')).toHaveCount(0);
  const car = await passing.ground();
  expect(car).not.toBe(bare);
  await tables.getByLabel('Centre of').selectOption({ label: 'Lorry' });
  await passing.desk.settled();
  await expect.poll(() => passing.ground()).not.toBe(car);
  await tables.getByLabel('Response map on the plan').uncheck();
  await expect.poll(() => passing.ground()).toBe(bare);
});

test('a path is drawn, named, driven along and deleted', async ({ page }) => {
  const passing = new Passing(page);
  await passing.open();
  const { desk } = passing;
  // the loop in the middle of the view, and the path through it
  await desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('Shift+F');
  await desk.takeTool('Path');
  await desk.click([-200, 0]);
  await desk.click([0, 0]);
  await desk.click([200, 10]);
  await page.keyboard.press('Enter');
  await expect(desk.details.getByRole('heading', { name: 'Path 1' })).toBeVisible();
  await desk.type('Name', 'Across the yard');
  await desk.tables.getByLabel('Along', { exact: true }).selectOption({ label: 'Across the yard' });
  await desk.settled();
  await expect(passing.said).toContainText('is detected over');
  expect((await passing.saved()).paths).toMatchObject([{ name: 'Across the yard' }]);
  // Selected already, so Enter would go on to its fields.
  await desk.outlineItem('path').focus();
  await page.keyboard.press('Delete');
  await desk.settled();
  expect((await passing.saved()).paths).toEqual([]);
  await expect(desk.tables.getByLabel('Along', { exact: true })).toHaveValue('lane lane1');
});

test('across the lane: the weakest path is told, and a click puts the vehicle there', async ({ page }) => {
  const passing = new Passing(page);
  await passing.open('Across the lane');
  const { tables } = passing.desk;
  const paths = tables.getByRole('table', { name: 'Counter · Inbound' });
  await expect(paths).toBeVisible({ timeout: 20_000 });
  await expect(paths.getByRole('row', { name: /weakest asked for/ })).toContainText('Bicycle');
  await paths.getByRole('button', { name: /^Bicycle/ }).click();
  await passing.desk.settled();
  const { probes } = await passing.saved();
  expect(probes).toMatchObject([{ vehicle: 'bicycle' }]);
  expect(Math.abs(probes[0]!.at[1])).toBeLessThan(3);
  await expect(passing.desk.details.getByRole('heading', { name: 'Middle loop' })).toBeVisible();
  await expect(tables.getByRole('table', { name: 'Traffic in the next lane' })).toContainText('Outbound');
  await expect(tables.getByRole('table', { name: 'Height of detection' })).toContainText('1.20 m');
});

test('at 820 by 1180 nothing is cut off sideways', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  const passing = new Passing(page);
  await passing.open();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  const box = (await passing.plot.boundingBox())!;
  expect(box.x + box.width).toBeLessThanOrEqual(820);
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });

  test('neither along nor across the lane has an accessibility problem', async ({ page }) => {
    const passing = new Passing(page);
    await passing.open();
    const { tables } = passing.desk;
    await tables.getByLabel('Response map on the plan').check();
    await tables.getByText('Zones and strongest places as a table').click();
    await passing.desk.settled();
    await expectAccessible(page);
    await tables.getByRole('radio', { name: 'Across the lane' }).check({ force: true });
    await expect(tables.getByRole('table', { name: 'Counter · Inbound' })).toBeVisible({ timeout: 20_000 });
    await tables.getByText('Every path as a table').click();
    await expectAccessible(page);
  });
});
