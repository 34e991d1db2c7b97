import { Desk } from './hands';
import { expect, test } from './support/test';

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
