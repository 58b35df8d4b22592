import type { CommandId } from '../../shared/kernel/index.ts';
import { isOvertaken } from '../../shared/view/index.ts';
import type { Sync } from '../sync/index.ts';

/** So long a refusal stands at the least: time to look up from a tray and read it. */
const READ_MS = 20_000;

/** Refusals that say nothing any more go by themselves, once there was time to read them. */
export class OvertakenRefusals {
  readonly #sync: Sync;
  readonly #sinceMs = new Map<CommandId, number>();

  constructor(sync: Sync) {
    this.#sync = sync;
  }

  /** `nowMs` on a clock that is never set back. */
  drop(nowMs: number): void {
    const { refused, view, blank } = this.#sync.state;
    const ids = new Set(refused.map(({ command }) => command.id));
    for (const id of this.#sinceMs.keys()) if (!ids.has(id)) this.#sinceMs.delete(id);
    for (const tap of refused) {
      const { id } = tap.command;
      const since = this.#sinceMs.get(id) ?? nowMs;
      this.#sinceMs.set(id, since);
      // A screen that belongs elsewhere now has done with what it was.
      const isPast = view ? isOvertaken(tap, view) : blank?.rule === 'screen-elsewhere';
      if (isPast && nowMs - since >= READ_MS) this.#sync.seen(id);
    }
  }
}
