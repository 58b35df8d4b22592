import type { Outcome } from '../cook/index.ts';
import type { DayId, Instant, PersonId } from '../kernel/index.ts';
import type { HandTimes } from '../plan/index.ts';
import type { HeldTo } from '../safety/index.ts';
import { recordAfter } from './cook-record.ts';
import { lotsLeft } from './draws.ts';
import { handTimesAfter } from './hands-record.ts';
import { type KeptFood, nothingHappened, overNight, type Spell } from './happened.ts';
import { heldTo } from './held-to.ts';
import { keptBy } from './kept-food.ts';
import type { Leftover } from './leftover.ts';
import { leftoversAfter } from './leftovers.ts';
import type { Lot } from './lot.ts';
import { type DayState, emptyDay } from './state.ts';
import type { CrewLanguage, ScreenRecord } from './who.ts';

/**
 * What the days up to this entry leave to the next, and nothing else of them: plain data, so that
 * it can be put away and a log be opened from here.
 */
export type Carry = {
  readonly seq: number;
  readonly day: DayId | null;
  readonly keptAt: Instant;
  readonly spells: readonly Spell[];
  readonly lots: readonly Lot[];
  readonly kept: readonly KeptFood[];
  readonly record: readonly Outcome[];
  /** These are left out by the first versions of this program. */
  readonly handTimes?: readonly HandTimes[];
  readonly heldTo?: HeldTo | null;
  readonly leftovers?: readonly Leftover[];
  readonly screens: readonly ScreenRecord[];
  readonly pins: readonly (readonly [PersonId, { readonly isOwner: boolean }])[];
  /** Left out by the first versions as well. */
  readonly languages?: readonly (readonly [PersonId, CrewLanguage | null])[];
};

/** What a day leaves to the next. */
export function carryOf(state: DayState): Carry {
  const { seq, day, keptAt, who } = state;
  const { spells, lots } = overNight(state.happened, lotsLeft(state));
  return {
    ...{ seq, day, keptAt, spells },
    lots: [...lots.values()],
    kept: keptBy(state),
    record: recordAfter(state),
    handTimes: handTimesAfter(state),
    heldTo: heldTo(state),
    leftovers: leftoversAfter(state),
    screens: [...who.screens.values()],
    pins: [...who.pins],
    languages: [...who.languages],
  };
}

/** A day that is over, of which nothing is known but what it left: the next plan begins another. */
export function dayFrom(carry: Carry): DayState {
  const { seq, day, keptAt, spells, kept, record } = carry;
  const { heldTo: heldBefore = null, leftovers = [], handTimes = [] } = carry;
  const lots = new Map(carry.lots.map((lot) => [lot.id, lot]));
  const screens = new Map(carry.screens.map((screen) => [screen.id, screen]));
  return {
    ...emptyDay(),
    ...{ seq, day, keptAt, kept, record, handTimes, heldBefore, leftovers },
    happened: { ...nothingHappened, spells, lots },
    who: { screens, pins: new Map(carry.pins), languages: new Map(carry.languages) },
  };
}
