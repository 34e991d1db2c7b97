import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const INVENTED = 'Two equal loops, not of this site';

class Simulator {
  readonly figures: Locator;
  readonly said: Locator;

  constructor(
    readonly page: Page,
    readonly desk = new Desk(page)
  ) {
    this.figures = desk.tables.getByRole('table', { name: 'The law and the simulation' });
    this.said = desk.tables.getByRole('status');
  }

  async open(): Promise<void> {
    await this.desk.open();
    await this.desk.lookAt('Frequencies');
    await this.desk.tables.getByRole('radio', { name: 'Simulator' }).check({ force: true });
    await expect(this.figures).toBeVisible();
  }

  slider(name: string): Locator {
    return this.desk.tables.getByRole('slider', { name });
  }

  /** Of the first of the two: plus or minus so many hertz, or percent. */
  async figure(column: string): Promise<number> {
    const heads = await this.figures.getByRole('columnheader').allInnerTexts();
    const cell = this.figures
      .getByRole('row')
      .nth(1)
      .getByRole('cell')
      .nth(heads.indexOf(column) - 1);
    const text = await cell.innerText();
    return Number.parseFloat(text.replace(/[±×]/, ''));
  }
}

test('with the keyboard alone: a wider separation, a greater distance and a longer time each leave less ripple', async ({
  page
}) => {
  const simulator = new Simulator(page);
  await simulator.open();
  await simulator.desk.tables.getByLabel('Pair').selectOption({ label: INVENTED });
  await expect(simulator.said).toContainText('Left loop');

  const separation = simulator.slider('Separation at rest');
  await separation.focus();
  await page.keyboard.press('Home');
  for (let n = 0; n < 13; n++) await page.keyboard.press('ArrowRight');
  await expect(simulator.said).toContainText('650 Hz apart');
  const [near, nearLaw] = [
    await simulator.figure('Reading seen'),
    await simulator.figure('Reading by the law, at most')
  ];
  expect(near).toBeLessThan(1.15 * nearLaw);
  await page.keyboard.press('End');
  await expect(simulator.said).toContainText('4000 Hz apart');
  expect(await simulator.figure('Reading seen')).toBeLessThan(near / 2);
  expect(await simulator.figure('Reading by the law, at most')).toBeLessThan(nearLaw / 5);

  const swing = await simulator.figure('Swing seen');
  await page.keyboard.press('Shift+Tab');
  await expect(simulator.slider('Distance of the loops')).toBeFocused();
  await page.keyboard.press('End');
  await expect(simulator.said).toContainText('coupling −0.00');
  await expect.poll(() => simulator.figure('Swing seen')).toBeLessThan(swing / 10);

  // back to where it is drawn: a hundredth of a percent is left to be read there
  await page.keyboard.press('Home');
  await expect.poll(() => simulator.figure('Swing seen')).toBeGreaterThan(swing / 2);
  await simulator.slider('Measuring time').focus();
  await page.keyboard.press('Home');
  await expect.poll(() => simulator.figure('Reading by the law, at most')).toBeGreaterThan(0.05);
  const byLaw = await simulator.figure('Reading by the law, at most');
  await page.keyboard.press('End');
  await expect.poll(() => simulator.figure('Reading by the law, at most')).toBeLessThan(byLaw / 5);
});

test('at 820 by 1180 nothing is cut off sideways', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  const simulator = new Simulator(page);
  await simulator.open();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  const box = (await simulator.figures.boundingBox())!;
  expect(box.x + box.width).toBeLessThanOrEqual(820);
});

test('two that are on one frequency are said to run in step', async ({ page }) => {
  const simulator = new Simulator(page);
  await simulator.open();
  await simulator.desk.tables.getByLabel('Pair').selectOption({ label: INVENTED });
  await expect(simulator.said).toContainText('Left loop');
  await simulator.slider('Separation at rest').focus();
  await page.keyboard.press('Home');
  await expect(simulator.desk.tables.getByText('drawn each other into step')).toBeVisible();
  await simulator.desk.tables.getByRole('button', { name: 'As drawn' }).click();
  await expect(simulator.said).toContainText('1100 Hz apart');
});

test('the picture follows a slider within a blink', async ({ page }) => {
  const simulator = new Simulator(page);
  await simulator.open();
  await simulator.desk.tables.getByLabel('Pair').selectOption({ label: INVENTED });
  await expect(simulator.said).toContainText('Left loop');
  await simulator.desk.settled();
  const slider = simulator.slider('Separation at rest');
  await slider.focus();
  await page.keyboard.press('End');
  await expect(simulator.said).toContainText('4000 Hz apart');
  const took = await slider.evaluate(async (input: HTMLInputElement) => {
    const path = () => document.querySelector('path.curve')?.getAttribute('d');
    const before = path();
    const start = performance.now();
    input.value = '2000';
    input.dispatchEvent(new Event('input', { bubbles: true }));
    while (path() === before && performance.now() - start < 5_000)
      await new Promise((resolve) => requestAnimationFrame(resolve));
    return performance.now() - start;
  });
  test.info().annotations.push({ type: 'milliseconds', description: took.toFixed(0) });
  // 150 ms are meant; a machine that runs other tests beside this one gets more
  expect(took).toBeLessThan(600);
});

test('the curves can be read point by point, under the pointer and as tables', async ({ page }) => {
  const simulator = new Simulator(page);
  await simulator.open();
  const chart = simulator.desk.tables.getByRole('img', { name: /^Frequency of every cycle/ });
  await chart.scrollIntoViewIfNeeded();
  const box = (await chart.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await expect(simulator.desk.tables.getByText(/ms: .*Hz, .*Hz/)).toBeVisible();
  await simulator.desk.tables.getByText('Points of the curves as a table').click();
  const readings = simulator.desk.tables.getByRole('table', { name: 'Readings, from the mean' });
  await expect(readings.getByRole('row')).not.toHaveCount(1);
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });

  test('it has no accessibility problem', async ({ page }) => {
    const simulator = new Simulator(page);
    await simulator.open();
    await simulator.desk.tables.getByText('Points of the curves as a table').click();
    await expectAccessible(page);
  });
});
