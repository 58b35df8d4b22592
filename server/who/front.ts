import { nanoid } from 'nanoid';
import {
  type DayState,
  type Decision,
  decideWho,
  type Refusal,
  type WhoAction,
  type WhoActor,
} from '../../shared/day/index.ts';
import type { CommandId, Instant, ScreenId } from '../../shared/kernel/index.ts';
import type { Answer, LetIn } from '../../shared/protocol/index.ts';
import type { Ask } from '../hub/index.ts';
import type { KeyStore } from './key-store.ts';
import type { OwnersCode } from './owners-code.ts';
import { pathOf } from './place-path.ts';
import type { Proofs } from './proofs.ts';
import { digest, newToken } from './secrets.ts';

/** Who is asking at one of the doors: from where, and with which token. */
export type Caller = { readonly address: string; readonly token: string | null };

export type WhoParts = {
  readonly hub: {
    readonly state: DayState;
    /** Those linked now. */
    readonly screens: ReadonlySet<ScreenId>;
    put(ask: Ask<DayState>): Promise<Answer>;
  };
  readonly keys: KeyStore;
  readonly proofs: Proofs;
  /** Null where nobody can claim the hub. */
  readonly ownersCode: OwnersCode | null;
  readonly isOpen: boolean;
  readonly now: () => Instant;
  /** For what runs out: a clock of real milliseconds that never runs backwards. */
  readonly nowMs: () => number;
};

export type Refused = { readonly ok: false; readonly refusal: Refusal };
export type Done = { readonly ok: true } | Refused;
export const DONE: Done = { ok: true };
export const refused = (refusal: Refusal): Refused => ({ ok: false, refusal });

/** A refusal where there were too many tries: so many seconds are to wait. */
export function tooMany(waitS: number | null): Refused | null {
  return waitS === null ? null : refused({ rule: 'too-many-tries', waitS: Math.ceil(waitS) });
}

/** What all that is asked about who may do what stands on. */
export type Front = {
  /** Whose token it is, revoked or not. */
  screenOf(token: string | null): ScreenId | null;
  /** Runs it for whoever is at a screen that has a token of ours. */
  atScreen<Found>(
    caller: Caller,
    run: (actor: WhoActor) => Promise<Found | Refused>,
  ): Promise<Found | Refused>;
  /** Has it decided and kept. */
  act(action: WhoAction, actor: WhoActor): Promise<Done>;
  /** The same of what is no change of who belongs to the hub. */
  keep(by: Pick<Ask<DayState>, 'personId' | 'screenId'>, decide: Decide): Promise<Done>;
  /** A new key, which opens nothing until the log says so. */
  cutKey(): { readonly screen: ScreenId; readonly token: string };
  letInAs(screen: ScreenId, token: string): LetIn | null;
};

type Decide = (state: DayState) => Decision;

/** The hub's own hand, which is at no screen: only claiming is done so. */
export const TERMINAL: WhoActor = { screenId: 'terminal' as ScreenId, personId: null };

export function createFront({ hub, keys, proofs, now }: WhoParts): Front {
  const screenOf = (token: string | null) => (token === null ? null : keys.screenOf(digest(token)));
  async function keep(
    { personId, screenId }: Pick<Ask<DayState>, 'personId' | 'screenId'>,
    decide: Decide,
  ): Promise<Done> {
    const at = now();
    const answer = await hub.put({
      ...{ id: nanoid() as CommandId, personId, screenId },
      claimedAt: at,
      earliestAt: () => at,
      // In the hub's own order: nothing comes between the asking and the keeping.
      decide,
    });
    return answer.ok ? DONE : answer;
  }
  return {
    screenOf,
    async atScreen({ token }, run) {
      const screenId = screenOf(token);
      if (screenId === null) return refused({ rule: 'screen-unknown' });
      return run({ screenId, personId: proofs.personAt(screenId) });
    },
    keep,
    act: (action, actor) =>
      keep(actor === TERMINAL ? { ...actor, screenId: null } : actor, (state) =>
        decideWho(state, action, actor),
      ),
    cutKey() {
      const [screen, token] = [nanoid() as ScreenId, newToken()];
      keys.addToken(digest(token), screen);
      return { screen, token };
    },
    letInAs(screen, token) {
      const record = hub.state.who.screens.get(screen);
      return record ? { token, name: record.name, path: pathOf(record.place) } : null;
    },
  };
}
