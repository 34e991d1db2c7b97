import type { Page } from '@playwright/test';
import { Desk } from './hands';
import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

const menuOf = (page: Page) => page.getByRole('menu', { name: 'What can be done' });

/** Two loops in a lane that runs up the plan, and nothing else. */
const site = (extra: object = {}) =>
  JSON.stringify({
    format: 'kerfline-site',
    version: 1,
    name: 'Ropewalk Yard',
    displayUnits: 'metric',
    lanes: [
      { id: 'lane1', name: 'Entry', centreline: [[0, -20], [0, 20]], width: 3.5 }, // prettier-ignore
      { id: 'lane2', name: 'Exit', centreline: [[4, 20], [4, -20]], width: 3 } // prettier-ignore
    ],
    loops: [0, 1].map((index) => ({
      id: `L${index + 1}`,
      name: ['Ahead', 'Behind'][index],
      turns: 3 + index,
      wire: 'awg14',
      slot: { depth: 0.05, width: 0.008 },
      shape: { kind: 'rectangle', centre: [index * 0.3, index * 5], width: 2, length: 2 }
    })),
    ...extra
  });

async function opened(page: Page, extra: object = {}): Promise<Desk> {
  const desk = new Desk(page);
  await desk.open();
  await desk.openText(site(extra));
  await expect(page.getByLabel('Site name').first()).toHaveValue('Ropewalk Yard');
  await desk.settled();
  await desk.plan.focus();
  return desk;
}

/** By name in the outline; with shift in addition. */
async function pick(page: Page, name: string, adds = false): Promise<void> {
  const item = page.locator('.outline').getByRole('button', { name });
  await item.evaluate((element, shiftKey) => {
    element.dispatchEvent(new MouseEvent('click', { bubbles: true, detail: 1, shiftKey }));
  }, adds);
  await expect(item).toHaveAttribute('aria-pressed', 'true');
}

async function pickBoth(page: Page): Promise<void> {
  await pick(page, 'Ahead');
  await pick(page, 'Behind', true);
}

const loopsIn = async (desk: Desk) => {
  const saved = JSON.parse(await desk.savedText()) as {
    loops: { shape: { centre: [number, number] }; locked?: boolean; turns: number }[];
    lanes: { width: number }[];
    layers?: object;
  };
  return saved;
};

test('a right click offers what can be done there, by mouse and by keys, and Escape leaves it', async ({
  page
}) => {
  const desk = await opened(page);
  const middle = await desk.plan.boundingBox();
  await pick(page, 'Ahead');
  await page.keyboard.press('Shift+F');
  await page.mouse.click(middle!.x + middle!.width / 2, middle!.y + middle!.height / 2, { button: 'right' });
  const menu = menuOf(page);
  await expect(menu).toBeVisible();
  await expect(menu.getByRole('menuitem', { name: 'Cut' })).toBeFocused();
  await page.keyboard.press('End');
  await expect(menu.getByRole('menuitem', { name: 'All commands' })).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(menu.getByRole('menuitem', { name: 'Cut' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(menu).toHaveCount(0);
  await expect(desk.plan).toBeFocused();

  await page.keyboard.press('Shift+F10');
  await expect(menu).toBeVisible();
  await page.keyboard.press('h');
  await page.keyboard.press('Escape');

  // In the very corner it still fits into the window.
  await page.mouse.click(middle!.x + 4, middle!.y + middle!.height - 4, { button: 'right' });
  const box = await menu.boundingBox();
  const size = page.viewportSize()!;
  expect(box!.y).toBeGreaterThanOrEqual(0);
  expect(box!.y + box!.height).toBeLessThanOrEqual(size.height);
  await page.mouse.click(middle!.x + middle!.width - 6, middle!.y + 6);
  await expect(menu).toHaveCount(0);
});

test('a loop is locked in place, says why it does not move, and is unlocked there', async ({ page }) => {
  const desk = await opened(page);
  await pick(page, 'Ahead');
  await desk.plan.focus();
  await page.keyboard.press('Control+L');
  await expect(desk.details.getByText('Locked: it neither moves nor changes.')).toBeVisible();
  await expect(desk.field('Turns')).toBeDisabled();
  await expect(page.locator('.outline').getByRole('button', { name: /Ahead.*locked/ })).toHaveCount(1);

  await page.keyboard.press('ArrowRight');
  await expect(page.locator('.notice')).toContainText('Locked, so nothing was changed');
  expect((await loopsIn(desk)).loops[0]).toMatchObject({ locked: true, shape: { centre: [0, 0] } });

  await desk.details.getByRole('button', { name: 'Unlock', exact: true }).click();
  await expect(desk.field('Turns')).toBeEnabled();
  await desk.plan.focus();
  await page.keyboard.press('Shift+ArrowRight');
  const [moved] = (await loopsIn(desk)).loops;
  expect(moved?.locked).toBeUndefined();
  expect(moved?.shape.centre).toEqual([0.1, 0]);
});

test('the palette finds every command by its words, with its key, and remembers what was used', async ({
  page
}) => {
  const desk = await opened(page);
  await pickBoth(page);
  await desk.plan.focus();
  await page.keyboard.press('Control+K');
  const palette = page.getByRole('dialog', { name: 'All commands' });
  const field = palette.getByRole('combobox');
  await expect(field).toBeFocused();
  await page.keyboard.type('left edg');
  const first = palette.getByRole('option').first();
  await expect(first).toContainText('Align left edges');
  await expect(first).toContainText('Ctrl');
  await page.keyboard.press('Enter');
  await expect(palette).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Undo: Align 2 loops' })).toBeVisible();
  expect((await loopsIn(desk)).loops.map(({ shape }) => shape.centre[0])).toEqual([0, 0]);

  await page.keyboard.press('Control+K');
  await expect(palette.getByRole('option').first()).toContainText('Align left edges');
  await page.keyboard.type('settings');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Settings' })).toBeVisible();
});

test('two loops get an exact gap, and a loop is repeated along its lane at a pitch', async ({ page }) => {
  const desk = await opened(page);
  await pickBoth(page);
  await desk.details.getByRole('button', { name: 'Set the gap exactly …' }).click();
  const dialog = page.getByRole('dialog', { name: 'Set the gap exactly' });
  await dialog.getByLabel('Gap', { exact: true }).fill('4ft');
  await dialog.getByRole('button', { name: 'Set the gap' }).click();
  await expect(dialog).toHaveCount(0);
  const [, second] = (await loopsIn(desk)).loops;
  expect(second?.shape.centre[1]).toBeCloseTo(2 + 4 * 0.3048, 6);

  await pick(page, 'Ahead');
  await desk.plan.focus();
  await page.keyboard.press('Shift+L');
  const repeat = page.getByRole('dialog', { name: 'Repeat along a lane' });
  await repeat.getByLabel('Copies').fill('4');
  await repeat.getByLabel('Pitch, from one to the next').fill('6 m');
  await repeat.getByRole('button', { name: 'Make the copies' }).click();
  await expect(page.locator('.notice')).toContainText('3 copies were made of 4');
  const { loops } = await loopsIn(desk);
  expect(loops.slice(2).map(({ shape }) => shape.centre)).toEqual([[0, 6], [0, 12], [0, 18]]); // prettier-ignore
  await desk.undo();
  expect(await desk.loopCount()).toBe(2);
});

test('loops are copied from one page into another, also after a reload, and foreign text is refused', async ({
  page,
  context
}) => {
  const desk = await opened(page);
  await pickBoth(page);
  await desk.plan.focus();
  await page.keyboard.press('Control+C');
  await page.reload();
  await desk.settled();

  const other = new Desk(await context.newPage());
  await other.open({ address: './?new' });
  await other.startFrom('Blank');
  await other.plan.focus();
  await other.page.keyboard.press('Control+V');
  expect(await other.loopCount()).toBe(2);
  const pasted = (await loopsIn(other)).loops;
  expect(pasted.map(({ turns }) => turns)).toEqual([3, 4]);

  await other.page.keyboard.press('Escape');
  const name = other.page.getByLabel('Site name').first();
  await name.fill('Copied text');
  await name.press('Control+A');
  await name.press('Control+C');
  await name.press('End');
  await name.press('Control+V');
  await expect(name).toHaveValue('Copied textCopied text');
  await other.plan.focus();
  await other.page.keyboard.press('Control+V');
  await expect(other.page.locator('.notice')).toContainText('not part of a plan');
  expect(await other.loopCount()).toBe(2);
});

test('a hidden layer is out of sight and still counts; a locked one holds what lies on it', async ({
  page
}) => {
  const desk = await opened(page);
  await page.getByRole('button', { name: 'Layers' }).click();
  const panel = page.getByRole('group', { name: 'Layers' });
  await panel.getByLabel('Show Loops and leads').uncheck();
  await expect(page.locator('.notice')).toContainText('still counts in every figure');
  await panel.getByLabel('Lock Lanes and road').check();
  await page.keyboard.press('Escape');
  await expect(panel).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Layers' })).toBeFocused();
  const { layers } = await loopsIn(desk);
  expect(layers).toEqual({ lanes: { locked: true }, loops: { hidden: true } });

  await pick(page, 'Ahead');
  await expect(desk.details.getByText('Hidden, and still counted in every figure.')).toBeVisible();
  expect(await desk.inductance()).toBeGreaterThan(10);
  await desk.plan.focus();
  await page.keyboard.press('Shift+V');
  await expect(desk.details.getByText('Hidden, and still counted')).toHaveCount(0);

  await pick(page, 'Entry');
  await expect(desk.details.getByText('The layer Lanes and road is locked')).toBeVisible();
  await desk.details.getByRole('button', { name: 'Unlock the layer' }).click();
  await expect(desk.field('Lane width')).toBeEnabled();
});

test('fields of several things say where they differ, set all that can take it, and count the rest', async ({
  page
}) => {
  const desk = await opened(page);
  await pick(page, 'Entry');
  await pick(page, 'Exit', true);
  await expect(desk.field('Lane width')).toHaveAttribute('placeholder', 'mixed');
  await desk.type('Lane width', '3.25');
  expect((await loopsIn(desk)).lanes.map(({ width }) => width)).toEqual([3.25, 3.25]);

  await pick(page, 'Behind');
  await desk.plan.focus();
  await page.keyboard.press('Control+L');
  await pickBoth(page);
  await expect(desk.field('Turns')).toHaveAttribute('placeholder', 'mixed');
  await desk.type('Turns', '6');
  await expect(page.locator('.notice')).toContainText('One of 2 could not take it');
  expect((await loopsIn(desk)).loops.map(({ turns }) => turns)).toEqual([6, 4]);

  await pick(page, 'Entry', true);
  await expect(desk.details.getByText('lane and 2 loops')).toBeVisible();
});

test('several paths take one name, at one step', async ({ page }) => {
  const desk = await opened(page);
  for (const y of [-70, -40]) {
    await desk.takeTool('Path');
    await desk.click([-120, y]);
    await desk.click([120, y]);
    await page.keyboard.press('Enter');
  }
  await pick(page, 'Path 1');
  await pick(page, 'Path 2', true);
  await expect(desk.field('Name')).toHaveAttribute('placeholder', 'mixed');
  await desk.type('Name', 'Bicycle way');
  const names = async () => {
    const { paths } = JSON.parse(await desk.savedText()) as { paths: readonly { name: string }[] };
    return paths.map(({ name }) => name);
  };
  expect(await names()).toEqual(['Bicycle way', 'Bicycle way']);
  await desk.undo();
  expect(await names()).toEqual(['Path 1', 'Path 2']);
});

test('several steps are undone at once from their list', async ({ page }) => {
  const desk = await opened(page);
  const before = await desk.savedText();
  await pick(page, 'Ahead');
  await desk.plan.focus();
  await page.keyboard.press('T');
  await page.keyboard.press('Control+D');
  await page.keyboard.press('Delete');
  await page.keyboard.press('Control+K');
  await page.keyboard.type('undo several');
  await page.keyboard.press('Enter');
  const list = page.getByRole('dialog', { name: 'Undo several steps' });
  await expect(list.getByRole('listitem')).toHaveText([/Delete loop/, /Duplicate loop/, /Rotate loop/]);
  await list.getByRole('button', { name: /Rotate loop/ }).click();
  expect(await desk.savedText()).toBe(before);
  await expect(page.getByRole('button', { name: 'Redo: Rotate loop' })).toBeVisible();
});

test.describe('accessibility', () => {
  test.describe.configure({ timeout: 120_000 });

  test('menu, palette, layers, dialogs and the fields of several things have no accessibility problem', async ({
    page
  }) => {
    const desk = await opened(page);
    await pickBoth(page);
    await expect(desk.details.getByRole('button', { name: 'Align left edges' })).toBeVisible();
    await expectAccessible(page);
    await desk.plan.focus();
    await page.keyboard.press('Shift+F10');
    await expect(menuOf(page)).toBeVisible();
    await expectAccessible(page, '[role="menu"]');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Layers' }).click();
    await expect(page.getByLabel('Lock Notes')).toBeVisible();
    await expectAccessible(page, '#view-menu');
    await page.keyboard.press('Escape');
    for (const words of ['all commands', 'set the gap', 'repeat along', 'undo several']) {
      await desk.plan.focus();
      await page.keyboard.press('Control+L');
      await page.keyboard.press('Control+L');
      await page.keyboard.press('Control+K');
      await expect(page.getByRole('combobox', { name: 'What do you want to do?' })).toBeFocused();
      if (words !== 'all commands') {
        await page.keyboard.type(words);
        await page.keyboard.press('Enter');
        await expect(page.getByRole('combobox', { name: 'What do you want' })).toHaveCount(0);
      }
      await expect(page.getByRole('dialog')).toBeVisible();
      await expectAccessible(page, 'dialog');
      await page.keyboard.press('Escape');
    }
  });
});

test('keys whose event a busy browser sends late paste once', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.plan.focus();
  await page.keyboard.press('Shift+R');
  await page.keyboard.press('Control+C');
  // The browser is slow: the keys are there, and what they mean follows when the page has stopped waiting for it.
  await desk.plan.evaluate(async (plan) => {
    const text = await new Promise<string>((resolve) => {
      document.addEventListener(
        'copy',
        (event) => {
          resolve(event.clipboardData?.getData('text/plain') ?? '');
        },
        { once: true }
      );
      document.dispatchEvent(
        new ClipboardEvent('copy', { clipboardData: new DataTransfer(), bubbles: true })
      );
    });
    navigator.clipboard.readText = () => Promise.resolve(text);
    plan.dispatchEvent(
      new KeyboardEvent('keydown', { key: 'v', ctrlKey: true, bubbles: true, cancelable: true })
    );
    await new Promise((resolve) => setTimeout(resolve, 400));
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    plan.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  });
  await expect.poll(() => desk.loopCount()).toBe(2);
  await page.keyboard.press('Control+V');
  await expect.poll(() => desk.loopCount()).toBe(3);
});
