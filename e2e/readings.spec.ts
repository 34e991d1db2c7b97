import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { kill } from './support/kill';
import { expect, test } from './support/test';

interface Kept {
  readonly readings: readonly (Readonly<Record<string, unknown>> & {
    readonly overRange?: readonly string[];
  })[];
  readonly fieldCheck?: {
    readonly limits?: readonly string[];
    readonly insulationLimit_ohm?: number;
    readonly instruments?: readonly { readonly name: string; readonly accuracies: readonly object[] }[];
  };
}

const saved = async (desk: Desk): Promise<Kept> => JSON.parse(await desk.savedText()) as Kept;

async function look(desk: Desk, mode: 'Expected' | 'Readings'): Promise<void> {
  await desk.lookAt('Field check');
  await desk.tables.getByText(mode, { exact: true }).first().click();
  await expect(desk.tables.getByRole('radio', { name: mode, exact: true })).toBeChecked();
}

const fieldIn = (desk: Desk, label: string): Locator => desk.tables.getByLabel(label, { exact: true });
const keepButton = (desk: Desk): Locator => desk.tables.getByRole('button', { name: 'Keep reading' });
/** What is said under a figure. */
const saidUnder = (desk: Desk, label: string): Locator =>
  desk.tables.locator('.figure').filter({ has: desk.page.getByLabel(label, { exact: true }) });
const kept = (desk: Desk): Locator => desk.tables.getByRole('article');

/** The middle of the range that the form says is expected, in the unit in which it says so. */
async function expectedMiddle(desk: Desk, label: string): Promise<number> {
  const hint = saidUnder(desk, label).getByText(/^expected/);
  await expect(hint).toBeVisible({ timeout: 20_000 });
  const [low, high] = (await hint.innerText()).match(/[\d.]+/g)!.map(Number);
  return ((low ?? 0) + (high ?? 0)) / 2;
}

async function atTheForm(page: Page): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await look(desk, 'Readings');
  await expect(keepButton(desk)).toBeVisible();
  return desk;
}

test.describe('on a tablet held upright', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true, colorScheme: 'light' });

  test('a technician takes five readings by touch, dies half way, comes back, and keeps them', async ({
    page,
    context
  }) => {
    test.slow();
    const desk = await atTheForm(page);
    const tap = (label: string) => fieldIn(desk, label).tap();
    const inductance = await expectedMiddle(desk, 'Inductance');

    await tap('Inductance');
    await page.keyboard.type(String(inductance));
    await expect(saidUnder(desk, 'Inductance')).toContainText('fits');
    await fieldIn(desk, 'Inductance').fill(`${inductance / 1000} µH`);
    await expect(saidUnder(desk, 'Inductance')).toContainText('in doubt');
    await desk.tables.getByRole('button', { name: /^Did you mean/ }).tap();
    await expect(saidUnder(desk, 'Inductance')).toContainText('fits');
    await tap('Direct-current resistance');
    await page.keyboard.type('1.2 k');
    await expect(saidUnder(desk, 'Direct-current resistance')).toContainText('1200 Ω');
    await expect(saidUnder(desk, 'Direct-current resistance')).toContainText('beyond a limit');
    await tap('Q');
    await page.keyboard.type('5.5');
    await expect(saidUnder(desk, 'Q')).toContainText('low');
    await desk.tables.getByRole('button', { name: 'Insulation to ground: over the meter’s range' }).tap();
    await expect(fieldIn(desk, 'Insulation to ground')).toHaveValue('OL');
    await tap('Insulation between conductors');
    await page.keyboard.type('1.5 G');
    await tap('By (initials)');
    await page.keyboard.type('M. K.');
    await fieldIn(desk, 'Weather').selectOption('wet');

    // gone without a word, before anything was kept
    await desk.kept();
    await page.reload();
    await desk.settled();
    await look(desk, 'Readings');
    await expect(fieldIn(desk, 'Direct-current resistance')).toHaveValue('1.2 k');
    await kill(page);
    await page.close();
    const next = new Desk(await context.newPage());
    await next.open();
    await look(next, 'Readings');
    await expect(fieldIn(next, 'Direct-current resistance')).toHaveValue('1.2 k');
    await expect(fieldIn(next, 'Insulation to ground')).toHaveValue('OL');
    await expect(fieldIn(next, 'By (initials)')).toHaveValue('M. K.');

    await keepButton(next).tap();
    await expect(next.tables.getByText('Kept: Left, front, Cabinet.')).toBeVisible();
    await expect(fieldIn(next, 'Direct-current resistance')).toHaveValue('');
    await expect(fieldIn(next, 'Weather')).toHaveValue('wet');
    await expect(kept(next)).toHaveCount(1);
    await expect(kept(next).getByRole('row', { name: /^Direct-current resistance/ })).toContainText('1200 Ω');
    await expect(kept(next).getByRole('row', { name: /^Insulation to ground/ })).toContainText('over range');

    const { readings } = await saved(next);
    expect(readings).toHaveLength(1);
    expect(readings[0]).toMatchObject({
      testPoint: 'cabinet',
      resistanceDc_ohm: 1200,
      q: 5.5,
      insulationBetween_ohm: 1.5e9,
      overRange: ['insulation_ohm'],
      by: 'M. K.',
      weather: 'wet'
    });
    expect(readings[0]!['at']).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:00[+-]\d\d:\d\d$/);
    await next.undo();
    await expect(kept(next)).toHaveCount(0);
  });

  test('every target is as large as a finger, and the button that keeps is in sight without scrolling', async ({
    page
  }) => {
    const desk = await atTheForm(page);
    await expectedMiddle(desk, 'Inductance');
    const form = desk.tables.locator('form');
    for (const target of await form
      .locator('input:not([type=radio], [type=checkbox]), select, button')
      .all()) {
      const box = await target.boundingBox();
      if (!box) continue;
      const name = await target.evaluate((each) => each.outerHTML.slice(0, 80));
      expect.soft(box.height, name).toBeGreaterThanOrEqual(44);
    }
    const panel = (await desk.tables.getByRole('tabpanel').boundingBox())!;
    const keep = (await keepButton(desk).boundingBox())!;
    expect(keep.y + keep.height).toBeLessThanOrEqual(panel.y + panel.height);
  });

  test.describe('accessibility', () => {
    test.describe.configure({ timeout: 120_000 });

    test('neither form nor expected readings have an accessibility problem', async ({ page }) => {
      const desk = await atTheForm(page);
      await expectedMiddle(desk, 'Inductance');
      await fieldIn(desk, 'Q').fill('abc');
      await fieldIn(desk, 'Inductance').fill('98');
      await expect(saidUnder(desk, 'Inductance')).toContainText('high');
      await expectAccessible(page);
      await look(desk, 'Expected');
      await expect(desk.tables.getByRole('row', { name: /^Inductance/ }).first()).toBeVisible();
      await expectAccessible(page);
    });
  });
});

test.describe('at a desk', () => {
  test.describe('accessibility', () => {
    test.describe.configure({ timeout: 120_000 });

    test('with readings of three years and an instrument described, nothing stands in anybody’s way', async ({
      page
    }) => {
      const desk = await atTheForm(page);
      const inductance = await expectedMiddle(desk, 'Inductance');
      for (const [year, share] of [
        ['2024', 1],
        ['2025', 0.98],
        ['2026', 0.8]
      ] as const) {
        // prettier-ignore
        await fieldIn(desk, 'Inductance').fill(String(inductance * share));
        await desk.tables.locator('input[name="at"]').fill(`${year}-03-04T09:30`);
        if (year === '2024') await desk.tables.getByRole('checkbox', { name: /^Commissioning/ }).check();
        else await desk.tables.getByRole('checkbox', { name: /^Commissioning/ }).uncheck();
        await keepButton(desk).click();
        await expect(kept(desk).filter({ hasText: '09:30' })).toHaveCount(Number(year) - 2023);
      }
      await expect(
        kept(desk)
          .first()
          .getByRole('row', { name: /^Inductance/ })
      ).toContainText('−20 %');
      await expect(kept(desk).first()).toContainText('low');
      const plot = desk.tables.getByRole('slider', { name: 'Inductance, Cabinet over time' });
      await plot.focus();
      await page.keyboard.press('Home');
      await expect(plot).toHaveAttribute('aria-valuetext', /^4 Mar 2024, 09:30: .* µH, commissioning$/);
      await page.keyboard.press('ArrowRight');
      await expect(plot).toHaveAttribute('aria-valuetext', /−2\.0 %\) since commissioning$/);
      await desk.tables.getByText('As a table').click();
      await expect(
        desk.tables.getByRole('table', { name: 'Inductance, Cabinet' }).getByRole('row')
      ).toHaveCount(4);
      await desk.tables.getByRole('button', { name: 'Add an instrument' }).click();
      await expectAccessible(page);
    });
  });

  test('a kept reading is changed and removed, each one step back', async ({ page }) => {
    const desk = await atTheForm(page);
    await fieldIn(desk, 'Q').fill('25');
    await keepButton(desk).click();
    await expect(kept(desk)).toHaveCount(1);
    // what was begun for a new one waits
    await fieldIn(desk, 'Q').fill('11');
    await kept(desk)
      .getByRole('button', { name: /^Change/ })
      .click();
    await expect(fieldIn(desk, 'Q')).toHaveValue('25');
    await expect(fieldIn(desk, 'Q')).toBeFocused();
    await fieldIn(desk, 'Q').fill('26');
    await keepButton(desk).click();
    await expect(kept(desk).getByRole('row', { name: /^Q / })).toContainText('26.0');
    await expect(fieldIn(desk, 'Q')).toHaveValue('11');
    await kept(desk)
      .getByRole('button', { name: /^Remove/ })
      .click();
    await expect(kept(desk)).toHaveCount(0);
    await desk.undo();
    await expect(kept(desk).getByRole('row', { name: /^Q / })).toContainText('26.0');
    await desk.undo();
    await expect(kept(desk).getByRole('row', { name: /^Q / })).toContainText('25.0');
    await desk.undo();
    await expect(kept(desk)).toHaveCount(0);
  });

  test('the keyboard alone takes a reading at the unit', async ({ page }) => {
    const desk = await atTheForm(page);
    await desk.tables.getByRole('radio', { name: 'Cabinet' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect(desk.tables.getByRole('radio', { name: 'Unit', exact: true })).toBeChecked();
    await fieldIn(desk, 'Frequency').focus();
    await page.keyboard.type('42.9');
    await page.keyboard.press('Enter');
    await expect(fieldIn(desk, 'Inductance')).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(fieldIn(desk, 'Drop −ΔL/L')).toBeFocused();
    await page.keyboard.type('2.1');
    await page.keyboard.press('Enter');
    await expect(keepButton(desk)).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(kept(desk)).toHaveCount(1);
    const [reading] = (await saved(desk)).readings;
    expect(reading).toMatchObject({ testPoint: 'unit', frequency_Hz: 42_900, deltaLOverL: -0.021 });
    expect(reading).toHaveProperty('setting');
    expect(reading).toHaveProperty('vehicle');
  });

  test('what is typed for one circuit waits while another is looked at', async ({ page }) => {
    const desk = await atTheForm(page);
    await fieldIn(desk, 'Q').fill('25');
    await desk.tables.getByRole('button', { name: 'Next circuit' }).click();
    await expect(fieldIn(desk, 'Q')).toHaveValue('');
    await fieldIn(desk, 'Q').fill('27');
    await keepButton(desk).click();
    await desk.tables.getByRole('button', { name: 'Previous circuit' }).click();
    await expect(fieldIn(desk, 'Q')).toHaveValue('25');
    await keepButton(desk).click();
    const { readings } = await saved(desk);
    expect(readings.map(({ circuit, q }) => [circuit, q])).toEqual([['C2', 27], ['C1', 25]]); // prettier-ignore
  });

  test('a storage that takes nothing more is said, and the reading can be kept all the same', async ({
    page
  }) => {
    await page.addInitScript(() => {
      const put: (key: string, text: string) => void = Reflect.get(Storage.prototype, 'setItem');
      Storage.prototype.setItem = function (key: string, text: string) {
        if (key.startsWith('kerfline draft')) throw new DOMException('Quota exceeded', 'QuotaExceededError');
        put.call(this, key, text);
      };
    });
    const desk = await atTheForm(page);
    await fieldIn(desk, 'Q').fill('25');
    await expect(desk.tables.getByRole('alert')).toContainText('The storage of this browser is full');
    await keepButton(desk).click();
    await expect(kept(desk)).toHaveCount(1);
  });

  test('what is expected follows the meter’s frequency, says how it came about, and obeys the limits chosen', async ({
    page
  }) => {
    const desk = new Desk(page);
    await desk.open();
    await look(desk, 'Expected');
    const cabinet = desk.tables.getByRole('table', { name: /^Cabinet/ });
    const q = cabinet.getByRole('row', { name: /^Q / });
    await expect(q).toContainText('at 50.00 kHz', { timeout: 20_000 });
    await expect(q).toContainText('at least 5.00');
    const before = await q.getByRole('cell').first().innerText();
    await fieldIn(desk, 'Test frequency of the meter').fill('1');
    await fieldIn(desk, 'Test frequency of the meter').press('Enter');
    await expect(q).toContainText('at 1.000 kHz', { timeout: 20_000 });
    expect(Number.parseFloat(await q.getByRole('cell').first().innerText())).toBeLessThan(
      Number.parseFloat(before) / 5
    );
    // the limit was published for 50 kHz
    await expect(q).not.toContainText('at least');

    const inductance = cabinet.getByRole('button', { name: 'Inductance' });
    await inductance.click();
    await expect(inductance).toHaveAttribute('aria-expanded', 'true');
    await expect(desk.tables.getByRole('list', { name: /^How the range of Inductance/ }).getByRole('listitem').first()).toContainText('±'); // prettier-ignore

    const insulation = cabinet.getByRole('row', { name: /^Insulation to ground/ });
    await expect(insulation).toContainText('50.0 MΩ');
    await desk.tables.getByLabel(/California Standard Specifications/).check();
    await expect(insulation).toContainText('100 MΩ');
    await fieldIn(desk, 'Least insulation by contract').fill('200');
    await fieldIn(desk, 'Least insulation by contract').press('Enter');
    await expect(insulation).toContainText('at least 200 MΩ');
    expect((await saved(desk)).fieldCheck).toMatchObject({ insulationLimit_ohm: 200e6 });
    await desk.undo();
    await desk.undo();
    await expect(insulation).not.toContainText('100 MΩ');
  });

  test('an instrument is listed with what its maker states, and stays while a reading names it', async ({
    page
  }) => {
    const desk = await atTheForm(page);
    await desk.tables.getByRole('button', { name: 'Add an instrument' }).click();
    await expect(desk.tables.getByLabel('Instrument 1', { exact: true })).toBeChecked();
    await fieldIn(desk, 'Name').fill('Bridge 20 kHz');
    await fieldIn(desk, 'Name').press('Enter');
    await fieldIn(desk, 'Measures L and Q at').fill('20');
    await fieldIn(desk, 'Measures L and Q at').press('Enter');
    const stated = desk.tables.getByRole('group', { name: 'Accuracy of Inductance' });
    await stated.getByLabel('± of the reading').fill('0.5');
    await stated.getByLabel('± of the reading').press('Enter');
    await fieldIn(desk, 'Q').fill('12');
    await keepButton(desk).click();
    await desk.tables.getByRole('button', { name: 'Remove Bridge 20 kHz' }).click();
    await expect(desk.tables.getByText('1 reading was taken with Bridge 20 kHz: it stays.')).toBeVisible();
    const { readings, fieldCheck } = await saved(desk);
    expect(fieldCheck!.instruments).toEqual([
      {
        id: 'M1',
        name: 'Bridge 20 kHz',
        testFrequency_Hz: 20_000,
        accuracies: [{ quantity: 'inductance_H', share: 0.005, floor: 0 }]
      }
    ]);
    expect(readings[0]).toMatchObject({ instruments: ['M1'] });
  });
});

test('readings of an old file are there, and one of no circuit is given to one', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const site = JSON.parse(await desk.savedText()) as object;
  await desk.openText(JSON.stringify({ ...site, readings: [{ circuit: 'C1', resistanceDc_ohm: 0.61 }, { q: 14 }] })); // prettier-ignore
  await desk.settled();
  await look(desk, 'Readings');
  await expect(kept(desk)).toHaveCount(1);
  await expect(kept(desk).getByRole('row', { name: /^Direct-current resistance/ })).toContainText('0.610 Ω');
  await expect(desk.tables.getByRole('heading', { name: 'Readings of no circuit' })).toBeVisible();
  await desk.tables.getByRole('listitem').getByRole('button', { name: /^Change: Cabinet/ }).click(); // prettier-ignore
  await expect(fieldIn(desk, 'Q')).toHaveValue('14');
  await keepButton(desk).click();
  await expect(kept(desk)).toHaveCount(2);
  expect((await saved(desk)).readings[1]).toEqual({ circuit: 'C1', testPoint: 'cabinet', q: 14 });
});
