import type { BatchId } from '../kernel/index.ts';
import { batchChecks } from './batch-checks.ts';
import { saidOf } from './check-story.ts';
import { coolingChecks } from './cooling-checks.ts';
import { goneIn } from './gone.ts';
import { leftoverChecks } from './leftovers.ts';
import { limitsOf } from './limits-of.ts';
import type { Looking, OpenCheck } from './open-check.ts';
import { placeChecks } from './place-checks.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';
import { watchedIn } from './watched.ts';

/**
 * All that has to be looked at or put right, soonest first: what is open now, and the next of what
 * comes round. It changes with events alone, so that it is worked out once for each state of a day;
 * the clock only says which of it is due.
 */
export function openChecks(state: DayState): readonly OpenCheck[] {
  const known = read.get(state);
  if (known) return known;
  const open = state.plan ? readOpen(state) : [];
  read.set(state, open);
  return open;
}

const read = new WeakMap<DayState, readonly OpenCheck[]>();

function readOpen(state: DayState): OpenCheck[] {
  const { plan } = state;
  const profile = plan && limitsOf(plan);
  if (!plan || !profile) return [];
  const index = indexOf(plan);
  const look: Looking = { state, index, profile, said: saidOf(state) };
  const watched = watchedIn(index);
  const gone: ReadonlySet<BatchId> = goneIn(index, state, watched);
  const ofBatches = [...watched.values()].flatMap((each) => {
    if (!gone.has(each.batch.id)) return batchChecks(look, each);
    return state.happened.carried.has(each.batch.id) ? coolingChecks(look, each) : [];
  });
  const open = [...ofBatches, ...leftoverChecks(look), ...placeChecks(look, gone)];
  return open.sort((a, b) => a.dueAt - b.dueAt || (a.key < b.key ? -1 : 1));
}
