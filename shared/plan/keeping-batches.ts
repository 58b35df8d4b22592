import type { Seconds } from '../kernel/index.ts';
import { canonical, must, seconds } from '../kernel/index.ts';
import type { Batch, BuiltDay } from './built.ts';
import type { CookPlan } from './schema.ts';

/** A batch that a plan takes as it is, whatever the sales now ask for. */
export type Kept = { readonly batch: Batch; readonly saleS: Seconds };

/** What an edit of a running day leaves as it is. */
export type Keeping = {
  readonly batches: readonly Kept[];
  /** The dishes that the edit did not touch, by `dishKey`: their batches are all they have. */
  readonly unchanged: ReadonlySet<string>;
};

/** Nothing is kept: the day has not begun. */
export const keepNothing: Keeping = { batches: [], unchanged: new Set() };

/** One dish of one service. @example dishKey('noon', 'ribs') //=> 'noon ribs' */
export const dishKey = (service: string, dish: string): string => `${service} ${dish}`;

/**
 * Of a running day: the batches that work has begun on, and all those of dishes that its edit did
 * not touch.
 */
export function keepingOf(
  running: { readonly cookPlan: CookPlan; readonly built: BuiltDay },
  edited: CookPlan,
  started: ReadonlySet<string>,
): Keeping {
  const { built } = running;
  const was = dishesOf(running.cookPlan);
  const unchanged = new Set(
    [...dishesOf(edited)].flatMap(([key, dish]) => (was.get(key) === dish ? [key] : [])),
  );
  const begun = new Set(built.tasks.filter(({ id }) => started.has(id)).map(({ batch }) => batch));
  const batches = built.batches.filter(
    ({ id, service, dish }) => begun.has(id) || unchanged.has(dishKey(service, dish)),
  );
  return { batches: batches.map((batch) => ({ batch, saleS: saleOf(built, batch) })), unchanged };
}

function dishesOf({ day, services }: CookPlan): Map<string, string> {
  return new Map(
    services.flatMap(({ id, opens, closes, dishes }) =>
      dishes.map((planned) => [
        dishKey(id, planned.dish),
        canonical({ day, opens, closes, planned }),
      ]),
    ),
  );
}

function saleOf({ problem: { goals, activities } }: BuiltDay, { id }: Batch): Seconds {
  const goal = must(
    goals.find((each) => String(each.id) === id),
    id,
  );
  const length = activities.find((each) => each.id === goal.activity)?.modes[0]?.length;
  return length?.kind === 'wait' ? length.minS : seconds(0);
}

/** The number that a batch goes by, as its id ends. @example numberOf('noon-ribs-2') //=> 2 */
export const numberOf = (id: string): number => Number(id.slice(id.lastIndexOf('-') + 1));
