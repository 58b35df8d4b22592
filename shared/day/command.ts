import type {
  Celsius,
  CommandId,
  Instant,
  PersonId,
  ScreenId,
  Seconds,
  TaskId,
} from '../kernel/index.ts';
import type { CheckIntent } from './check-event.ts';
import type { ReadingPlace, SlotMove } from './event.ts';
import type { HappeningIntent } from './happening.ts';

/** What somebody asks for: intent, not state. The same id always gets the same answer. */
export type Command = CommandHead & Intent;

export type CommandHead = {
  readonly id: CommandId;
  readonly personId: PersonId | null;
  readonly screenId: ScreenId | null;
  /**
   * When the finger came down, by the hub's clock as the screen knows it; a screen that was alone
   * says the truth.
   */
  readonly tappedAt: Instant;
};

export type Intent = TaskIntent | HappeningIntent | CheckIntent;

export type TaskIntent =
  | { readonly kind: 'start'; readonly task: TaskId }
  | { readonly kind: 'finish'; readonly task: TaskId }
  /** Takes back the last start or finish of this task. */
  | { readonly kind: 'takeBack'; readonly task: TaskId }
  | { readonly kind: 'count'; readonly task: TaskId; readonly done: number }
  | { readonly kind: 'late'; readonly task: TaskId; readonly byS: Seconds }
  | { readonly kind: 'needHelp'; readonly task: TaskId }
  | { readonly kind: 'helpCame'; readonly task: TaskId }
  | { readonly kind: 'giveTo'; readonly task: TaskId; readonly hand: PersonId }
  | { readonly kind: 'reading'; readonly where: ReadingPlace; readonly tempC: Celsius }
  | { readonly kind: 'moveSlots'; readonly moves: readonly SlotMove[]; readonly basedOnSeq: number }
  | { readonly kind: 'note'; readonly text: string; readonly task: TaskId | null };
