import type { CDPSession, Locator, Page } from '@playwright/test';
import { expect } from '@playwright/test';

export type Point = { readonly x: number; readonly y: number };

type Step = readonly ['touchStart' | 'touchMove' | 'touchEnd', readonly Point[]];

const strokeOf = (from: Point, to: Point): Step[] => [
  ['touchStart', [from]],
  ...[0.25, 0.5, 0.75, 1].map((share): Step => {
    const x = from.x + (to.x - from.x) * share;
    return ['touchMove', [{ x, y: from.y + (to.y - from.y) * share }]];
  }),
  ['touchEnd', []],
];

/** Long enough for a finger, short enough for a tap. */
const DWELL_MS = 60;

/** The glass of a wall, touched as fingers and cloths touch it; it counts the taps. */
export class Glass {
  readonly page: Page;
  taps = 0;
  readonly #cdp: CDPSession;

  private constructor(page: Page, cdp: CDPSession) {
    this.page = page;
    this.#cdp = cdp;
  }

  static async of(page: Page): Promise<Glass> {
    return new Glass(page, await page.context().newCDPSession(page));
  }

  async touch(type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) {
    const touchPoints = points.map(({ x, y }, id) => ({ x, y, id, radiusX: 10, radiusY: 10 }));
    await this.#cdp.send('Input.dispatchTouchEvent', { type, touchPoints });
  }

  async tapAt(point: Point): Promise<void> {
    await this.touch('touchStart', [point]);
    await this.page.waitForTimeout(DWELL_MS);
    await this.touch('touchEnd', []);
  }

  /** As a hand that has come from elsewhere. */
  async tap(place: Locator): Promise<void> {
    await this.page.waitForTimeout(800);
    this.taps += 1;
    await this.tapAt(await middleOf(place));
  }

  async stroke(from: Point, to: Point): Promise<void> {
    await this.#atOnce(strokeOf(from, to));
  }

  /** Strokes there and back, and touches all along: as fast as a cloth, on a slow machine too. */
  async wipe(from: Point, to: Point, touches: readonly Point[]): Promise<void> {
    const along = touches.flatMap((point): Step[] => [
      ['touchStart', [point]],
      ['touchEnd', []],
    ]);
    await this.#atOnce([...strokeOf(from, to), ...strokeOf(to, from), ...along]);
  }

  async #atOnce(steps: readonly Step[]): Promise<void> {
    await Promise.all(steps.map(([type, points]) => this.touch(type, points)));
  }
}

export async function middleOf(place: Locator): Promise<Point> {
  await expect(place).toBeVisible();
  const box = await place.boundingBox();
  if (!box) throw new Error('a place to tap has a size');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
