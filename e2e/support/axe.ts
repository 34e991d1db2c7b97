import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './test';

const STANDARD = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Each look takes seconds, many of them on a busy machine; a test has these beside its own. */
const FOR_A_LOOK = 15_000;
/** What another theme can break; all else is the same markup. */
const OF_COLOUR = ['color-contrast', 'link-in-text-block'];

type Theme = 'light' | 'dark';

/**
 * In the page itself, which has no frames, rather than gathered in a second page; and of what passes only that it does: a
 * quarter of the time for the same problems.
 */
const looker = (page: Page) =>
  new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });

/** Waits until nothing is between two colours any more. */
async function inTheme(page: Page, colorScheme: Theme): Promise<void> {
  await page.emulateMedia({ colorScheme });
  await page.evaluate(async () => {
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    const ending = document.getAnimations().filter((each) => each instanceof CSSTransition);
    // one of an element that is not drawn never ends
    const patience = new Promise((resolve) => setTimeout(resolve, 500));
    await Promise.race([Promise.allSettled(ending.map((each) => each.finished)), patience]);
  });
}

async function expectNothing(all: AxeBuilder, selector: string | undefined, theme: Theme): Promise<void> {
  const { violations } = await (selector === undefined ? all : all.include(selector)).analyze();
  const found = violations.map(({ id, help, nodes }) => ({
    id,
    help,
    where: nodes.map((node) => node.html)
  }));
  expect(found, `accessibility problems, ${theme}`).toEqual([]);
}

/**
 * Fails with the rule, its help and the elements concerned when the page, or the part of it at `selector`, has an
 * accessibility problem that can be found by machine: all rules in the theme in which it is, then those of colour in the
 * other one.
 */
export async function expectAccessible(page: Page, selector?: string): Promise<void> {
  test.setTimeout(test.info().timeout + FOR_A_LOOK);
  const isDark = await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches);
  const [now, other]: readonly [Theme, Theme] = isDark ? ['dark', 'light'] : ['light', 'dark'];
  await expectNothing(looker(page).withTags(STANDARD), selector, now);
  await inTheme(page, other);
  await expectNothing(looker(page).withRules(OF_COLOUR), selector, other);
  await inTheme(page, now);
}
