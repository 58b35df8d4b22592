import { makePlan } from '../../../server/adopt.ts';
import { demoDay } from '../../../server/demo/index.ts';
import type { Command, DayState, Event, Fact, Intent } from '../../../shared/day/index.ts';
import { decide, EVENT_VERSION, emptyDay, fold } from '../../../shared/day/index.ts';
import type {
  CommandId,
  DayId,
  Instant,
  PersonId,
  ScreenId,
  TaskId,
} from '../../../shared/kernel/index.ts';
import { must, resolveLocal } from '../../../shared/kernel/index.ts';

/** An ordinary noon, so that the demo's day is the same at every run. */
export const noon = resolveLocal('2026-03-04', '12:00', 'America/Chicago').at;

const made = makePlan(demoDay(noon, 'America/Chicago'), 1);
if (!made.ok) throw new Error(JSON.stringify(made));

/** The invented kitchen's plan, built and scheduled once for all tests of a file. */
export const plan = made.plan;

/** A day that can be told things, one after the other. */
export class Telling {
  state: DayState = emptyDay();
  readonly events: Event[] = [];

  constructor(adopted = plan) {
    this.keep({ kind: 'planAdopted', plan: adopted }, adopted.built.origin, null);
  }

  /** Another day begins. */
  nextDay(adopted: typeof plan, at: Instant): Event {
    return this.keep({ kind: 'planAdopted', plan: adopted }, at, null, adopted.built.day);
  }

  keep(
    fact: Fact,
    at: Instant,
    personId: PersonId | null,
    day: string = this.state.day ?? plan.built.day,
  ): Event {
    const seq = this.state.seq + 1;
    const event: Event = {
      ...fact,
      seq,
      version: EVENT_VERSION,
      day: day as DayId,
      at,
      keptAt: at,
      commandId: `command-${seq}` as CommandId,
      personId,
      screenId: null,
    };
    this.events.push(event);
    this.state = fold(this.state, event);
    return event;
  }

  /** Asks for something at an instant; what is taken is kept. */
  ask(intent: Intent, at: Instant, personId: PersonId | null = null) {
    const decision = decide(this.state, commandOf(intent, at, personId), at);
    if (decision.ok) for (const fact of decision.facts) this.keep(fact, at, personId);
    return decision;
  }
}

export function commandOf(intent: Intent, tappedAt: Instant, personId: PersonId | null): Command {
  const head = { id: 'a-command' as CommandId, personId, screenId: 'a-wall' as ScreenId, tappedAt };
  return { ...head, ...intent };
}

/** The batch's task with that step. */
export function task(batch: string, step: string): TaskId {
  const id = `${batch}/${step}`;
  return must(
    plan.built.tasks.find((each) => each.id === id),
    id,
  ).id;
}

/** Tasks of hands in the order that the plan starts them. */
export const handsInOrder: readonly TaskId[] = [...plan.schedule.placements]
  .sort((a, b) => a.startS - b.startS || a.endS - b.endS)
  .map(({ activity }) => activity)
  .filter((id) => plan.built.tasks.find((each) => each.id === id)?.work === 'hands');
