import {
  decideLanguage,
  type Refusal,
  type WhoAction,
  type WhoActor,
  whyNoDesk,
} from '../../shared/day/index.ts';
import type { PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type {
  DeskDeed,
  Hello,
  LanguageAsk,
  WhoAmI,
  WhoAnswer,
  WhoList,
} from '../../shared/protocol/index.ts';
import { createEntrance, type Entrance } from './entrance.ts';
import { type Caller, createFront, type Done, type WhoParts } from './front.ts';
import { type Guard, mayAsk } from './guard.ts';
import { listWho, whoAmI } from './list-who.ts';
import { createPins, type Pins } from './pins.ts';
import { digest } from './secrets.ts';

/** All that can be asked about who may do what; what carries it is none of its business. */
export type Who = {
  readonly entrance: Entrance;
  readonly pins: Pins;
  /** Which screen says this hello; null for one that was not let in. */
  screenOf(hello: Hello): ScreenId | null;
  /** What its page says where no script can say the token yet: it shows, and opens nothing. */
  pageKey(token: string): string;
  /** Whose page says this; on an open hub it has no name yet. */
  screenOfPage(key: string | null): ScreenId | null;
  /** A link of this screen was opened or closed. */
  saw(screen: ScreenId): void;
  me(caller: Caller): WhoAnswer<WhoAmI>;
  list(caller: Caller): Promise<WhoAnswer<{ readonly who: WhoList }>>;
  change(caller: Caller, action: ScreenChange): Promise<Done>;
  /** What somebody of the crew reads from now on. */
  setLanguage(caller: Caller, asked: LanguageAsk): Promise<Done>;
  /** At which screen somebody sends readings, if the table of rights lets them. */
  reader(caller: Caller): Promise<WhoAnswer<{ readonly screenId: ScreenId | null }>>;
  /** Who asks something at a door of the desk, if the table of rights lets them. */
  entitled(caller: Caller, deed: DeskDeed): Promise<WhoAnswer<Entitled>>;
};

/** Somebody who may do what they ask at the desk; on an open hub nobody knows who, nor where. */
export type Entitled = {
  readonly personId: PersonId | null;
  readonly screenId: ScreenId | null;
  /** Tells one caller from another. */
  readonly caller: string;
  /** Why it may no longer, or null: working a plan out takes its time. */
  whyNot(): Refusal | null;
};

export type ScreenChange = Extract<WhoAction, { kind: 'rename' | 'move' | 'revoke' }>;

export function createWho(parts: WhoParts): Who {
  const { keys, isOpen, proofs } = parts;
  const guard: Guard = { isOpen, personAt: proofs.personAt };
  const front = createFront(parts);
  const entrance = createEntrance(front, parts);
  async function atDesk(caller: Caller): Promise<WhoAnswer<WhoActor>> {
    // An open hub knows its screens by nothing but where they call from.
    if (isOpen) return { ok: true, screenId: caller.address as ScreenId, personId: null };
    return front.atScreen(caller, async (actor): Promise<WhoAnswer<WhoActor>> => {
      const refusal = whyNoDesk(parts.hub.state, actor.screenId);
      return refusal ? { ok: false, refusal } : { ok: true, ...actor };
    });
  }
  async function entitled(caller: Caller, deed: DeskDeed): Promise<WhoAnswer<Entitled>> {
    if (isOpen) return { ok: true, ...anybodyAt(caller) };
    return front.atScreen(caller, async ({ screenId, personId }) => {
      const whyNot = () =>
        mayAsk(parts.hub.state, { screenId, face: DESK }, { kind: deed, personId }, guard);
      const refusal = whyNot();
      if (refusal) return { ok: false, refusal };
      return { ok: true, screenId, personId, caller: screenId, whyNot };
    });
  }
  return {
    entrance,
    pins: createPins(front, parts),
    screenOf: ({ screenId, token }) => (isOpen ? screenId : front.screenOf(token ?? null)),
    pageKey: digest,
    screenOfPage: (key) => (isOpen ? UNNAMED : key === null ? null : keys.screenOf(key)),
    saw: (screen) => {
      if (!isOpen) keys.sawScreen(screen, Date.now());
    },
    me: ({ token }) => ({ ok: true, ...whoAmI(parts, front.screenOf(token)) }),
    async list(caller) {
      const desk = await atDesk(caller);
      return desk.ok ? { ok: true, who: listWho(parts, desk, entrance.asking) } : desk;
    },
    reader(caller) {
      if (isOpen) return Promise.resolve({ ok: true, screenId: null });
      return front.atScreen(caller, async ({ screenId, personId }) => {
        const asked = { kind: 'reading', personId } as const;
        const refusals = [SMOKERS, DESK].map((face) =>
          mayAsk(parts.hub.state, { screenId, face }, asked, guard),
        );
        const [refusal] = refusals;
        return refusal && !refusals.includes(null)
          ? { ok: false, refusal }
          : { ok: true, screenId };
      });
    },
    entitled,
    async setLanguage(caller, asked) {
      const by = await entitled(caller, 'setLanguage');
      if (!by.ok) return by;
      return front.keep(by, (state) => {
        const refusal = by.whyNot();
        return refusal ? { ok: false, refusal } : decideLanguage(state, asked);
      });
    },
    change: (caller, action) => front.atScreen(caller, (actor) => front.act(action, actor)),
  };
}

const UNNAMED = 'a page' as ScreenId;
const DESK = { kind: 'desk' } as const;
const SMOKERS = { kind: 'smoker' } as const;

const anybodyAt = ({ address }: Caller): Entitled => ({
  personId: null,
  screenId: null,
  caller: address,
  whyNot: () => null,
});
