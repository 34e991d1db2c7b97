import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

test.describe.configure({ timeout: 120_000 });

const SECTIONS = ['Cross-section', 'Losses', 'Capacitance'] as const;
const CIRCUIT_SECTIONS = [
  'Plausible ranges',
  'Losses',
  'Temperature and moisture',
  'Standard test plates'
] as const;

async function selectLoop(page: Desk['page']): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  await desk.settled();
  return desk;
}

test('losses, capacitance and the cross-section unfold, and stay unfolded', async ({ page }) => {
  const desk = await selectLoop(page);
  for (const name of SECTIONS) await desk.unfold(name);
  await expect(desk.details.getByRole('img', { name: /^Slot of .* 50 mm deep and 8 mm wide/ })).toBeVisible();
  await expect(desk.details.getByRole('row', { name: /Copper of the loop/ })).toBeVisible();
  await expect(desk.details.getByRole('row', { name: /Self-resonance/ })).toContainText('kHz');

  await page.reload();
  await desk.settled();
  await desk.outlineItem('loop').press('Enter');
  await desk.settled();
  await expect(desk.details.getByRole('img', { name: /^Slot of / })).toBeVisible();
});

test('the cross-section follows the slot: a deeper one leaves more cover', async ({ page }) => {
  const desk = await selectLoop(page);
  await desk.unfold('Cross-section');
  await expect(desk.details.getByText('cover 38.6 mm')).toBeVisible();
  await desk.type('Slot depth', '60 mm');
  await desk.settled();
  await expect(desk.details.getByText('cover 48.6 mm')).toBeVisible();
});

test('the shares of the losses add up to the resistance at the terminals', async ({ page }) => {
  const desk = await selectLoop(page);
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await desk.unfold('Losses');
  const table = desk.details.getByRole('table', { name: /^Losses of circuit/ });
  const texts = await table.locator('tbody td:nth-child(2)').allInnerTexts();
  const ohms = texts.map((text) => Number.parseFloat(text) * (text.includes('mΩ') ? 1e-3 : 1));
  const stated = await desk.figure('Resistance at the operating frequency').innerText();
  const whole = Number.parseFloat(stated) * (stated.includes('mΩ') ? 1e-3 : 1);
  expect(ohms.length).toBeGreaterThan(3);
  expect(ohms.reduce((a, b) => a + b, 0)).toBeCloseTo(whole, 1);
});

test('a hot day has more resistance than a cold one, and the days can be stated', async ({ page }) => {
  const desk = await selectLoop(page);
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await desk.unfold('Temperature and moisture');
  const ohms = async (row: RegExp) =>
    Number.parseFloat(await desk.details.getByRole('row', { name: row }).locator('td').nth(1).innerText());
  const hot = await ohms(/Hottest/);
  expect(hot).toBeGreaterThan(await ohms(/Coldest/));

  await page.keyboard.press('Escape');
  await desk.plan.focus();
  await page.keyboard.press('Escape');
  await desk.unfold('Weather and pavement');
  await desk.type('Hottest day, wire', '70 °C');
  await desk.settled();
  await desk.outlineItem('loop').press('Enter');
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await desk.settled();
  await expect(desk.details.getByRole('row', { name: /Hottest, 70 °C/ })).toBeVisible();
  expect(await ohms(/Hottest/)).toBeGreaterThan(hot);
});

test('a tolerance is usual until it is typed, and usual again when it is emptied', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.unfold('Tolerances');
  const depth = desk.field('Slot depth ±');
  await expect(depth).toHaveAttribute('placeholder', '10 mm, usual');
  await desk.type('Slot depth ±', '4');
  await expect(depth).toHaveValue('4 mm');
  expect(JSON.parse(await desk.savedText())).toMatchObject({ tolerances: { depth_m: 0.004 } });
  await desk.type('Slot depth ±', '');
  await expect(depth).toHaveValue('');
  expect(JSON.parse(await desk.savedText())).not.toHaveProperty('tolerances');
});

test('an added resistance lowers Q and shows among the losses', async ({ page }) => {
  const desk = await selectLoop(page);
  await desk.unfold('Losses');
  const q = async () => Number.parseFloat(await desk.figure('Quality factor').innerText());
  const before = await q();
  await desk.type('Added resistance', '2');
  await desk.settled();
  expect(await q()).toBeLessThan(before / 3);
  await expect(desk.details.getByRole('row', { name: /Added by you/ }).first()).toContainText('2.00 Ω');
});

test('plausible ranges and test plates come after the figures, and say what moves them', async ({ page }) => {
  const desk = await selectLoop(page);
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await desk.unfold('Plausible ranges');
  const ranges = desk.details.getByRole('table', { name: /^Where each figure lies/ });
  const [low, high] = (await ranges.getByRole('row', { name: /^L / }).getByRole('button').innerText())
    .split('–')
    .map(Number.parseFloat);
  const stated = Number.parseFloat(
    await desk.figure('Apparent inductance at the terminals').getByRole('button').first().innerText()
  );
  expect(low).toBeLessThan(stated);
  expect(high).toBeGreaterThan(stated);
  await expect(ranges.getByRole('row', { name: /^R DC/ })).toContainText('temperature ±15 °C');

  await desk.unfold('Standard test plates');
  const plates = desk.details.getByRole('table', { name: /^Test plates of the vehicle classes/ });
  await expect(plates.getByRole('row')).toHaveCount(4);
  await expect(plates.getByRole('row', { name: /automobile/ })).toContainText('3.20 %');
});

test('without any tolerance the figures stand alone', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.unfold('Tolerances');
  for (const label of ['Loop dimensions ±', 'Slot depth ±', 'Pitch of the wires ±', 'Lead-in length ±'])
    await desk.type(label, '0');
  for (const label of ['Wire temperature ± °C', 'Permittivity ±', 'Vehicle height ±'])
    await desk.type(label, '0');
  await desk.outlineItem('loop').press('Enter');
  await expect(desk.details.getByText('No tolerance is stated: the figures stand alone.')).toBeVisible();
});

test('a placed vehicle tells what it changes, and how that was computed', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('vehicle').press('Enter');
  await desk.settled();
  const table = desk.details.getByRole('region', { name: 'What it changes where it stands' });
  await table.getByRole('button').nth(1).click();
  const dialog = page.getByRole('dialog', { name: 'Change of inductance' });
  await expect(dialog.getByRole('row', { name: /Change of inductance/ })).toContainText('µH');
});

test.describe('how it was computed', () => {
  test('opens from a figure by the keyboard, with values and source, and gives the focus back', async ({
    page
  }) => {
    const desk = await selectLoop(page);
    // the plausible range that follows has a button of its own
    const figure = desk.figure('Inductance').getByRole('button').first();
    await figure.focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'Magnetic inductance of the loop alone' });
    await expect(dialog).toContainText('Rosa 1908');
    await expect(dialog.getByRole('row', { name: /Turns/ })).toContainText('3');
    await expect(dialog.locator('math').first()).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await expect(figure).toBeFocused();
  });

  test('opens by the mouse from every table below', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    for (const view of ['Circuits', 'Passing']) {
      await desk.tables.getByRole('tab', { name: view }).click();
      if (view === 'Passing')
        await desk.tables.getByRole('radio', { name: 'Across the lane' }).check({ force: true });
      const figure = desk.tables.getByTitle('How this was computed').first();
      await figure.waitFor();
      // a row that is half scrolled away lies under the table's head
      await desk.tables.getByRole('tabpanel').evaluate((panel) => {
        panel.scrollTo(0, 0);
      });
      await figure.click();
      const dialog = page.getByRole('dialog');
      await expect(dialog.getByRole('table')).toBeVisible();
      await expect(dialog.getByText('Leaves out')).toBeVisible();
      await dialog.getByRole('button', { name: 'Close' }).click();
    }
  });
});

test.describe('the head of the table of circuits', () => {
  test('stays a line or two high when every column is filled', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.responses();
    await expect(desk.tables.getByText('…', { exact: true })).toHaveCount(0, { timeout: 20_000 });
    for (const width of [1440, 1280, 1000]) {
      await page.setViewportSize({ width, height: 720 });
      const head = await desk.tables.locator('thead').boundingBox();
      expect(head?.height, `at ${width} pixels`).toBeLessThan(48);
    }
  });

  test('never covers what has the focus', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.responses();
    const height = page.getByRole('slider', { name: 'Height of the tables' });
    for (let k = 0; k < 12; k++) await height.press('ArrowDown');
    const panel = desk.tables.getByRole('tabpanel');
    expect(await panel.evaluate((it) => it.scrollHeight - it.clientHeight)).toBeGreaterThan(20);
    await desk.tables.getByRole('button').last().focus();
    const figures = await panel.getByRole('button').count();
    for (let k = 1; k < figures; k++) {
      await page.keyboard.press('Shift+Tab');
      const focused = desk.tables.locator(':focus');
      const covered = await focused.evaluate((it) => {
        const head = it.closest('table')!.querySelector('thead')!.rows[0]!.cells[0]!;
        return head.getBoundingClientRect().bottom - it.getBoundingClientRect().top;
      });
      expect(covered, await focused.innerText()).toBeLessThan(1);
    }
  });
});

test.describe('accessibility', () => {
  test('everything unfolded has no accessibility problem', async ({ page }) => {
    const desk = await selectLoop(page);
    for (const name of SECTIONS) await desk.unfold(name);
    await expectAccessible(page, 'aside');
    await desk.details.getByRole('tab', { name: 'Circuit' }).click();
    for (const name of CIRCUIT_SECTIONS) await desk.unfold(name);
    await desk.settled();
    // The fields above have a test of their own, with nothing of them scrolled out of sight.
    await expectAccessible(page, '#side-panel .readout');
  });

  test('an explanation has none', async ({ page }) => {
    const desk = await selectLoop(page);
    await desk.figure('Inductance').getByRole('button').first().click();
    await expect(page.getByRole('dialog')).toBeVisible();
    await expectAccessible(page, 'dialog');
  });
});

test('on a tablet nothing of it is cut off sideways', async ({ page }) => {
  await page.setViewportSize({ width: 820, height: 1180 });
  const desk = await selectLoop(page);
  for (const name of SECTIONS) await desk.unfold(name);
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  for (const name of CIRCUIT_SECTIONS) await desk.unfold(name);
  const overflow = await page.evaluate(() => {
    const side = document.querySelector('#side-panel .details')!;
    return [document.documentElement.scrollWidth - innerWidth, side.scrollWidth - side.clientWidth];
  });
  expect(Math.max(...overflow)).toBeLessThanOrEqual(0);
});
