import type { Live } from '../day/index.ts';
import { deliveryEffect } from '../day/index.ts';
import type { CommandId, Instant, Seconds, Text } from '../kernel/index.ts';
import { minutes, seconds } from '../kernel/index.ts';
import { type Logged, logged } from './logged.ts';

/** The last decision of a person and what it moved, as one line. */
export type NewsLine = {
  readonly command: CommandId;
  readonly at: Instant;
  readonly person: string | null;
  readonly said: Logged;
  /** What moved furthest, and how many others did. */
  readonly tasks: readonly { readonly title: Text; readonly batch: Text; readonly byS: Seconds }[];
  readonly more: number;
  readonly services: readonly { readonly name: Text; readonly byS: Seconds }[];
  /** Of a delivery: portions that can no longer be given, and how much longer trimming takes. */
  readonly lost: readonly { readonly batch: Text; readonly portions: number }[];
  readonly longerS: Seconds;
  readonly canBeUndone: boolean;
};

/** So long it stands on the walls, and can be taken back there. */
const NEWS_S = minutes(10);
const MOST_TASKS = 2;

/** The news of a day at its now; null where there is none, or it is old. */
export function newsLine(live: Live): NewsLine | null {
  const { news, index } = live;
  if (!news || live.now >= news.at + NEWS_S * 1000) return null;
  const { crew } = index.plan.kitchen;
  return {
    command: news.command,
    at: news.at,
    person: crew.find(({ id }) => id === news.by)?.name ?? null,
    said: logged(live, news.told),
    tasks: news.tasks.slice(0, MOST_TASKS).flatMap(({ task, byS }) => {
      const found = index.tasks.get(task);
      const batch = found && index.groups.get(found.batch);
      return found && batch ? [{ title: found.title, batch: batch.name, byS }] : [];
    }),
    more: Math.max(0, news.tasks.length - MOST_TASKS),
    services: news.services.flatMap(({ service, byS }) => {
      const found = index.plan.built.services.find(({ id }) => id === service);
      return found ? [{ name: found.name, byS }] : [];
    }),
    ...deliveredBy(live),
    canBeUndone: news.canBeUndone,
  };
}

function deliveredBy({ news, state, index }: Live): Pick<NewsLine, 'lost' | 'longerS'> {
  const told = news?.told;
  const effect = told?.kind === 'deliveryCame' ? deliveryEffect(state, index, told.cut) : null;
  const lost = (effect?.lost ?? []).flatMap(({ batch, portions }) => {
    const found = index.batches.get(batch);
    return found ? [{ batch: found.name, portions }] : [];
  });
  return { lost, longerS: effect?.longerS ?? seconds(0) };
}
