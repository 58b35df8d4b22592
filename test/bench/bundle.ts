import { mkdtempSync, rmSync } from 'node:fs';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright';
import { launchOptions } from '../browser.ts';
import { builtFile, scriptsOf } from '../built.ts';
import { startHub } from '../e2e/hub-process.ts';
import { type Paint, paintBare, paintCold, paintKept } from './first-paint.ts';

const TONGUES = ['english', 'spanish'].map((language) => `shared/words/${language}-tongue.ts`);
const ROUNDS = 5;

/**
 * Gzipped JavaScript of everything the station wall loads, now or late, in the language that weighs
 * more: it fetches one, not both. A KB is 1,000 bytes. The service worker is not of the wall: a
 * device fetches it once.
 *
 * Then, in Chromium slowed to a sixth, the median of five from asking for a wall until its hands’
 * work is painted in plain words, and until its first task can be tapped: where the device has
 * nothing yet and the hub puts the words into the page, and where it keeps the screens, when they
 * are what stood there; and beside them until the wall itself is painted, without its day, and
 * until a page of bare words is.
 *
 * `waiting_per_core` says how many others wanted the machine meanwhile: above one, these times are
 * those of a machine that is shared.
 */
export async function bench(): Promise<Record<string, unknown>> {
  const totals = TONGUES.map((own) => {
    console.log(own);
    const others = TONGUES.filter((tongue) => tongue !== own);
    return scriptsOf('station.html', others)
      .map(weighKb)
      .reduce((sum, kb) => sum + kb, 0);
  });
  const { cold, kept, bare } = await paints();
  return {
    wall_gzip_kb: Math.round(Math.max(...totals) * 10) / 10,
    first_paint_cold_ms: median(cold.map(({ wordsMs }) => wordsMs)),
    first_paint_sw_ms: median(kept.map(({ wordsMs }) => wordsMs)),
    first_paint_bare_ms: median(bare),
    wall_cold_ms: median(cold.map(({ wallMs }) => wallMs)),
    first_task_cold_ms: median(cold.map(({ dayMs }) => dayMs)),
    first_task_sw_ms: median(kept.map(({ dayMs }) => dayMs)),
    waiting_per_core: Math.round(((loadavg()[0] ?? 0) / availableParallelism()) * 10) / 10,
  };
}

function weighKb(file: string): number {
  const kb = gzipSync(builtFile(file)).length / 1000;
  console.log(`${kb.toFixed(1).padStart(7)} KB  ${file}`);
  return kb;
}

type Paints = { readonly cold: Paint[]; readonly kept: Paint[]; readonly bare: number[] };

async function paints(): Promise<Paints> {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-paint-'));
  const hub = await startHub({ folder });
  const browser = await chromium.launch(launchOptions());
  const cold: Paint[] = [];
  const kept: Paint[] = [];
  const bare: number[] = [];
  try {
    for (let round = 0; round < ROUNDS; round++) {
      cold.push(await paintCold(browser, hub.address));
      kept.push(await paintKept(browser, hub.address));
      bare.push(await paintBare(browser, hub.address));
    }
  } finally {
    await browser.close();
    await hub.stop();
    rmSync(folder, { recursive: true });
  }
  console.log(JSON.stringify({ cold, kept, bare }));
  return { cold, kept, bare };
}

const median = (all: readonly number[]) =>
  Math.round([...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN);
