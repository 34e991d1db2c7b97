/** Setting out advance loops by speed, and measuring a speed with two loops. */
import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const MPH = 0.44704;

/** Two equal loops, 4 m from edge to edge, on one unit; and one loop alone in a lane beside. */
const pairSite = (secondThreshold = 0.001): string => {
  const loops = [
    { id: 'L1', x: 0, y: -2 },
    { id: 'L2', x: 0, y: 2 },
    { id: 'L3', x: 8, y: 0 }
  ];
  const lane = (id: string, x: number) => ({ id, name: id, width: 3.5, centreline: [[x, -20], [x, 20]] }); // prettier-ignore
  return JSON.stringify({
    format: 'kerfline-site',
    version: 1,
    name: 'Pair',
    lanes: [lane('Through', 0), lane('Beside', 8)],
    loops: loops.map(({ id, x, y }) => ({
      id,
      name: id,
      turns: 3,
      wire: 'awg14',
      slot: { depth: 0.05, width: 0.008 },
      tail: { length: 3 },
      shape: { kind: 'rectangle', centre: [x, y], width: 1.8, length: 1.8 }
    })),
    circuits: loops.map(({ id }, k) => ({
      id: `C${k + 1}`,
      name: ['Upstream', 'Downstream', 'Alone'][k],
      strings: [[{ loop: id }]],
      leadIn: { cable: 'pair-14', length: 20 },
      channel: {
        unit: 'U1',
        number: k + 1,
        frequencySetting: k + 1,
        tripThreshold: k === 1 ? secondThreshold : 0.001
      },
      detect: ['car', 'van']
    })),
    units: [
      {
        id: 'U1',
        name: 'Cabinet unit',
        channels: 4,
        scansInTurn: true,
        measuringTime_s: 0.002,
        settings_F: [2.2e-7, 1.5e-7, 1e-7],
        inductanceRange_H: [2e-5, 2e-3]
      }
    ]
  });
};

class Passing {
  readonly said: Locator;

  constructor(
    readonly page: Page,
    readonly desk = new Desk(page)
  ) {
    this.said = desk.tables.getByRole('status');
  }

  async look(mode: string): Promise<void> {
    await this.desk.lookAt('Passing');
    await this.desk.tables.getByRole('radio', { name: mode }).check({ force: true });
    await expect(this.said.first()).not.toBeEmpty();
  }

  async type(label: string, text: string): Promise<void> {
    const field = this.desk.tables.getByLabel(label, { exact: true });
    await field.fill(text);
    await field.press('Enter');
  }

  async openPair(text = pairSite()): Promise<void> {
    await this.desk.open();
    await this.desk.openText(text);
    await this.look('Speed pair');
    await expect(this.said).toContainText('The pair shows');
  }

  table(name: string): Locator {
    return this.desk.tables.getByRole('table', { name });
  }

  /** Of the vehicle in the table of what the pair shows. */
  async shown(vehicle: string, column: string): Promise<number> {
    const table = this.table('What the pair shows');
    const heads = await table.getByRole('columnheader').allInnerTexts();
    const row = table.getByRole('row').filter({ hasText: vehicle });
    const text = await row
      .getByRole('cell')
      .nth(heads.indexOf(column) - 1)
      .innerText();
    return Number.parseFloat(text.replace('−', '-').replace(/[+±]/, ''));
  }
}

test.describe('setting out by speed', () => {
  test('places the loops of a typed speed at their distances, as one step that can be undone', async ({
    page
  }) => {
    const passing = new Passing(page);
    await passing.desk.open();
    await passing.desk.startFrom('Advance loops');
    await passing.look('Setting out by speed');
    await passing.type('85th percentile speed', '50 mph');
    // 22.352 m/s: 5.5 and 2.5 s of it
    await expect(passing.said).toContainText('122.9\u00a0m to 55.9\u00a0m before the line');
    const count = await passing.desk.loopCount();
    const planned = (await passing.table('Advance loops').getByRole('row').count()) - 1;
    expect(planned).toBeGreaterThan(2);

    const place = passing.desk.tables.getByRole('button', { name: 'Place these loops' });
    await place.click();
    await passing.desk.settled();
    expect(await passing.desk.loopCount()).toBe(count + planned);
    await expect(place).toBeDisabled();
    await expect(passing.desk.tables.getByText('These loops are on the plan')).toBeVisible();

    const saved = JSON.parse(await passing.desk.savedText()) as {
      loops: { shape: { centre: [number, number]; length: number } }[];
      circuits: unknown[];
    };
    const edges = saved.loops.slice(-planned).map(({ shape }) => -shape.centre[1] + shape.length / 2);
    expect(edges[0]).toBeCloseTo(5.5 * 50 * MPH, 6);
    expect(edges.at(-1)).toBeCloseTo(2.5 * 50 * MPH, 6);
    expect(saved.circuits).toHaveLength(2 + planned);

    await passing.desk.undo();
    expect(await passing.desk.loopCount()).toBe(count);
    await passing.desk.redo();
    expect(await passing.desk.loopCount()).toBe(count + planned);
  });

  test('with the keyboard alone, in feet: a longer extension needs fewer loops, and the lane is drawn on', async ({
    page
  }) => {
    const passing = new Passing(page);
    await passing.desk.open();
    await passing.desk.openText(pairSite());
    await page.getByRole('radio', { name: 'ft', exact: true }).check({ force: true });
    await passing.look('Setting out by speed');
    const speed = passing.desk.tables.getByLabel('85th percentile speed', { exact: true });
    await speed.focus();
    await page.keyboard.type('55');
    await page.keyboard.press('Enter');
    await expect(passing.said).toContainText('443.7\u00a0ft to 201.7\u00a0ft before the line');
    await expect(passing.desk.tables.getByText('drawn on by')).toBeVisible();
    const rows = passing.table('Advance loops').getByRole('row');
    const many = await rows.count();
    const extension = passing.desk.tables.getByLabel('Extension of a call', { exact: true });
    await extension.focus();
    for (let n = 0; n < 15; n++) await page.keyboard.press('ArrowUp');
    await expect(extension).toHaveValue('3 s');
    await expect.poll(() => rows.count()).toBeLessThan(many);

    const place = passing.desk.tables.getByRole('button', { name: 'Place these loops' });
    await place.focus();
    await page.keyboard.press('Enter');
    await passing.desk.settled();
    await expect(passing.desk.tables.getByText('drawn on by')).toHaveCount(0);
    await expect(place).toBeDisabled();
  });

  test('shows the published figures beside equal ones of its own, and refuses a zone that ends before it begins', async ({
    page
  }) => {
    const passing = new Passing(page);
    await passing.desk.open();
    await passing.look('Setting out by speed');
    await passing.desk.tables.locator('summary', { hasText: 'Published figures' }).click();
    const table = passing.table('Published figures beside those of this program');
    // NCHRP 812, exhibits 4-7 and 6-2; AASHTO 2018, section 3.1.2
    const row = table.getByRole('row').filter({ hasText: '55\u00a0mph' });
    await expect(row.getByRole('cell')).toHaveText([
      '445–200\u00a0ft (136–61\u00a0m)',
      '445–200\u00a0ft (136–61\u00a0m)',
      '5.0\u00a0s',
      '5.0\u00a0s',
      '495\u00a0ft (151\u00a0m)',
      '495\u00a0ft (151\u00a0m)'
    ]);
    await passing.type('Zone ends', '7 s');
    await expect(passing.desk.tables.getByLabel('Zone ends', { exact: true })).toHaveAttribute(
      'aria-invalid',
      'true'
    );
    await expect(passing.said).toContainText('122.2\u00a0m to 55.6\u00a0m');
  });
});

test.describe('a speed pair', () => {
  test('of equal loops shows the speed that is driven, and follows a slider', async ({ page }) => {
    const passing = new Passing(page);
    await passing.openPair();
    await expect(passing.said).toContainText('4.00 m apart, 288 ms at this speed. The pair shows 50 km/h');
    expect(Math.abs(await passing.shown('Car', 'Always off by'))).toBeLessThan(0.2);
    const chance = await passing.shown('Car', 'By chance');
    const slider = passing.desk.tables.getByRole('slider', { name: 'Speed driven' });
    await slider.focus();
    for (let n = 0; n < 50; n++) await page.keyboard.press('ArrowRight');
    await expect(passing.said).toContainText('144 ms at this speed. The pair shows 100 km/h');
    expect(await passing.shown('Car', 'By chance')).toBeGreaterThan(1.3 * chance);
  });

  test('with a less sensitive second loop is wrong one way and the other, says why, and is mended by a threshold', async ({
    page
  }) => {
    const passing = new Passing(page);
    await passing.openPair(pairSite(0.008));
    await expect(passing.desk.tables.getByText(/^The thresholds differ/)).toBeVisible();
    const there = await passing.shown('Car', 'Always off by');
    expect(there).toBeLessThan(-2);
    await passing.desk.tables.getByRole('radio', { name: 'Against it' }).check({ force: true });
    await expect.poll(() => passing.shown('Car', 'Always off by')).toBeGreaterThan(2);

    // a click on the name draws the curves of that vehicle
    await passing.desk.tables.getByRole('button', { name: 'Delivery van' }).click();
    await expect(passing.said).toContainText('Delivery van: the trips are');
    const curves = passing.desk.tables.getByRole('slider', { name: 'Delivery van: response of both loops' });
    await curves.focus();
    await page.keyboard.press('ArrowRight');
    await expect(
      passing.desk.tables.getByText(/from the first trip: Downstream .*%, Upstream .*%/)
    ).toBeVisible();

    await page.keyboard.press('Escape');
    await passing.desk.lookAt('Circuits');
    await passing.desk.tables.getByRole('button', { name: 'Downstream' }).first().click();
    await passing.desk.details.getByRole('tab', { name: 'Circuit' }).click();
    await passing.desk.type('Trip threshold', '0.1 %');
    await passing.look('Speed pair');
    await expect.poll(() => passing.shown('Car', 'Always off by')).toBeLessThan(0.2);
    await expect(passing.desk.tables.getByText(/^The thresholds differ/)).toHaveCount(0);
  });

  test('is not there where no two circuits follow one another', async ({ page }) => {
    const passing = new Passing(page);
    await passing.desk.open();
    await passing.desk.startFrom('Blank');
    await passing.desk.lookAt('Passing');
    await passing.desk.tables.getByRole('radio', { name: 'Speed pair' }).check({ force: true });
    await expect(passing.desk.tables.getByText('No two circuits follow one another')).toBeVisible();
    await passing.desk.tables.getByRole('radio', { name: 'Setting out by speed' }).check({ force: true });
    await expect(passing.desk.tables.getByText('Draw a lane with a stop line')).toBeVisible();
  });
});

test('at 820 by 1180 nothing of either is cut off sideways', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  const passing = new Passing(page);
  await passing.openPair();
  const fits = async (table: Locator) => {
    const box = (await table.boundingBox())!;
    expect(box.x + box.width).toBeLessThanOrEqual(820);
  };
  await fits(passing.table('What the pair shows'));
  await fits(passing.table('Where the error of the speed comes from'));
  await passing.look('Setting out by speed');
  await passing.desk.tables.locator('summary', { hasText: 'Published figures' }).click();
  await fits(passing.table('Published figures beside those of this program'));
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });

  test('neither has an accessibility problem', async ({ page }) => {
    const passing = new Passing(page);
    await passing.openPair(pairSite(0.004));
    await expectAccessible(page);
    await passing.look('Setting out by speed');
    await passing.desk.tables.locator('summary', { hasText: 'Published figures' }).click();
    await expectAccessible(page);
  });
});
