import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { readSqliteLog, walk } from '../../server/store/index.ts';
import { type HubProcess, startHub } from './hub-process.ts';
import { deedsIn, keptFromScreens } from './kept.ts';
import { type Deed, Wall } from './walls.ts';

/** Ten minutes of the day pass in a minute, so that work becomes due while we look. */
const SPEED = 10;

let folder: string;
let hub: HubProcess;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-e2e-'));
  hub = await startHub({ folder, speed: SPEED });
});

test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

/** The name that walls give each task of the plan. */
async function titles(): Promise<Map<string, string>> {
  const named = new Map<string, string>();
  const log = readSqliteLog(join(folder, 'log.sqlite'));
  await walk(log, (event) => {
    if (event.kind !== 'planAdopted') return;
    for (const { id, title } of event.plan.built.tasks) named.set(id, title.en);
  });
  await log.close();
  return named;
}

const sorted = (deeds: readonly Deed[]) =>
  deeds.map(({ kind, title }) => `${kind}: ${title}`).sort();

test('two walls keep exactly what was tapped, through a killed hub and a lost network', async ({
  browser,
}) => {
  const handsContext = await browser.newContext({ viewport: { width: 1920, height: 1080 } });
  const pitContext = await browser.newContext({ viewport: { width: 1920, height: 1080 } });
  const hands = new Wall(await handsContext.newPage());
  const pit = new Wall(await pitContext.newPage());
  // Fires ask for work all day, so that somebody always has something to start.
  await hands.open(`${hub.address}/station.html?station=pit`);
  await pit.open(`${hub.address}/smoker.html`);

  await test.step('taps: what runs is finished, what follows is started', async () => {
    if ((await hands.ring('finish').count()) === 0) await hands.tap('start');
    await hands.page.waitForTimeout(800);
    await hands.tap('finish');
    await expect(hands.ring('start')).toBeVisible({ timeout: 15_000 });
    await hands.page.waitForTimeout(800);
    await hands.tap('start');
    await hands.settled();
  });

  await test.step('a task says that it is late', async () => {
    await hands.page.waitForTimeout(9_000);
    await hands.late();
    await hands.settled();
  });

  await test.step('a slot is moved, after its offer was read', async () => {
    const lanes = pit.page.locator('rack-lane');
    const loads = lanes.getByRole('button', { name: /slabs|shoulders/ });
    const goals = pit.page.getByRole('button', { name: /^move to / });
    const take = pit.page.getByRole('button', { name: 'take it' });
    // Not every load has another place that is free for it, and as hot.
    for (let load = 0; load < (await loads.count()) && !(await take.isVisible()); load++) {
      await loads.nth(load).click();
      await expect(goals.first()).toBeVisible();
      for (let goal = 0; goal < (await goals.count()) && !(await take.isVisible()); goal++) {
        await goals.nth(goal).click();
        await pit.page.waitForTimeout(700);
      }
    }
    await expect(take).toBeVisible();
    await take.click();
    pit.deeds.push({ kind: 'slotsMoved', title: '' });
    await expect.poll(async () => (await keptFromScreens(folder)).at(-1)?.kind).toBe('slotsMoved');
  });

  await test.step('the hub is killed; a wall goes on alone and catches up', async () => {
    const { port } = hub;
    await hub.kill();
    await expect(hands.page.locator('wall-notice p', { hasText: /Alone since/ })).toBeVisible({
      timeout: 20_000,
    });
    await hands.tap('finish');
    hub = await startHub({ folder, port, speed: SPEED });
    await expect(hands.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
    await hands.settled();
  });

  await test.step('a wall without a network for two minutes of its day taps on', async () => {
    await handsContext.setOffline(true);
    await expect(hands.page.locator('wall-notice p', { hasText: /Alone since/ })).toBeVisible({
      timeout: 20_000,
    });
    await expect(hands.ring('start')).toBeVisible({ timeout: 30_000 });
    await hands.page.waitForTimeout(1_000);
    await hands.tap('start');
    await hands.page.waitForTimeout(12_000);
    await handsContext.setOffline(false);
    await expect(hands.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 30_000 });
    await hands.settled();
  });

  await expect
    .poll(async () => (await keptFromScreens(folder)).length, { timeout: 15_000 })
    .toBe(hands.deeds.length + pit.deeds.length);
  const kept = deedsIn(await keptFromScreens(folder), await titles());
  expect(sorted(kept)).toEqual(sorted([...hands.deeds, ...pit.deeds]));
  await handsContext.close();
  await pitContext.close();
});
