import { Desk } from './hands';
import { expect, test } from './support/test';

test('the unit systems change what is read and typed, and no byte of what is stored', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  await desk.type('Width', '6\'-6"');
  await expect(desk.field('Width')).toHaveValue('1.9812 m');
  const metric = await desk.savedText();

  await page.getByRole('radio', { name: 'ft', exact: true }).check({ force: true });
  await desk.settled();
  await expect(desk.field('Width')).toHaveValue('6\'-6"');
  await expect(desk.figure('Length of the saw cut')).toContainText(' ft');
  const imperial = await desk.savedText();
  expect(imperial).toBe(metric.replace('"displayUnits": "metric"', '"displayUnits": "imperial"'));
  expect(imperial).not.toBe(metric);

  await page.getByRole('radio', { name: 'm', exact: true }).check({ force: true });
  expect(await desk.savedText()).toBe(metric);
});

test('a bare number has the unit that the field shows', async ({ page }) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  await page.getByRole('radio', { name: 'ft', exact: true }).check({ force: true });
  await desk.type('Width', '6');
  await expect(desk.field('Width')).toHaveValue('6\'-0"');
});
