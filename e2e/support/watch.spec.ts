import { expectAccessible } from './axe';
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

test.describe('the look for accessibility problems', () => {
  const page = (theme: string) => `<!doctype html><html lang="en"><title>Planted</title>
    <meta name="color-scheme" content="light dark"><style>
    main { color: #000; background: #fff; }
    @media (prefers-color-scheme: dark) { main { color: #eee; background: #111; } }
    @media (prefers-color-scheme: ${theme}) { p { color: #777; background: #888; } }
    </style><main><h1>Planted</h1><p>Hardly to be read</p></main></html>`;

  for (const theme of ['light', 'dark'])
    test(`finds what only ${theme} colours hide`, async ({ page: tab }) => {
      await tab.setContent(page(theme));
      await expect(expectAccessible(tab)).rejects.toThrow(`accessibility problems, ${theme}`);
    });
});
