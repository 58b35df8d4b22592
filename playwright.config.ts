import { defineConfig } from '@playwright/test';
import { launchOptions } from './test/browser.ts';

/** What looks at pages as they stand; the rest taps through a day. */
const PAGES = ['parts', 'moments', 'everyone', '*-page'].map((name) => `**/${name}.spec.ts`);

export default defineConfig({
  testDir: 'test/e2e',
  globalSetup: './test/browser-setup.ts',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  // Two cores carry two kitchens: one whose day goes by, and one whose pages are looked at.
  workers: 2,
  projects: [
    { name: 'days', testIgnore: PAGES, workers: 1 },
    { name: 'pages', testMatch: PAGES, workers: 1 },
  ],
  // One picture for every system: the letters are ours.
  snapshotPathTemplate: 'test/gallery/references/{arg}{ext}',
  timeout: 120_000,
  forbidOnly: true,
  use: { launchOptions: launchOptions(), screenshot: 'only-on-failure' },
});
