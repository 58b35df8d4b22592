import { randomUUID } from 'node:crypto';
import { type DayState, type Mend, type Refusal, whyNotMended } from '../../shared/day/index.ts';
import type { CommandId, Instant } from '../../shared/kernel/index.ts';
import type { MendShown, MendTaken } from '../../shared/protocol/index.ts';
import type { Hub } from '../hub/index.ts';
import type { Entitled } from '../who/index.ts';
import type { Drafts } from './drafts.ts';

/** What would mend the running day, as the desk asks for it. */
export type MendDesk = {
  /** Works it out; nothing is kept but the proposal itself, the last of each desk. */
  mend(by: Entitled): Promise<MendShown | { readonly refusal: Refusal }>;
  /** Takes that proposal, all of it, as one thing that can be undone. */
  takeMend(by: Entitled, id: string): Promise<MendTaken | { readonly refusal: Refusal }>;
};

type Parts = {
  readonly hub: Hub<DayState>;
  readonly drafts: Pick<Drafts, 'mend' | 'stillMends'>;
  readonly now: () => Instant;
  /** Left out: a name that nobody guesses. */
  readonly newId?: () => string;
};

type Proposed = Mend & { readonly id: string };

const GONE_ON: { readonly refusal: Refusal } = { refusal: { rule: 'out-of-date' } };

export function createMendDesk({ hub, drafts, now, newId = randomUUID }: Parts): MendDesk {
  const proposed = new Map<string, Proposed>();
  const placeOf = ({ caller }: Entitled) => `${caller}, mending`;
  const asked = () => ({ state: hub.state, now: now() });

  return {
    async mend(by) {
      if (hub.state.plan === null) return { mend: null };
      const found = await drafts.mend(placeOf(by), asked);
      if (!found) return GONE_ON;
      const { offer, fact } = found;
      if (!fact) return { mend: { id: null, offer } };
      const id = newId();
      proposed.set(by.caller, { ...found, id });
      return { mend: { id, offer } };
    },
    async takeMend(by, id) {
      const { offer, fact, id: last } = proposed.get(by.caller) ?? {};
      if (!offer || !fact || id !== last) return GONE_ON;
      const stale = whyNotMended(hub.state, fact, offer.basedOnSeq);
      if (stale) return { refusal: stale };
      const stands = await drafts.stillMends(placeOf(by), () => ({ ...asked(), fact }));
      if (!stands) return GONE_ON;
      const refused = by.whyNot();
      if (refused) return { refusal: refused };
      const command = `mend-${id}` as CommandId;
      const at = now();
      const answer = await hub.put({
        id: command,
        personId: by.personId,
        screenId: by.screenId,
        claimedAt: at,
        earliestAt: () => at,
        decide: (state) => {
          const refusal = whyNotMended(state, fact, offer.basedOnSeq);
          return refusal ? { ok: false, refusal } : { ok: true, facts: [fact] };
        },
      });
      return answer.ok ? { command } : { refusal: answer.refusal };
    },
  };
}
