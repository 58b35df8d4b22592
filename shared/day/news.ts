import type { CommandId, Instant, PersonId, Seconds, ServiceId, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { Timeline } from '../schedule/index.ts';
import type { Event } from './event.ts';
import type { Outlook } from './outlook.ts';
import type { PlanIndex } from './plan-index.ts';
import type { Told } from './story.ts';
import { toldOf } from './story.ts';
import { subjectOf } from './undo.ts';

/** What the last decision of a person did to the day. */
export type News = {
  readonly command: CommandId;
  readonly at: Instant;
  readonly by: PersonId | null;
  readonly told: Told;
  /** Starts that moved by a minute or more, the furthest first; later is above nought. */
  readonly tasks: readonly { readonly task: TaskId; readonly byS: Seconds }[];
  /** Services that gained or, below nought, lost a minute in hand or more. */
  readonly services: readonly { readonly service: ServiceId; readonly byS: Seconds }[];
  readonly canBeUndone: boolean;
};

/** The times of a day at a moment, to tell what an event moved. */
export type Seen = {
  readonly starts: ReadonlyMap<TaskId, Seconds>;
  readonly inHand: ReadonlyMap<ServiceId, Seconds>;
};

const MINUTE_S = 60;

/** Counted and written down, and nothing that another wall would act on. */
const QUIET: ReadonlySet<Event['kind']> = new Set([
  'portionsSold',
  'panEmptied',
  'checkRecorded',
  'correctionRecorded',
  'lotCame',
  'batchCutFrom',
  'cureWeighed',
  'tubWeighed',
]);

/** Whether an event is a decision that everybody should hear of; sales are counted, not told. */
export function isNews(event: Event): boolean {
  if (QUIET.has(event.kind)) return false;
  return event.kind === 'undone' || subjectOf(event) !== null;
}

/** What is to come, as a timeline has it. */
export function seenOn(
  timeline: Timeline,
  index: PlanIndex,
  outlooks: ReadonlyMap<ServiceId, Outlook>,
): Seen {
  const starts = [...index.tasks.keys()].flatMap((id) => {
    const { stage, startS } = timeline.times(id);
    return stage === 'waiting' ? [[id, startS] as const] : [];
  });
  const inHand = [...outlooks].map(([id, each]) => [id, each.inHandS] as const);
  return { starts: new Map(starts), inHand: new Map(inHand) };
}

/** What moved between these two, because of that event. */
export function newsOf(event: Event, before: Seen, after: Seen): News {
  const differences = <Id>(was: ReadonlyMap<Id, Seconds>, is: ReadonlyMap<Id, Seconds>) =>
    [...is].flatMap(([id, isS]) => {
      const byS = seconds(isS - (was.get(id) ?? isS));
      return Math.abs(byS) >= MINUTE_S ? [{ id, byS }] : [];
    });
  return {
    command: event.commandId,
    at: event.at,
    by: event.personId,
    told: must(toldOf(event), event.kind),
    tasks: differences(before.starts, after.starts)
      .sort((a, b) => Math.abs(b.byS) - Math.abs(a.byS))
      .map(({ id, byS }) => ({ task: id, byS })),
    services: differences(before.inHand, after.inHand).map(({ id, byS }) => ({ service: id, byS })),
    canBeUndone: event.kind !== 'undone',
  };
}
