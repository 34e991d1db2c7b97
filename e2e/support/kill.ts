import type { Page } from '@playwright/test';

/** Ends the process of a page, the only one of its browser, as a crash does: nothing in it runs any more. */
export async function kill(page: Page): Promise<void> {
  const session = await page.context().browser()!.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  // The browser keeps another one in store for the next page, which has not done anything yet.
  const [busiest] = processInfo
    .filter(({ type }) => type === 'renderer')
    .sort((a, b) => b.cpuTime - a.cpuTime);
  const isGone = page.waitForEvent('crash');
  process.kill(busiest!.id, 'SIGKILL');
  await isGone;
  await session.detach();
}
