import type { Locator, Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { drawingOnPlan } from './support/pictures';
import { expect, test } from './support/test';

/** Four lanes side by side, each with a unit of its own, all on their second setting. */
const LANES = readFileSync('samples/exit-lanes-that-beat.kerfline.json', 'utf8');

class FrequencyDesk extends Desk {
  band(name: string): Locator {
    return this.tables.getByRole('slider', { name: `${name}, frequency setting` });
  }

  /** A line of the chart; it says its verdict and its figures. */
  pair(names: string): Locator {
    return this.chart.getByRole('button', { name: `${names}:` });
  }

  get chart(): Locator {
    return this.tables.getByRole('group', { name: 'Channels by frequency' });
  }

  get problems(): Locator {
    return this.page.locator('.findings').getByText(/false calls likely/);
  }

  async show(mode: 'Chart' | 'Table'): Promise<void> {
    await this.tables.getByRole('radio', { name: mode }).check({ force: true });
  }

  /** The row of a pair in the table, with what would clear it. */
  rows(names: string): Locator {
    return this.tables
      .locator('tbody')
      .filter({ has: this.page.getByRole('button', { name: names, exact: true }) });
  }

  /** Takes the band in its middle and goes as far to the right or the left as the chart goes. */
  async pull(name: string, to: 'left' | 'right'): Promise<void> {
    await this.band(name).scrollIntoViewIfNeeded();
    const [band, chart] = [await this.band(name).boundingBox(), await this.chart.boundingBox()];
    if (!band || !chart) throw new Error('the band is not on the screen');
    const y = band.y + band.height / 2;
    await this.page.mouse.move(band.x + band.width / 2, y);
    await this.page.mouse.down();
    await this.page.mouse.move(to === 'left' ? chart.x + 2 : chart.x + chart.width - 2, y, { steps: 12 });
  }
}

async function openLanes(page: Page): Promise<FrequencyDesk> {
  const desk = new FrequencyDesk(page);
  await desk.open();
  await desk.openText(LANES);
  await desk.settled();
  await desk.tables.getByRole('tab', { name: 'Frequencies' }).click();
  await expect(desk.band('Exit 1')).toHaveAttribute('aria-valuetext', /^setting 2,/);
  return desk;
}

/** Nothing is left to compute: remedies come in later answers. */
async function rest(page: Page): Promise<void> {
  await expect(page.locator('.stale')).toHaveCount(0, { timeout: 20_000 });
}

test('a band dragged to another setting takes the site with it, and is one step', async ({ page }) => {
  const desk = await openLanes(page);
  await expect(desk.problems).toHaveCount(3);
  await expect(desk.pair('Exit 1 + Exit 2')).toHaveAccessibleName(/false calls likely/);

  await desk.pull('Exit 1', 'right');
  // With the band still in the hand.
  await expect(desk.band('Exit 1')).toHaveAttribute('aria-valuetext', /^setting 4,/);
  await expect(desk.pair('Exit 1 + Exit 2')).toHaveCount(0);
  await expect(desk.problems).toHaveCount(2);
  await page.mouse.up();

  await desk.show('Table');
  await expect(desk.rows('Exit 1 + Exit 2')).toContainText('clear');
  await expect(desk.rows('Exit 1 + Exit 2')).not.toContainText('false calls');
  await desk.undo();
  await expect(desk.rows('Exit 1 + Exit 2')).toContainText('false calls likely');
  await desk.show('Chart');
  await expect(desk.band('Exit 1')).toHaveAttribute('aria-valuetext', /^setting 2,/);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
});

test('Escape puts a dragged band back and leaves no step behind', async ({ page }) => {
  const desk = await openLanes(page);
  const before = await desk.savedText();
  await desk.pull('Exit 3', 'left');
  await expect(desk.band('Exit 3')).toHaveAttribute('aria-valuetext', /^setting 1,/);
  await page.keyboard.press('Escape');
  await expect(desk.band('Exit 3')).toHaveAttribute('aria-valuetext', /^setting 2,/);
  await page.mouse.up();
  expect(await desk.savedText()).toBe(before);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  await expect(page.getByRole('button', { name: 'Nothing to redo' })).toBeDisabled();
});

test('the keyboard steps a band through its settings and pins it', async ({ page }) => {
  const desk = await openLanes(page);
  const band = desk.band('Exit 2');
  await band.focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  await expect(band).toHaveAttribute('aria-valuetext', /^setting 4, 65/);
  await expect(band).toHaveAttribute('aria-valuenow', '4');
  await page.keyboard.press('ArrowRight');
  await expect(band).toHaveAttribute('aria-valuenow', '4');
  await desk.undo();
  await expect(band).toHaveAttribute('aria-valuetext', /^setting 2, 44/);

  const pin = desk.tables.getByRole('button', { name: /^Pin the setting of Exit 2/ });
  await expect(pin).toHaveAttribute('aria-pressed', 'false');
  await band.focus();
  await page.keyboard.press('p');
  await expect(pin).toHaveAttribute('aria-pressed', 'true');
  await expect(band).toHaveAttribute('aria-valuetext', /pinned$/);
  await pin.click();
  await expect(pin).toHaveAttribute('aria-pressed', 'false');
  await desk.undo();
  await desk.undo();
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
});

test('a pair that is pointed at is shown on the plan, and chosen by Enter', async ({ page }) => {
  const desk = await openLanes(page);
  await rest(page);
  let bare = await drawingOnPlan(page);
  // on a busy machine the last figures come late
  await expect
    .poll(
      async () => {
        const before = bare;
        bare = await drawingOnPlan(page);
        return bare === before;
      },
      { intervals: [500] }
    )
    .toBe(true);
  const worst = desk.pair('Exit 3 + Exit 4');
  await worst.focus();
  await expect(desk.tables.getByText('the bands overlap')).toBeVisible();
  await expect.poll(async () => (await drawingOnPlan(page)) === bare).toBe(false);
  await worst.blur();
  await expect.poll(async () => (await drawingOnPlan(page)) === bare).toBe(true);

  await worst.focus();
  await page.keyboard.press('ArrowDown');
  await expect(desk.pair('Exit 2 + Exit 3')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(desk.pair('Exit 2 + Exit 3')).toHaveAttribute('aria-pressed', 'true');
  await expect(desk.details.getByRole('heading', { name: '2 loops' })).toBeVisible();
  await expect(desk.tables.getByText(/coupling/)).toContainText('%');

  await desk.outlineItem('loop').press('Enter');
  await expect(desk.pair('Exit 2 + Exit 3')).toHaveAttribute('aria-pressed', 'false');
});

test('the table names what would clear a pair, and applies a setting as one step', async ({ page }) => {
  const desk = await openLanes(page);
  await desk.show('Table');
  const pair = desk.rows('Exit 1 + Exit 2');
  const apply = pair.getByRole('button', { name: /^Apply: setting \d on Exit \d/ }).first();
  await expect(apply).toBeVisible({ timeout: 20_000 });
  await expect(pair).toContainText(/both on one unit that scans in turn/);
  await expect(pair).toContainText(/further away: ×0\.\d+/);
  const channels = desk.tables.getByRole('table').filter({ hasText: 'Strongest vehicle' });
  await expect(channels.getByRole('row', { name: /^Exit 1 / })).toContainText('Exit 1 unit');
  await apply.press('Enter');
  // its row moves down among the clear ones, and the focus with it
  await expect(pair).toContainText('clear');
  await expect(pair.getByRole('button', { name: 'Exit 1 + Exit 2', exact: true })).toBeFocused();
  await desk.undo();
  await expect(pair).toContainText('false calls likely');
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();

  await pair.getByTitle('How this was computed').first().click();
  await expect(page.getByRole('dialog', { name: /Coupling/ })).toBeVisible();
});

test('clear pairs are drawn when they are asked for, and the way of looking is kept', async ({ page }) => {
  const desk = await openLanes(page);
  const pairs = desk.chart.getByRole('button');
  await expect(pairs).toHaveCount(3);
  await desk.tables.getByRole('checkbox', { name: 'Clear pairs too' }).check();
  await expect(pairs).toHaveCount(6);
  await desk.show('Table');
  await desk.kept();
  await page.reload();
  await desk.settled();
  await expect(desk.tables.getByRole('radio', { name: 'Table' })).toBeChecked();
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });

  test('the chart with a pair chosen, and the table, have no accessibility problem', async ({ page }) => {
    const desk = await openLanes(page);
    await desk.pair('Exit 1 + Exit 2').focus();
    await page.keyboard.press('Enter');
    await rest(page);
    await expectAccessible(page, '#lower-view');
    await desk.band('Exit 4').focus();
    await expectAccessible(page, '#lower-view');
    await desk.show('Table');
    await rest(page);
    await expectAccessible(page, '#lower-view');
  });
});
