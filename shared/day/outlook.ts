import type { BatchId, Seconds, ServiceId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { GoalId, InHand, Timeline } from '../schedule/index.ts';
import { groupBy, type PlanIndex } from './plan-index.ts';

/** How a service's promise stands, by its batch that has least in hand. */
export type Outlook = InHand;

/** How each service stands that still waits for a batch: as the batch with least in hand does. */
export function outlooksOn(timeline: Timeline, index: PlanIndex): Map<ServiceId, Outlook> {
  const promised = promisesOn(timeline, index);
  return new Map([...promised].map(([service, goals]) => [service, timeline.inHand(goals)]));
}

/** What each service still waits for. */
export function promisesOn(timeline: Timeline, index: PlanIndex): Map<ServiceId, GoalId[]> {
  const waiting = index.plan.built.problem.goals.filter(
    ({ activity }) => timeline.times(activity).stage === 'waiting',
  );
  // A goal of the schedule is a batch that must stand ready, and has its name.
  return groupBy(
    waiting.map(({ id }) => id),
    (id) => must(index.batches.get(id as string as BatchId), id).service,
  );
}

type Times = { readonly timeline: Timeline; readonly index: PlanIndex; readonly nowS: Seconds };

/** The outlooks as last worked out: every wall asks for them, and so do the news. */
export class Outlooks {
  #known: { readonly nowS: Seconds; readonly outlooks: ReadonlyMap<ServiceId, Outlook> } | null =
    null;

  /** A time may have changed. */
  forget(): void {
    this.#known = null;
  }

  at({ timeline, index, nowS }: Times): ReadonlyMap<ServiceId, Outlook> {
    if (this.#known?.nowS !== nowS) this.#known = { nowS, outlooks: outlooksOn(timeline, index) };
    return this.#known.outlooks;
  }
}
