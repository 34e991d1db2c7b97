import type { Page } from '@playwright/test';

/** Ends a page's process as a crash does: nothing in it runs any more. */
export async function kill(page: Page): Promise<void> {
  const killer = await page.context().newCDPSession(page);
  const isGone = page.waitForEvent('crash');
  // It is never answered.
  killer.send('Page.crash').catch(() => undefined);
  await isGone;
}
