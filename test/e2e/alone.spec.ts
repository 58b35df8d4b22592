import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { chromium, expect, test } from '@playwright/test';
import type { TapRing } from '../../client/parts/tap-ring.ts';
import { launchOptions } from '../browser.ts';
import { type HubProcess, startHub } from './hub-process.ts';
import { keptFromScreens } from './kept.ts';
import { Wall } from './walls.ts';

let folder: string;
let hub: HubProcess;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-alone-'));
  hub = await startHub({ folder });
});
test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

/** The device has all that the screens are made of, and the day it was shown. */
async function keepsAll(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    const worker = navigator.serviceWorker;
    if (!worker.controller) {
      await new Promise((resolve) => worker.addEventListener('controllerchange', resolve));
    }
  });
  // A view is written down when it has stood for two seconds.
  await page.waitForTimeout(4000);
}

/** Some of their work is under way, or may begin, at any time of the demo's day. */
const ALL = 'trim,mix,stove,pit,pass';

/** What a wall says of a tap that it keeps for the hub. */
const oneKept = (page: Page) => page.locator('wall-notice p', { hasText: /One tap is kept/ });

/** How many rings were tapped, and are on this device's disk alone. */
const hollow = (page: Page) =>
  page
    .locator('tap-ring')
    .evaluateAll((rings) => rings.filter((ring) => (ring as TapRing).ring === 'hollow').length);

async function openWall(context: BrowserContext, station: string): Promise<Wall> {
  const wall = new Wall(await context.newPage());
  await wall.open(`${hub.address}/station.html?station=${station}`);
  await expect(wall.page.locator('now-line').first()).toBeVisible();
  return wall;
}

test('a wall that starts while the hub is down shows the last day, keeps taps, catches up', async ({
  context,
}) => {
  const first = await openWall(context, ALL);
  const [title] = await first.page.locator('now-line h2').allTextContents();
  await keepsAll(first.page);
  const { port } = hub;
  await hub.kill();
  await first.page.close();

  let wall = new Wall(await context.newPage());
  await wall.open(`${hub.address}/station.html?station=${ALL}`);
  await expect(
    wall.page.locator('wall-notice p', { hasText: /^Alone since \d\d?:\d\d/ }),
  ).toBeVisible();
  await expect(wall.page.locator('now-line h2').first()).toHaveText(title ?? '');
  await expect(wall.ring('start').or(wall.ring('finish')).first()).toBeVisible();
  const word = (await wall.ring('start').count()) > 0 ? 'start' : 'finish';
  await wall.tap(word);
  await expect(oneKept(wall.page)).toBeVisible();
  // The power fails at the wall, too.
  await wall.page.reload();
  await expect(oneKept(wall.page)).toBeVisible();
  // A browser that is short of room throws its page away, and makes it anew when it is looked at.
  await wall.page.close();
  wall = new Wall(await context.newPage());
  await wall.open(`${hub.address}/station.html?station=${ALL}`);
  await expect(oneKept(wall.page)).toBeVisible();
  if (word === 'start') await expect.poll(() => hollow(wall.page)).toBe(1);

  hub = await startHub({ folder, port });
  await expect(wall.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
  await wall.settled();
  await expect.poll(() => hollow(wall.page)).toBe(0);
  // Of what is finished no ring says when the hub has it.
  const kinds = async () => (await keptFromScreens(folder)).map(({ kind }) => kind);
  const tapped = [word === 'start' ? 'taskStarted' : 'taskFinished'];
  await expect.poll(kinds, { timeout: 20_000 }).toEqual(tapped);
  await hub.stop();
  expect(await kinds()).toEqual(tapped);
});

/** What a wall says and counts down under *Now*, as it is drawn. */
const nowOn = ({ page }: Wall) => page.locator('now-line').first().ariaSnapshot();

test('a wall that was put away shows the day as it is once it is seen again', async ({
  context,
}) => {
  const wall = await openWall(context, ALL);
  const other = await openWall(context, ALL);
  const isAsOthersAre = () =>
    expect(async () => {
      const seen = await nowOn(other);
      expect(seen).toContain('time: ');
      expect(await nowOn(wall)).toBe(seen);
    }).toPass({ timeout: 30_000 });
  const devtools = await context.newCDPSession(wall.page);
  const freeze = (state: 'frozen' | 'active') =>
    devtools.send('Page.setWebLifecycleState', { state });

  await test.step('where it stood still, and its link is gone', async () => {
    await wall.late();
    await isAsOthersAre();
    await freeze('frozen');
    const { port } = hub;
    await hub.kill();
    hub = await startHub({ folder, port });
    await expect(other.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
    await other.late();
    await other.settled();
    await freeze('active');
    await isAsOthersAre();
    await expect(wall.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
  });

  await test.step('where somebody looked at another page, and went back', async () => {
    await wall.late();
    await isAsOthersAre();
    await wall.page.goto(`${hub.address}/standards.html`);
    await other.late();
    await other.settled();
    await wall.page.goBack();
    await expect(wall.page.locator('now-line').first()).toBeVisible();
    await wall.settled();
    await isAsOthersAre();
  });

  await test.step('and what is pasted into a note there is one line of words', async () => {
    await wall.page.locator('now-line button.side').first().click();
    await wall.page.getByRole('button', { name: 'note', exact: true }).click();
    await wall.page.locator('note-pad input').click();
    await wall.page.keyboard.insertText('oak is short\nuse pecan');
    await wall.page.locator('note-pad').getByRole('button', { name: 'keep' }).click();
    // What others see of this one has come to the hub after it.
    await wall.late();
    await wall.settled();
    await isAsOthersAre();
  });

  await hub.stop();
  const kept = await keptFromScreens(folder);
  expect(kept).toContainEqual(expect.objectContaining({ text: 'oak is short use pecan' }));
  const late = kept.filter(({ kind }) => kind === 'taskRunsLate');
  expect(late).toHaveLength(wall.deeds.length + other.deeds.length);
});

/** Chromium keeps no page whole that holds an open line to a hub: it has to be alone. */
test('a page that the browser kept whole shows the day as it is once somebody goes back', async ({
  context,
}) => {
  const ignoreDefaultArgs = ['--disable-back-forward-cache'];
  const browser = await chromium.launch({ ...launchOptions(), ignoreDefaultArgs });
  const wall = await openWall(await browser.newContext(), ALL);
  const { page } = wall;
  await keepsAll(page);
  await page.evaluate(() => addEventListener('pageshow', () => document.body.append('kept')));
  const { port } = hub;
  await hub.kill();
  // A link that is only slow is given some seconds.
  await expect(page.getByText(/Alone since/).first()).toBeVisible({ timeout: 20_000 });
  await page.goto(`${hub.address}/standards.html`);
  hub = await startHub({ folder, port });
  const other = await openWall(context, ALL);
  await other.late();
  await other.settled();
  // A page that was kept does not load.
  await page.goBack({ waitUntil: 'commit' });
  await expect(page.locator('body')).toContainText('kept');
  await expect(page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
  await expect(async () => expect(await nowOn(wall)).toBe(await nowOn(other))).toPass();
  await browser.close();
});

test('the list of screens and the standards open without the hub as well', async ({ context }) => {
  const page = await context.newPage();
  await page.goto(`${hub.address}/station.html?station=${ALL}`);
  await keepsAll(page);
  for (const path of ['/', '/standards.html']) {
    await page.goto(hub.address + path);
    await expect(
      page.getByRole('link').or(page.locator('main button, summary')).first(),
    ).toBeVisible();
  }
  await hub.kill();
  await page.goto(`${hub.address}/`);
  await expect(page.getByRole('link', { name: 'Smokers' })).toBeVisible();
  await page.goto(`${hub.address}/standards.html`);
  await expect(page.locator('standards-page').getByRole('heading').nth(1)).toBeVisible();
});

test('a device that can keep nothing more says so, and sends its taps all the same', async ({
  context,
}) => {
  const wall = await openWall(context, ALL);
  const devtools = await context.newCDPSession(wall.page);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: hub.address, quotaSize: 1 });
  await wall.page.evaluate(() => {
    // A tap is some hundred bytes, which a browser may still find room for: it finds none.
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const { port } = hub;
  await hub.kill();
  await wall.ring('start').or(wall.ring('finish')).first().click();
  await expect(wall.page.locator('p', { hasText: /cannot keep taps/ })).toBeVisible();
  hub = await startHub({ folder, port });
  await wall.settled();
  await expect(wall.page.locator('p', { hasText: /cannot keep taps/ })).toHaveCount(0, {
    timeout: 20_000,
  });
});
