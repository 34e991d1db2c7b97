import { test as base, expect } from '@playwright/test';

/** What the runner itself says where it keeps the service worker out. */
const OF_THE_RUNNER = 'Service Worker registration blocked by Playwright';

/**
 * Playwright's test, except that every test also fails on anything a user's console would show as wrong: an error or
 * warning, an uncaught exception, a request that fails to load, a violation of the content security policy.
 */
export const test = base.extend<{ consoleWatch: void }>({
  consoleWatch: [
    async ({ context }, use) => {
      const problems: string[] = [];
      context.on('console', (message) => {
        if (message.text() !== OF_THE_RUNNER && ['error', 'warning', 'assert'].includes(message.type())) {
          problems.push(`${message.type()}: ${message.text()}`);
        }
      });
      context.on('weberror', (webError) => {
        problems.push(`uncaught: ${webError.error().message}`);
      });
      await context.addInitScript(() => {
        addEventListener('securitypolicyviolation', (event) => {
          console.error(`content security policy: ${event.violatedDirective} refused ${event.blockedURI}`);
        });
      });
      await use();
      expect(problems, 'what the browser complained of').toEqual([]);
    },
    { auto: true }
  ]
});

export { expect };
