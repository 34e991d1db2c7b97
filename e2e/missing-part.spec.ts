import { Desk } from './hands';
import { expect, test } from './support/test';

test('a part of the program that cannot be had is said, and the keys stay with the drawing', async ({
  page
}) => {
  const desk = new Desk(page);
  await desk.open();
  await desk.startFrom('Blank');
  await desk.plan.focus();
  await page.keyboard.press('Shift+R');
  await desk.settled();
  // as after a newer release has taken the place of this one on the server
  await page.route('**/_app/immutable/**/*.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: 'throw new Error("not this release");' })
  );
  await page.keyboard.press('?');
  await expect(page.getByText('This part of the program could not be loaded.').first()).toBeVisible();
  await page.keyboard.press('Control+Z');
  await expect.poll(() => desk.loopCount()).toBe(0);
});
