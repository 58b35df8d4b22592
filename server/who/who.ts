import { type WhoAction, type WhoActor, whyNoDesk } from '../../shared/day/index.ts';
import type { ScreenId } from '../../shared/kernel/index.ts';
import type { Hello, WhoAmI, WhoAnswer, WhoList } from '../../shared/protocol/index.ts';
import { createEntrance, type Entrance } from './entrance.ts';
import { type Caller, createFront, type Done, type WhoParts } from './front.ts';
import { listWho, whoAmI } from './list-who.ts';
import { createPins, type Pins } from './pins.ts';

/** All that can be asked about who may do what; what carries it is none of its business. */
export type Who = {
  readonly entrance: Entrance;
  readonly pins: Pins;
  /** Which screen says this hello; null for one that was not let in. */
  screenOf(hello: Hello): ScreenId | null;
  /** A link of this screen was opened or closed. */
  saw(screen: ScreenId): void;
  me(caller: Caller): WhoAnswer<WhoAmI>;
  list(caller: Caller): Promise<WhoAnswer<{ readonly who: WhoList }>>;
  change(caller: Caller, action: ScreenChange): Promise<Done>;
  /** The desk that asks, and who proved to be there; for doors that are a desk's alone. */
  atDesk(caller: Caller): Promise<WhoAnswer<WhoActor>>;
};

export type ScreenChange = Extract<WhoAction, { kind: 'rename' | 'move' | 'revoke' }>;

export function createWho(parts: WhoParts): Who {
  const { keys, isOpen } = parts;
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
  return {
    entrance,
    pins: createPins(front, parts),
    screenOf: ({ screenId, token }) => (isOpen ? screenId : front.screenOf(token ?? null)),
    saw: (screen) => {
      if (!isOpen) keys.sawScreen(screen, Date.now());
    },
    me: ({ token }) => ({ ok: true, ...whoAmI(parts, front.screenOf(token)) }),
    async list(caller) {
      const desk = await atDesk(caller);
      return desk.ok ? { ok: true, who: listWho(parts, desk, entrance.asking) } : desk;
    },
    atDesk,
    change: (caller, action) => front.atScreen(caller, (actor) => front.act(action, actor)),
  };
}
