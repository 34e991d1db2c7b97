import { fileURLToPath } from 'node:url';
import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { workerChunks } from './src/tooling/worker-chunks';

/** Parts of the PDF library that turn markup into pages: never asked for, and so large that no build may carry them. */
const LEFT_OUT = ['html2canvas', 'canvg', 'dompurify'];
const nothing = fileURLToPath(new URL('src/exchange/pdf/left-out.ts', import.meta.url));

export default defineConfig({
  plugins: [sveltekit(), workerChunks()],
  resolve: { alias: Object.fromEntries(LEFT_OUT.map((name) => [name, nothing])) },
  worker: { format: 'es' },
  build: { target: 'es2022' },
  // The page opens on a sample; the development server hands out only what is named here or known to Kit.
  server: { fs: { allow: ['samples', 'lessons'] } },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    setupFiles: ['src/i18n/english.ts'],
    allowOnly: false,
    // On two cores vitest would leave one idle.
    maxWorkers: 2,
    // A loaded machine must not fail what a quiet one passes.
    testTimeout: 30_000,
    expect: { requireAssertions: true }
  }
});
