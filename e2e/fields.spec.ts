import { Desk } from './hands';
import { expect, test } from './support/test';

test.beforeEach(async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
});

test('a width is understood in any unit', async ({ page }) => {
  const desk = new Desk(page);
  // 0.3048 m to the foot: six feet and a half are 1.9812 m.
  for (const [text, shown] of [
    ['1.8m', '1.8 m'],
    ['6\'-6"', '1.9812 m'],
    ['1,8 m', '1.8 m'],
    ['78in', '1.9812 m'],
    ['180 cm', '1.8 m'],
    ["6' 6", '1.9812 m'],
    ['1.2 + 0.6', '1.8 m']
  ] as const) {
    await desk.type('Width', text);
    await expect(desk.field('Width'), text).toHaveValue(shown);
  }
});

test('the value is echoed before it is taken', async ({ page }) => {
  const desk = new Desk(page);
  await desk.field('Width').fill("6'");
  await expect(desk.details.getByText('= 1.8288 m')).toBeVisible();
});

test('what is no width is refused with a reason and the old value stays', async ({ page }) => {
  const desk = new Desk(page);
  await desk.type('Width', '2 m');
  const before = await desk.savedText();
  for (const wrong of ['wide', '0', '-2', '900', '2 kg', '1..8']) {
    await desk.field('Width').fill(wrong);
    await desk.field('Width').press('Tab');
    await expect(desk.details.getByText(`“${wrong}” was not taken:`)).toBeVisible();
    await expect(desk.field('Width')).toHaveValue('2 m');
  }
  expect(await desk.savedText()).toBe(before);
});

test('a corner cut longer than the side is refused with what would fit', async ({ page }) => {
  const desk = new Desk(page);
  await desk.type('Width', '2 m');
  await desk.type('Length', '2 m');
  await desk.type('Corner cut', '1.5 m');
  await expect(desk.details.getByText(/“1.5 m” was not taken/)).toBeVisible();
  await expect(desk.field('Corner cut')).toHaveValue('0 m');
});

test('the arrow keys step a value, and all presses in a row are undone at once', async ({ page }) => {
  const desk = new Desk(page);
  await desk.type('Turns', '3');
  await desk.field('Turns').press('ArrowUp');
  await desk.field('Turns').press('ArrowUp');
  await desk.field('Turns').press('ArrowUp');
  await expect(desk.field('Turns')).toHaveValue('6');
  await desk.undo();
  await expect(desk.field('Turns')).toHaveValue('3');
});

test('Escape drops what was typed', async ({ page }) => {
  const desk = new Desk(page);
  await desk.type('Turns', '3');
  await desk.field('Turns').fill('7');
  await desk.field('Turns').press('Escape');
  await expect(desk.field('Turns')).toHaveValue('3');
});

test('Control+Z takes back typing first, and the step before it only after that', async ({ page }) => {
  const desk = new Desk(page);
  await desk.type('Turns', '3');
  await desk.type('Turns', '4');
  await desk.field('Turns').pressSequentially('9');
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Undo: Change turns of L1' })).toBeVisible();
  await desk.field('Turns').press('Escape');
  await expect(desk.field('Turns')).toHaveValue('4');
  await page.keyboard.press('Control+z');
  await expect(desk.field('Turns')).toHaveValue('3');
});

test('letters typed into a field are no commands', async ({ page }) => {
  const desk = new Desk(page);
  await desk.field('Name').fill('');
  await desk.field('Name').pressSequentially('rqdc vlamp');
  await expect(desk.field('Name')).toHaveValue('rqdc vlamp');
  await expect(page.getByRole('button', { name: 'Select', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true'
  );
});
