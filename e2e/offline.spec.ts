import { Desk } from './hands';
import { expect, test } from './support/test';

test('after the first visit everything works without a network', async ({ page, context }) => {
  const desk = new Desk(page);
  await desk.open();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
    });
  });
  await context.setOffline(true);
  await page.reload();
  await desk.settled();
  await desk.startFrom('Blank');
  await desk.takeTool('Rectangle');
  await desk.drag([-80, -60], [80, 60]);
  expect(await desk.inductance()).toBeGreaterThan(10);
});
