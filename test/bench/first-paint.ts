import type { Browser, BrowserContext, Page } from 'playwright';

/** A cheap tablet beside the machine that builds: Chromium's own measure of slowness. */
const SLOWED = 6;
const WALL = '/station.html?station=trim';

/**
 * From asking for a page until any word is on the glass, until one of use is (that the page opens
 * is none), and until its first task is.
 */
export type Paint = { readonly wordMs: number; readonly firstMs: number; readonly dayMs: number };

/** A station wall on a device that has nothing of it yet. */
export async function paintCold(browser: Browser, address: string): Promise<Paint> {
  const context = await browser.newContext();
  const paint = await paintOf(context, address);
  await context.close();
  return { ...paint, firstMs: paint.wallMs };
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
  // The first words are what stood there.
  return { ...paint, firstMs: paint.wordMs };
}

async function paintOf(context: BrowserContext, address: string) {
  const page = await slowedPage(context);
  await page.addInitScript({ content: WATCH });
  await page.goto(address + WALL);
  const wordMs = await firstPaint(page);
  return { wordMs, dayMs: await markOf(page, 'task'), wallMs: await markOf(page, 'wall') };
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
const WATCH = `for (const [name, part] of [['wall', 'wall-head'], ['task', 'now-line']]) {
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
