import { openBare } from './tap/bare.ts';
import { openOurs } from './tap/ours.ts';
import type { Side } from './tap/side.ts';

const SCREENS = 60;
/** Before anything is measured: both sides as warm as after an hour's work. */
const WARM_UP = 60;

/**
 * From a tap until it is durable and the last of sixty screens has what follows from it, on one
 * machine: the hub on its demo day, and beside it, tap by tap, a bare web socket server that makes
 * one durable insert and sends the same bytes. Both sides' screens run in this one process and
 * parse what they get, so the time a screen takes is in both.
 * @param args how many taps each, at least 300; how many of the screens are desks: none, since
 * the target is set for walls. A desk has the whole day on it, and is drawn with every tap as well.
 */
export async function bench(args: string[]) {
  const taps = Math.max(300, Number(args[0] ?? 600));
  const desks = Number(args[1] ?? 0);
  const ours = await openOurs(SCREENS, desks);
  const bare = await openBare(ours);
  const times = { ours: [] as number[], bare: [] as number[] };
  for (let n = -WARM_UP; n < taps; n++) {
    // Whoever comes second finds warmer caches: they take turns at it.
    const order = n % 2 === 0 ? (['ours', 'bare'] as const) : (['bare', 'ours'] as const);
    for (const side of order) {
      const ms = await timed(side === 'ours' ? ours : bare);
      if (n >= 0) times[side].push(ms);
    }
  }
  await bare.close();
  await ours.close();
  const sizes = ours.views.map((view) => JSON.stringify(view).length);
  console.log(JSON.stringify({ screens: SCREENS, desks, taps, view_bytes: sizes }));
  return figures(times);
}

async function timed(side: Side): Promise<number> {
  const before = performance.now();
  await side.tap();
  return performance.now() - before;
}

function figures(times: { readonly ours: number[]; readonly bare: number[] }) {
  const p50_ms = quantile(times.ours, 0.5);
  const p99_ms = quantile(times.ours, 0.99);
  const bare_p50_ms = quantile(times.bare, 0.5);
  const bare_p99_ms = quantile(times.bare, 0.99);
  return {
    p50_ms: round(p50_ms),
    p99_ms: round(p99_ms),
    bare_p50_ms: round(bare_p50_ms),
    bare_p99_ms: round(bare_p99_ms),
    ratio_p50: round(p50_ms / bare_p50_ms),
    ratio_p99: round(p99_ms / bare_p99_ms),
  };
}

/** The smallest value that at least this share of all does not exceed. */
function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

const round = (value: number) => Math.round(value * 100) / 100;
