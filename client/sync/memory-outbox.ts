import type { CommandId } from '../../shared/kernel/index.ts';
import type { KeptTap, Outbox } from './outbox.ts';

/**
 * An outbox without a disk. What `kept` holds survives the outbox itself, as a disk survives the
 * loading anew of a page: give it to the next one.
 */
export function memoryOutbox(kept: Map<CommandId, KeptTap> = new Map()): Outbox {
  return {
    async all() {
      return [...kept.values()];
    },
    async put(tap) {
      kept.set(tap.command.id, tap);
    },
    async remove(id) {
      kept.delete(id);
    },
  };
}
