import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, expect, test } from '@playwright/test';
import { Glass, middleOf } from './glass.ts';
import { type HubProcess, startHub } from './hub-process.ts';
import { keptFromScreens } from './kept.ts';

let folder: string;
let hub: HubProcess;

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-hands-'));
  hub = await startHub({ folder });
});

test.afterAll(async () => {
  await hub.stop();
  rmSync(folder, { recursive: true });
});

const kinds = async () => (await keptFromScreens(folder)).map(({ kind }) => kind);

/** What comes into the log by what is done. */
async function keptBy(work: () => Promise<void>): Promise<string[]> {
  const before = (await kinds()).length;
  await work();
  // What a wall has tapped the hub has within a second, on a slow machine too.
  await new Promise((resolve) => setTimeout(resolve, 1_500));
  return (await kinds()).slice(before);
}

/** Some of its work is under way, or may begin, at any time of the demo's day. */
const WALL = 'station.html?station=trim,mix,stove,pit,pass';

async function wallOf(browser: Browser, path = WALL) {
  const size = { width: 1920, height: 1080 };
  // A page that is loaded anew meanwhile would lose the touch that is under way.
  const alone = { hasTouch: true, serviceWorkers: 'block' } as const;
  const context = await browser.newContext({ viewport: size, screen: size, ...alone });
  const page = await context.newPage();
  await page.goto(`${hub.address}/${path}`);
  await expect(page.locator('now-line').first()).toBeVisible();
  const ring = (word: string) =>
    page.getByRole('button', { name: new RegExp(`^${word}: `) }).first();
  const box = (name: string | RegExp) => page.getByRole('button', { name, exact: true }).first();
  return { page, glass: await Glass.of(page), ring, box, close: () => context.close() };
}

test('all a hand says of its work takes two taps at most', async ({ browser }) => {
  const { page, glass, ring, box, close } = await wallOf(browser);
  const taps = async (said: string, ...places: ReturnType<typeof box>[]) => {
    const kept = await keptBy(async () => {
      for (const place of places) await glass.tap(place);
    });
    expect(kept).toEqual([said]);
    expect(places.length).toBeLessThanOrEqual(2);
  };
  if ((await ring('finish').count()) === 0) {
    await taps('taskStarted', ring('start'));
    await taps('startTakenBack', ring('undo'));
    await page.waitForTimeout(8_500);
    await taps('taskStarted', ring('start'));
    await page.waitForTimeout(8_500);
  }
  await taps('helpAsked', box('help'));
  await taps('helpCame', box(/help (is here|came)|helped/));
  await taps('taskRunsLate', box('late'), box('+5 min'));
  await taps(
    'taskGiven',
    page.locator('now-line .side').first(),
    page.locator('people-row button').first(),
  );
  await taps('taskFinished', ring('finish'));
  await taps('finishTakenBack', ring('undo'));
  await close();
});

test('a finger taps once, and when it leaves: however long it lay there', async ({ browser }) => {
  const { page, glass, ring, box, close } = await wallOf(browser);
  await page.evaluate(() => {
    const seen: string[] = [];
    for (const name of ['pointerup', 'mousedown', 'click']) {
      addEventListener(name, () => seen.push(name), { capture: true });
    }
    Object.assign(window, { seen });
  });
  const seenOf = () => page.evaluate(() => Reflect.get(window, 'seen') as string[]);
  const before = await keptBy(() => glass.tap(ring('(start|finish)')));
  expect(before).toEqual([expect.stringMatching(/^task(Started|Finished)$/)]);
  // What a browser plays for pages of mice comes before its own tap, and later than this one.
  expect(await seenOf()).toEqual(['pointerup', 'click']);
  await page.waitForTimeout(8_500);
  const long = await keptBy(async () => {
    const at = await middleOf(box('help'));
    await glass.touch('touchStart', [at]);
    await page.waitForTimeout(1_200);
    await glass.touch('touchEnd', []);
  });
  expect(long).toEqual(['helpAsked']);
  await glass.tap(box(/help (is here|came)|helped/));
  await close();
});

test('nothing is done by water, gloves, a drag, a second finger or a cloth', async ({
  browser,
}) => {
  const { page, glass, ring, box, close } = await wallOf(browser);
  const running = async () => {
    if ((await ring('finish').count()) > 0) return;
    await glass.tap(ring('start'));
    await page.waitForTimeout(8_500);
  };
  await running();
  const at = await middleOf(ring('finish'));
  const off = { x: at.x - 700, y: at.y };

  await test.step('a finger that slides off its target', async () => {
    const kept = await keptBy(async () => {
      await glass.stroke(at, off);
    });
    expect(kept).toEqual([]);
  });
  await test.step('two fingers at once', async () => {
    const kept = await keptBy(async () => {
      await glass.touch('touchStart', [at, off]);
      await page.waitForTimeout(60);
      await glass.touch('touchEnd', []);
    });
    expect(kept).toEqual([]);
  });
  await test.step('a cloth: strokes and touches all over', async () => {
    const kept = await keptBy(async () => {
      const touches = Array.from({ length: 40 }, (_, n) => ({
        x: n % 4 === 0 ? at.x : (n * 331) % 1900,
        y: at.y,
      }));
      // It is said for a moment only, and a slow machine may look too late.
      await expect(async () => {
        const said = page.getByText('The glass is being wiped').waitFor({ timeout: 3_000 });
        await Promise.all([said, glass.wipe({ x: 200, y: 500 }, at, touches)]);
      }).toPass();
    });
    expect(kept).toEqual([]);
    await expect(page.getByText('The glass is being wiped')).toHaveCount(0);
  });
  await test.step('a double tap, on the ring and on a box that turns into another', async () => {
    const twice = async (place: ReturnType<typeof box>) => {
      const point = await middleOf(place);
      await page.waitForTimeout(800);
      await glass.tapAt(point);
      await page.waitForTimeout(150);
      await glass.tapAt(point);
    };
    expect(await keptBy(() => twice(box('help')))).toEqual(['helpAsked']);
    await glass.tap(box('late'));
    expect(await keptBy(() => twice(box('+5 min')))).toEqual(['taskRunsLate']);
    expect(await keptBy(() => twice(ring('finish')))).toEqual(['taskFinished']);
  });
  await test.step('a mouse that is dragged off its target', async () => {
    const from = await middleOf(ring('(start|finish|undo)'));
    const kept = await keptBy(async () => {
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(from.x - 700, from.y, { steps: 5 });
      await page.mouse.up();
    });
    expect(kept).toEqual([]);
  });
  await close();
});

test('a wall that is being wiped on purpose hears nothing and says so', async ({ browser }) => {
  const { page, glass, ring, box, close } = await wallOf(browser);
  await page.clock.install();
  await page.clock.resume();
  await glass.tap(page.locator('wall-head h1 button'));
  await glass.tap(box('wipe the glass'));
  await expect(page.getByText('The glass is being wiped')).toBeVisible();
  const any = page.getByRole('button', { name: /^(start|finish): / }).first();
  expect(await keptBy(() => glass.tap(any))).toEqual([]);
  expect(await ring('undo').count()).toBe(0);
  await close();
});

test('a wall is worked by a pedal of three keys', async ({ browser }) => {
  const { page, ring, close } = await wallOf(browser, 'station.html?station=pit');
  const press = async (key: string) => {
    await page.waitForTimeout(800);
    await page.keyboard.press(key);
  };
  await expect(ring('(start|finish)')).toBeVisible();
  await test.step('the first press shows where it would tap, and does nothing', async () => {
    expect(await keptBy(() => press('Enter'))).toEqual([]);
    await expect(ring('(start|finish)')).toBeFocused();
  });
  await test.step('the second taps, once, however long it is held', async () => {
    const kept = await keptBy(async () => {
      await page.waitForTimeout(800);
      for (let held = 0; held < 4; held++) await page.keyboard.down('Enter');
      await page.keyboard.up('Enter');
    });
    expect(kept).toHaveLength(1);
  });
  await test.step('undo stands where the key is, and is pressed', async () => {
    await expect(ring('undo')).toBeFocused();
    expect(await keptBy(() => press('Enter'))).toEqual([expect.stringMatching(/TakenBack$/)]);
  });
  await test.step('right goes on to the place beside, escape leaves what it opened', async () => {
    for (let n = 0; n < 12 && (await page.getByText('+5 min').count()) === 0; n++) {
      await press('ArrowRight');
      const name = await page.evaluate(() => {
        let chosen = document.activeElement;
        while (chosen?.shadowRoot?.activeElement) chosen = chosen.shadowRoot.activeElement;
        return chosen?.textContent?.trim();
      });
      if (name === 'late') await press('Enter');
    }
    await expect(page.getByText('+5 min')).toBeVisible();
    await press('Escape');
    await expect(page.getByText('+5 min')).toHaveCount(0);
  });
  await close();
});

/** What a panel of this size is put up for: six racks of 22 mm want 24 inches at least. */
const PANELS = [
  { inches: 43, away: 3, size: [1920, 1080], faces: ['station.html', 'smoker.html', 'pass.html'] },
  { inches: 24, away: 1.5, size: [1920, 1080], faces: ['smoker.html'] },
  { inches: 15.6, away: 0.8, size: [1920, 1080], faces: ['station.html', 'pass.html'] },
  { inches: 10.1, away: 0.6, size: [1280, 800], faces: ['station.html', 'pass.html'] },
] as const;
/** Colle and Hiszem 2004: fingers gain nothing beyond 20 mm; wet and gloved ones get two more. */
const LEAST_MM = 22;

type Place = { readonly width: number; readonly height: number };

/**
 * How much of the glass taps a button: what it takes up, or where that is less the largest square
 * about its middle line in which a finger finds it and nothing else.
 */
function findPlaces(): void {
  const isHit = (each: Element, x: number, y: number): boolean => {
    let hit = document.elementFromPoint(x, y);
    for (let inner = hit; inner?.shadowRoot; hit = inner) {
      const next = inner.shadowRoot.elementFromPoint(x, y);
      if (!next || next === inner) break;
      inner = next;
    }
    for (let node: Node | null = hit; node; node = node.parentNode ?? (node as ShadowRoot).host) {
      if (node === each) return true;
    }
    return false;
  };
  const STEP_PX = 4;
  const placeOf = (each: Element, most: number): Place => {
    const { left, right, y, width, height } = each.getBoundingClientRect();
    const isLarge = (wide: number, high: number) => Math.min(wide, high) >= most - 0.5;
    if (isLarge(width, height)) return { width, height };
    const midY = y + height / 2;
    const reach = (x: number, way: 1 | -1) => {
      let px = 0;
      while (px < most && isHit(each, x, midY + way * (px + 1))) px += 1;
      return px;
    };
    let largest: Place = { width, height };
    const none = { up: most, down: most, wide: 0 };
    let run = none;
    for (let x = left + 1; x < right; x += STEP_PX) {
      const [up, down] = [reach(x, -1), reach(x, 1)];
      run = { up: Math.min(up, run.up), down: Math.min(down, run.down), wide: run.wide + STEP_PX };
      if (up + down < most - 0.5) run = none;
      else if (isLarge(run.wide, run.up + run.down)) {
        largest = { width: run.wide, height: run.up + run.down };
      }
    }
    return largest;
  };
  Object.assign(window, { placeOf });
}

for (const { inches, away, size, faces } of PANELS) {
  test(`each place to tap is 22 mm at least on a panel of ${inches} inches`, async ({
    browser,
  }) => {
    const [width, height] = size;
    const screen = { width, height };
    const context = await browser.newContext({ viewport: screen, screen, hasTouch: true });
    const page = await context.newPage();
    await page.addInitScript(findPlaces);
    const leastPx = (LEAST_MM * Math.hypot(width, height)) / (inches * 25.4);
    for (const face of faces) {
      const panel = `station=trim&diagonal=${inches}&distance=${away}`;
      await page.goto(`${hub.address}/${face}?${panel}`);
      await expect(page.locator('wall-head')).toBeVisible();
      await page.waitForTimeout(1_000);
      const small = await page.getByRole('button').evaluateAll(
        (all, least) =>
          all
            .map((each) => ({ each, box: Reflect.get(window, 'placeOf')(each, least) as Place }))
            .filter(({ box }) => box.width > 0 && Math.min(box.width, box.height) < least - 0.5)
            .map(({ each, box }) => [each.textContent?.trim(), box.width, box.height]),
        leastPx,
      );
      expect([face, small]).toEqual([face, []]);
    }
    await context.close();
  });
}
