import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Page, expect as soon, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';
import { keptFromScreens } from './kept.ts';

/** To undo, the hub goes through the day again from its plan; a busy machine takes a while. */
const expect = soon.configure({ timeout: 20_000 });

let folder: string;
let hub: HubProcess;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-desk-'));
  hub = await startHub({ folder });
});

test.afterEach(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

const box = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();
const news = (page: Page) => page.locator('news-line');
const notice = (page: Page) => page.locator('wall-notice');

async function type(page: Page, digits: string) {
  for (const digit of digits) await page.getByRole('button', { name: digit, exact: true }).click();
}

/** The desk opens another of its sections. */
const section = (desk: Page, name: string) => desk.getByRole('tab', { name }).click();

test('what happens to a day is said at one wall, heard on all, and closed at the desk', async ({
  browser,
}) => {
  // Each in a window of its own: a page behind another is drawn once a second.
  const open = () => browser.newPage({ viewport: { width: 1920, height: 1080 } });
  const walls = [await open(), await open(), await open()] as const;
  const [desk, pass, hands] = walls;
  await desk.goto(`${hub.address}/desk.html#pull`);
  await pass.goto(`${hub.address}/pass.html`);
  await hands.goto(`${hub.address}/station.html?station=trim,mix`);
  await expect(hands.locator('wall-head h1')).toHaveText(/Trim · Mix bench/);

  await test.step('a delivery comes short: the list and every wall say what it costs', async () => {
    const row = desk.locator('pull-list tbody tr').first();
    const listed = Number(await row.locator('td').first().textContent());
    await box(desk, /^say what came of /).click();
    await type(desk, `${listed - 1}`);
    await box(desk, 'this came').click();
    await expect(row).toContainText(/1 piece short; \d+ portions fewer of /);
    for (const wall of walls) {
      await expect(news(wall)).toContainText(/delivered: .*→ \d+ portions fewer of /);
    }
    await box(desk, /^undo: /).click();
    await expect(row).not.toContainText('short');
    await expect(news(pass)).toContainText('undone: delivered');
  });

  await test.step('a hand goes out for an hour, and is in again at one tap', async () => {
    await box(hands, /^Trim · Mix bench$/).click();
    const out = box(hands, / goes out$/);
    const name = ((await out.textContent()) ?? '').trim().replace(' goes out', '');
    await out.click();
    await box(hands, /^1 h · /).click();
    for (const wall of walls) {
      await expect(news(wall)).toContainText(new RegExp(`${name} is out, back \\d+:\\d\\d`));
    }
    // Answered, it is gone: nothing lies over the work longer than it is asked.
    await expect(box(hands, new RegExp(`^${name} back: \\d`))).toBeHidden();
    await box(hands, /^Trim · Mix bench$/).click();
    await expect(box(hands, new RegExp(`^${name} back: \\d`))).toBeVisible();
    await box(hands, `${name} is in again`).click();
    await expect(news(pass)).toContainText(`${name} is in again`);
  });

  await test.step('a smoker goes down till a time, and comes up', async () => {
    await section(desk, 'Smokers');
    const smoker = desk.locator('smoker-cutaway').first();
    await smoker.locator('.title').click();
    await type(desk, '140');
    await box(desk, 'it is down').click();
    await box(desk, /^30 min · /).click();
    await expect(smoker).toContainText(/out since .*, back about \d/);
    await expect(news(hands)).toContainText(/is down at 140 °F, back \d/);
    await smoker.locator('.title').click();
    await type(desk, '225');
    await box(desk, 'it is up again').click();
    await expect(smoker).not.toContainText('DOWN');
    await expect(news(hands)).toContainText('is up again: 225 °F');
  });

  await test.step('what is left goes on for another day, or out', async () => {
    await section(desk, 'Close');
    const pans = desk.locator('pan-end');
    await box(desk, /^keep …: /).click();
    await type(desk, '5');
    await box(desk, 'keep this').click();
    await expect(pans.first()).toContainText('5 lb kept for another day');
    await pans
      .nth(1)
      .getByRole('button', { name: /^throw out: / })
      .click();
    // Lunch is still on: what may be sold yet is asked for once more.
    await pans.nth(1).getByRole('button', { name: 'throw out', exact: true }).click();
    await expect(pans.nth(1)).toContainText('thrown out');
    await expect(news(pass)).toContainText('thrown out');
  });

  await test.step('the day is closed by a person: all walls say so and take no more', async () => {
    const closing = desk.locator('day-close .closing');
    await expect(closing).toContainText('Never began:');
    const [name] = await closing.getByRole('button').allTextContents();
    const who = (name ?? '').trim();
    await closing.getByRole('button', { name: who }).click();
    const close = closing.getByRole('button', { name: `close it as ${who}` });
    await close.click();
    // Dinner is still to come: the day goes on till somebody says that it is meant.
    await expect(closing).toContainText(/Still to be served: .*Dinner from .*all the same\?/);
    await close.click();
    for (const wall of walls) {
      await expect(notice(wall)).toContainText(new RegExp(`The day was closed at .* by ${who}`));
    }
    // Of the dish that all was sold of no more can be tapped.
    await pass
      .getByRole('button', { name: /more sold: /, disabled: false })
      .first()
      .click();
    await expect(notice(pass)).toContainText('take the closing back first');
    await closing.getByRole('button', { name: 'take the closing back' }).click();
    await expect(notice(hands)).not.toContainText('closed');
  });

  const kinds = (await keptFromScreens(folder)).map(({ kind }) => kind);
  expect(kinds).toEqual([
    'deliveryCame',
    'undone',
    'handWentOut',
    'handCameIn',
    'smokerWentDown',
    'smokerCameUp',
    'leftCarriedOver',
    'leftCarriedOver',
    'dayClosed',
    'undone',
  ]);
  for (const wall of walls) await wall.close();
});
