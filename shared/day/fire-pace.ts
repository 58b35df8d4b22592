import type { Instant, Seconds, SmokerId, TaskId } from '../kernel/index.ts';
import { celsius, hours, must, seconds } from '../kernel/index.ts';
import { findSlot } from '../kitchen/index.ts';
import { heatNeededC } from './arrangement.ts';
import type { Spell } from './happened.ts';
import { heldUntil } from './held.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { slotsOf } from './whereabouts.ts';

/**
 * Air so near its set temperature is as it should be: a fire swings (common practice, no source).
 */
const SWING_C = 8;
/**
 * What the surface of a piece is at for most of a cook, while it dries: stalls are seen at 60–70 °C
 * (common practice, no source). Heat flows in by the difference to the air (Newton's law of
 * cooling).
 */
const SURFACE_C = celsius(65);
/** A reading says nothing of the air later than this: by then somebody has seen to the fire. */
const BELIEVED_S = hours(1);
const FASTEST = 1.5;
/** Nothing cooks without a fire; not nought, since what is left is divided by it. */
const STILL = 1e-9;

/** From `fromMs` on the fire cooks `pace` times as fast as at its set temperature. */
type Stretch = { readonly fromMs: number; readonly pace: number };

const USUAL: Stretch = { fromMs: Number.NEGATIVE_INFINITY, pace: 1 };

/**
 * How long a stage of a cook takes that began at `startedAt` and would take `plannedS` at the set
 * temperature, given the air that was read since in the smokers it was in: a cold fire cooks
 * slower, a hot one faster. A rule of thumb where no forecast is at hand.
 */
export function fireLengthS(
  state: DayState,
  index: PlanIndex,
  { stage, startedAt, plannedS, now }: Stage,
): Seconds {
  const stretches = stretchesOf(state, index, { stage, startedAt, now });
  let fromMs: number = startedAt;
  let leftS: number = plannedS;
  for (const [i, { pace }] of stretches.entries()) {
    const untilMs = stretches[i + 1]?.fromMs ?? Number.POSITIVE_INFINITY;
    if (untilMs <= fromMs) continue;
    const doneS = ((untilMs - fromMs) / 1000) * pace;
    if (doneS >= leftS) break;
    leftS -= doneS;
    fromMs = untilMs;
  }
  const pace = stretches.findLast((stretch) => stretch.fromMs <= fromMs)?.pace ?? 1;
  return seconds(Math.round((fromMs - startedAt) / 1000 + leftS / pace));
}

type Stage = {
  readonly stage: TaskId;
  readonly startedAt: Instant;
  readonly plannedS: Seconds;
  readonly now: Instant;
};

function stayBeside(index: PlanIndex, stage: TaskId): TaskId | null {
  const { batch } = must(index.tasks.get(stage), stage);
  for (const task of index.tasks.values()) {
    if (task.batch === batch && task.work === 'place') return task.id;
  }
  return null;
}

/** A load that was moved has cooked at the pace of one fire, and goes on at that of the other. */
function stretchesOf(
  state: DayState,
  index: PlanIndex,
  { stage, startedAt, now }: Omit<Stage, 'plannedS'>,
): readonly Stretch[] {
  const stay = stayBeside(index, stage);
  const setC = stay && heatNeededC(state, index, stay);
  if (stay === null || setC === null) return [USUAL];
  return slotsOf(state, index, stay, startedAt).flatMap(({ at, slot }, i, all) => {
    const smoker = findSlot(index.plan.kitchen, slot)?.smoker.id ?? null;
    const there = stretchesIn(state, smoker, setC, now);
    return between(there, at, all[i + 1]?.at ?? Number.POSITIVE_INFINITY);
  });
}

function between(stretches: readonly Stretch[], fromMs: number, untilMs: number): Stretch[] {
  const { pace } = stretches.findLast((each) => each.fromMs <= fromMs) ?? USUAL;
  const since = stretches.filter((each) => fromMs < each.fromMs && each.fromMs < untilMs);
  return [{ fromMs, pace }, ...since];
}

function stretchesIn(
  state: DayState,
  smoker: SmokerId | null,
  setC: number,
  now: Instant,
): readonly Stretch[] {
  const stretches = state.readings
    .filter(({ where }) => where.kind === 'air' && where.smoker === smoker)
    .sort((a, b) => a.at - b.at)
    .flatMap(({ at, tempC }, i, all): Stretch[] => {
      const next = all[i + 1];
      const staleMs = at + BELIEVED_S * 1000;
      const read = { fromMs: at, pace: paceAt(tempC, setC) };
      const isRenewed = next !== undefined && next.at <= staleMs;
      return isRenewed ? [read] : [read, { fromMs: staleMs, pace: 1 }];
    });
  const spells = state.happened.spells.filter((spell) => spell.smoker === smoker);
  return [
    USUAL,
    ...spells.reduce<readonly Stretch[]>(
      (all, spell) => laidOver(all, spell, setC, now),
      stretches,
    ),
  ];
}

/** What was said of the fire stands over what was read before, and a reading since over that. */
function laidOver(
  stretches: readonly Stretch[],
  { kind, from, until, backAt, tempC }: Spell,
  setC: number,
  now: Instant,
): readonly Stretch[] {
  const isDown = kind === 'down';
  const endMs = until ?? (isDown ? heldUntil(backAt, now) : Number.POSITIVE_INFINITY);
  const spell = { fromMs: from, pace: isDown ? STILL : paceAt(tempC, setC) };
  const end = endMs === Number.POSITIVE_INFINITY ? [] : [{ fromMs: endMs, pace: 1 }];
  const within = ({ fromMs }: Stretch) => from <= fromMs && fromMs < endMs;
  const kept = stretches.filter((each) => !within(each) || (!isDown && each.pace !== 1));
  return [...kept, spell, ...end].sort((a, b) => a.fromMs - b.fromMs);
}

/** @example paceAt(celsius(93), celsius(121)) //=> 0.5 */
function paceAt(airC: number, setC: number): number {
  if (Math.abs(airC - setC) <= SWING_C) return 1;
  const pace = (airC - SURFACE_C) / (setC - SURFACE_C);
  return Math.min(FASTEST, Math.max(1e-3, pace));
}
