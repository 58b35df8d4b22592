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

test('a day on two walls through a killed hub and a lost network keeps exactly what was tapped', async ({
  browser,
}) => {
  const trimContext = await browser.newContext({ viewport: { width: 1920, height: 1080 } });
  const pitContext = await browser.newContext({ viewport: { width: 1920, height: 1080 } });
  const trim = new Wall(await trimContext.newPage());
  const pit = new Wall(await pitContext.newPage());
  await trim.open(`${hub.address}/station.html?station=trim`);
  await pit.open(`${hub.address}/smoker.html`);

  await test.step('taps: what runs is finished, what follows is started', async () => {
    if ((await trim.ring('finish').count()) === 0) await trim.tap('start');
    await trim.page.waitForTimeout(800);
    await trim.tap('finish');
    await expect(trim.ring('start')).toBeVisible({ timeout: 15_000 });
    await trim.page.waitForTimeout(800);
    await trim.tap('start');
    await trim.settled();
  });

  await test.step('a task says that it is late', async () => {
    await trim.page.waitForTimeout(9_000);
    await trim.late();
    await trim.settled();
  });

  await test.step('a slot is moved, after its offer was read', async () => {
    const lanes = pit.page.locator('rack-lane');
    await lanes.getByRole('button', { name: /slabs/ }).first().click();
    const goals = pit.page.getByRole('button', { name: /^move to / });
    const count = await goals.count();
    const take = pit.page.getByRole('button', { name: 'take it' });
    for (let i = 0; i < count && !(await take.isVisible()); i++) {
      await goals.nth(i).click();
      await pit.page.waitForTimeout(700);
    }
    await expect(take).toBeVisible();
    await take.click();
    pit.deeds.push({ kind: 'slotsMoved', title: '' });
    await expect.poll(async () => (await keptFromScreens(folder)).at(-1)?.kind).toBe('slotsMoved');
  });

  await test.step('the hub is killed; a wall goes on alone and catches up', async () => {
    const { port } = hub;
    await hub.kill();
    await expect(trim.page.getByText(/Alone since/)).toBeVisible({ timeout: 20_000 });
    await trim.tap('finish');
    hub = await startHub({ folder, port, speed: SPEED });
    await expect(trim.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
    await trim.settled();
  });

  await test.step('a wall without a network for two minutes of its day taps on', async () => {
    await trimContext.setOffline(true);
    await expect(trim.page.getByText(/Alone since/)).toBeVisible({ timeout: 20_000 });
    await expect(trim.ring('start')).toBeVisible({ timeout: 30_000 });
    await trim.page.waitForTimeout(1_000);
    await trim.tap('start');
    await trim.page.waitForTimeout(12_000);
    await trimContext.setOffline(false);
    await expect(trim.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 30_000 });
    await trim.settled();
  });

  await expect
    .poll(async () => (await keptFromScreens(folder)).length, { timeout: 15_000 })
    .toBe(trim.deeds.length + pit.deeds.length);
  const kept = deedsIn(await keptFromScreens(folder), await titles());
  expect(sorted(kept)).toEqual(sorted([...trim.deeds, ...pit.deeds]));
  await trimContext.close();
  await pitContext.close();
});
