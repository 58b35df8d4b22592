import type { CommandId } from '../../shared/kernel/index.ts';
import type { CommandMessage } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';

/**
 * A tap as the device keeps it: waiting for the hub's word, or refused and not yet read by anyone.
 */
export type KeptTap = { readonly command: CommandMessage; readonly refusal: Refusal | null };

/**
 * Where a device keeps its taps until the hub has them. Every promise rejects where the store
 * cannot do it (full disk, private window); nothing is lost silently.
 */
export type Outbox = {
  /** In the order in which they were first put. */
  all(): Promise<readonly KeptTap[]>;
  /**
   * On the disk once it resolves. A tap whose command id is there already is replaced and keeps its
   * place.
   */
  put(tap: KeptTap): Promise<void>;
  /** Removing what is not there does nothing. */
  remove(id: CommandId): Promise<void>;
};
