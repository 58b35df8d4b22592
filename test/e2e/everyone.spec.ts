import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { broken } from './everyone/axe.ts';
import type { Ground, Language, Size } from './everyone/reader.ts';
import { PANEL, PHONE, Reader, WALL } from './everyone/reader.ts';
import { open, SCREENS, type Screen, settled } from './everyone/screens.ts';
import { SHEET, sheetsOf } from './everyone/sheets.ts';
import { type HubProcess, letDemoBegin, startHub } from './hub-process.ts';

// Every screen that the hub serves, for everybody: on each ground, in each language, in letters
// twice as large. WCAG 2.2 (w3.org/TR/WCAG22): 1.4.3, 1.4.6, 1.4.4 and what axe-core knows of the
// rest.

let folder: string;
let hub: HubProcess;

// Each looks at all screens.
test.describe.configure({ timeout: 240_000 });

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-everyone-'));
  letDemoBegin(folder, '12:04');
  hub = await startHub({ folder });
});

test.afterAll(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

const LANGUAGES = ['en', 'es'] as const;

type Look = { readonly ground: Ground; readonly size: Size; readonly inks: boolean };

/** Each size in each language; the inks of each ground in each language, and at each size. */
const LOOKS: Readonly<Record<Language, readonly Look[]>> = {
  en: [
    { ground: 'paper', size: WALL, inks: true },
    { ground: 'night', size: PANEL, inks: true },
    { ground: 'paper', size: PHONE, inks: false },
  ],
  es: [
    { ground: 'night', size: WALL, inks: false },
    { ground: 'paper', size: PANEL, inks: true },
    { ground: 'night', size: PHONE, inks: true },
  ],
};

const nameOf = ({ path }: Screen) => path || 'the start page';

for (const language of LANGUAGES) {
  test(`every screen can be read by everybody: ${language}`, async ({ browser }) => {
    const reader = await Reader.of(browser, language);
    for (const screen of SCREENS) {
      await reader.at(WALL);
      await open(reader.page, hub.address, screen);
      for (const { ground, size, inks } of LOOKS[language]) {
        await reader.at(size, ground);
        const where = `${nameOf(screen)} on ${ground}, ${size.width} wide`;
        expect.soft(await broken(reader.page, { inks }), where).toEqual([]);
        expect.soft(await reader.unfit(), where).toEqual([]);
      }
      // Spanish is the longer one.
      if (language === 'es') await readInLargeLetters(reader, screen);
      expect.soft(reader.faults.splice(0), nameOf(screen)).toEqual([]);
    }
    await reader.page.context().close();
  });
}

/** Twice as large, as set in the browser, and as zoomed. */
async function readInLargeLetters(reader: Reader, screen: Screen): Promise<void> {
  await reader.letters(32);
  for (const size of [WALL, PHONE]) {
    await reader.at(size);
    const where = `${nameOf(screen)} in large letters, ${size.width} wide`;
    expect.soft(await reader.unfit(), where).toEqual([]);
  }
  await reader.letters(16);
  await reader.zoomed(PANEL);
  expect.soft(await reader.unfit(), `${nameOf(screen)}, zoomed`).toEqual([]);
  await reader.zoomed(null);
}

test('what is opened on a screen can be read by everybody', async ({ browser }) => {
  const reader = await Reader.of(browser, 'es');
  for (const screen of SCREENS) {
    for (const { name, tap, stands } of screen.opens ?? []) {
      await reader.at(WALL);
      await open(reader.page, hub.address, screen);
      for (const place of tap) await reader.page.locator(place).first().click();
      await reader.page.locator(stands).first().waitFor();
      const [part = ''] = stands.split(' ');
      for (const ground of ['paper', 'night'] as const) {
        await reader.at(WALL, ground);
        const where = `${nameOf(screen)}, ${name} on ${ground}`;
        expect.soft(await broken(reader.page, { on: part }), where).toEqual([]);
      }
      for (const size of [WALL, PHONE]) {
        await reader.at(size);
        const where = `${nameOf(screen)}, ${name}, ${size.width} wide`;
        expect.soft(await reader.unfit(part), where).toEqual([]);
      }
    }
  }
  await reader.page.context().close();
});

test('every sheet can be read by everybody once it is printed', async ({ browser }) => {
  for (const language of LANGUAGES) {
    const reader = await Reader.of(browser, language);
    const { page } = reader;
    await page.emulateMedia({ media: 'print' });
    for (const { name, html, size } of await sheetsOf({ folder, address: hub.address }, language)) {
      await page.route('**/sheet', (route) =>
        route.fulfill({ contentType: 'text/html', body: html }),
      );
      await page.goto(`${hub.address}/sheet`);
      await reader.at(size);
      expect.soft(await broken(page), `${name}, ${language}`).toEqual([]);
      expect.soft(await reader.unfit(), `${name}, ${language}`).toEqual([]);
    }
    await page.goto(`${hub.address}/standards.html`);
    await page.locator('cut-standard').first().waitFor();
    await reader.at(SHEET);
    expect.soft(await broken(page), `the standards, ${language}`).toEqual([]);
    expect.soft(await reader.unfit(), `the standards, ${language}`).toEqual([]);
    await page.context().close();
  }
});

/** Whatever is said on the page from now on to those who hear it, once it is all there. */
function listen() {
  const heard: string[] = [];
  const regions = new Set<Element>();
  const hear = () => {
    const look = (root: Document | ShadowRoot) => {
      for (const each of root.querySelectorAll('*')) {
        if (each.matches('[role=status], [role=alert], [aria-live], output')) regions.add(each);
        if (each.shadowRoot) look(each.shadowRoot);
      }
    };
    look(document);
    for (const region of regions) {
      const said = region.textContent?.replace(/\s+/g, ' ').trim() ?? '';
      if (said !== '' && said !== before.get(region)) heard.push(said);
      before.set(region, said);
    }
  };
  const before = new Map<Element, string>();
  hear();
  heard.length = 0;
  setInterval(hear, 40);
  Object.assign(window, { heard });
}

test('a burst of changes is no flood of words for whoever hears a wall', async ({ browser }) => {
  const wall = await Reader.of(browser, 'en');
  const hand = await Reader.of(browser, 'en');
  const [screen] = SCREENS;
  if (!screen) throw new Error('a wall to hear');
  await open(wall.page, hub.address, screen);
  await open(hand.page, hub.address, screen);
  await wall.page.evaluate(listen);
  const line = hand.page.locator('now-line').filter({ has: hand.page.locator('.acts') });
  const changes = 4;
  for (let n = 0; n < changes; n++) {
    await line.first().getByRole('button', { name: 'late', exact: true }).click();
    await line.first().getByRole('button', { name: '+5 min' }).click();
  }
  await wall.page.waitForTimeout(1_000);
  const heard = await wall.page.evaluate(() => Reflect.get(window, 'heard') as string[]);
  expect(heard.length).toBeLessThanOrEqual(2);
  for (const each of [wall, hand]) await each.page.context().close();
});

test('nothing moves for a reader who wants it still', async ({ browser }) => {
  const { page } = await Reader.of(browser, 'en');
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const screen of SCREENS.filter(({ isWall }) => isWall)) {
    await open(page, hub.address, screen);
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect(moving, nameOf(screen)).toBe(0);
  }
  await page.context().close();
});

test('without its letters, its pictures and its sound a screen is whole', async ({ browser }) => {
  const reader = await Reader.of(browser, 'en');
  const { page, faults } = reader;
  await page.route(/\.(?:woff2|svg)$/, (route) => route.abort());
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'AudioContext');
  });
  for (const screen of SCREENS.filter(({ isWall }) => isWall)) {
    await page.goto(`${hub.address}/${screen.path}`);
    await page.locator(screen.drawn).first().waitFor();
    const words = await page.evaluate(() =>
      document.fonts.check('20px "Atkinson Hyperlegible Next Variable"'),
    );
    expect(words, 'the letters did not come').toBe(false);
    await settled(page);
    const over = (await reader.unfit()).filter((each) => each.startsWith('one over the other'));
    expect(over, nameOf(screen)).toEqual([]);
  }
  // The browser says itself what did not come.
  expect(faults.filter((each) => !each.includes('ERR_FAILED'))).toEqual([]);
  await page.context().close();
});

test('a part that fails says so, tells the hub, and leaves the rest alone', async ({ browser }) => {
  const { page, faults } = await Reader.of(browser, 'en');
  const [screen] = SCREENS;
  if (!screen) throw new Error('a wall');
  await open(page, hub.address, screen);
  const told = page.waitForResponse((response) => response.url().endsWith('/api/faults'));
  await page.evaluate(() => {
    const part = customElements.get('next-row')?.prototype as { draw: () => unknown };
    part.draw = () => {
      throw new TypeError('nothing is there');
    };
    const rows = document.querySelector('station-wall')?.shadowRoot?.querySelectorAll('next-row');
    for (const row of rows ?? []) (row as HTMLElement & { requestUpdate(): void }).requestUpdate();
  });
  await expect(page.locator('next-row').first()).toContainText('could not be drawn', {
    timeout: 20_000,
  });
  const response = await told;
  expect(response.request().postDataJSON()).toMatchObject({
    page: '/station.html?station=trim',
    said: expect.stringContaining('nothing is there'),
  });
  // The page reads no more of the answer, and so no more of it comes.
  expect(response.status()).toBe(200);
  // The rest is drawn and heard as before.
  await expect(page.locator('then-foot')).not.toContainText('could not be drawn');
  await page.locator('now-line button.side').first().click();
  await expect(page.locator('people-row')).toBeVisible();
  expect(faults.every((each) => each.includes('next-row'))).toBe(true);
  await page.context().close();
});
