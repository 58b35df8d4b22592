import { randomUUID } from 'node:crypto';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type ManualClock, manualClock } from '../../../server/clock.ts';
import { dayRules } from '../../../server/day-rules.ts';
import { demoLog } from '../../../server/demo/index.ts';
import { askWhatIf, createCookThread, Forecasts } from '../../../server/forecast/index.ts';
import { type Hub, openHub } from '../../../server/hub/index.ts';
import { type MemoryDisk, memoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import { type DayState, forecastOf, type Intent, type WhatIf } from '../../../shared/day/index.ts';
import {
  after,
  type CommandId,
  celsius,
  hours,
  minutes,
  must,
  seconds,
  type TaskId,
} from '../../../shared/kernel/index.ts';
import { plan, task } from '../../shared/day/demo.ts';

const batch = 'lunch-pulled-shoulder-1';
const stay = task(batch, 'stay');
const smoke = must(
  plan.schedule.placements.find(({ activity }) => activity === task(batch, 'smoke')),
  'a smoke',
);
/** Three hours after the shoulders went in. */
const now = after(plan.built.origin, seconds(smoke.startS + hours(3)));
const core = { kind: 'core', stay } as const;

const thread = createCookThread();
afterAll(() => thread.close());

let disk: MemoryDisk;
let clock: ManualClock;
let hub: Hub<DayState>;
let forecasts: Forecasts;

async function open() {
  clock = manualClock(now);
  const report = ({ level, what }: { level: string; what: string }) => {
    if (level === 'fault') throw new Error(what);
  };
  const log = openMemoryLog(disk);
  hub = await openHub({ log, rules: dayRules, clock, epoch: randomUUID(), report });
  forecasts = new Forecasts({ hub, thread, clock, report });
  hub.heed(() => forecasts.heed());
}

async function kept(asked: Promise<unknown>) {
  let isKept = false;
  const done = asked.then(() => {
    isKept = true;
  });
  while (!isKept) {
    clock.advance(0);
    await new Promise(setImmediate);
  }
  await done;
}

const tell = (intent: Intent, at = clock.now()) =>
  kept(
    hub.command({
      ...intent,
      id: randomUUID() as CommandId,
      ...{ personId: null, screenId: null, tappedAt: at },
    }),
  );

/** Lets the hub look at what was kept, and all that comes of it be kept too. */
async function settled() {
  clock.advance(3_000);
  let isIdle = false;
  const idle = forecasts.idle().then(() => {
    isIdle = true;
  });
  while (!isIdle) {
    clock.advance(0);
    await new Promise(setImmediate);
  }
  await idle;
}

/** The disk of the morning, told once for all tests. */
const morning = memoryDisk();
beforeAll(async () => {
  disk = morning;
  await open();
  await kept(
    hub.bring({
      id: 'plan' as CommandId,
      at: plan.built.origin,
      facts: [{ kind: 'planAdopted', plan }],
    }),
  );
  for (const { at, intent } of demoLog(plan, { now, seed: 1 })) await tell(intent, at);
  await forecasts.idle();
  await kept(hub.close());
});
beforeEach(async () => {
  disk = memoryDisk();
  disk.commit({ head: morning.head(), entries: morning.entries(), answers: [] });
  disk.sync();
  await open();
});
afterEach(async () => {
  await kept(hub.close());
});

const adoptions = () => hub.state.forecasts.get(stay)?.length ?? 0;

describe('what would come of it', () => {
  const offered = async (whatIf: WhatIf) => {
    const answer = await askWhatIf(hub, thread, forecasts)({ stay, whatIf });
    if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
    return answer.offer;
  };

  it('is nothing anybody can say before the core was read', async () => {
    expect(
      await askWhatIf(hub, thread, forecasts)({ stay, whatIf: { kind: 'fire', byK: 8 } }),
    ).toEqual({ ok: false, refusal: { rule: 'nothing-foreseen' } });
  });

  it('is told of a load that waits by the day alone, when it would go in sooner', async () => {
    const earlier = (of: TaskId) =>
      askWhatIf(hub, thread, forecasts)({ stay: of, whatIf: { kind: 'earlier', byS: minutes(2) } });
    expect(await earlier(stay)).toMatchObject({ refusal: { rule: 'in-already' } });
    const waiting = await earlier(task('lunch-ribs-1', 'stay'));
    if (waiting.ok) expect(waiting.offer.goesIn).not.toBeNull();
    else expect(waiting.refusal.rule).toBe('not-so-early');
  });

  it('is told for the load and for the services, and nothing of it is kept', async () => {
    await tell({ kind: 'reading', where: core, tempC: celsius(48) });
    await settled();
    const { seq } = hub.state;
    const hotter = await offered({ kind: 'fire', byK: 25 / 3 });
    const wrapped = await offered({ kind: 'wrap', wrap: 'foil' });
    const other = must(
      plan.kitchen.smokers.flatMap(({ racks }) => racks).find(({ slot }) => slot === 'a/5'),
      'a rack',
    ).slot;
    for (const { stages } of [hotter, wrapped]) {
      for (const { before, after: then } of stages) {
        expect(then.p50At).toBeLessThan(must(before?.p50At, 'a time'));
      }
    }
    const lunch = must(
      hotter.services.find(({ id }) => id === 'lunch'),
      'lunch',
    );
    expect(lunch.afterS).toBeGreaterThanOrEqual(lunch.beforeS);
    const moved = await askWhatIf(
      hub,
      thread,
      forecasts,
    )({ stay, whatIf: { kind: 'move', to: other } });
    // A rack that does not take it is refused as a move itself would be.
    if (moved.ok) expect(moved.offer.stages).toHaveLength(2);
    else expect(moved.refusal.rule).not.toBe('nothing-foreseen');
    expect(hub.state.seq).toBe(seq);
  });
});

describe('the forecasts of a hub', () => {
  it('begin with the first core that is read, and follow the next', async () => {
    expect(adoptions()).toBe(0);
    const readAt = clock.now();
    await tell({ kind: 'reading', where: core, tempC: celsius(48) });
    await settled();
    const first = must(forecastOf(hub.state, stay), 'a forecast');
    expect(first).toMatchObject({ isCalibrated: false, lastReadingAt: readAt, wrap: 'paper' });
    clock.jump(after(clock.now(), hours(1)));
    await tell({ kind: 'reading', where: core, tempC: celsius(50) });
    await settled();
    const second = must(forecastOf(hub.state, stay), 'a forecast');
    expect(second.stages[0]?.p50At).toBeGreaterThan(must(first.stages[0]?.p50At, 'a time'));
  });

  it('keep nothing where nothing is new, nor for what differs too little', async () => {
    await tell({ kind: 'reading', where: core, tempC: celsius(48) });
    await settled();
    const before = hub.state.seq;
    await tell({ kind: 'note', text: 'rain', task: null });
    await settled();
    expect(hub.state.seq).toBe(before + 1);
    await tell({ kind: 'reading', where: core, tempC: celsius(48.1) });
    await settled();
    expect([hub.state.seq, adoptions()]).toEqual([before + 2, 1]);
  });

  it('drop what is no longer true when it is done', async () => {
    await tell({ kind: 'reading', where: core, tempC: celsius(48) });
    clock.advance(3_000);
    // While the thread is at work the load is read again.
    await tell({ kind: 'reading', where: core, tempC: celsius(55) });
    await settled();
    await settled();
    expect(adoptions()).toBe(1);
    expect(must(forecastOf(hub.state, stay), 'a forecast').madeAt).toBeGreaterThan(now);
  });

  it('never hold up a tap: it is kept while a cook is being foreseen', async () => {
    await tell({ kind: 'reading', where: core, tempC: celsius(48) });
    clock.advance(3_000);
    await tell({ kind: 'note', text: 'rain', task: null });
    expect(hub.state.notes).toHaveLength(1);
    expect(adoptions()).toBe(0);
    await settled();
    expect(adoptions()).toBe(1);
  });

  it('stand again after a new start, told by the log alone', async () => {
    await tell({ kind: 'reading', where: core, tempC: celsius(48) });
    await settled();
    const before = forecastOf(hub.state, stay);
    await kept(hub.close());
    await open();
    expect(forecastOf(hub.state, stay)).toEqual(before);
    forecasts.heed();
    await settled();
    expect(adoptions()).toBe(1);
  });
});
