import { Desk } from './hands';
import { expect, test } from './support/test';

interface SavedLane {
  readonly bends?: { readonly radii: readonly number[] };
}

interface SavedMark {
  readonly points: readonly (readonly [number, number])[];
  readonly opening?: unknown;
  readonly offset?: number;
}

for (const shape of ['Rectangle', 'Quadrupole', 'Diagonal', 'Circle']) {
  test(`a ${shape.toLowerCase()} drawn with the pointer is read at once`, async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.startFrom('Blank');
    await desk.takeTool(shape);
    await desk.drag([-80, -60], [80, 60]);
    expect(await desk.loopCount()).toBe(1);
    expect(await desk.inductance()).toBeGreaterThan(10);
    await expect(desk.figure('Length of the saw cut')).toContainText(/\d m$/);
  });
}

test('a polygon is drawn corner by corner', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Polygon');
  for (const place of [[-80, 60], [80, 60], [0, -80]] as const) await desk.click(place); // prettier-ignore
  await page.keyboard.press('Enter');
  expect(await desk.loopCount()).toBe(1);
  expect(await desk.inductance()).toBeGreaterThan(10);
});

test('the size is read while it is drawn, and Escape leaves nothing behind', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const before = await desk.savedText();
  await desk.takeTool('Rectangle');
  await desk.grab([-80, -60]);
  await desk.carry([80, 60]);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await desk.savedText()).toBe(before);
});

test('a loop that is dragged takes its figures along, a corner that is dragged changes them', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  const drawn = await desk.inductance();
  const x = await desk.field('Centre x').inputValue();
  // Beside the handle in the middle of the side, which would resize it.
  await desk.drag([-80, 30], [20, 30]);
  await expect(desk.field('Centre x')).not.toHaveValue(x);
  expect(await desk.inductance()).toBeCloseTo(drawn, 2);
  await desk.drag([180, 60], [240, 140]);
  expect(await desk.inductance()).toBeGreaterThan(drawn);
});

test('what is deleted is gone, with its figures', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Circle');
  await desk.drag([-80, -60], [80, 60]);
  await page.keyboard.press('Delete');
  expect(await desk.loopCount()).toBe(0);
  await expect(desk.tables).toContainText('No circuit yet');
});

test('two lanes in a bend are drawn in one go, and their corner can be bent by a figure', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Lane');
  const options = page.getByRole('group', { name: 'Options: Lane' });
  await options.getByLabel('Lanes').selectOption('2');
  await options.getByLabel('Bend radius').fill('6 m');
  await options.getByLabel('Bend radius').press('Enter');
  await desk.click([-200, 90]);
  await desk.click([120, 90]);
  await desk.click([120, -60]);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Undo: Draw 2 lanes' })).toBeVisible();
  const { lanes } = JSON.parse(await desk.savedText()) as { lanes: SavedLane[] };
  expect(lanes).toHaveLength(2);
  const [left, right] = lanes.map(({ bends }) => bends?.radii[1] ?? 0);
  expect(right! - left!).toBeCloseTo(3.5, 5);
  expect((left! + right!) / 2).toBeCloseTo(6, 5);

  await desk.outlineItem('lane').press('Enter');
  await desk.field('Corner').selectOption('2 of 3');
  await desk.type('Bend radius', '500');
  await expect(desk.details.getByText(/room for at most/)).toBeVisible();
  await desk.type('Bend radius', '3');
  await expect(desk.field('Bend radius')).toHaveValue(/^3/);
});

test('a gate shows how it swings, and its details say so', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Gate');
  await desk.click([-80, 40]);
  await desk.click([80, 40]);
  await expect(desk.details.getByRole('heading', { name: 'Gate' })).toBeVisible();
  await expect(desk.field('Swing, to the left')).toHaveValue(/^90/);
  await desk.type('Length', '4.2 m');
  await desk.type('Swing, to the left', '-110');
  const { marks } = JSON.parse(await desk.savedText()) as { marks: SavedMark[] };
  const [from, to] = marks[0]!.points;
  expect(marks[0]!.opening).toEqual({ kind: 'swing', angle: -110 });
  expect(Math.hypot(to![0] - from![0], to![1] - from![1])).toBeCloseTo(4.2, 6);
});

test('a dimension is drawn by three clicks and says its length', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Dimension');
  await desk.click([-100, 60]);
  await desk.click([100, 60]);
  await desk.click([0, 20]);
  await expect(desk.details.getByRole('heading', { name: 'Dimension' })).toBeVisible();
  const { marks } = JSON.parse(await desk.savedText()) as { marks: SavedMark[] };
  const [from, to] = marks[0]!.points;
  const length = Math.hypot(to![0] - from![0], to![1] - from![1]);
  expect(Number.parseFloat(await desk.field('Length').inputValue())).toBeCloseTo(length, 2);
  // A fifth of its length above it.
  expect(marks[0]!.offset! / length).toBeCloseTo(0.2, 1);
});

test('a note is written where it was put, and Escape takes it back', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Note');
  await desk.click([0, 0]);
  await page.getByLabel('Text of the note').fill('Look for a joint first');
  await page.keyboard.press('Enter');
  await expect(desk.field('Text')).toHaveValue('Look for a joint first');
  await desk.takeTool('Note');
  await desk.click([60, 60]);
  await expect(page.getByLabel('Text of the note')).toBeFocused();
  await page.keyboard.press('Escape');
  const { marks } = JSON.parse(await desk.savedText()) as { marks: SavedMark[] };
  expect(marks).toMatchObject([{ kind: 'note', text: 'Look for a joint first' }]);
  await desk.undo();
  expect((JSON.parse(await desk.savedText()) as { marks: SavedMark[] }).marks).toEqual([]);
});
