import { type Browser, expect, test } from '@playwright/test';
import { openLive } from '../../shared/day/index.ts';
import type { View } from '../../shared/view/index.ts';
import { viewOf } from '../../shared/view/index.ts';
import { noon, Telling } from '../shared/day/demo.ts';
import { type StandingWall, standWall } from './moments/walls.ts';

let view: View;
test.beforeAll(() => {
  view = viewOf(openLive(new Telling().state, noon), { kind: 'desk' });
});

const PHONE = { width: 390, height: 844 };
const SMALL = { width: 1024, height: 600 };
const WALL = { width: 1920, height: 1080 };

async function chartOn(
  browser: Browser,
  glass: typeof WALL,
  language = 'en',
): Promise<StandingWall> {
  const path = `desk.html?language=${language}#day`;
  const wall = await standWall(browser, { path, ...glass });
  await wall.show(view);
  return wall;
}

for (const [name, glass] of Object.entries({ phone: PHONE, 'small panel': SMALL })) {
  test(`on a ${name} a tap brings the smokers, and another the crew again`, async ({ browser }) => {
    const { page, close } = await chartOn(browser, glass);
    const rack = page.locator('time-chart .name', { hasText: 'Smoker B' }).first();
    await expect(rack).not.toBeInViewport();
    await page.getByRole('button', { name: 'to the smokers' }).click();
    await expect(rack).toBeInViewport();
    await page.getByRole('button', { name: 'to the crew' }).click();
    await expect(rack).not.toBeInViewport();
    await close();
  });
}

test('a tap on a name, and on who does it, says why the task is when it is', async ({
  browser,
}) => {
  const { page, close } = await chartOn(browser, WALL);
  const why = page.locator('time-chart .why');
  await expect(why).toContainText('Tap a task');
  const word = page.locator('time-chart .word.waiting[data-task]').first();
  const said = ((await word.textContent()) ?? '').replace('…', '').trim();
  await word.click();
  await expect(why.locator('.what')).toContainText(said);
  await page.keyboard.press('Escape');
  await page.locator('time-chart .name').first().click();
  await expect(why.locator('.what')).toBeVisible();
  await close();
});

test('it goes where a finger goes, further than was drawn, and stays there', async ({
  browser,
}) => {
  const { page, close } = await chartOn(browser, WALL);
  const sheet = page.locator('time-chart .sheet');
  const { x, y } = (await sheet.boundingBox()) ?? { x: 0, y: 0 };
  const places = () =>
    page.locator('time-chart .bar').evaluateAll((all) =>
      all.map((bar) => {
        const { left } = bar.querySelector('.edge')?.getBoundingClientRect() ?? { left: 0 };
        return [bar.getAttribute('data-task'), Math.round(left)] as const;
      }),
    );
  const before = new Map(await places());
  const byPx = [-300, -700, -1_000];
  await page.mouse.move(x + 1_600, y + 20);
  await page.mouse.down();
  for (const px of byPx) {
    await page.mouse.move(x + 1_600 + px, y + 20, { steps: 12 });
    // Its first pixels only tell that it is no tap.
    const slackPx = 20;
    await expect(async () => {
      const moved = (await places()).filter(([task]) => before.has(task));
      const inSight = moved.filter(([, left]) => left > 500 && left < 1_900);
      expect(inSight.length).toBeGreaterThan(0);
      for (const [task, left] of inSight) {
        expect(Math.abs(left - (before.get(task) ?? 0) - px), task ?? '').toBeLessThan(slackPx);
      }
    }).toPass({ timeout: 2_000 });
  }
  await page.mouse.up();
  const inMotion = new Map(await places());
  // Longer than it takes to come to rest, and be drawn anew.
  await page.waitForTimeout(800);
  const atRest = (await places()).filter(([, left]) => left > 500 && left < 1_900);
  expect(atRest.length).toBeGreaterThan(0);
  for (const [task, left] of atRest) {
    expect(Math.abs(left - (inMotion.get(task) ?? 0)), task ?? '').toBeLessThan(3);
  }
  await close();
});

for (const language of ['en', 'es']) {
  test(`no name on the chart lies over another or beyond its glass: ${language}`, async ({
    browser,
  }) => {
    for (const glass of [WALL, SMALL, PHONE]) {
      const { page, close } = await chartOn(browser, glass, language);
      const texts = await page.locator('time-chart svg text').evaluateAll((all) =>
        all.map((text) => {
          const { left, right, top, bottom } = text.getBoundingClientRect();
          return { said: text.textContent?.trim(), left, right, top, bottom };
        }),
      );
      expect(texts.length).toBeGreaterThan(20);
      for (const [i, one] of texts.entries()) {
        expect(one.right, one.said).toBeLessThanOrEqual(glass.width);
        const over = texts.slice(i + 1).filter(
          (other) =>
            other.left < one.right - 1 &&
            one.left < other.right - 1 &&
            // Two lines of letters come as near as their descenders.
            other.top < one.bottom - 6 &&
            one.top < other.bottom - 6,
        );
        expect(over, one.said).toEqual([]);
      }
      await close();
    }
  });
}
