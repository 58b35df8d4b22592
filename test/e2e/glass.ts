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
const STEP_MS = 8;

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

  /** `atS`: when it was, in seconds since 1970; now, unless said. */
  async touch(type: Step[0], points: readonly Point[], atS?: number) {
    const touchPoints = points.map(({ x, y }, id) => ({ x, y, id, radiusX: 10, radiusY: 10 }));
    const timestamp = atS === undefined ? {} : { timestamp: atS };
    await this.#cdp.send('Input.dispatchTouchEvent', { type, touchPoints, ...timestamp });
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

  /** However long the machine takes over them, the page is told that they came so fast. */
  async #atOnce(steps: readonly Step[]): Promise<void> {
    const fromS = (Date.now() - steps.length * STEP_MS) / 1000;
    await Promise.all(
      steps.map(([type, points], n) => this.touch(type, points, fromS + (n * STEP_MS) / 1000)),
    );
  }
}

export async function middleOf(place: Locator): Promise<Point> {
  await expect(place).toBeVisible();
  const box = await place.boundingBox();
  if (!box) throw new Error('a place to tap has a size');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
