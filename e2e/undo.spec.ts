import { Desk } from './hands';
import { expect, test } from './support/test';

test('everything that was done is undone step by step to the first byte, and done again to the last', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  const texts = [await desk.savedText()];
  const remember = async () => texts.push(await desk.savedText());

  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  await remember();
  await desk.type('Turns', '5');
  await remember();
  // As the browser's own menu does it: what is marked then must not be dragged in the place of what is drawn.
  await page.evaluate(() => getSelection()?.selectAllChildren(document.body));
  await desk.drag([-80, 30], [40, 60]);
  await remember();
  await page.keyboard.press('Delete');
  await remember();

  for (const text of texts.slice(0, -1).reverse()) {
    await desk.undo();
    expect(await desk.savedText()).toBe(text);
  }
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled();
  for (const text of texts.slice(1)) {
    await desk.redo();
    expect(await desk.savedText()).toBe(text);
  }
});

test('the step is named before it is undone', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Circle');
  await desk.drag([-80, -60], [80, 60]);
  await expect(page.getByRole('button', { name: 'Undo: Draw circle' })).toBeVisible();
  await desk.type('Turns', '6');
  await expect(page.getByRole('button', { name: 'Undo: Change turns of L1' })).toBeVisible();
});
