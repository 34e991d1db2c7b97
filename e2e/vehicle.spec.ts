import { Desk } from './hands';
import { expect, test } from './support/test';

test('a vehicle that is dragged over a loop makes it answer, and no more once it has passed', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-40, -40], [40, 40]);
  await desk.takeTool('Vehicle');
  await desk.click([-330, 0]);
  const [away] = await desk.responses();
  await desk.grab([-330, 0]);
  await desk.carry([0, 0]);
  // The answer follows while the vehicle is still in hand.
  await desk.settled();
  const [over] = await desk.responses();
  await desk.carry([330, 0]);
  await page.mouse.up();
  const [past] = await desk.responses();
  expect(away).toBeLessThan(0.05);
  expect(over).toBeGreaterThan(0.5);
  expect(past).toBeLessThan(0.05);
});

test('another vehicle in the same place gives another answer: a bicycle far less than a car', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-40, -40], [40, 40]);
  await desk.takeTool('Vehicle');
  await desk.click([0, 0]);
  const answer = async (vehicle: string) => {
    await desk.strip.getByLabel('Vehicle', { exact: true }).selectOption({ label: vehicle });
    await desk.settled();
    await expect(desk.strip.locator('.number')).toHaveCount(1);
    return (await desk.responses())[0] ?? Number.NaN;
  };
  const car = await answer('Car');
  const bicycle = await answer('Bicycle, aluminium rims');
  expect(bicycle).toBeLessThan(car / 3);
  expect(await answer('Car')).toBe(car);
});
