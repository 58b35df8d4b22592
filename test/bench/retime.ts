import {
  type ActivityId,
  must,
  pickBelow,
  type Random,
  seconds,
  seeded,
} from '../../shared/kernel/index.ts';
import { rise } from '../../shared/schedule/from-scratch.ts';
import { construct, type Timeline, type Update } from '../../shared/schedule/index.ts';
import { Rule } from '../../shared/schedule/rule.ts';
import { type LiveTimeline, liveTimeline } from '../../shared/schedule/timeline.ts';
import { barbecueDay } from '../shared/schedule/barbecue-day.ts';

const TASKS = 300;
const TAPS = 1_000;
const SEED = 1;
/** Repetitions of one tap from one and the same state; their median is its cost in passes. */
const REPEATS = 7;
/** Taps on a copy of the day beforehand, for the machine to warm up. */
const WARM_UP_TAPS = 300;

type Tap = (timeline: Timeline) => Update[];

/**
 * Re-timing a day of 300 tasks by 1,000 taps, made as the day goes by: starts, finishes early and
 * late, "late by so much", taps taken back, each with the clock moved on to it.
 *
 * - `p50_ms`, `p99_ms`: one tap, both directions, as it comes.
 * - `passes_p99`: the median cost of a tap over the median cost of one full forward pass over the
 *   same network in the same state, both repeated side by side.
 * - `touched_ratio_p99`: how often times were worked out over how often they became others, in both
 *   directions; a tap that changes nothing counts as having changed one.
 */
export async function bench(): Promise<Record<string, number>> {
  const problem = barbecueDay(TASKS, SEED);
  const planned = construct(problem, { seed: SEED });
  if (!planned.ok) throw new Error(`the day cannot be planned: ${JSON.stringify(planned)}`);
  const open = () => liveTimeline(problem, planned.schedule);
  const ids = problem.activities.map(({ id }) => id);
  run(open, ids, WARM_UP_TAPS, SEED + 1);
  const taps = run(open, ids, TAPS, SEED);
  const of = (key: keyof Measured) => taps.map((tap) => tap[key]);
  return {
    tasks: ids.length,
    taps: taps.length,
    passes_p99: rounded(quantile(of('passes'), 0.99)),
    touched_ratio_p99: rounded(quantile(of('touchedRatio'), 0.99)),
    touched_ratio_p50: rounded(quantile(of('touchedRatio'), 0.5)),
    p50_ms: rounded(quantile(of('ms'), 0.5)),
    p99_ms: rounded(quantile(of('ms'), 0.99)),
  };
}

type Measured = { readonly ms: number; readonly passes: number; readonly touchedRatio: number };

/** So many taps; when the day is over it begins again, and other things happen. */
function run(open: () => LiveTimeline, ids: readonly ActivityId[], count: number, seed: number) {
  const random = seeded(seed);
  const taken: Measured[] = [];
  while (taken.length < count) {
    const timeline = open();
    const next = tapsOf(timeline, ids, random);
    for (let tap = next(); tap && taken.length < count; tap = next()) {
      taken.push(measured(timeline, tap));
    }
  }
  return taken;
}

function measured(timeline: LiveTimeline, tap: Tap): Measured {
  const repeats: number[] = [];
  const passes: number[] = [];
  for (let i = 0; i < REPEATS; i++) {
    const copy = timeline.fork();
    repeats.push(timed(() => tap(copy)).ms);
    passes.push(fullPass(copy));
  }
  const { ms, value: updates } = timed(() => tap(timeline));
  const touched = updates.reduce((sum, update) => sum + update.touched, 0);
  const moved = updates.reduce((sum, update) => sum + update.moved, 0);
  return {
    ms,
    passes: quantile(repeats, 0.5) / quantile(passes, 0.5),
    touchedRatio: touched / Math.max(1, moved),
  };
}

/** Milliseconds of one forward pass over everything. */
function fullPass(timeline: LiveTimeline): number {
  const { parts, arcs, facts, floors } = timeline.live;
  const rule = new Rule(parts.net, { arcs, facts, floorS: floors.floorS });
  return timed(() => rise(rule)).ms;
}

function timed<T>(deed: () => T): { readonly ms: number; readonly value: T } {
  const from = performance.now();
  const value = deed();
  return { ms: performance.now() - from, value };
}

/** What the day's people tap next, one thing after the other. */
function tapsOf(timeline: Timeline, ids: readonly ActivityId[], random: Random) {
  const minutesAbout = (spread: number) => 60 * (pickBelow(random, spread * 2 + 1) - spread);
  let last: ActivityId | undefined;
  return (): Tap | undefined => {
    const due = nextDue(timeline, ids);
    if (!due) return undefined;
    const { id, stage, dueS } = due;
    const nowS = seconds(Math.max(timeline.nowS ?? 0, dueS));
    const with_ = (tell: (on: Timeline) => Update): Tap => {
      return (on) => [on.notBefore(nowS), tell(on)];
    };
    const kind = pickBelow(random, 10);
    if (kind === 0 && last !== undefined) {
      const mistaken = last;
      return with_((on) => on.takenBack(mistaken));
    }
    const { startS, endS } = timeline.times(id);
    if (kind <= 2 && stage === 'running') {
      const totalS = seconds(Math.max(60, endS - startS + minutesAbout(20)));
      return with_((on) => on.lengthIs(id, totalS));
    }
    last = id;
    const atS = seconds(Math.max(0, nowS + minutesAbout(stage === 'running' ? 8 : 3)));
    return with_((on) => (stage === 'running' ? on.finished(id, atS) : on.started(id, atS)));
  };
}

/** The task whose next tap is expected first: to start what waits, to finish what runs. */
function nextDue(timeline: Timeline, ids: readonly ActivityId[]) {
  const open = ids.flatMap((id) => {
    const { stage, startS, endS } = timeline.times(id);
    return stage === 'done' ? [] : [{ id, stage, dueS: stage === 'running' ? endS : startS }];
  });
  return open.sort((a, b) => a.dueS - b.dueS)[0];
}

function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return must(sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))], 'a value');
}

const rounded = (value: number) => Math.round(value * 1_000) / 1_000;
