import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type Page, expect as soon, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';

const expect = soon.configure({ timeout: 15_000 });

let folder: string;
let hub: HubProcess;

// Each with a hub of its own: nobody was called before.
test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-calls-'));
  hub = await startHub({ folder });
});

test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

/** A screen in a window of its own, touched once, that counts the tones it is told to play. */
async function open(browser: Browser, path: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1920, height: 1080 } });
  await page.addInitScript(() => {
    const { start } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (at) {
      document.documentElement.dataset['tones'] = `${tonesHere() + 1}`;
      start.call(this, at);
    };
    const tonesHere = () => Number(document.documentElement.dataset['tones'] ?? 0);
  });
  await page.goto(`${hub.address}/${path}`);
  await page.mouse.click(4, 4);
  return page;
}

const tones = async (page: Page) =>
  Number((await page.locator('html').getAttribute('data-tones')) ?? 0);

/** Asks for help with what comes first at a station; gives its line, and the name of the work. */
async function askForHelp(table: Page) {
  const line = table.locator('now-line').first();
  const task = ((await line.locator('h2').textContent()) ?? '').trim();
  await line.getByRole('button', { name: 'help', exact: true }).click();
  return { line, task };
}

test('a call is heard from one screen, says who, what and by when, and is gone by doing', async ({
  browser,
}) => {
  const pit = await open(browser, 'smoker.html?sounds=calls');
  await expect(pit.locator('smoker-cutaway').first()).toBeVisible();
  const desk = await open(browser, 'desk.html?sounds=calls');
  const table = await open(browser, 'station.html?station=trim,mix');
  const { line, task } = await askForHelp(table);
  const call = new RegExp(`(\\S+): help .*with: ${task}, by \\d+:\\d\\d [ap]m\\.`);
  const notice = desk.locator('alert-line p').filter({ hasText: call });
  await expect(notice).toHaveCount(1);
  const [, who = ''] = call.exec((await notice.textContent()) ?? '') ?? [];
  await expect(pit.locator('over-line').filter({ hasText: call })).toBeAttached();
  await expect.poll(() => tones(pit)).toBeGreaterThan(0);
  await expect(desk.locator('alert-line .rates')).toContainText(new RegExp(`${who} \\d+ \\(`));

  await line.getByRole('button', { name: 'helped' }).click();
  await expect(notice).toHaveCount(0);
  // Two tones for each call, from the pit that asked first; put up to sound or not, no other.
  expect((await tones(pit)) % 2).toBe(0);
  expect([await tones(desk), await tones(table)]).toEqual([0, 0]);
});

test('where the screen that sounds is closed, the next one does, and only then', async ({
  browser,
}) => {
  const pit = await open(browser, 'smoker.html?sounds=calls');
  await expect(pit.locator('smoker-cutaway').first()).toBeVisible();
  const desk = await open(browser, 'desk.html?sounds=calls');
  await expect(desk.locator('time-chart')).toBeVisible();
  // Where nobody was called, nothing is said of it.
  await expect(desk.locator('alert-line')).toBeHidden();
  expect(await tones(desk)).toBe(0);
  await pit.close();
  const table = await open(browser, 'station.html?station=trim,mix');
  await askForHelp(table);
  await expect.poll(() => tones(desk)).toBeGreaterThan(0);
});
