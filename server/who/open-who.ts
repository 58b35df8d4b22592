import { join } from 'node:path';
import { type DayState, isUnclaimed } from '../../shared/day/index.ts';
import type { Clock } from '../clock.ts';
import type { Closing } from '../closing.ts';
import type { Hub } from '../hub/index.ts';
import { type Guard, OPEN } from './guard.ts';
import { openKeyStore } from './key-store.ts';
import { createOwnersCode } from './owners-code.ts';
import { createProofs } from './proofs.ts';
import { createWho, type Who } from './who.ts';

type Choice = {
  readonly isOpen: boolean;
  readonly isClaiming: boolean;
  readonly clock: Clock;
  readonly closing: Closing;
};

export type OpenWho = {
  /** What the hub's rules ask. */
  readonly guard: Guard;
  /** Answers for this hub; `lines` are for a person at the terminal. */
  serve(hub: Hub<DayState>): { readonly who: Who; lines(address: string): readonly string[] };
};

/** Opens what a kitchen's folder knows of keys. An open hub keeps none. */
export function openWho(folder: string, { isOpen, isClaiming, clock, closing }: Choice): OpenWho {
  const keys = openKeyStore(isOpen ? ':memory:' : join(folder, 'keys.sqlite'));
  closing.add(keys.close);
  // Codes and proofs run out by the world's time, however fast the kitchen's clock runs.
  const nowMs = () => performance.now();
  const proofs = createProofs(nowMs);
  return {
    guard: isOpen ? OPEN : { isOpen, personAt: proofs.personAt },
    serve(hub) {
      const isWanted = isClaiming || isUnclaimed(hub.state.who);
      const isClaimable = !isOpen && isWanted && hub.health.readOnly === null;
      const ownersCode = isClaimable ? createOwnersCode(nowMs) : null;
      return {
        who: createWho({ hub, keys, proofs, ownersCode, isOpen, now: clock.now, nowMs }),
        lines: (address) =>
          ownersCode
            ? [
                `Owner’s code: ${ownersCode.shown}`,
                `  Type it at ${address}/pair.html within ten minutes: that screen becomes the`,
                '  desk, which may open every screen and lets the others in. Starting again gives',
                '  another.',
              ]
            : [],
      };
    },
  };
}
