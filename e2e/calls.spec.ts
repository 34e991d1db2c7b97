import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

/** One lane, one loop, three cars that each stay over it for well under a second, and one that comes close behind another. */
const site = (traffic: object | null) =>
  JSON.stringify({
    format: 'kerfline-site',
    version: 1,
    name: 'Heron Close, way out',
    lanes: [{ id: 'lane1', name: 'Out', centreline: [[0, -30], [0, 20]], width: 3.5 }], // prettier-ignore
    loops: [
      {
        id: 'L1',
        name: 'Barrier loop',
        turns: 3,
        wire: 'awg14',
        slot: { depth: 0.05, width: 0.008 },
        shape: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8 }
      }
    ],
    circuits: [
      {
        id: 'C1',
        name: 'Barrier',
        strings: [[{ loop: 'L1' }]],
        leadIn: { cable: 'pair-14', length: 20 },
        channel: { unit: 'U1', number: 1, tripThreshold: 0.0016 }
      }
    ],
    units: [
      {
        id: 'U1',
        channels: 1,
        scansInTurn: true,
        measuringTime_s: 0.005,
        settings_F: [2.2e-7],
        inductanceRange_H: [2e-5, 2e-3]
      }
    ],
    ...(traffic && { traffic })
  });

const CARS = {
  duration_s: 40,
  arrivals: [2, 12, 22].map((at_s) => ({ lane: 'lane1', vehicle: 'car', at_s, speed_m_s: 10 }))
};

class Calls {
  readonly time: Locator;
  readonly counts: Locator;
  readonly said: Locator;
  readonly note: Locator;

  constructor(
    readonly page: Page,
    readonly desk = new Desk(page)
  ) {
    this.time = desk.tables.getByRole('slider', { name: 'Time' });
    this.counts = desk.tables.getByRole('table', { name: 'Counts against the truth' });
    this.said = desk.tables.getByRole('status');
    this.note = page.getByText('Simulated traffic is shown.');
  }

  async open(traffic: object | null = CARS): Promise<void> {
    await this.desk.open();
    await this.desk.openText(site(traffic));
    await this.desk.settled();
    await this.desk.lookAt('Passing');
    await this.desk.tables.getByRole('radio', { name: 'Calls over time' }).check({ force: true });
  }

  button(name: string): Locator {
    return this.desk.tables.getByRole('button', { name, exact: true });
  }

  /** A column of the only channel. */
  async count(column: string): Promise<number> {
    const heads = await this.counts.getByRole('columnheader').allInnerTexts();
    const cells = this.counts.getByRole('row').nth(1).getByRole('cell');
    return Number.parseInt(await cells.nth(heads.indexOf(column) - 1).innerText(), 10);
  }

  async now(): Promise<number> {
    return Number(await this.time.inputValue());
  }
}

test('usual traffic is tried with one press, plays on the plan, and goes with one undo', async ({ page }) => {
  const calls = new Calls(page);
  await calls.open(null);
  await calls.button('Try with usual traffic').click();
  await expect(calls.counts).toBeVisible();
  expect(await calls.count('Vehicles')).toBeGreaterThan(0);

  await calls.button('Play').click();
  await expect(calls.note).toBeVisible();
  await expect.poll(() => calls.now()).toBeGreaterThan(0.4);
  await calls.button('Pause').click();
  const paused = await calls.now();
  await calls.button('To the next event').click();
  expect(await calls.now()).toBeGreaterThan(paused);
  // what is shown stays when something else is looked at, until it is closed
  await calls.desk.lookAt('Circuits');
  await expect(calls.note).toBeVisible();
  await page.getByRole('button', { name: 'Show the plan' }).click();
  await expect(calls.note).toHaveCount(0);

  await calls.desk.lookAt('Passing');
  await calls.desk.undo();
  await expect(calls.button('Try with usual traffic')).toBeVisible();
});

test('a longer delay leaves no call, and every mistake says why', async ({ page }) => {
  const calls = new Calls(page);
  await calls.open();
  await expect.poll(() => calls.count('Calls')).toBe(3);
  await expect(calls.desk.tables.getByText('No mistake: every vehicle made one call')).toBeVisible();

  await calls.desk.outlineItem('loop').press('Enter');
  await calls.desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await calls.desk.unfold('Output and its timing');
  await calls.desk.type('Delay', '2 s');
  await expect.poll(() => calls.count('Calls')).toBe(0);
  expect(await calls.count('Missed')).toBe(3);

  await page.keyboard.press('Escape');
  const mistakes = calls.desk.tables.getByRole('table', { name: '3 mistakes' });
  await mistakes
    .getByRole('button', { name: /^Go to/ })
    .nth(1)
    .click();
  await expect(calls.said).toContainText('It left before the delay had run out');
  await expect(calls.said).toContainText('the delay needs 2.00 s');
  // a pointer that passes over the plan changes nothing of that
  await calls.desk.plan.hover();
  await calls.desk.settled();
  await expect(calls.said).toContainText('the delay needs 2.00 s');
  await expect(calls.note).toBeVisible();
  expect(await calls.now()).toBeGreaterThan(12);
  expect(await calls.now()).toBeLessThan(22);

  await calls.desk.undo();
  await expect.poll(() => calls.count('Calls')).toBe(3);
});

test('with the keyboard alone: run, stop, step and zoom', async ({ page }) => {
  const calls = new Calls(page);
  await calls.open();
  await expect(calls.counts).toBeVisible();
  await calls.time.focus();
  await page.keyboard.press('PageDown');
  const first = await calls.now();
  expect(first).toBeGreaterThan(2);
  await page.keyboard.press('PageDown');
  expect(await calls.now()).toBeGreaterThan(first);
  await page.keyboard.press('PageUp');
  expect(await calls.now()).toBe(first);
  await page.keyboard.press('ArrowRight');
  expect(await calls.now()).toBeCloseTo(first + 0.1, 1);

  await page.keyboard.press('Space');
  await expect.poll(() => calls.now()).toBeGreaterThan(first + 0.5);
  await page.keyboard.press('Space');
  const stopped = await calls.now();
  await expect(calls.button('Play')).toBeVisible();
  expect(await calls.now()).toBe(stopped);

  await calls.desk.tables.getByText('Events as a table').click();
  const events = calls.desk.tables.getByRole('table', { name: /^Events from/ });
  const rows = events.getByRole('row');
  // detected, call begins, gone, call ends: three times, and the head
  await expect(rows).toHaveCount(13);
  await calls.time.focus();
  await page.keyboard.press('+');
  await page.keyboard.press('+');
  await page.keyboard.press('+');
  await expect(rows).not.toHaveCount(13);
});

test('traffic can be written by hand, a step at a time', async ({ page }) => {
  const calls = new Calls(page);
  await calls.open();
  await expect.poll(() => calls.count('Vehicles')).toBe(3);
  await calls.desk.tables.getByText('Traffic', { exact: true }).click();
  await calls.desk.tables.getByLabel('Add a single vehicle on').selectOption({ label: 'Out' });
  await expect.poll(() => calls.count('Vehicles')).toBe(4);
  const added = calls.desk.tables.getByRole('group', { name: '4: Car' });
  await added.getByLabel('Vehicle', { exact: true }).selectOption({ label: 'Bus' });
  await expect(calls.desk.tables.getByRole('group', { name: '4: Bus' })).toBeVisible();
  await calls.desk.undo();
  await expect(added).toBeVisible();
  await calls.desk.undo();
  await expect.poll(() => calls.count('Vehicles')).toBe(3);
});

test('a press in the timeline goes to that time', async ({ page }) => {
  const calls = new Calls(page);
  await calls.open();
  const row = calls.desk.tables.getByRole('img', { name: /^Barrier: / });
  const box = (await row.boundingBox())!;
  await page.mouse.click(box.x + box.width / 2, box.y + 30);
  // the whole forty seconds are in sight
  expect(Math.abs((await calls.now()) - 20)).toBeLessThan(1);
  await page.mouse.move(box.x + box.width / 2, box.y + 30);
  await expect(calls.desk.tables.getByText(/Barrier, response .* the threshold/)).toBeVisible();
});

test('at 820 by 1180 nothing is cut off sideways', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  const calls = new Calls(page);
  await calls.open();
  await expect(calls.counts).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });

  test('it has no accessibility problem', async ({ page }) => {
    const calls = new Calls(page);
    await calls.open(null);
    await expectAccessible(page);
    await calls.button('Try with usual traffic').click();
    await expect(calls.counts).toBeVisible();
    await calls.button('To the next event').click();
    await calls.desk.tables.getByText('Events as a table').click();
    await calls.desk.tables.getByText('Traffic', { exact: true }).click();
    await calls.desk.outlineItem('loop').press('Enter');
    await calls.desk.details.getByRole('tab', { name: 'Circuit' }).click();
    await calls.desk.unfold('Output and its timing');
    await expectAccessible(page);
  });
});
