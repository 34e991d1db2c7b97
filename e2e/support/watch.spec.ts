import { expect, test } from './test';

// Each of these must be failed by the watch itself, hence "fail": without the watch they would pass.
test.describe('the watch on the console', () => {
  test.fail('fails a test on a console error', async ({ page }) => {
    await page.goto('./');
    await page.evaluate(() => console.error('planted'));
  });

  test.fail('fails a test on a console warning', async ({ page }) => {
    await page.goto('./');
    await page.evaluate(() => console.warn('planted'));
  });

  test.fail('fails a test on an uncaught exception', async ({ page }) => {
    await page.goto('./');
    const thrown = page.waitForEvent('pageerror');
    await page.evaluate(() => setTimeout(() => void Promise.reject(new Error('planted'))));
    await thrown;
  });

  test.fail('fails a test on a violation of the content security policy', async ({ page }) => {
    await page.goto('./');
    const refused = page.waitForEvent('console');
    await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'globalThis.planted = true';
      document.body.append(script);
    });
    await refused;
  });

  test('lets ordinary messages pass', async ({ page }) => {
    await page.goto('./');
    await page.evaluate(() => console.log('ordinary'));
    await expect(page).toHaveTitle(/Kerfline/);
  });
});
