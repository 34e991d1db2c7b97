import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

type Point = readonly [number, number];

interface Saved {
  readonly lanes: readonly { readonly centreline: readonly Point[] }[];
  readonly marks: readonly { readonly kind: string; readonly points: readonly Point[] }[];
  readonly loops: readonly {
    readonly shape: { readonly centre: Point; readonly width: number; readonly length: number };
  }[];
}

const away = ([a, b]: Point, [c, d]: Point): readonly number[] =>
  [c - a, d - b].map((metres) => Math.round(metres * 1e6) / 1e6 + 0);

test('a gate is laid out from nothing, with every size typed', async ({ page }) => {
  const desk = new Desk(page);
  const { keyboard } = page;
  const saved = async () => JSON.parse(await desk.savedText()) as Saved;
  const sizes = page.getByRole('group', { name: 'Sizes of what is in hand' });
  const field = (name: string) => sizes.getByRole('textbox', { name });
  await desk.open();
  await desk.startFrom('Blank');

  await desk.takeTool('Lane');
  await desk.click([0, 150]);
  await keyboard.type('18');
  await keyboard.press('Tab');
  await keyboard.type('90');
  await keyboard.press('Enter');
  await keyboard.press('Enter');

  await desk.takeTool('Gate');
  await desk.click([-60, -40]);
  await keyboard.type('@4<0');
  await expect(sizes).toContainText('@4<0');
  await keyboard.press('Enter');

  const road = await saved();
  expect(away(road.lanes[0]!.centreline[0]!, road.lanes[0]!.centreline.at(-1)!)).toEqual([0, 18]);
  const leaf = road.marks.find(({ kind }) => kind === 'gate')!;
  expect(away(leaf.points[0]!, leaf.points[1]!)).toEqual([4, 0]);

  // While the button is down the first digit opens the width, and no key is anything else meanwhile.
  await desk.takeTool('Rectangle');
  await desk.grab([-30, 100]);
  await desk.carry([20, 60]);
  await keyboard.type('180 cm');
  await expect(field('Width')).toHaveValue('180 cm');
  await keyboard.press('Tab');
  await keyboard.type('1.8 parsec');
  await keyboard.press('Enter');
  await expect(sizes).toContainText('not a unit of length');
  for (let sign = 0; sign < ' parsec'.length; sign++) await keyboard.press('Backspace');
  await expect(field('Length')).toHaveValue('1.8');
  await keyboard.press('Enter');
  await page.mouse.up();
  const [first] = (await saved()).loops;
  expect(first?.shape).toMatchObject({ width: 1.8, length: 1.8 });

  // The second one is a copy that lies where the first does, until it is dragged away by a typed distance.
  await desk.plan.focus();
  await keyboard.press('Control+c');
  await keyboard.press('Control+Shift+v');
  expect(await desk.loopCount()).toBe(2);
  await desk.grab([-10, 85]);
  await keyboard.type('0');
  await keyboard.press('Tab');
  await keyboard.type('-2.6');
  await keyboard.press('Enter');
  await page.mouse.up();
  const [, second] = (await saved()).loops;
  expect(away(first!.shape.centre, second!.shape.centre)).toEqual([0, -2.6]);

  await keyboard.press('Control+a');
  await desk.outlineItem('loop').focus();
  await keyboard.press('Enter');
  expect(await desk.inductance()).toBeGreaterThan(20);
});

test('Escape gives a typed size back first and then the whole gesture', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const before = await desk.savedText();
  await desk.takeTool('Circle');
  await desk.grab([0, 0]);
  await desk.carry([60, 0]);
  await page.keyboard.type('3.3');
  const diameter = page.getByRole('textbox', { name: 'Diameter' });
  await expect(diameter).toHaveValue('3.3');
  await page.keyboard.press('Escape');
  await expect(diameter).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Circle', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true'
  );
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await desk.savedText()).toBe(before);
});

test('what attracts is switched on and off two clicks from the plan', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.getByRole('button', { name: 'Snapping' }).click();
  const menu = page.getByRole('group', { name: 'Snapping' });
  await menu.getByLabel('Snap to objects').click();
  await expect(menu.getByLabel('Corners')).toBeDisabled();
  await expect(page.getByRole('button', { name: 'Snap to lanes and loops' })).toHaveAttribute(
    'aria-pressed',
    'false'
  );
  await page.keyboard.press('Escape');
  await expect(menu).toHaveCount(0);
});

test.describe('accessibility', () => {
  test('typed sizes, a refusal and the switches are accessible', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.startFrom('Blank');
    await desk.takeTool('Rectangle');
    await desk.grab([-60, -40]);
    await desk.carry([60, 40]);
    await page.keyboard.type('2 q');
    await page.keyboard.press('Enter');
    await desk.settled();
    await expectAccessible(page);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await page.getByRole('button', { name: 'Snapping' }).click();
    await expect(page.getByLabel('Equal gaps')).toBeVisible();
    await page.getByLabel('Snap to objects').click();
    await expectAccessible(page);
  });
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true, viewport: { width: 820, height: 1180 } });

  test('a loop is drawn by two taps, or by one and its sizes', async ({ page }) => {
    const desk = new Desk(page);
    await desk.open();
    await desk.startFrom('Blank');
    await desk.takeTool('Rectangle');
    const box = (await desk.plan.boundingBox())!;
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    await page.getByRole('textbox', { name: 'Width' }).tap();
    await page.keyboard.type('2');
    await page.getByRole('textbox', { name: 'Length' }).tap();
    await page.keyboard.type('1.5');
    await page.keyboard.press('Enter');
    const { loops } = JSON.parse(await desk.savedText()) as Saved;
    expect(loops[0]?.shape).toMatchObject({ width: 2, length: 1.5 });
  });
});
