import { defineConfig } from '@playwright/test';
import { launchOptions } from './test/browser.ts';

/** What looks at pages as they stand; the rest taps through a day. */
const PAGES = ['parts', 'moments', 'everyone', '*-page'].map((name) => `**/${name}.spec.ts`);

export default defineConfig({
  testDir: 'test/e2e',
  globalSetup: './test/browser-setup.ts',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  // A kitchen waits half of its time, for a hub or for a day that goes by: two cores carry three,
  // of which one at least is of the other kind.
  workers: 3,
  projects: [
    { name: 'days', testIgnore: PAGES, workers: 2 },
    { name: 'pages', testMatch: PAGES, workers: 2 },
  ],
  // One picture for every system: the letters are ours.
  snapshotPathTemplate: 'test/gallery/references/{arg}{ext}',
  timeout: 120_000,
  forbidOnly: true,
  use: { launchOptions: launchOptions(), screenshot: 'only-on-failure' },
});
