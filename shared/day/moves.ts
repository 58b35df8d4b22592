import type { Seconds, SlotId, SmokerId, Span } from '../kernel/index.ts';
import { kilograms, must, overlaps, seconds } from '../kernel/index.ts';
import { findSlot } from '../kitchen/index.ts';
import { resourceId } from '../plan/index.ts';
import type { Clash } from '../schedule/index.ts';
import type { Load } from './arrangement.ts';
import { loadIn, loadsOf } from './arrangement.ts';
import type { Command } from './command.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { SlotMove } from './event.ts';
import { spellOf } from './happened-to.ts';
import type { Live } from './live.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { slotName, smokerName, taskName } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';

/**
 * Takes a move that was shown before, unless what it was shown on has changed or it no longer fits.
 */
export function decideMove(
  state: DayState,
  index: PlanIndex,
  command: Extract<Command, { kind: 'moveSlots' }>,
  live: () => Live,
): Decision {
  if (command.basedOnSeq < state.arrangedSeq) return refuse({ rule: 'out-of-date' });
  for (const move of command.moves) {
    const refusal = impossible(state, index, move);
    if (refusal) return refuse(refusal);
  }
  const refusal = whyNot(live(), command.moves);
  return refusal ? refuse(refusal) : happen({ kind: 'slotsMoved', moves: command.moves });
}

/** A load that is not there, or is where it is asked to go. */
export function impossible(state: DayState, index: PlanIndex, move: SlotMove): Refusal | null {
  if (index.tasks.get(move.stay)?.work !== 'place') return { rule: 'unknown-place' };
  if (!slotName(index.plan.kitchen, move.to)) return { rule: 'unknown-place' };
  const load = loadsOf(state, index, move.stay).find(({ need }) => need === move.need);
  if (!load) return { rule: 'unknown-place' };
  if (passagesOf(state).get(move.stay)?.finishedAt) return { rule: 'off-already' };
  return load.slot === move.to ? { rule: 'nothing-moves' } : null;
}

/** The first thing that speaks against these moves, taken together; null where they fit. */
export function whyNot(live: Live, moves: readonly SlotMove[]): Refusal | null {
  const { index } = live;
  const unfit = moves.find(({ stay, to }) => !loadIn(index, stay, to));
  if (unfit) return { rule: 'rack-unfit', slot: slotNamed(index, unfit.to) };
  const loads = loadsAfter(live, moves);
  for (const move of moves) {
    const down = downAt(live, move.to);
    if (down) return down;
    const load = loads.find(({ stay, need }) => stay === move.stay && need === move.need);
    const moved = must(load, move.stay);
    const others = loads.filter((other) => other !== load && overlaps(other.span, moved.span));
    const refusal =
      heatAgainst(live, moved, others) ??
      areaAgainst(live, moved, others) ??
      weightAgainst(live, moved, others) ??
      dripAgainst(live, moved, others);
    if (refusal) return refusal;
  }
  return null;
}

/** A smoker that is out takes nothing in. */
function downAt({ state, index }: Live, slot: SlotId): Refusal | null {
  const smoker = smokerOf(index, slot);
  const spell = smoker === undefined ? null : spellOf(state, smoker);
  const name = spell?.kind === 'down' && smokerName(index.plan.kitchen, spell.smoker);
  return name ? { rule: 'smoker-is-down', smoker: name, since: spell.from } : null;
}

/** Loads that keep another from a slot, and could still go elsewhere since they are not in yet. */
export function inTheWay(live: Live, move: SlotMove): Load[] {
  const loads = loadsAfter(live, [move]);
  const moved = must(
    loads.find(({ stay, need }) => stay === move.stay && need === move.need),
    move.stay,
  );
  return loads.filter(
    (other) =>
      other !== moved &&
      other.slot === moved.slot &&
      overlaps(other.span, moved.span) &&
      !passagesOf(live.state).get(other.stay)?.startedAt,
  );
}

type TimedLoad = Load & { readonly span: Span<Seconds> };

/** Every load not yet off, in its slot after the moves, for the time it will still be there. */
function loadsAfter(live: Live, moves: readonly SlotMove[]): TimedLoad[] {
  const { state, index } = live;
  const passages = passagesOf(state);
  return index.plan.built.tasks
    .filter(({ id, work }) => work === 'place' && !passages.get(id)?.finishedAt)
    .flatMap(({ id }) => {
      const { startS, endS } = live.timesOf(id);
      const span = { start: seconds(Math.max(startS, live.nowS)), end: endS };
      return loadsOf(state, index, id).map((load) => {
        const move = moves.find(({ stay, need }) => stay === id && need === load.need);
        return { ...load, ...(move && loadIn(index, id, move.to)), span };
      });
    });
}

function areaAgainst(live: Live, moved: TimedLoad, others: readonly TimedLoad[]): Refusal | null {
  const { index } = live;
  const here = others.filter(({ slot }) => slot === moved.slot);
  const taken = mostAtOnce(moved, here, ({ areaCm2 }) => areaCm2);
  const capacity = capacityOf(index, 'slot', moved.slot);
  if (moved.areaCm2 + taken <= capacity) return null;
  const slot = slotNamed(index, moved.slot);
  const last = [...here].sort((a, b) => b.span.end - a.span.end)[0];
  if (!last || moved.areaCm2 > capacity) {
    return { rule: 'slot-too-small', slot, needCm2: moved.areaCm2, freeCm2: capacity - taken };
  }
  const batch = taskName(index, last.stay);
  return { rule: 'slot-taken', slot, by: batch, until: live.instantOf(last.span.end) };
}

function weightAgainst(
  { index }: Live,
  moved: TimedLoad,
  others: readonly TimedLoad[],
): Refusal | null {
  const here = others.filter(({ slot }) => slot === moved.slot);
  const takenG = mostAtOnce(moved, here, ({ weightG }) => weightG);
  const capacityG = capacityOf(index, 'load', moved.slot);
  if (moved.weightG + takenG <= capacityG) return null;
  const slot = slotNamed(index, moved.slot);
  const [needKg, freeKg] = [moved.weightG, Math.max(0, capacityG - takenG)].map((g) => g / 1000);
  return {
    rule: 'rack-too-weak',
    slot,
    needKg: kilograms(needKg ?? 0),
    freeKg: kilograms(freeKg ?? 0),
  };
}

/** The most that others take of a rack at any moment at which something comes to it. */
function mostAtOnce(
  moved: TimedLoad,
  here: readonly TimedLoad[],
  amountOf: (load: TimedLoad) => number,
): number {
  const moments = [moved, ...here].map(({ span }) => span.start);
  const taken = moments.map((at) =>
    here
      .filter(({ span }) => span.start <= at && at < span.end)
      .reduce((sum, load) => sum + amountOf(load), 0),
  );
  return Math.max(0, ...taken);
}

function heatAgainst(live: Live, moved: TimedLoad, others: readonly TimedLoad[]): Refusal | null {
  const { index } = live;
  const needC = moved.fireC;
  if (needC === null) return null;
  const smoker = smokerOf(index, moved.slot);
  for (const { slot, fireC: isC } of others) {
    if (smokerOf(index, slot) !== smoker || isC === null || isC === needC) continue;
    return { rule: 'fire-differs', slot: slotNamed(index, moved.slot), needC, isC };
  }
  return null;
}

/** What would drip on what, against a row of the limits that the day was planned under. */
function dripAgainst(live: Live, moved: TimedLoad, others: readonly TimedLoad[]): Refusal | null {
  const { index } = live;
  const { problem, rows } = index.plan.built;
  for (const { upper, lower, places, reason } of problem.clashes) {
    const other = others.find(({ stay }) =>
      moved.stay === upper.activity ? stay === lower.activity : stay === upper.activity,
    );
    if (!other || (moved.stay !== upper.activity && moved.stay !== lower.activity)) continue;
    const [above, below] = moved.stay === upper.activity ? [moved, other] : [other, moved];
    const [up, low] = [above, below].map(({ slot }) => resourceId({ kind: 'slot', slot }));
    const isAbove = places.some((pair) => pair[0] === up && pair[1] === low);
    if (!isAbove || !overlaps(partOf(live, upper), partOf(live, lower))) continue;
    const row = must(
      rows.find(({ id }) => id === reason),
      reason,
    );
    const slot = slotNamed(index, moved.slot);
    return { rule: 'drips', slot, other: taskName(index, other.stay), row };
  }
  return null;
}

function partOf(live: Live, { activity, part }: Clash['upper']): Span<Seconds> {
  const { startS, endS } = live.timesOf(activity);
  const at = (fromStartS: number) => seconds(Math.min(endS, startS + fromStartS));
  return {
    start: seconds(Math.max(live.nowS, at(part.fromS))),
    end: part.toS === undefined ? endS : at(part.toS),
  };
}

function smokerOf(index: PlanIndex, slot: SlotId): SmokerId | undefined {
  return findSlot(index.plan.kitchen, slot)?.smoker.id;
}

const slotNamed = ({ plan }: PlanIndex, slot: SlotId) => must(slotName(plan.kitchen, slot), slot);

function capacityOf(index: PlanIndex, kind: 'slot' | 'load', slot: SlotId): number {
  const id = resourceId({ kind, slot });
  const resource = index.plan.built.problem.resources.find((candidate) => candidate.id === id);
  return resource?.kind === 'capacity' ? resource.capacity : 0;
}
