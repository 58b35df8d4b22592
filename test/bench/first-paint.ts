import type { Browser, BrowserContext, Page } from 'playwright';

/** A cheap tablet beside the machine that builds: Chromium's own measure of slowness. */
const SLOWED = 6;
const WALL = '/station.html?station=trim';

/** From asking for a page until anything is on the glass, and until its first task is. */
export type Paint = { readonly firstMs: number; readonly dayMs: number };

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

async function paintOf(context: BrowserContext, address: string): Promise<Paint> {
  const page = await slowedPage(context);
  await page.addInitScript({ content: WATCH });
  await page.goto(address + WALL);
  return { firstMs: await firstPaint(page), dayMs: await taskPaint(page) };
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
 * In the page, before its own scripts: looks at each frame whether a task is on the wall. The frame
 * in which it was made is painted before the next one begins. As text, since what compiles these
 * files would add words of its own to a function.
 */
const WATCH = `requestAnimationFrame(function look() {
  const wall = document.querySelector('station-wall');
  const isThere = wall?.shadowRoot?.querySelector('now-line');
  requestAnimationFrame(isThere ? () => performance.mark('task') : look);
});`;

const taskPaint = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const seen = new PerformanceObserver((list) => {
          const [task] = list.getEntriesByName('task');
          if (task) resolve(task.startTime);
        });
        seen.observe({ type: 'mark', buffered: true });
      }),
  );
