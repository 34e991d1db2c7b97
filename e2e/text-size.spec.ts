import type { Page } from '@playwright/test';
import { Desk } from './hands';
import { expect, test } from './support/test';

/** The size of text that a person sets in the browser, pixels; 16 is usual. */
async function readAt(page: Page, standard: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Page.enable');
  await session.send('Page.setFontSizes', { fontSizes: { standard } });
}

/** Visible buttons, tabs, headings and names of tools whose text is wider or higher than they are. */
const cutTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    // The outline is folded to nothing until it has the focus.
    const isFolded = (element: Element) => (element.closest('.outline')?.clientWidth ?? 100) <= 1;
    const isTool = (element: Element) => element.closest('[role="toolbar"]') !== null;
    return (
      [...document.querySelectorAll('button, [role="tab"], [role="toolbar"] .label, label, h1, h2, h3')]
        .filter((element) => element.checkVisibility({ visibilityProperty: true }))
        .filter((element) => element.clientWidth > 1 && !isFolded(element))
        // A name that somebody gave may be of any length: it ends in an ellipsis and stands whole elsewhere.
        .filter((element) => isTool(element) || getComputedStyle(element).textOverflow !== 'ellipsis')
        .filter(
          ({ scrollWidth, clientWidth, scrollHeight, clientHeight }) =>
            scrollWidth > clientWidth + 1 || scrollHeight > clientHeight + 1
        )
        .map((element) => `${element.tagName} ${element.textContent?.trim()}`)
    );
  });

for (const [width, height] of [
  [1440, 900],
  [820, 1180]
] as const) {
  test(`at ${width} by ${height} texts of twice the size are neither cut nor push the page aside`, async ({
    page
  }) => {
    await page.setViewportSize({ width, height });
    const desk = new Desk(page);
    await desk.open();
    const size = () => page.evaluate(() => Number.parseFloat(getComputedStyle(document.body).fontSize));
    const usual = await size();
    await readAt(page, 32);
    await page.reload();
    await desk.settled();
    expect(await size()).toBeCloseTo(2 * usual, 6);
    expect(await cutTexts(page)).toEqual([]);
    await desk.outlineItem('loop').press('Enter');
    await desk.settled();
    await desk.plan.focus();
    expect(await cutTexts(page)).toEqual([]);
    const aside = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(aside).toBeLessThanOrEqual(0);
    await expect(desk.plan).toBeInViewport({ ratio: 0.5 });
  });
}

test('where the root’s own text is enlarged, nothing is cut either', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  const desk = new Desk(page);
  await desk.open();
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  expect(await cutTexts(page)).toEqual([]);
});
