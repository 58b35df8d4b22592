import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';

let folder: string;
let hub: HubProcess;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-e2e-'));
  hub = await startHub({ folder });
});

test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

/** A load as its rack names it. */
const load = (page: Page, name: RegExp) =>
  page.locator('rack-lane').getByRole('button', { name }).first();

const nameOf = async (page: Page, name: RegExp) =>
  (await load(page, name).getAttribute('aria-label')) ?? '';

/** The minutes of a dial from one end of a range that a load is next wanted in to another's. */
function laterBy(before: string, after: string): number {
  const [was, is] = [before, after].map((label) => {
    const [, hour, minute] = /(\d+):(\d\d)(?: [ap]m)?–/.exec(label) ?? [];
    return 60 * Number(hour) + Number(minute);
  });
  return ((is ?? Number.NaN) - (was ?? Number.NaN) + 720) % 720;
}

const stalled = /Pulled shoulder · Dinner 2/;
const brisket = /Sliced brisket · Dinner/;

test('a stalled shoulder moves its wrap, an offer saves dinner, a cold fire is late', async ({
  page,
  request,
}) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto(`${hub.address}/smoker.html`);
  await expect(load(page, stalled)).toBeVisible();
  // What the night's thermometers sent has been gone through.
  const lane = load(page, brisket).locator('xpath=../..');
  await expect(lane).toContainText(/core \d+ °F/, { timeout: 20_000 });
  await expect.poll(() => lane.locator('cook-fan').count(), { timeout: 20_000 }).toBeGreaterThan(0);
  const wrapBefore = await nameOf(page, stalled);

  await test.step('a core that stands still calls the wrap later; dinner is late', async () => {
    const reading = { stay: 'dinner-pulled-shoulder-2/stay', tempF: 143 };
    const taken = await request.post(`${hub.address}/api/readings`, { data: reading });
    expect(taken.ok()).toBe(true);
    await expect(page.locator('wall-head')).toContainText(/Dinner.*late/, { timeout: 20_000 });
    expect(laterBy(wrapBefore, await nameOf(page, stalled))).toBeGreaterThanOrEqual(10);
    expect(laterBy(wrapBefore, await nameOf(page, stalled))).toBeLessThan(300);
  });

  await test.step('what a wrap now would do is said before anybody does it', async () => {
    await load(page, stalled).click();
    await page.getByRole('button', { name: 'if wrapped now' }).click();
    await expect(page.locator('move-foot')).toContainText(
      /Dinner \d+:\d\d [ap]m: .* late → .* to spare/,
      { timeout: 20_000 },
    );
    await page.getByRole('button', { name: 'leave it' }).click();
    await expect(page.locator('wall-head')).toContainText(/Dinner.*late/);
  });

  await test.step('the desk says between what dinner may yet lie, as the cooks go', async () => {
    const desk = await page.context().newPage();
    await desk.goto(`${hub.address}/desk.html`);
    const dinner = desk.locator('desk-head li').filter({ has: desk.locator('spread-mark') });
    await expect(dinner).toHaveCount(1, { timeout: 20_000 });
    await expect(dinner).toContainText(/Dinner .* likely .*(late|to spare).*(late|to spare) to /);
    // Where there is room for it the way of each cook is drawn.
    await desk.setViewportSize({ width: 1920, height: 1080 });
    await desk.goto(`${hub.address}/desk.html#smokers`);
    await expect(desk.locator('cook-fan').first()).toBeVisible({ timeout: 20_000 });
    await desk.close();
  });

  await test.step('a smoker is said to run cold: the brisket in it is due later', async () => {
    const before = await nameOf(page, brisket);
    const smoker = /^[^,]*?(Smoker [AB]|Long pit)/.exec(before)?.[1] ?? 'Long pit';
    await page.locator('smoker-cutaway button.title').filter({ hasText: smoker }).click();
    for (const digit of ['2', '4', '5']) {
      await page.getByRole('button', { name: digit, exact: true }).click();
    }
    await page.getByRole('button', { name: 'it runs cold' }).click();
    await expect(page.getByText(/cold since/)).toBeVisible();
    await expect
      .poll(async () => laterBy(before, await nameOf(page, brisket)), { timeout: 20_000 })
      .toBeGreaterThanOrEqual(5);
    expect(laterBy(before, await nameOf(page, brisket))).toBeLessThan(360);
  });
});
