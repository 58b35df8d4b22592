import type { Browser, Page } from '@playwright/test';
import type { View } from '../../../shared/view/index.ts';
import { ui } from '../../../shared/words/index.ts';
import { builtFile } from '../../built.ts';
import { StubHub } from '../../client/stub-hub.ts';

/** A page that a browser trusts, as it does the hub's own machine. */
const ORIGIN = 'http://localhost:4181';
const MEDIA: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  woff2: 'font/woff2',
  svg: 'image/svg+xml',
};

/** Said while a wall has heard no hub. */
const LOOKING = new RegExp(`${ui.en.looking}|${ui.es.looking}`);

export type Wall = {
  readonly path: string;
  readonly width: number;
  readonly height: number;
  /** Reads what the screens are made of; left out: as they are built for a kitchen. */
  readonly read?: (name: string) => Buffer;
};

export type StandingWall = {
  readonly page: Page;
  /** Opens the wall anew with this view, and waits till it is drawn. */
  show(view: View): Promise<void>;
  close(): Promise<void>;
};

/** A built page that hears no hub but one view, and no clock but that view's own. */
export async function standWall(browser: Browser, wall: Wall): Promise<StandingWall> {
  const { width, height, read = builtFile } = wall;
  const context = await browser.newContext({
    viewport: { width, height },
    screen: { width, height },
    serviceWorkers: 'block',
    reducedMotion: 'reduce',
    bypassCSP: true,
  });
  const page = await context.newPage();
  await page.route(`${ORIGIN}/**`, (route) => {
    const { pathname } = new URL(route.request().url());
    const contentType = MEDIA[pathname.split('.').at(-1) ?? ''];
    if (!contentType) return route.fulfill({ status: 404, body: '' });
    return route.fulfill({ contentType, body: read(pathname.slice(1)) });
  });
  const hub = new StubHub({ view: null, now: () => Date.now() as never });
  await hub.serve(page);
  const browserOf = await context.newCDPSession(page);
  return {
    page,
    async show(view) {
      hub.answers = { view, now: () => view.at };
      // What it was shown before it has kept: it is to show this view, or nothing.
      await browserOf.send('Storage.clearDataForOrigin', { origin: ORIGIN, storageTypes: 'all' });
      await page.goto(`${ORIGIN}/${wall.path}`);
      await page
        .locator('now-line, p.quiet, pass-line, rack-lane, time-chart .foot')
        .first()
        .waitFor();
      await page.getByText(LOOKING).waitFor({ state: 'detached' });
      await page.evaluate(async () => {
        await document.fonts.ready;
        for (let frames = 0; frames < 4; frames++) await new Promise(requestAnimationFrame);
      });
    },
    close: () => context.close(),
  };
}
