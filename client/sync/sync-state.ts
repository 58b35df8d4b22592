import type { CommandId, Instant, PersonId } from '../../shared/kernel/index.ts';
import type { Question, QuestionAnswer, ReadOnly } from '../../shared/protocol/index.ts';
import type { Command, Intent, PendingTap, Refusal, View } from '../../shared/view/index.ts';
import type { RefusedTap } from './taps.ts';

/** All that a screen draws from. A new object at each change. */
export type SyncState = {
  /** The newest view of the hub, without this device's own taps. */
  readonly view: View | null;
  /** The log's last event in that view; nought before the first. */
  readonly seq: number;
  /** Why the hub has nothing for this face to show. */
  readonly blank: Refusal | null;
  readonly pending: readonly PendingTap[];
  readonly refused: readonly RefusedTap[];
  readonly isUp: boolean;
  /** Since when the hub has not been heard; null while it is, or has only just fallen silent. */
  readonly aloneSince: Instant | null;
  /** The device's store could not keep the last tap; the page alone holds it. */
  readonly isOutboxFailing: boolean;
  readonly readOnly: ReadOnly | null;
  /** The hub wants the page loaded anew, and nothing would be lost by it now. */
  readonly isReloadDue: boolean;
};

export type Sync = {
  readonly state: SyncState;
  /** The hub's clock as this screen knows it. */
  hubNow(): Instant;
  /** Draws the tap, keeps it, sends it: in this order, and in the order of the taps. */
  tap(intent: Intent, personId?: PersonId | null): Command;
  /** Rejects with LinkLost where no answer came: a question is not kept. */
  ask(question: Question): Promise<QuestionAnswer>;
  /** Somebody has read why this command was refused. */
  seen(command: CommandId): void;
  /** Gives the way to stop. */
  subscribe(listener: () => void): () => void;
  close(): void;
};
