import type { CommandId, DayId, Seconds, ServiceId, Text } from '../kernel/index.ts';
import { minutes } from '../kernel/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import { EVENT_VERSION, type Event } from './event.ts';
import { fold } from './fold.ts';
import { type Live, openLive } from './live.ts';
import type { DayState } from './state.ts';

/** What the next version of a plan would do to the running day, before it is taken. */
export type PlanOffer = {
  readonly services: readonly {
    readonly id: ServiceId;
    readonly name: Text;
    /** Null where it was not, or is no more. */
    readonly beforeS: Seconds | null;
    readonly afterS: Seconds | null;
  }[];
  /** Batches that were planned anew, with how many portions they were and are. */
  readonly batches: readonly {
    readonly name: Text;
    readonly before: number | null;
    readonly after: number | null;
  }[];
  /** Work of hands in other batches whose start moves by a minute or more. */
  readonly tasksChanged: number;
};

/** How the running day would go on with that plan. */
export function planOffer(live: Live, plan: AdoptedPlan, planned: ReadonlySet<string>): PlanOffer {
  const next = openLive(withPlan(live.state, plan), live.now);
  const was = new Map(live.index.plan.built.batches.map((batch) => [batch.id, batch]));
  const is = new Map(plan.built.batches.map((batch) => [batch.id, batch]));
  const gone = [...was.values()].filter(({ id }) => !is.has(id));
  const changed = [...is.values()].filter(({ id }) => planned.has(id));
  const others = plan.built.tasks.filter(
    ({ id, batch, work }) =>
      work === 'hands' && is.has(batch) && !planned.has(batch) && live.index.tasks.has(id),
  );
  const shiftS = (id: (typeof others)[number]['id']) =>
    Math.abs(next.timesOf(id).startS - live.timesOf(id).startS);
  return {
    services: servicesIn(live, next),
    batches: [
      ...changed.map(({ id, name, portions }) => ({
        name,
        before: was.get(id)?.portions ?? null,
        after: portions,
      })),
      ...gone.map(({ name, portions }) => ({ name, before: portions, after: null })),
    ],
    tasksChanged: others.filter(({ id }) => shiftS(id) >= minutes(1)).length,
  };
}

/** What each service has in hand on the day as it is, and as it would be. */
export function servicesIn(live: Live, next: Live): PlanOffer['services'] {
  const services = new Map(
    [...live.index.plan.built.services, ...next.index.plan.built.services].map((service) => [
      service.id,
      service,
    ]),
  );
  return [...services.values()].flatMap(({ id, name }) => {
    const beforeS = live.outlookOf(id)?.inHandS ?? null;
    const afterS = next.outlookOf(id)?.inHandS ?? null;
    return beforeS === null && afterS === null ? [] : [{ id, name, beforeS, afterS }];
  });
}

/** The day as it would be if the plan were adopted now. */
function withPlan(state: DayState, plan: AdoptedPlan): DayState {
  const { keptAt, seq } = state;
  const event: Event = {
    kind: 'planAdopted',
    plan,
    seq: seq + 1,
    version: EVENT_VERSION,
    day: plan.built.day as DayId,
    at: keptAt,
    keptAt,
    commandId: 'tried' as CommandId,
    personId: null,
    screenId: null,
  };
  return fold(state, event);
}
