import type { Locator, Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

/** The diagram of the circuit in the details. */
const coils = (desk: Desk): Locator =>
  desk.details.getByRole('list', { name: /^Wiring diagram/ }).getByRole('button');

/** The page as it is when nothing is left to compute. */
async function expectAccessibleAtRest(page: Page): Promise<void> {
  await expect(page.locator('.stale')).toHaveCount(0, { timeout: 20_000 });
  await expectAccessible(page);
}

async function showCircuit(desk: Desk): Promise<void> {
  await desk.details.getByRole('tab', { name: 'Circuit' }).click();
  await expect(coils(desk).first()).toBeVisible();
}

/** A blank site with so many loops, each on a circuit of its own; the last one is selected. */
async function withLoops(page: Page, count: number): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.plan.focus();
  for (let loop = 0; loop < count; loop++) await page.keyboard.press('Shift+R');
  expect(await desk.loopCount()).toBe(count);
  return desk;
}

/** Each circuit as the saved file has it: strings apart by |, loops by +, a reversed one with a minus. */
async function wiring(desk: Desk): Promise<string[]> {
  const { circuits } = JSON.parse(await desk.savedText()) as {
    circuits: { strings: { loop: string; reversed: boolean }[][] }[];
  };
  return circuits.map(({ strings }) =>
    strings
      .map((string) => string.map(({ loop, reversed }) => (reversed ? `-${loop}` : loop)).join('+'))
      .join('|')
  );
}

test('loops are joined, and a coil is dragged to a string of its own and out again', async ({ page }) => {
  const desk = await withLoops(page, 2);
  await showCircuit(desk);
  await desk.details.getByLabel('Join in series with', { exact: true }).selectOption({ index: 1 });
  expect(await wiring(desk)).toEqual(['L1+L2']);
  const [first, second] = await Promise.all([
    coils(desk).first().boundingBox(),
    coils(desk).nth(1).boundingBox()
  ]);
  if (!first || !second) throw new Error('the coils are not on the screen');

  await page.mouse.move(second.x + 40, second.y + 30);
  await page.mouse.down();
  await page.mouse.move(first.x + first.width, first.y + first.height, { steps: 6 });
  await page.mouse.up();
  expect(await wiring(desk)).toEqual(['L1|L2']);
  await expect(desk.details.getByText('String 2 of 2')).toBeAttached();

  const box = await coils(desk).nth(1).boundingBox();
  if (!box) throw new Error('the coil is not on the screen');
  await page.mouse.move(box.x + 40, box.y + 30);
  await page.mouse.down();
  await page.mouse.move(box.x + 40, box.y + box.height + 28, { steps: 6 });
  await page.mouse.up();
  expect(await wiring(desk)).toEqual(['L1', 'L2']);
  await desk.undo();
  await desk.undo();
  expect(await wiring(desk)).toEqual(['L1+L2']);
});

test('Escape puts a dragged coil back', async ({ page }) => {
  const desk = await withLoops(page, 2);
  await showCircuit(desk);
  await desk.details.getByLabel('Join in series with', { exact: true }).selectOption({ index: 1 });
  const box = await coils(desk).nth(1).boundingBox();
  if (!box) throw new Error('the coil is not on the screen');
  const before = await desk.savedText();
  await page.mouse.move(box.x + 40, box.y + 30);
  await page.mouse.down();
  await page.mouse.move(box.x + 40, box.y - 60, { steps: 6 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await desk.savedText()).toBe(before);
});

test('a circuit is wired by the keyboard alone', async ({ page }) => {
  const desk = await withLoops(page, 4);
  await desk.plan.focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.press('x');
  expect(await wiring(desk)).toEqual(['L1+L2|L3+L4']);
  await showCircuit(desk);

  await coils(desk).nth(1).press('Enter');
  const actions = desk.details.getByRole('group', { name: 'Actions for L2' });
  const press = (name: string) => actions.getByRole('button', { name, exact: true }).press('Enter');
  await press('Reverse');
  expect(await wiring(desk)).toEqual(['L1+-L2|L3+L4']);
  await expect(actions.getByRole('button', { name: 'Reverse' })).toHaveAttribute('aria-pressed', 'true');
  await press('Earlier');
  expect(await wiring(desk)).toEqual(['-L2+L1|L3+L4']);
  await expect(actions.getByRole('button', { name: 'Earlier', exact: true })).toHaveAttribute(
    'aria-disabled',
    'true'
  );
  await press('String later');
  expect(await wiring(desk)).toEqual(['L3+L4|-L2+L1']);
  await actions.getByLabel('Move L2', { exact: true }).selectOption({ label: 'before L3' });
  expect(await wiring(desk)).toEqual(['-L2+L3+L4|L1']);
  await press('Own string');
  expect(await wiring(desk)).toEqual(['L3+L4|L1|-L2']);
  await press('Take out');
  expect(await wiring(desk)).toEqual(['L3+L4|L1', '-L2']);
});

test('wiring four loops together is one step, and every figure follows', async ({ page }) => {
  const desk = await withLoops(page, 4);
  await desk.plan.focus();
  await page.keyboard.press('Control+a');
  await desk.details.getByRole('button', { name: 'In series', exact: true }).click();
  await showCircuit(desk);
  await desk.settled();
  const terminals = async () => {
    await desk.settled();
    return Number.parseFloat(await desk.figure('Inductance at the terminals').innerText());
  };
  const series = await terminals();
  await desk.undo();
  await desk.details.getByRole('button', { name: 'Series-parallel', exact: true }).click();
  await showCircuit(desk);
  // Two by two of equal coils that are hardly coupled have the inductance of one, a quarter of four in series; the
  // lead-in is the same in both.
  const both = await terminals();
  expect(both).toBeLessThan(series / 2);
  expect(both).toBeGreaterThan(series / 5);
});

test('a tail is drawn to a pull box, and its length follows the loop and the bend', async ({ page }) => {
  const desk = await withLoops(page, 1);
  await desk.takeTool('Pull box');
  await desk.click([200, 0]);
  await desk.outlineItem('loop').press('Enter');
  const before = await desk.field('Tail length').inputValue();
  await desk.details.getByLabel('Tail', { exact: true }).selectOption({ label: 'as drawn' });
  const drawn = await desk.field('Tail length').inputValue();
  expect(drawn).not.toBe(before);
  await desk.plan.focus();
  await page.keyboard.press('Shift+ArrowLeft');
  const further = await desk.field('Tail length').inputValue();
  expect(Number.parseFloat(further)).toBeGreaterThan(Number.parseFloat(drawn));
  await desk.undo();
  await expect(desk.field('Tail length')).toHaveValue(drawn);

  await desk.drag([200, 0], [280, 0]);
  await desk.outlineItem('loop').press('Enter');
  const toMovedBox = await desk.field('Tail length').inputValue();
  expect(Number.parseFloat(toMovedBox)).toBeGreaterThan(Number.parseFloat(drawn));
  await desk.undo();
  await desk.outlineItem('loop').press('Enter');

  await desk.details.getByText('The way', { exact: true }).click();
  await desk.details.getByRole('button', { name: 'Add a point' }).click();
  await desk.type('Point 1, y', '6 m');
  expect(Number.parseFloat(await desk.field('Tail length').inputValue())).toBeGreaterThan(
    Number.parseFloat(drawn)
  );
  await desk.field('Way').selectOption({ label: 'straight' });
  await expect(desk.field('Tail length')).toHaveValue(drawn);

  await desk.type('Tail length', '9 m');
  await expect(desk.details.getByLabel('Tail', { exact: true })).toHaveValue('typed');
});

test('tail and lead-in are led out by the keyboard alone', async ({ page }) => {
  const desk = await withLoops(page, 1);
  await page.keyboard.press('Shift+J');
  for (let step = 0; step < 4; step++) await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+K');
  for (let step = 0; step < 4; step++) await page.keyboard.press('Shift+ArrowUp');
  await desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('u');
  await page.keyboard.press('Shift+U');
  const { loops, circuits } = JSON.parse(await desk.savedText()) as {
    loops: { tail: { route?: { to: string } } }[];
    circuits: { leadIn: { route?: { from: string; to: string } } }[];
  };
  expect(loops[0]?.tail.route?.to).toBe('m1');
  expect(circuits[0]?.leadIn.route).toMatchObject({ from: 'm1', to: 'm2' });
  await showCircuit(desk);
  await expect(desk.field('Lead-in')).toHaveValue('drawn');
});

test('a lead-in is made of several cables in a row', async ({ page }) => {
  const desk = await withLoops(page, 1);
  await showCircuit(desk);
  await desk.type('Lead-in length', '25 m');
  await desk.details.getByRole('button', { name: 'Add a cable', exact: true }).click();
  await desk.type('Length 2', '40 m');
  await expect(desk.details.getByText('Together 65.00 m')).toBeVisible();
  await desk.details.getByRole('button', { name: 'Put cable 2 nearer to the pull box' }).click();
  await expect(desk.field('Length 1')).toHaveValue('40 m');
  await expectAccessibleAtRest(page);
  await desk.details.getByRole('button', { name: 'Remove cable 2' }).click();
  await expect(desk.field('Lead-in length')).toHaveValue('40 m');
});

test('an own cable is stated or computed, used, and kept while it is in use', async ({ page }) => {
  const desk = await withLoops(page, 1);
  await desk.plan.focus();
  await page.keyboard.press('Escape');
  await desk.details.getByText('Own wires and cables').click();
  await desk.field('Add a cable like').selectOption({ label: 'Twisted shielded pair, 14 AWG' });
  const inductance = desk.field('Inductance, µH/m');
  await expect(inductance).toHaveAttribute('placeholder', /^0\.\d+, computed$/);
  await desk.type('Name', 'Trench cable');
  await desk.type('Inductance, µH/m', '0.9');
  await expectAccessibleAtRest(page);
  await desk.type('Inductance, µH/m', '');
  await expect(inductance).toHaveAttribute('placeholder', /computed$/);
  await desk.type('Conductor diameter', '');
  await expect(desk.details.getByText(/was not taken/)).toBeVisible();

  await desk.outlineItem('loop').press('Enter');
  await showCircuit(desk);
  await desk.field('Lead-in cable').selectOption({ label: 'Trench cable' });
  await desk.plan.focus();
  await page.keyboard.press('Escape');
  const remove = desk.details.getByRole('button', { name: 'Remove Trench cable' });
  await remove.click();
  await expect(desk.details.getByText('It stays, because it is in use: L1.')).toBeVisible();
  // Undo brings the selection back too.
  await desk.undo();
  await desk.plan.focus();
  await page.keyboard.press('Escape');
  await remove.click();
  await expect(remove).toHaveCount(0);
});

test('an own wire winds a loop', async ({ page }) => {
  const desk = await withLoops(page, 1);
  const before = await desk.inductance();
  await desk.plan.focus();
  await page.keyboard.press('Escape');
  await desk.details.getByText('Own wires and cables').click();
  await desk.field('Add a wire like').selectOption({ label: '14 AWG' });
  await desk.type('Name', 'Thin wire');
  await desk.type('Conductor diameter', '0.6 mm');
  await desk.outlineItem('loop').press('Enter');
  await desk.field('Wire').selectOption({ label: 'Thin wire' });
  // A thinner wire has more self-inductance.
  await expect.poll(() => desk.inductance()).toBeGreaterThan(before);
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });
  test(`a wired, led-out circuit has no problem`, async ({ page }) => {
    const desk = await withLoops(page, 4);
    await page.keyboard.press('Control+a');
    await page.keyboard.press('x');
    await expectAccessibleAtRest(page);
    await page.keyboard.press('Shift+J');
    await page.keyboard.press('Shift+K');
    await desk.outlineItem('loop').press('Enter');
    await page.keyboard.press('u');
    await page.keyboard.press('Shift+U');
    await desk.details.getByText('The way', { exact: true }).click();
    await desk.details.getByRole('button', { name: 'Add a point' }).click();
    await expectAccessibleAtRest(page);
    await showCircuit(desk);
    await coils(desk).first().press('Enter');
    await expectAccessibleAtRest(page);
  });
});
