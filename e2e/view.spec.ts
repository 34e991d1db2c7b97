import { Desk } from './hands';
import { expect, test } from './support/test';

test('whoever has lost the drawing is led back to it', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const back = page.getByRole('button', { name: 'Back to the drawing' });
  await expect(back).toBeHidden();
  await desk.plan.hover();
  for (let k = 0; k < 12; k++) await page.mouse.wheel(3000, 0);
  await back.click();
  await expect(back).toBeHidden();
});

test('what is snapped to stays as it was chosen, over a reload and for another site', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  const menu = page.getByRole('button', { name: 'Snapping', exact: true });
  await menu.click();
  for (const name of ['Snap to the grid', 'Equal gaps', 'Show the grid'])
    await page.getByRole('checkbox', { name }).uncheck();
  const expectKept = async () => {
    await menu.click();
    for (const name of ['Snap to the grid', 'Equal gaps', 'Show the grid'])
      await expect(page.getByRole('checkbox', { name })).not.toBeChecked();
    for (const name of ['Snap to objects', 'Corners', 'Centres'])
      await expect(page.getByRole('checkbox', { name })).toBeChecked();
    await page.keyboard.press('Escape');
  };
  await page.keyboard.press('Escape');
  await page.reload();
  await desk.settled();
  await expectKept();
  await desk.startFrom('Blank');
  await expectKept();
});

test('the wheel zooms or moves the view, as the settings say; with control it always zooms', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  for (const name of ['Snap to the grid', 'Snap to lanes and loops']) {
    const button = page.getByRole('button', { name, exact: true });
    if ((await button.getAttribute('aria-pressed')) === 'true') await button.click();
  }
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  const width = async () => Number.parseFloat(await desk.field('Width').inputValue());
  /** Width of a loop of 160 pixels at the present zoom, metres. */
  const drawn = async () => {
    await desk.takeTool('Rectangle');
    await desk.drag([-80, -60], [80, 60]);
    const now = await width();
    await desk.undo();
    return now;
  };
  const first = await width();
  await desk.plan.hover();
  await page.mouse.wheel(0, -300);
  const closer = await drawn();
  expect(closer).toBeLessThan(0.8 * first);

  await page.getByRole('button', { name: 'Settings', exact: true }).click();
  await page.getByRole('dialog').getByLabel('Turning the wheel').selectOption('pan');
  await page.keyboard.press('Escape');
  await desk.plan.hover();
  await page.mouse.wheel(0, 40);
  expect(await drawn()).toBeCloseTo(closer, 2);
  await desk.plan.hover();
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, 300);
  await page.keyboard.up('Control');
  expect(await drawn()).toBeGreaterThan(1.2 * closer);
});

test('under colours that the system forces the plan and what is chosen are still told apart', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  const paper = () => desk.plan.evaluate((plan) => getComputedStyle(plan).backgroundColor);
  const select = page.getByRole('toolbar').getByRole('button', { name: 'Select', exact: true });
  const measure = page.getByRole('toolbar').getByRole('button', { name: 'Measure', exact: true });
  const background = (button: typeof select) =>
    button.evaluate((element) => getComputedStyle(element).backgroundColor);
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  const canvas = await page.evaluate(() => {
    const gauge = document.body.appendChild(document.createElement('p'));
    gauge.style.color = 'Canvas';
    const { color } = getComputedStyle(gauge);
    gauge.remove();
    return color.match(/\d+/g);
  });
  await expect.poll(async () => (await paper()).match(/\d+/g)?.slice(0, 3)).toEqual(canvas?.slice(0, 3));
  expect(await background(select)).not.toBe(await background(measure));
});

test('the middle button moves the view and pastes nothing', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.outlineItem('loop').press('Enter');
  await desk.plan.focus();
  await page.keyboard.press('Control+C');
  const loops = await desk.loopCount();
  const box = await desk.plan.boundingBox();
  await page.mouse.move(box!.x + 40, box!.y + 200);
  await page.mouse.down({ button: 'middle' });
  await page.mouse.move(box!.x + 140, box!.y + 200, { steps: 4 });
  await page.mouse.up({ button: 'middle' });
  // As long as a paste would take to be heard.
  await page.waitForTimeout(400);
  await expect(page.locator('.notice')).toHaveCount(0);
  expect(await desk.loopCount()).toBe(loops);
});
