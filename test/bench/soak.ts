import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright';
import { chromium } from 'playwright';
import { launchOptions } from '../browser.ts';
import { startHub } from '../e2e/hub-process.ts';

const HOUR_S = 3600;
const LOOK_EVERY_MS = 1000;
/** A wall holds more when more stands on it: an hour is as heavy as it was at most. */
const WEIGHED_IN_AN_HOUR = 6;
/** A hub whose clock runs fast has much to do at first. */
const PATIENCE_MS = 120_000;

type Weight = { readonly heap: number; readonly nodes: number };

/**
 * A day goes by in front of one wall in Chromium, and somebody taps whatever may be tapped: what
 * the page held at most in the last hour, after collection, over what it did in the first.
 * @param args hours of the demo's day (24); how many times as fast (120: a day takes 12 minutes).
 */
export async function bench(args: string[]): Promise<Record<string, unknown>> {
  const hours = Number(args[0] ?? 24);
  const speed = Number(args[1] ?? 120);
  const folder = mkdtempSync(join(tmpdir(), 'coalface-soak-'));
  const hub = await startHub({ folder, speed });
  const browser = await chromium.launch(launchOptions());
  try {
    const context = await browser.newContext({ viewport: { width: 1920, height: 1080 } });
    const page = await context.newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    await page.goto(`${hub.address}/station.html?station=trim`);
    await page.locator('now-line').first().waitFor();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Performance.enable');
    const hourMs = (HOUR_S * 1000) / speed;
    const weights: Weight[] = [];
    let taps = 0;
    for (let hour = 1; hour <= hours; hour++) {
      const endMs = performance.now() + hourMs;
      const seen: Weight[] = [];
      for (let left = WEIGHED_IN_AN_HOUR; left > 0; left--) {
        taps += await tapUntil(page, endMs - ((left - 1) * hourMs) / WEIGHED_IN_AN_HOUR);
        seen.push(await weigh(devtools));
      }
      const weight = heaviest(seen);
      weights.push(weight);
      console.log(JSON.stringify({ hour, taps, ...weight }));
    }
    return { ...ratios(weights), hours, speed, taps };
  } finally {
    await browser.close();
    await hub.stop();
    rmSync(folder, { recursive: true });
  }
}

/** How often something could be started or finished, by whoever stands there. */
async function tapUntil(page: Page, untilMs: number): Promise<number> {
  let taps = 0;
  while (performance.now() < untilMs) {
    const ring = page.getByRole('button', { name: /^(start|finish): / }).first();
    const tapped = await ring.click({ timeout: LOOK_EVERY_MS, force: true }).then(
      () => 1,
      () => 0,
    );
    taps += tapped;
    await page.waitForTimeout(LOOK_EVERY_MS);
  }
  return taps;
}

async function weigh(devtools: CDPSession): Promise<Weight> {
  // What is only reached by what was collected goes at the second time.
  for (let times = 0; times < 2; times++) await devtools.send('HeapProfiler.collectGarbage');
  const { metrics } = await devtools.send('Performance.getMetrics');
  const value = (wanted: string) =>
    metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN;
  return { heap: value('JSHeapUsedSize'), nodes: value('Nodes') };
}

const heaviest = (all: readonly Weight[]): Weight => ({
  heap: Math.max(...all.map(({ heap }) => heap)),
  nodes: Math.max(...all.map(({ nodes }) => nodes)),
});

function ratios(weights: readonly Weight[]) {
  const [first, last] = [weights[0], weights.at(-1)];
  const over = (what: keyof Weight) =>
    Math.round(((last?.[what] ?? Number.NaN) / (first?.[what] ?? Number.NaN)) * 1000) / 1000;
  return { heap_ratio: over('heap'), nodes_ratio: over('nodes') };
}
