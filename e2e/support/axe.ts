import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from './test';

const STANDARD = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * Fails with the rule, its help and the elements concerned when the page, or the part of it at `selector`, has an
 * accessibility problem that can be found by machine.
 */
export async function expectAccessible(page: Page, selector?: string): Promise<void> {
  const all = new AxeBuilder({ page }).withTags(STANDARD);
  const { violations } = await (selector === undefined ? all : all.include(selector)).analyze();
  const found = violations.map(({ id, help, nodes }) => ({
    id,
    help,
    where: nodes.map((node) => node.html)
  }));
  expect(found, 'accessibility problems').toEqual([]);
}
