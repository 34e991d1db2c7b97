import { defineConfig, devices } from '@playwright/test';
import { launchOptions } from './src/tooling/browser.mjs';

// A port of its own, and never a server that is already there: that could be another build.
const port = Number(process.env['E2E_PORT'] ?? 4319);
const baseURL = `http://localhost:${port}/`;

export default defineConfig({
  // A loaded machine must not fail what a quiet one passes.
  expect: { timeout: 10_000 },
  testDir: 'e2e',
  outputDir: 'test-results/end-to-end',
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  retries: 0,
  reporter: 'list',
  use: {
    ...devices['Desktop Chrome'],
    baseURL,
    // Recording every step costs a third of the time: asked for when a failure is looked into.
    trace: process.env['E2E_TRACE'] ? 'retain-on-failure' : 'off',
    // Keeping the whole tool for use without a network costs as much again; a spec about that allows it.
    serviceWorkers: 'block',
    launchOptions: launchOptions()
  },
  webServer: {
    command: `node src/tooling/serve.mjs --port ${port}`,
    url: baseURL,
    reuseExistingServer: false
  }
});
