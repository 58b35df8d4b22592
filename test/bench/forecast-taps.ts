import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makePlan } from '../../server/adopt.ts';
import { systemClock } from '../../server/clock.ts';
import { dayRules } from '../../server/day-rules.ts';
import { demoDay } from '../../server/demo/index.ts';
import { createCookThread } from '../../server/forecast/index.ts';
import { type Hub, openHub } from '../../server/hub/index.ts';
import { playDemo } from '../../server/play-demo.ts';
import { openSqliteLog } from '../../server/store/index.ts';
import type { ForecastAsk } from '../../shared/cook/index.ts';
import { type DayState, type Intent, passagesOf } from '../../shared/day/index.ts';
import { type CommandId, must, seconds, type TaskId } from '../../shared/kernel/index.ts';
import type { Face } from '../../shared/view/index.ts';

const ROUNDS = 8;
const IDLE_TAPS = 30;
const WARM_UP = 60;

/**
 * How long a tap takes, from when it is put to the hub until it is durable and all faces are drawn
 * anew, while the thread beside foresees all these loads and while it rests; in turns, in one run,
 * on a real disk.
 */
export async function tapsBeside(asks: readonly ForecastAsk[]) {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-bench-'));
  const clock = systemClock();
  const report = ({ level, what }: { level: string; what: string }) => {
    if (level === 'fault') throw new Error(what);
  };
  const log = openSqliteLog(join(folder, 'log.sqlite'));
  const hub = await openHub({ log, rules: dayRules, clock, epoch: randomUUID(), report });
  const thread = createCookThread();
  try {
    const tap = await tapper(hub, clock.now());
    for (let n = 0; n < WARM_UP; n++) await tap();
    await Promise.all(asks.map((ask) => thread.foresee(ask)));
    const idle: number[] = [];
    const busy: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      for (let n = 0; n < IDLE_TAPS; n++) idle.push(await tap());
      let isBusy = true;
      const all = Promise.all(asks.map((ask) => thread.foresee(ask))).then(() => {
        isBusy = false;
      });
      while (isBusy) busy.push(await tap());
      await all;
    }
    return {
      taps_idle: idle.length,
      taps_busy: busy.length,
      ...figures('idle', idle),
      ...figures('busy', busy),
      tap_ratio_p50: rounded(quantile(busy, 0.5) / quantile(idle, 0.5)),
      tap_ratio_p99: rounded(quantile(busy, 0.99) / quantile(idle, 0.99)),
    };
  } finally {
    await thread.close();
    await hub.close();
    rmSync(folder, { recursive: true });
  }
}

/** One tap on the demo's day after the other, each with the milliseconds that it took. */
async function tapper(hub: Hub<DayState>, now: ReturnType<ReturnType<typeof systemClock>['now']>) {
  const files = demoDay(now, 'America/Chicago');
  const made = makePlan(files, 1);
  if (!made.ok) throw new Error(JSON.stringify(made));
  const { plan } = made;
  const facts = [{ kind: 'planAdopted' as const, plan }];
  await hub.bring({ id: 'plan' as CommandId, at: plan.built.origin, facts });
  await playDemo(hub, plan, now);
  const faces: Face[] = [
    { kind: 'smoker' },
    { kind: 'pass' },
    { kind: 'desk' },
    ...plan.kitchen.stations.map(({ id: station }) => ({ kind: 'station' as const, station })),
  ];
  const task = must(runningTask(hub.state), 'work that is under way');
  const intents: readonly Intent[] = [
    { kind: 'count', task, done: 1 },
    { kind: 'late', task, byS: seconds(20) },
    { kind: 'needHelp', task },
    { kind: 'count', task, done: 0 },
  ];
  let taps = 0;
  return async () => {
    const intent = must(intents[taps++ % intents.length], 'an intent');
    const head = { id: randomUUID() as CommandId, personId: null, screenId: null };
    const before = performance.now();
    const answer = await hub.command({ ...head, ...intent, tappedAt: now });
    for (const face of faces) hub.running.show(face, now);
    const ms = performance.now() - before;
    if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
    // A finger leaves the glass in between, and the thread's answers come in.
    await new Promise((resolve) => setTimeout(resolve, 2));
    return ms;
  };
}

function runningTask(state: DayState): TaskId | undefined {
  const passages = passagesOf(state);
  return state.plan?.built.tasks.find(({ id, work, pieces }) => {
    const passage = passages.get(id);
    return work === 'hands' && pieces > 1 && passage?.startedAt && !passage.finishedAt;
  })?.id;
}

const figures = (name: string, ms: readonly number[]) => ({
  [`tap_${name}_p50_ms`]: rounded(quantile(ms, 0.5)),
  [`tap_${name}_p99_ms`]: rounded(quantile(ms, 0.99)),
});

/** The smallest value that at least this share of all does not exceed. */
function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

const rounded = (value: number) => Math.round(value * 1000) / 1000;
