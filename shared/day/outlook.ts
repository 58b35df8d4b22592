import type { BatchId, Seconds, ServiceId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Timeline } from '../schedule/index.ts';
import type { PlanIndex } from './plan-index.ts';

/** How a service's promise stands, by its batch that has least in hand. */
export type Outlook = { readonly inHandS: Seconds; readonly hangsOn: TaskId | null };

/** How each service stands that still waits for a batch: as the batch with least in hand does. */
export function outlooksOn(timeline: Timeline, index: PlanIndex): Map<ServiceId, Outlook> {
  const outlooks = new Map<ServiceId, Outlook>();
  for (const { id, activity } of index.plan.built.problem.goals) {
    if (timeline.times(activity).stage !== 'waiting') continue;
    // A goal of the schedule is a batch that must stand ready, and has its name.
    const { service } = must(index.batches.get(id as string as BatchId), id);
    const { inHandS, hangsOn } = timeline.goal(id);
    const least = outlooks.get(service);
    if (!least || inHandS < least.inHandS) outlooks.set(service, { inHandS, hangsOn });
  }
  return outlooks;
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
