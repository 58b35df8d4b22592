import { defineConfig } from '@playwright/test';
import { launchOptions } from './test/browser.ts';

export default defineConfig({
  testDir: 'test/e2e',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  // Each test opens a hub and walls of its own; two cores carry one such kitchen at a time.
  workers: 1,
  timeout: 120_000,
  forbidOnly: true,
  use: { launchOptions: launchOptions(), screenshot: 'only-on-failure' },
});
