import {
  type ActivityId,
  must,
  pickBelow,
  type Random,
  seconds,
  seeded,
} from '../../shared/kernel/index.ts';
import { rise } from '../../shared/schedule/from-scratch.ts';
import type { Timeline, Update } from '../../shared/schedule/index.ts';
import { Rule } from '../../shared/schedule/rule.ts';
import type { LiveTimeline } from '../../shared/schedule/timeline.ts';

type Tap = (timeline: Timeline) => Update[];

/**
 * One tap: how long, in passes over everything too where it was repeated, and how often times were
 * worked out for each that changed.
 */
export type Measured = {
  readonly ms: number;
  /** The same on copies of the day, where it was repeated: what else runs counts for less. */
  readonly againMs: number | undefined;
  readonly passes: number | undefined;
  readonly touchedRatio: number;
};

/** What is tapped how often; one in `every` is repeated from one state, for its cost in passes. */
export type Taps = {
  readonly open: () => LiveTimeline;
  readonly ids: readonly ActivityId[];
  readonly count: number;
  readonly seed: number;
  readonly repeats: number;
  readonly every: number;
};

/** So many taps; when the day is over it begins again, and other things happen. */
export function runTaps({ open, ids, count, seed, repeats, every }: Taps): Measured[] {
  const random = seeded(seed);
  const taken: Measured[] = [];
  while (taken.length < count) {
    const timeline = open();
    const next = tapsOf(timeline, ids, random);
    for (let tap = next(); tap && taken.length < count; tap = next()) {
      taken.push(measured(timeline, tap, taken.length % every === 0 ? repeats : 0));
    }
  }
  return taken;
}

function measured(timeline: LiveTimeline, tap: Tap, count: number): Measured {
  const repeats: number[] = [];
  const passes: number[] = [];
  for (let i = 0; i < count; i++) {
    const copy = timeline.fork();
    repeats.push(timed(() => tap(copy)).ms);
    passes.push(fullPass(copy));
  }
  const { ms, value: updates } = timed(() => tap(timeline));
  const touched = updates.reduce((sum, update) => sum + update.touched, 0);
  const moved = updates.reduce((sum, update) => sum + update.moved, 0);
  return {
    ms,
    againMs: count > 0 ? quantile(repeats, 0.5) : undefined,
    passes: count > 0 ? quantile(repeats, 0.5) / quantile(passes, 0.5) : undefined,
    touchedRatio: touched / Math.max(1, moved),
  };
}

/** Milliseconds of one forward pass over everything. */
function fullPass(timeline: LiveTimeline): number {
  const { parts, arcs, facts, floors } = timeline.live;
  const rule = new Rule(parts.net, { arcs, facts, floorS: floors.floorS });
  return timed(() => rise(rule)).ms;
}

/** How long it takes, and what it gives. */
export function timed<T>(deed: () => T): { readonly ms: number; readonly value: T } {
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

/** So much of the values is at most this. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return must(sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))], 'a value');
}

/** To the thousandth. */
export const rounded = (value: number) => Math.round(value * 1_000) / 1_000;
