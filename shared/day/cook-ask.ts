import type { AirPoint, ForecastAsk, Reading, Smoker, Stay } from '../cook/index.ts';
import { smokerPriors } from '../cook/index.ts';
import type { Celsius, Instant, SlotId, TaskId } from '../kernel/index.ts';
import { after, celsius, minutes, must, seconds, since } from '../kernel/index.ts';
import { findSlot } from '../kitchen/index.ts';
import { type Cooking, cookingOf } from './cooking.ts';
import { readAir, toldDoors } from './doors.ts';
import { slotEver } from './former.ts';
import { spellOf } from './happened-to.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import { saneCores } from './probe.ts';
import type { DayState } from './state.ts';

/** What a forecast of a load is asked of the model, and what it stands for in the day. */
export type CookAsk = ForecastAsk & {
  readonly stay: TaskId;
  readonly startedAt: Instant;
  readonly now: Instant;
  /** The same for as long as nothing is known that was not; the clock is no news. */
  readonly key: string;
};

/** Meat comes out of a cooler (common practice, no source). */
const USUAL_COOLER_C = celsius(4);

/** Air read so long before the piece went in is still that of its beginning. */
const BEFORE_S = minutes(30);

/**
 * What is to be asked about a load; null for what is not in the fire, or is in one that is down,
 * and before its core was read: until then the catalogue's range knows as much.
 */
export function cookAskOf(
  state: DayState,
  index: PlanIndex,
  stay: TaskId,
  now: Instant,
): CookAsk | null {
  const cooking = cookingOf(state, index, stay);
  // Of a rack that no kitchen of this day has had nothing is known that a cook could go by.
  if (!cooking?.slots.every(({ slot }) => slotEver({ state, index }, slot))) return null;
  if (cooking.stages.every(({ finishedAt }) => finishedAt !== null)) return null;
  const readings = readingsOf(state, cooking);
  const here = must(cooking.slots.at(-1), stay).slot;
  const smoker = findSlot(index.plan.kitchen, here)?.smoker;
  if (readings.length === 0 || !smoker || spellOf(state, smoker.id)?.kind === 'down') return null;
  const asked = {
    piece: {
      cut: cooking.cut,
      sides: {
        thicknessM: cooking.thicknessM,
        widthM: cooking.widthM,
        lengthM: cooking.lengthM,
      },
      startC: startOf(index),
      stays: staysOf(state, index, cooking),
      targets: cooking.stages.map(({ stage, tempC }) => ({
        ...{ id: stage, tempC },
        way: 'rising' as const,
      })),
    },
    smoker: smokerAt(state, index, cooking, must(cooking.slots[0], stay).slot),
    readings,
  };
  const { startedAt } = cooking;
  // A machine's clock that was set back does not make a reading one of the future.
  const nowS = seconds(Math.max(since(startedAt, now), ...readings.map(({ atS }) => atS)));
  const options = {
    nowS,
    seed: seedOf(stay),
    outcomes: state.record,
  };
  const key = JSON.stringify({ ...asked, known: state.record.length });
  return { ...asked, options, stay, startedAt, now: after(startedAt, nowS), key };
}

const startOf = ({ plan }: PlanIndex): Celsius => plan.kitchen.coolers[0]?.setC ?? USUAL_COOLER_C;

/** One load has one stream of chance all day, so that its range does not flicker. */
const seedOf = (stay: TaskId) =>
  [...stay].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 2_147_483_647, 7);

function readingsOf(state: DayState, { stay, startedAt }: Cooking): Reading[] {
  return saneCores(state, stay, startedAt).map(({ at, tempC, by }) => ({
    atS: since(startedAt, at),
    tempC,
    by: by === null ? 'probe' : 'hand',
  }));
}

/** What has been done with it, and what is meant to be: moves as they were, wraps as planned. */
function staysOf(state: DayState, index: PlanIndex, cooking: Cooking): Stay[] {
  const { slots, stages, startedAt } = cooking;
  const wrapped = stages.flatMap(({ finishedAt, tempC, wrap }) =>
    wrap === 'none' ? [] : [{ at: finishedAt, tempC, wrap }],
  );
  const moved = slots.map(({ at, slot }, place) => ({
    at,
    place:
      place === 0
        ? ({ kind: 'home' } as const)
        : ({ kind: 'smoker', smoker: smokerAt(state, index, cooking, slot) } as const),
  }));
  const wrapAt = (at: Instant) =>
    wrapped.findLast((each) => each.at !== null && each.at <= at)?.wrap ?? 'none';
  const placeAt = (at: Instant) =>
    must(moved.findLast((each) => each.at <= at) ?? moved[0], cooking.stay).place;
  const done = wrapped.flatMap(({ at }) => (at === null ? [] : [at]));
  const times = [...new Set([...slots.map(({ at }) => at), ...done])].sort((a, b) => a - b);
  const past = times.map(
    (at): Stay => ({
      from: { by: 'time', atS: since(startedAt, at) },
      place: placeAt(at),
      wrap: wrapAt(at),
    }),
  );
  const here = must(moved.at(-1), cooking.stay).place;
  const toCome = wrapped
    .filter(({ at }) => at === null)
    .map(({ tempC, wrap }): Stay => ({ from: { by: 'core', tempC }, place: here, wrap }));
  return [...past, ...toCome];
}

/** The air that a load in the fire would have in another slot; null for what is not in it. */
export function smokerFor(
  state: DayState,
  index: PlanIndex,
  stay: TaskId,
  slot: SlotId,
): Smoker | null {
  const cooking = cookingOf(state, index, stay);
  return cooking && smokerAt(state, index, cooking, slot);
}

/** The air about a rack: as the smoker's thermometer was read, and as the rack differs from it. */
function smokerAt(state: DayState, index: PlanIndex, cooking: Cooking, slot: SlotId): Smoker {
  const { smoker, rack } = must(slotEver({ state, index }, slot), slot);
  const { startedAt, setC } = cooking;
  const spells = state.happened.spells.filter((spell) => spell.smoker === smoker.id);
  const log: readonly AirPoint[] = [
    ...readAir(state, smoker.id, startedAt).map(({ atS, tempC }) => ({
      ...{ atS, tempC: tempC + rack.warmerK },
    })),
    ...spells.map(({ from, tempC }) => ({
      atS: since(startedAt, from),
      tempC: tempC + rack.warmerK,
    })),
  ]
    .filter(({ atS }) => atS >= -BEFORE_S)
    .sort((a, b) => a.atS - b.atS);
  const cold = spellOf(state, smoker.id);
  return {
    id: smoker.id,
    prior: smokerPriors[smoker.air ?? 'draught'],
    setC: cold?.kind === 'cold' ? celsius(cold.tempC + rack.warmerK) : setC,
    log,
    doors: toldDoors(state, smoker.id, startedAt),
  };
}

/** What is to be asked about all loads in the fire, in the order that they went in. */
export function cookAsks(state: DayState, now: Instant): CookAsk[] {
  if (!state.plan || state.happened.closed) return [];
  const index = indexOf(state.plan);
  return [...index.tasks.keys()]
    .flatMap((id) => cookAskOf(state, index, id, now) ?? [])
    .sort((a, b) => a.startedAt - b.startedAt);
}

/** The time of the last reading that a forecast saw. */
export function lastReadingAt({ readings, startedAt }: CookAsk): Instant {
  const lastS = Math.max(...readings.map(({ atS }) => atS));
  return after(startedAt, seconds(lastS));
}
