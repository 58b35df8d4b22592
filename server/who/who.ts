import type { WhoAction } from '../../shared/day/index.ts';
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
};

export type ScreenChange = Extract<WhoAction, { kind: 'rename' | 'move' | 'revoke' }>;

export function createWho(parts: WhoParts): Who {
  const { keys, isOpen } = parts;
  const front = createFront(parts);
  const entrance = createEntrance(front, parts);
  return {
    entrance,
    pins: createPins(front, parts),
    screenOf: ({ screenId, token }) => (isOpen ? screenId : front.screenOf(token ?? null)),
    saw: (screen) => {
      if (!isOpen) keys.sawScreen(screen, Date.now());
    },
    me: ({ token }) => ({ ok: true, ...whoAmI(parts, front.screenOf(token)) }),
    async list(caller) {
      if (isOpen) return listWho(parts, null, []);
      return front.atScreen(caller, async (actor) => listWho(parts, actor, entrance.asking));
    },
    change: (caller, action) => front.atScreen(caller, (actor) => front.act(action, actor)),
  };
}
