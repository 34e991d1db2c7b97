import { expectAccessible } from './support/axe';
import { expect, test } from './support/test';

test.use({ serviceWorkers: 'allow' });

test('the page opens with its name and without accessibility problems', async ({ page }) => {
  await page.goto('./');
  await expect(page).toHaveTitle(/Kerfline/);
  await expect(page.getByRole('heading', { level: 1, name: 'Kerfline' })).toBeVisible();
  await expectAccessible(page);
});

test('the policy allows nothing from elsewhere and no inline script', async ({ page }) => {
  await page.goto('./');
  const policy = page.locator('meta[http-equiv="content-security-policy"]');
  await expect(policy).toHaveAttribute('content', /default-src 'self'/);
  await expect(policy).not.toHaveAttribute('content', /'unsafe-inline'|'unsafe-eval'|https?:|\*/);
});

test('the page opens again without a network', async ({ page, context }) => {
  await page.goto('./');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
    });
  });
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'Kerfline' })).toBeVisible();
});
