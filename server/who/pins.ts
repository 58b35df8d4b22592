import type { PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { PinAsk, ProveAsk } from '../../shared/protocol/index.ts';
import type { Refused, WhoParts } from './front.ts';
import { type Caller, DONE, type Done, type Front, refused, tooMany } from './front.ts';
import { hashPin, isGoodPin, isPin, PIN_LEAST, PIN_MOST } from './secrets.ts';
import { createTries } from './tries.ts';

/** People who are known by a PIN. */
export type Pins = {
  set(caller: Caller, asked: PinAsk): Promise<Done>;
  /** From now on, for so many seconds, this person counts as being at this screen. */
  prove(caller: Caller, asked: ProveAsk): Promise<{ ok: true; forS: number } | Refused>;
  leave(caller: Caller): Promise<Done>;
};

/** A slip of the finger costs nothing; four digits take weeks to try out. */
const TRIES = { burst: 5, everyS: 120 };

export function createPins(front: Front, { hub, keys, proofs, nowMs }: WhoParts): Pins {
  const tries = createTries(TRIES, nowMs);

  function forget(person: PersonId): void {
    proofs.forget(person);
    keys.dropPin(person);
  }

  async function clear(person: PersonId, clearing: Promise<Done>): Promise<Done> {
    const done = await clearing;
    if (done.ok) forget(person);
    return done;
  }

  async function whyWrong(screen: ScreenId, { person, pin }: ProveAsk): Promise<Refused | null> {
    // By person and by screen: neither may be tried out from many of the other.
    const limited = tooMany(tries.take(`person ${person}`) ?? tries.take(`screen ${screen}`));
    if (limited) return limited;
    const known = hub.state.who.pins.has(person) ? keys.pinOf(person) : null;
    return known && (await isPin(pin, known)) ? null : refused({ rule: 'wrong-pin' });
  }

  return {
    set(caller, { person, pin, isOwner }) {
      return front.atScreen(caller, async (actor): Promise<Done> => {
        if (pin === null) return clear(person, front.act({ kind: 'clearPin', person }, actor));
        if (!isGoodPin(pin)) {
          return refused({ rule: 'poor-pin', least: PIN_LEAST, most: PIN_MOST });
        }
        const hash = await hashPin(pin);
        const done = await front.act({ kind: 'setPin', person, isOwner }, actor);
        if (!done.ok) return done;
        proofs.forget(person);
        keys.setPin(person, hash);
        return DONE;
      });
    },
    prove(caller, asked) {
      return front.atScreen(caller, async ({ screenId }) => {
        const wrong = await whyWrong(screenId, asked);
        return wrong ?? { ok: true as const, forS: proofs.prove(screenId, asked.person) };
      });
    },
    leave(caller) {
      return front.atScreen(caller, async ({ screenId }): Promise<Done> => {
        proofs.leave(screenId);
        return DONE;
      });
    },
  };
}
