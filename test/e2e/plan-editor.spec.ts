import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Page, expect as soon, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';

/** A plan is worked out beside the hub, in a thread begun anew; a busy machine takes a while. */
const expect = soon.configure({ timeout: 100_000 });

let folder: string;
let hub: HubProcess;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-plan-'));
  hub = await startHub({ folder });
});

test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
/** What dinner asks for of its sausage, which is made of what the ribs and briskets leave. */
const sausage = (page: Page) => page.getByLabel('House sausage, portions').last();
const taken = (page: Page) => page.getByText('Taken.', { exact: true });
const batches = async (page: Page) => {
  await page.getByRole('tab', { name: 'Plan' }).click();
  return sausage(page).inputValue();
};

test('what does not fit is said, what does is taken, and taken back after a restart', async ({
  page,
}) => {
  test.slow();
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto(`${hub.address}/desk.html#plan`);
  await expect(sausage(page)).toHaveValue('24');

  await sausage(page).fill('60');
  await expect(page.getByText('It does not fit:')).toBeVisible();
  const stood = await button(page, 'Take this plan').boundingBox();
  await expect(page.getByText(/leaves .*: that is enough for \d+ portions/)).toBeVisible();
  await expect(
    page.getByText(/The most that was found to fit: Dinner, House sausage/),
  ).toBeVisible();
  expect(await button(page, 'Take this plan').boundingBox(), 'while words came').toEqual(stood);
  await button(page, 'Write that instead').click();
  await expect(page.getByText(/Planned anew: House sausage/)).toBeVisible();
  const fits = await sausage(page).inputValue();
  expect(Number(fits)).toBeGreaterThan(24);
  expect(Number(fits)).toBeLessThan(60);

  await button(page, 'Take this plan').click();
  await expect(taken(page)).toBeVisible();
  await expect(sausage(page)).toHaveValue(fits);
  await page.getByRole('tab', { name: 'Log' }).click();
  await expect(page.getByText('plan 2 taken up')).toBeVisible();

  const { port } = hub;
  await hub.kill();
  hub = await startHub({ folder, port });
  await page.reload();
  expect(await batches(page)).toBe(fits);
  await button(page, 'Undo the last change').click();
  await expect(taken(page)).toBeVisible();
  await expect(sausage(page)).toHaveValue('24');
  await expect(button(page, 'Undo the last change')).toHaveCount(0);
  await page.getByRole('tab', { name: 'Log' }).click();
  await expect(page.getByText('plan 2 taken back: plan 3 taken up')).toBeVisible();
});
