import { type Opening, openingsOf, seenIn, unseenFalls } from '../cook/index.ts';
import type { Instant, SmokerId, TaskId } from '../kernel/index.ts';
import { after, hours, must, seconds, since } from '../kernel/index.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { DoorIntent } from './door.ts';
import { slotEver } from './former.ts';
import type { PlanIndex } from './plan-index.ts';
import { smokerName } from './plan-index.ts';
import type { DayState } from './state.ts';
import { slotsOf } from './whereabouts.ts';

/** A door that is open for longer is a smoker that is down (judged). */
const LONGEST_S = hours(1);

/** What somebody says of a door, or why it cannot be. */
export function decideDoor(index: PlanIndex, { smoker, openS }: DoorIntent): Decision {
  if (!smokerName(index.plan.kitchen, smoker)) return refuse({ rule: 'unknown-place' });
  if (!(openS >= 0 && openS <= LONGEST_S)) {
    return refuse({ rule: 'impossible-amount', amount: openS });
  }
  return happen({ kind: 'doorOpened', smoker, openS });
}

/** What was told of a smoker's door, in seconds from a moment on. */
export const toldDoors = (state: DayState, smoker: SmokerId, from: Instant): Opening[] =>
  state.happened.doors
    .filter((door) => door.smoker === smoker)
    .map(({ at, openS }) => ({ atS: since(from, at), openS }));

/** A smoker's air as it was read, in order of time, in seconds from a moment on. */
export const readAir = (state: DayState, smoker: SmokerId, from: Instant) =>
  state.readings
    .filter(({ where }) => where.kind === 'air' && where.smoker === smoker)
    .map(({ at, tempC }) => ({ atS: since(from, at), tempC }))
    .sort((a, b) => a.atS - b.atS);

/** When a smoker's door was opened from a moment on: told, or read off the air; in order. */
export function doorsOf(state: DayState, smoker: SmokerId, from: Instant): Instant[] {
  const { openings } = seenIn(readAir(state, smoker, from));
  return openingsOf(toldDoors(state, smoker, from), openings)
    .map(({ atS }) => after(from, seconds(Math.round(atS))))
    .filter((at) => at >= from);
}

/** From when to when the air of a smoker fell while nobody read it, last; null where it did not. */
export function lastUnseen(
  state: DayState,
  smoker: SmokerId,
  from: Instant,
): { readonly from: Instant; readonly to: Instant } | null {
  const last = unseenFalls(readAir(state, smoker, from)).at(-1);
  if (!last) return null;
  const [begun, over] = [last.before, last.after].map(({ atS }) => after(from, seconds(atS)));
  return { from: must(begun, 'a time'), to: must(over, 'a time') };
}

/** When the door was opened on a load since it went in. */
export function openedOn(
  state: DayState,
  index: PlanIndex,
  stay: TaskId,
  startedAt: Instant,
): Instant[] {
  const slots = slotsOf(state, index, stay, startedAt);
  return slots.flatMap(({ at, slot }, i) => {
    const smoker = slotEver({ state, index }, slot)?.smoker;
    if (!smoker) return [];
    const untilAt = slots[i + 1]?.at ?? Number.POSITIVE_INFINITY;
    const opened = doorsOf(state, smoker.id, startedAt);
    return opened.filter((openedAt) => at <= openedAt && openedAt < untilAt);
  });
}
