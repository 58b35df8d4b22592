import type { BatchId, Text } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { CheckEntry } from './check-event.ts';
import { saidOf } from './check-story.ts';
import { beganCooling, coolingChecks, stageChecks } from './cooling-checks.ts';
import type { KeptFood } from './happened.ts';
import type { Leftover } from './leftover.ts';
import { limitsOf } from './limits-of.ts';
import type { Looking, OpenCheck } from './open-check.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';
import { watchedIn } from './watched.ts';

/** What is still to be looked at of the leftovers of the days before. */
export function leftoverChecks(look: Looking): OpenCheck[] {
  return look.state.leftovers.flatMap((leftover) => checksOf(look, leftover));
}

function checksOf(look: Looking, leftover: Leftover): OpenCheck[] {
  const { batch, food, from, said } = leftover;
  const { stations } = look.index.plan.kitchen;
  // A kitchen may have moved its walls over night.
  const station = stations.find(({ id }) => id === leftover.station) ?? must(stations[0], 'a wall');
  const told = saidOf({ checks: [...said, ...look.state.checks] });
  const of = { batch: { id: batch }, food, cooling: null };
  return stageChecks({ ...look, said: told }, of, { from, station: station.id, stage: 1 });
}

/** What of a day is still cooling when the next begins. */
export function leftoversAfter(state: DayState): readonly Leftover[] {
  const { plan, day, leftovers } = state;
  const profile = plan && limitsOf(plan);
  if (!plan || !profile || day === null) return leftovers;
  const index = indexOf(plan);
  const look: Looking = { state, index, profile, said: saidOf(state) };
  const before = leftovers
    .filter((leftover) => checksOf(look, leftover).length > 0)
    .map((leftover) => ({ ...leftover, said: saidAbout(state, leftover.batch, leftover) }));
  const today = [...watchedIn(index).values()].flatMap((watched): Leftover[] => {
    const { batch, food } = watched;
    if ((state.happened.carried.get(batch.id) ?? 0) <= 0) return [];
    const began = beganCooling(look, watched);
    if (!began || coolingChecks(look, watched).length === 0) return [];
    const id = `${day}/${batch.id}` as BatchId;
    const name = withDay(batch.name, day);
    const said = saidAbout(state, batch.id, { batch: id, said: [] });
    return [{ batch: id, name, day, dish: batch.dish, food, ...began, said }];
  });
  return [...before, ...today];
}

const withDay = ({ en, es }: Text, day: string): Text => ({
  en: `${en}, ${day}`,
  ...(es === undefined ? {} : { es: `${es}, ${day}` }),
});

/** What was looked at of a batch, in its new name. */
function saidAbout(
  { checks }: DayState,
  batch: BatchId,
  { batch: as, said }: Pick<Leftover, 'batch' | 'said'>,
): CheckEntry[] {
  const own = checks.flatMap((entry): CheckEntry[] => {
    const { on } = entry;
    const isIts = 'batch' in on && on.batch === batch;
    if (!isIts || (on.kind !== 'cooling' && on.kind !== 'reheat')) return [];
    return [{ ...entry, on: { ...on, batch: as } }];
  });
  return [...said, ...own];
}

/**
 * Whether kept food may not be used yet: its cooling goes on, or was not kept, and nobody has put
 * that right.
 */
export function isStillCooling(state: DayState, food: KeptFood): boolean {
  const { plan } = state;
  const profile = plan && limitsOf(plan);
  if (!plan || !profile) return true;
  const look: Looking = { state, index: indexOf(plan), profile, said: saidOf(state) };
  const before = state.leftovers.filter(
    ({ day, dish, from }) => day === food.day && dish === food.dish && from === food.at,
  );
  const today = food.day === state.day ? [...watchedIn(look.index).values()] : [];
  return (
    before.some((each) => checksOf(look, each).length > 0) ||
    today.some(
      (each) =>
        each.batch.dish === food.dish &&
        beganCooling(look, each)?.from === food.at &&
        coolingChecks(look, each).length > 0,
    )
  );
}
