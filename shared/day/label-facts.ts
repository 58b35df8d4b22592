import type { BatchId, Instant, Kilograms, LocalDay, PersonId } from '../kernel/index.ts';
import { after, must } from '../kernel/index.ts';
import { lastDay } from '../safety/index.ts';
import { allergensOf } from './allergens.ts';
import type { Deed } from './deed.ts';
import { drawsOf } from './draws.ts';
import { keptNow } from './holds.ts';
import { limitsOf } from './limits-of.ts';
import { passagesOf } from './passage.ts';
import { indexOf } from './plan-index.ts';
import { type DayState, factsOf } from './state.ts';
import { watchedIn } from './watched.ts';

/** What a label of a batch says beside its name and its lots. */
export type LabelFacts = {
  readonly allergens: readonly string[];
  readonly pieces: number;
  /** The first of the use-by days of its lots. */
  readonly useBy: LocalDay | null;
  readonly begunBy: PersonId | null;
  /** Where it stands to be served: since when, who put it there, till when it may be held. */
  readonly stands: (Deed & { readonly heldUntil: Instant | null }) | null;
  /** What is kept of it for another day, and the last on which it may be used. */
  readonly kept:
    | (Deed & { readonly weightKg: Kilograms; readonly lastDay: LocalDay | null })
    | null;
};

/** The facts of a label of a batch, as the day's events up to now make them. */
export function labelFacts(state: DayState, id: BatchId): LabelFacts {
  const plan = must(state.plan, 'a plan');
  const { pieces } = must(indexOf(plan).batches.get(id), id);
  const lots = drawsOf(state).filter(({ batch, lot }) => batch === id && lot !== null);
  const days = lots.flatMap(({ lot }) => (lot && state.happened.lots.get(lot)?.useBy) ?? []);
  return {
    allergens: allergensOf(plan, id),
    pieces,
    useBy: days.sort()[0] ?? null,
    begunBy: handsAt(state, id)[0]?.by ?? null,
    stands: standsOf(state, id),
    kept: keptOf(state, id),
  };
}

/** Work of hands on a batch, in the order in which it was begun. */
function handsAt(state: DayState, id: BatchId): Deed[] {
  const passages = passagesOf(state);
  return indexOf(must(state.plan, 'a plan'))
    .plan.built.tasks.flatMap((task): Deed[] => {
      const at = passages.get(task.id)?.startedAt ?? null;
      if (task.batch !== id || task.work !== 'hands' || at === null) return [];
      const { hand, started } = factsOf(state, task.id);
      return [{ at, by: hand ?? started?.by ?? null }];
    })
    .sort((a, b) => a.at - b.at);
}

function standsOf(state: DayState, id: BatchId): LabelFacts['stands'] {
  const { plan, happened, keptAt } = state;
  const index = indexOf(must(plan, 'a plan'));
  const watched = watchedIn(index).get(id);
  if (!watched || happened.emptied.has(id) || happened.carried.has(id)) return null;
  const { serve, places } = watched;
  const startedAt = passagesOf(state).get(serve)?.startedAt ?? null;
  const hold = keptNow(state, index, { places, now: keptAt });
  const at = startedAt ?? hold?.since ?? null;
  if (at === null) return null;
  const by = handsAt(state, id).at(-1)?.by ?? null;
  return { at, by, heldUntil: hold && after(hold.since, hold.mostS) };
}

function keptOf({ plan, day, happened, story }: DayState, id: BatchId): LabelFacts['kept'] {
  const weightKg = happened.carried.get(id) ?? null;
  const said = story.findLast((told) => told.kind === 'leftCarriedOver' && told.batch === id);
  if (weightKg === null || weightKg <= 0 || !said || !plan || day === null) return null;
  const limits = limitsOf(plan);
  const last = limits && lastDay(limits, day as string as LocalDay);
  return { at: said.at, by: said.personId, weightKg, lastDay: last };
}
