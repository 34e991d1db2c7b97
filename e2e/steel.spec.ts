import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

test.describe.configure({ timeout: 120_000 });

interface Saved {
  readonly steel: readonly {
    readonly kind: string;
    readonly depth: number;
    readonly outline: readonly (readonly [number, number])[];
  }[];
}

const steelOf = async (desk: Desk): Promise<Saved['steel']> =>
  (JSON.parse(await desk.savedText()) as Saved).steel;

async function blank(page: Desk['page']): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  return desk;
}

test('a mat is drawn by the mouse, measured, moved, undone', async ({ page }) => {
  const desk = await blank(page);
  await desk.takeTool('Steel');
  await desk.drag([-160, -120], [160, 120]);
  await expect(desk.details.getByRole('heading', { name: 'Steel mat s1' })).toBeVisible();
  await desk.type('Width', '4 m');
  await desk.type('Depth', '80 mm');
  await desk.settled();
  const [mat] = await steelOf(desk);
  expect(mat).toMatchObject({ kind: 'mat', depth: 0.08 });
  const xs = mat!.outline.map(([x]) => x);
  expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(4, 6);

  for (let step = 0; step < 3; step++) await desk.undo();
  expect(await steelOf(desk)).toEqual([]);
});

test('an outline of any form is drawn by clicks', async ({ page }) => {
  const desk = await blank(page);
  await desk.takeTool('Steel');
  for (const place of [[-150, 100], [150, 100], [0, -120]] as const) await desk.click(place); // prettier-ignore
  await page.keyboard.press('Enter');
  await expect(desk.details.getByRole('heading', { name: 'Steel mat s1' })).toBeVisible();
  expect((await steelOf(desk))[0]!.outline).toHaveLength(3);
});

test('by the keyboard alone a mat goes under a loop and takes some of its inductance', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  const before = await desk.inductance();
  await page.keyboard.press('Shift+B');
  await desk.settled();
  await expect(desk.details.getByRole('heading', { name: 'Steel mat s1' })).toBeVisible();
  await desk.outlineItem('loop').press('Enter');
  expect(await desk.inductance()).toBeLessThan(before * 0.995);

  await page.locator('.outline').getByRole('button').filter({ hasText: 'steel mat' }).press('Enter');
  await page.keyboard.press('Delete');
  await desk.settled();
  await desk.outlineItem('loop').press('Enter');
  expect(await desk.inductance()).toBeCloseTo(before, 2);
});

test('a mat becomes a plate in the details', async ({ page }) => {
  const desk = await blank(page);
  await desk.takeTool('Steel');
  await desk.drag([-100, -100], [100, 100]);
  await desk.details.getByLabel('Kind', { exact: true }).selectOption('Plate');
  await expect(desk.details.getByRole('heading', { name: 'Steel plate s1' })).toBeVisible();
  await expect(desk.field('Pitch of the bars')).toBeHidden();
  expect((await steelOf(desk))[0]).not.toHaveProperty('pitch');
});

test('steel in the way of the saw is found, and shows in the cross-section', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('Shift+B');
  await desk.type('Depth', '50 mm');
  await desk.settled();
  await expect(page.getByText(/meets steel at 44 mm/).first()).toBeVisible();
  await desk.outlineItem('loop').press('Enter');
  await desk.unfold('Cross-section');
  await expect(desk.details.getByText(/Steel mat 50 mm deep/).first()).toBeVisible();
});

test('what steel may cost is stated once for the site', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('Shift+B');
  await desk.type('Depth', '300 mm');
  await desk.settled();
  await expect(page.getByText(/^Steel in the pavement takes /).first()).toBeVisible({ timeout: 30_000 });
  const accepted = 'Share of a response that steel may cost, everywhere on the site';
  await expect(desk.field(accepted)).toHaveAttribute('placeholder', '10.0 %, usual');
  await desk.type(accepted, '85 %');
  await expect(page.getByText(/^Steel in the pavement takes /)).toHaveCount(0, { timeout: 30_000 });
});

test('while a loop over steel moves, nothing in its readout jumps', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  await page.keyboard.press('Shift+B');
  await desk.outlineItem('loop').press('Enter');
  await desk.unfold('Plausible ranges');
  await desk.unfold('Standard test plates');
  await desk.unfold('Steel');
  const tops = () =>
    desk.details
      .locator('summary')
      .evaluateAll((parts) => parts.map((part) => Math.round(part.getBoundingClientRect().top)));
  await expect(desk.details.getByText(/a moment ago|follow …/)).toHaveCount(0, { timeout: 30_000 });
  const atRest = await tops();
  await desk.plan.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(desk.details.getByText(/from a moment ago/).first()).toBeVisible();
  expect(await tops()).toEqual(atRest);
});

test.describe('accessibility', () => {
  test('figures of a moment ago can be read as well as new ones', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.outlineItem('loop').press('Enter');
    await desk.unfold('Plausible ranges');
    await desk.unfold('Standard test plates');
    await desk.settled();
    // The look itself is put on, since the real one would be gone before the analysis is done.
    await page.locator('section.readout').evaluate((section) => section.classList.add('stale'));
    await expect(page.locator('section.readout')).toHaveCSS('outline-style', 'dashed');
    await expectAccessible(page, '.details');
  });

  test('steel selected has no accessibility problem', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.outlineItem('loop').press('Enter');
    await page.keyboard.press('Shift+B');
    await desk.settled();
    await expectAccessible(page);
  });
});
