import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [sveltekit()],
  worker: { format: 'es' },
  build: { target: 'es2022' },
  // The page opens on a sample; the development server hands out only what is named here or known to Kit.
  server: { fs: { allow: ['samples'] } },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.ts'],
    setupFiles: ['src/i18n/english.ts'],
    allowOnly: false,
    // A loaded machine must not fail what a quiet one passes.
    testTimeout: 30_000,
    expect: { requireAssertions: true }
  }
});
