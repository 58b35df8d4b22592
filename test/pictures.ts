import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { ensureBuilt } from '../server/ensure-built.mjs';
import { root } from '../server/fingerprint.mjs';
import { launchOptions } from './browser.ts';
import { startHub } from './e2e/hub-process.ts';

/**
 * Takes the pictures of docs/ from a demo day that is running: `npm run pictures`. They are what a
 * screen of that size shows, nothing added.
 */
const pictures = join(root, 'docs/pictures');

const shots = [
  { name: 'station', path: 'station.html?station=trim', width: 1920, height: 1080 },
  { name: 'station-small', path: 'station.html?station=trim', width: 1024, height: 600 },
  { name: 'station-phone', path: 'station.html?station=trim', width: 390, height: 844 },
  {
    name: 'station-night',
    path: 'station.html?station=pass&ground=night',
    width: 1920,
    height: 1080,
  },
  { name: 'smoker', path: 'smoker.html', width: 1920, height: 1080 },
  { name: 'smoker-small', path: 'smoker.html', width: 1024, height: 600 },
  { name: 'pass', path: 'pass.html', width: 1920, height: 1080 },
  { name: 'pass-phone', path: 'pass.html', width: 390, height: 844 },
  { name: 'desk', path: 'desk.html', width: 1920, height: 1080 },
  { name: 'desk-small', path: 'desk.html', width: 1024, height: 600 },
  { name: 'desk-pull', path: 'desk.html#pull', width: 1920, height: 1080 },
  { name: 'desk-night', path: 'desk.html?ground=night', width: 1920, height: 1080 },
];

ensureBuilt();
mkdirSync(pictures, { recursive: true });
const folder = mkdtempSync(join(tmpdir(), 'coalface-pictures-'));
const hub = await startHub({ folder });
const browser = await chromium.launch(launchOptions());
try {
  for (const { name, path, width, height } of shots) {
    const page = await browser.newPage({ viewport: { width, height } });
    await page.goto(`${hub.address}/${path}`);
    await page.locator('wall-head, desk-head').waitFor();
    await page.evaluate(() => document.fonts.ready);
    await page.waitForTimeout(1_000);
    await page.screenshot({ path: join(pictures, `${name}.png`) });
    await page.close();
    console.log(`docs/pictures/${name}.png`);
  }
} finally {
  await browser.close();
  await hub.stop();
  rmSync(folder, { recursive: true });
}
