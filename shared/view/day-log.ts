import type { Live, ReadingPlace, Told } from '../day/index.ts';
import { slotName } from '../day/index.ts';
import type { Celsius, Instant, PersonId, Seconds, SlotId, TaskId, Text } from '../kernel/index.ts';
import { must, unreachable } from '../kernel/index.ts';
import type { SlotName } from '../plan/index.ts';

/** One thing that happened, with the names of its subjects; `shared/words` makes the sentence. */
export type LogLine = {
  readonly seq: number;
  /** When the finger came down. */
  readonly at: Instant;
  /** When the hub kept it: later where the screen was alone. */
  readonly keptAt: Instant;
  readonly person: string | null;
  /** As the screen is called at the desk; null for the hub itself, and one that has no name. */
  readonly screen: string | null;
  readonly said: Logged;
};

/** What was done to a task. */
type Deed = { readonly title: Text; readonly batch: Text };

export type Logged =
  | { readonly kind: 'plan'; readonly version: number }
  | ({ readonly kind: 'task'; readonly what: TaskWord } & Deed)
  | ({ readonly kind: 'counted'; readonly done: number; readonly pieces: number } & Deed)
  | ({ readonly kind: 'late'; readonly byS: Seconds } & Deed)
  | ({ readonly kind: 'given'; readonly to: string } & Deed)
  | { readonly kind: 'read'; readonly where: Text; readonly tempC: Celsius }
  | {
      readonly kind: 'moved';
      readonly moves: readonly { readonly batch: Text; readonly to: SlotName }[];
    }
  | { readonly kind: 'note'; readonly text: string; readonly about: Text | null }
  | { readonly kind: 'screen'; readonly what: ScreenWord; readonly name: string }
  | { readonly kind: 'pin'; readonly what: 'pinSet' | 'pinCleared'; readonly of: string };

type TaskWord =
  | 'taskStarted'
  | 'taskFinished'
  | 'startTakenBack'
  | 'finishTakenBack'
  | 'helpAsked'
  | 'helpCame';
type ScreenWord = 'screenPaired' | 'screenRenamed' | 'screenMoved' | 'screenRevoked';

/** What a desk shows of it; the rest is in the log itself. */
const MOST_LINES = 150;

/** What has happened today, newest first. */
export function dayLog(live: Live): LogLine[] {
  return live.state.story
    .slice(-MOST_LINES)
    .reverse()
    .map((told) => ({
      seq: told.seq,
      at: told.at,
      keptAt: told.keptAt,
      person: told.personId && nameOf(live, told.personId),
      screen: (told.screenId && live.state.who.screens.get(told.screenId)?.name) ?? null,
      said: logged(live, told),
    }));
}

function logged(live: Live, told: Told): Logged {
  switch (told.kind) {
    case 'planAdopted':
      return { kind: 'plan', version: told.planVersion };
    case 'taskStarted':
    case 'taskFinished':
    case 'startTakenBack':
    case 'finishTakenBack':
    case 'helpAsked':
    case 'helpCame':
      return { kind: 'task', what: told.kind, ...deedOn(live, told.task) };
    case 'piecesCounted': {
      const pieces = live.index.tasks.get(told.task)?.pieces ?? told.done;
      return { kind: 'counted', done: told.done, pieces, ...deedOn(live, told.task) };
    }
    case 'taskRunsLate':
      return { kind: 'late', byS: told.byS, ...deedOn(live, told.task) };
    case 'taskGiven':
      return { kind: 'given', to: nameOf(live, told.hand), ...deedOn(live, told.task) };
    case 'temperatureRead':
      return { kind: 'read', where: placeRead(live, told.where), tempC: told.tempC };
    case 'slotsMoved':
      return {
        kind: 'moved',
        moves: told.moves.map(({ stay, to }) => ({
          batch: deedOn(live, stay).batch,
          to: slotOf(live, to),
        })),
      };
    case 'noteWritten': {
      const about = told.task && deedOn(live, told.task).title;
      return { kind: 'note', text: told.text, about };
    }
    case 'screenPaired':
    case 'screenRenamed':
    case 'screenMoved':
    case 'screenRevoked': {
      const name = live.state.who.screens.get(told.screen)?.name ?? told.screen;
      return { kind: 'screen', what: told.kind, name };
    }
    case 'pinSet':
    case 'pinCleared':
      return { kind: 'pin', what: told.kind, of: nameOf(live, told.person) };
    default:
      return unreachable(told);
  }
}

/** A task may be gone from the plan since; then its id must do. */
function deedOn({ index }: Live, id: TaskId): Deed {
  const task = index.tasks.get(id);
  const batch = task && index.groups.get(task.batch)?.name;
  return { title: task?.title ?? { en: id }, batch: batch ?? { en: id } };
}

function placeRead(live: Live, where: ReadingPlace): Text {
  if (where.kind === 'core') return deedOn(live, where.stay).batch;
  const { smokers } = live.index.plan.kitchen;
  return smokers.find(({ id }) => id === where.smoker)?.name ?? { en: where.smoker };
}

const slotOf = ({ index }: Live, slot: SlotId): SlotName =>
  must(slotName(index.plan.kitchen, slot), slot);

const nameOf = ({ index }: Live, id: PersonId): string =>
  index.plan.kitchen.crew.find((person) => person.id === id)?.name ?? id;
