import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';

let folder: string;
let hub: HubProcess;

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-page-'));
  hub = await startHub({ folder, speed: 60 });
});

test.afterAll(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

const sizes = [
  { width: 1920, height: 1080 },
  { width: 1024, height: 600 },
  { width: 390, height: 844 },
];

test('a built page draws itself anew when the clock moves on', async ({ page }) => {
  await page.goto(`${hub.address}/station.html?station=trim`);
  const head = page.locator('wall-head');
  await expect(head).toBeVisible();
  const before = await head.ariaSnapshot();
  await expect.poll(() => head.ariaSnapshot(), { timeout: 20_000 }).not.toBe(before);
});

/** Keeps these files from a page until it is called. */
async function holdBack(page: Page, files: string): Promise<() => void> {
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route(files, async (route) => {
    await held;
    await route.continue();
  });
  return letThrough;
}

test('a page says that it opens, before its scripts are there and not after', async ({
  browser,
}) => {
  const page = await browser.newPage();
  const opening = page.getByText('Opening … Abriendo …', { exact: true });
  const letThrough = await holdBack(page, '**/*.js');
  await page.goto(`${hub.address}/pass.html`, { waitUntil: 'commit' });
  await expect(opening).toBeVisible();
  letThrough();
  await expect(page.locator('pass-line').first()).toBeVisible({ timeout: 20_000 });
  await expect(opening).toBeHidden();
  await page.close();
});

for (const viewport of [...sizes, { width: 1080, height: 1920 }]) {
  test(`a new device has its work before any script, ${viewport.width} wide`, async ({
    browser,
  }) => {
    const context = await browser.newContext({ viewport, javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${hub.address}/station.html?station=trim&language=es`);
    await expect(page.getByText(/^Como estaba a/)).toBeVisible();
    await expect(page.locator('.opening')).toBeHidden();
    // Nothing is cut off: every text of a line lies within it, and what is to be done now on the
    // glass; on a high glass what comes next may go on beyond its foot, as on a phone’s wall.
    const cut = await page.locator('.likeness :is(p, h2)').evaluateAll((all) =>
      all
        .filter((each) => {
          const box = each.getBoundingClientRect();
          const line = (each.closest('li') ?? each).getBoundingClientRect();
          const isOut = box.top < line.top - 1 || box.bottom > line.bottom + 1;
          const isNow = each.closest('ul') === null || innerWidth > innerHeight;
          return isOut || box.right > innerWidth || (isNow && box.bottom > innerHeight);
        })
        .map(({ textContent }) => textContent),
    );
    expect(cut).toEqual([]);
    await context.close();
  });
}

test('a wall that was set to the other language does not begin with this one', async ({
  browser,
}) => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(`${hub.address}/station.html?station=trim`);
  await page.evaluate(() => {
    const kept = JSON.parse(localStorage.getItem('coalface screen') ?? '{}');
    localStorage.setItem('coalface screen', JSON.stringify({ ...kept, language: 'es' }));
  });
  const letThrough = await holdBack(page, '**/spanish-tongue*.js');
  await page.reload({ waitUntil: 'commit' });
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await expect(page.locator('.likeness')).toBeAttached();
  await expect(page.locator('.likeness')).toBeHidden();
  letThrough();
  await expect(page.getByText(/empezar|terminar/).first()).toBeVisible({ timeout: 20_000 });
  await context.close();
});

test('a wall that is loaded anew begins with what stood on it, until it is drawn', async ({
  browser,
}) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(`${hub.address}/station.html?station=trim`);
  await expect(page.locator('now-line').first()).toBeVisible();
  // As the browser gets the page, before any script of it has run.
  const begins = () => page.evaluate(async () => (await fetch(location.href)).text());
  // The hub cannot know how large the letters of this glass are: it is what the device kept.
  await expect.poll(begins, { timeout: 20_000 }).toMatch(/data-arcmin=.*As it stood at/);
  expect(await begins()).toMatch(/<h1>Trim<\/h1>.*<li>.*<h2>[^<]+<\/h2>/);
  await page.reload();
  await expect(page.locator('now-line').first()).toBeVisible();
  await expect(page.locator('.likeness')).toHaveCount(0);
  await context.close();
});

for (const viewport of sizes) {
  test(`every box of a reading is on the glass at ${viewport.width}×${viewport.height}`, async ({
    browser,
  }) => {
    const page = await browser.newPage({ viewport });
    await page.goto(`${hub.address}/smoker.html?language=es`);
    await page.locator('smoker-cutaway').first().getByRole('button').first().click();
    const boxes = page.locator('key-pad').getByRole('button');
    await page.getByRole('button', { name: 'guardar', exact: true }).click();
    const foot = await page.locator('.foot').boundingBox();
    const ends = await boxes.evaluateAll((all) =>
      all.map((each) => each.getBoundingClientRect()).map(({ right, bottom }) => [right, bottom]),
    );
    expect(ends.length).toBeGreaterThan(12);
    expect(foot).not.toBeNull();
    const most = (foot?.y ?? 0) + (foot?.height ?? 0);
    expect(
      ends.filter(([right = 0, bottom = 0]) => right > viewport.width || bottom > most + 1),
    ).toEqual([]);
    await page.close();
  });
}

for (const viewport of sizes) {
  test(`no place at the pass moves for a sale or its undo, ${viewport.width} wide`, async ({
    browser,
  }) => {
    const page = await browser.newPage({ viewport });
    const sales = page.getByRole('button', { name: /^\d more sold: / });
    const places = () =>
      sales.evaluateAll((all) =>
        all.map((each) => each.getBoundingClientRect()).map(({ x, y, width }) => [x, y, width]),
      );
    // The day goes on meanwhile, and what comes up to be looked at may take room: then once more.
    await expect(async () => {
      await page.goto(`${hub.address}/pass.html`);
      await expect(sales.first()).toBeVisible();
      const before = await places();
      await page
        .locator('pass-taps')
        .getByRole('button', { name: /^1 more/, disabled: false })
        .first()
        .click();
      await expect(page.getByRole('button', { name: /^undo: / })).toBeVisible();
      expect(await places()).toEqual(before);
      await page
        .getByRole('button', { name: /^less: / })
        .first()
        .click();
      await expect(page.getByRole('button', { name: 'sold out', exact: true })).toBeVisible();
      expect(await places()).toEqual(before);
    }).toPass({ timeout: 90_000 });
    await page.close();
  });

  test(`no wall is wider than its glass while there is news, ${viewport.width} wide`, async ({
    browser,
  }) => {
    const page = await browser.newPage({ viewport });
    for (const path of ['station.html?station=trim', 'smoker.html', 'pass.html', 'desk.html']) {
      await page.goto(`${hub.address}/${path}`);
      await page.locator('wall-head, desk-head').waitFor();
      // The day goes on meanwhile, and may take the news down again before they are looked at.
      await expect(async () => {
        await page.evaluate(() => {
          const wall = document.querySelector('station-wall, smoker-wall, pass-wall, desk-page');
          const news = wall?.shadowRoot?.querySelector('news-line');
          const said = { kind: 'plan', version: 2, takesBack: null };
          const service = (en: string) => ({ name: { en }, byS: -3600 });
          const moved = {
            tasks: [],
            more: 90,
            services: ['A long service', 'Dinner'].map(service),
          };
          const shown = { command: 'c', at: 0, person: 'Somebody with a name', said, ...moved };
          Object.assign(news ?? {}, {
            news: { ...shown, lost: [], longerS: 0, canBeUndone: true },
          });
        });
        await expect(page.locator('news-line')).toBeVisible({ timeout: 300 });
      }).toPass();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect([path, wide]).toEqual([path, viewport.width]);
    }
    await page.close();
  });
}

test('a tap on a task lays the standard of its cut over the wall, and a tap takes it away', async ({
  browser,
}) => {
  const context = await browser.newContext({ bypassCSP: true });
  const page = await context.newPage();
  await page.goto(`${hub.address}/station.html?station=trim`);
  await page.locator('now-line .title').first().click();
  const sheet = page.getByRole('dialog');
  await expect(sheet.locator('h2')).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).include('standard-sheet').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  // It speaks as whoever does the work.
  await sheet.getByRole('button', { name: /^(Close|Cerrar)$/ }).click();
  await expect(sheet).toHaveCount(0);
  await context.close();
});
