import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Page, expect as soon, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';

/** What mends a day is worked out beside the hub; a busy machine takes a while. */
const expect = soon.configure({ timeout: 60_000 });

let folder: string;
let hub: HubProcess;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-mend-'));
  hub = await startHub({ folder });
});

test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

test('the day is taken away on paper from the desk', async ({ page }) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto(`${hub.address}/desk.html?language=es`);
  const coming = page.waitForEvent('download');
  await box(page, 'en papel').click();
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/^coalface-\d{4}-\d\d-\d\d\.html$/);
  await expect(page.getByText('ábralo e imprímalo')).toBeVisible();
  const sheets = await page.context().newPage();
  await sheets.goto(`file://${await download.path()}`);
  await expect(sheets.locator('body')).toContainText('Recorte');
});

const box = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();

test('the desk shows what mends a day with a smoker down, takes it, takes it back', async ({
  page,
}) => {
  test.slow();
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto(`${hub.address}/desk.html#smokers`);
  const mend = page.locator('mend-day');
  const changes = mend.locator('.changes > li');
  await page.locator('smoker-cutaway').first().locator('.title').click();
  for (const digit of '140') await page.getByRole('button', { name: digit, exact: true }).click();
  await box(page, 'it is down').click();
  await box(page, /^1 h · /).click();

  await page.getByRole('tab', { name: 'Mend' }).click();
  await expect(mend.getByText(/will be .* late\./).first()).toBeVisible();
  await box(page, 'What would mend it?').click();
  await expect(changes.first()).toBeAttached({ timeout: 200_000 });
  // Each row says what becomes otherwise: who, where or when, from and to.
  for (const row of await changes.all()) await expect(row).toContainText('→');
  await expect(mend.locator('.services')).toContainText('→');
  // The day as it is on ruled time, and under it, hatched, what would be.
  await expect(mend.locator('time-chart .bar.would-be').first()).toBeVisible();

  await box(page, 'Do it so').click();
  await expect(mend.getByText('The day goes on like this.')).toBeVisible();
  const news = page.locator('news-line');
  await expect(news).toContainText(/the day mended: \d+ tasks? otherwise/);
  await news.getByRole('button').last().click();
  await expect(news).toContainText(/undone: the day mended: \d+ tasks? otherwise/);
});
