import type { Browser, CDPSession, Page } from '@playwright/test';
import { AXE } from './axe.ts';
import { settled } from './screens.ts';
import { unfit } from './unfit.ts';

export const WALL = { width: 1920, height: 1080 };
export const PANEL = { width: 1024, height: 600 };
export const PHONE = { width: 390, height: 844 };
export type Size = typeof WALL;

export type Language = 'en' | 'es';
export type Ground = 'paper' | 'night';

/** A page whose frame stays as it is when what is in it is zoomed, as in a window. */
function keepFrame() {
  const frame = { wide: 0, high: 0 };
  Object.defineProperty(window, 'outerWidth', { get: () => frame.wide || innerWidth });
  Object.defineProperty(window, 'outerHeight', { get: () => frame.high || innerHeight });
  Object.assign(window, { frame });
}

/** Somebody before a screen, as large as it is, in a language and on a ground. */
export class Reader {
  readonly page: Page;
  readonly faults: string[] = [];
  readonly #cdp: CDPSession;

  private constructor(page: Page, cdp: CDPSession) {
    this.page = page;
    this.#cdp = cdp;
    page.on('pageerror', (fault) => this.faults.push(String(fault)));
    page.on('console', (said) => {
      if (said.type() === 'error') this.faults.push(said.text());
    });
  }

  static async of(browser: Browser, language: Language): Promise<Reader> {
    const context = await browser.newContext({
      viewport: WALL,
      // Without bypassing, the page's own security policy would keep the checker out.
      bypassCSP: true,
      serviceWorkers: 'block',
    });
    await context.addInitScript((word) => {
      const own = { screenId: `everyone-${word}`, language: word };
      localStorage.setItem('coalface screen', JSON.stringify(own));
    }, language);
    await context.addInitScript(keepFrame);
    await context.addInitScript({ path: AXE });
    const page = await context.newPage();
    return new Reader(page, await context.newCDPSession(page));
  }

  async at(size: Size, ground?: Ground): Promise<void> {
    await this.page.setViewportSize(size);
    if (ground) {
      await this.page.evaluate((laid) => {
        document.documentElement.dataset['ground'] = laid;
      }, ground);
    }
    await settled(this.page);
  }

  /** As set in the browser: letters of 16 px are the usual ones. */
  async letters(px: number): Promise<void> {
    await this.#cdp.send('Page.setFontSizes', { fontSizes: { standard: px, fixed: px } });
  }

  /** The page zoomed to twice its size in a window of this size; null: not zoomed. */
  async zoomed(size: Size | null): Promise<void> {
    await this.page.evaluate(
      ([wide, high]) => Object.assign(Reflect.get(window, 'frame'), { wide, high }),
      [size?.width ?? 0, size?.height ?? 0] as const,
    );
    if (size) await this.at({ width: size.width / 2, height: size.height / 2 });
  }

  unfit(within: string | null = null): Promise<string[]> {
    return this.page.evaluate(unfit, within);
  }
}
