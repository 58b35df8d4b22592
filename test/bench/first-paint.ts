import type { Browser, BrowserContext, Page } from 'playwright';

/** A cheap tablet beside the machine that builds: Chromium's own measure of slowness. */
const SLOWED = 6;
const WALL = '/station.html?station=trim';

/**
 * From asking for a page until what is to be done stands on the glass in plain words, until the
 * wall's head does, drawn by its own scripts, and until its first task does, to be tapped.
 */
export type Paint = { readonly wordsMs: number; readonly wallMs: number; readonly dayMs: number };

declare global {
  interface Window {
    beganWithWork: boolean;
  }
}

/** A station wall on a device that has nothing of it yet. */
export async function paintCold(browser: Browser, address: string): Promise<Paint> {
  const context = await browser.newContext();
  const paint = await paintOf(context, address);
  await context.close();
  return paint;
}

/** A page of bare words from the same hub: what no screen can be painted sooner than. */
export async function paintBare(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext();
  const page = await slowedPage(context);
  await page.goto(`${address}/health`);
  const firstMs = await firstPaint(page);
  await context.close();
  return firstMs;
}

/** A station wall on a device that keeps the screens, by its service worker. */
export async function paintKept(browser: Browser, address: string): Promise<Paint> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(address + WALL);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  // A view is written down when it has stood for two seconds.
  await page.waitForTimeout(4000);
  await page.close();
  const paint = await paintOf(context, address);
  await context.close();
  return paint;
}

async function paintOf(context: BrowserContext, address: string) {
  const page = await slowedPage(context);
  await page.addInitScript({ content: WATCH });
  await page.goto(address + WALL);
  const wordsMs = await firstPaint(page);
  const dayMs = await markOf(page, 'task');
  // The first words are of use where they are the work, and not that the page opens.
  if (!(await page.evaluate(() => window.beganWithWork))) throw new Error('it began with no work');
  return { wordsMs, dayMs, wallMs: await markOf(page, 'wall') };
}

async function slowedPage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return page;
}

const firstPaint = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const seen = new PerformanceObserver((list) => {
          for (const { name, startTime } of list.getEntries()) {
            if (name === 'first-contentful-paint') resolve(startTime);
          }
        });
        seen.observe({ type: 'paint', buffered: true });
      }),
  );

/**
 * In the page, before its own scripts: looks at each frame whether the wall's head is there, and
 * whether a task is. The frame in which it was made is painted before the next one begins. As text,
 * since what compiles these files would add words of its own to a function.
 */
const WATCH = `document.addEventListener('DOMContentLoaded', () => {
  window.beganWithWork = document.querySelector('.likeness ol') !== null;
});
for (const [name, part] of [['wall', 'wall-head'], ['task', 'now-line']]) {
  requestAnimationFrame(function look() {
    const wall = document.querySelector('station-wall');
    const isThere = wall?.shadowRoot?.querySelector(part);
    requestAnimationFrame(isThere ? () => performance.mark(name) : look);
  });
}`;

const markOf = (page: Page, wanted: string) =>
  page.evaluate(
    (name) =>
      new Promise<number>((resolve) => {
        const seen = new PerformanceObserver((list) => {
          const [mark] = list.getEntriesByName(name);
          if (mark) resolve(mark.startTime);
        });
        seen.observe({ type: 'mark', buffered: true });
      }),
    wanted,
  );
