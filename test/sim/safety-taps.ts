import {
  type Celsius,
  type CutId,
  celsius,
  type DishId,
  kilograms,
} from '../../shared/kernel/index.ts';
import { type CheckView, type Intent, isWork, type View } from '../../shared/view/index.ts';
import type { Chance } from './chance.ts';
import type { Happening } from './journal.ts';
import { catalogue } from './small-kitchen.ts';

export type SafetyDeed = 'look' | 'mend' | 'sell' | 'receive' | 'hurry';
export type Asked = { readonly intent: Intent; readonly as: Happening };

/** Whether a deed is one of these. */
export const isSafety = (deed: string): deed is SafetyDeed =>
  ['look', 'mend', 'sell', 'receive', 'hurry'].includes(deed);

/** Of ten readings so many are as they should be, and of the others one in five is a slip. */
const GOOD_SHARE = 0.7;
const SLIP_SHARE = 0.2;

/** What a crew does about what is to be looked at: reads, finds wrong, puts right, and sells. */
export class SafetyTaps {
  readonly #chance: Chance;

  constructor(chance: Chance) {
    this.#chance = chance;
  }

  deed(deed: SafetyDeed, view: View): Asked | null {
    switch (deed) {
      case 'look':
        return this.#look(view);
      case 'mend':
        return this.#mend(view);
      case 'sell':
        return this.#sell(view);
      case 'receive':
        return this.#receive();
      case 'hurry':
        return this.#hurry(view);
      default:
        return deed satisfies never;
    }
  }

  #look({ checks }: View): Asked | null {
    const open = checks.filter(({ hasReading, on }) => hasReading || on.kind === 'clean');
    if (open.length === 0) return null;
    const check = this.#chance.oneOf(open);
    const { on, hasReading } = check;
    const isGood = this.#chance.happens(GOOD_SHARE);
    const tempC = hasReading ? this.#shown(check, isGood) : null;
    const intent: Intent = { kind: 'check', on, tempC, thermometer: null };
    return { intent, as: isGood || !hasReading ? 'looked at' : 'found wrong' };
  }

  #shown({ atLeastC, atMostC }: CheckView, isGood: boolean): Celsius {
    const chance = this.#chance;
    if (!isGood && chance.happens(SLIP_SHARE)) return celsius(chance.between(300, 500));
    const by = isGood ? chance.between(1.5, 8) : -chance.between(0.5, 20);
    if (atLeastC !== null) return celsius(atLeastC + by);
    return celsius((atMostC ?? 4) - by);
  }

  #mend({ checks }: View): Asked | null {
    const open = checks.filter(({ allowed }) => allowed.length > 0);
    const wrong = open.filter(({ failed, isMending }) => failed || isMending);
    const among = wrong.length > 0 && this.#chance.happens(0.9) ? wrong : open;
    if (among.length === 0) return null;
    const { on, allowed } = this.#chance.oneOf(among);
    const action = this.#chance.oneOf(allowed);
    return { intent: { kind: 'correct', on, action }, as: 'put right' };
  }

  #sell({ services }: View): Asked | null {
    if (services.length === 0) return null;
    const { id: service } = this.#chance.oneOf(services);
    const dish = this.#chance.oneOf(catalogue.dishes).id as DishId;
    const sold = this.#chance.below(30);
    return { intent: { kind: 'sold', service, dish, sold }, as: 'sold' };
  }

  /** Begins what a limit bars, as if it did not. */
  #hurry(view: View): Asked | null {
    const tasks = isWork(view) ? view.tasks : [];
    const barred = tasks.filter(({ because }) => because?.kind === 'barred');
    if (barred.length === 0) return null;
    const { id: task } = this.#chance.oneOf(barred);
    return { intent: { kind: 'start', task }, as: 'tapped wrong' };
  }

  #receive(): Asked {
    const cut = this.#chance.oneOf(catalogue.cuts).id as CutId;
    const pieces = 1 + this.#chance.below(6);
    const tempC = celsius(this.#chance.between(0, 8));
    const intent: Intent = {
      ...{ kind: 'receive', cut, pieces, weightKg: kilograms(pieces * 2), supplier: 'made up' },
      ...{ tempC, useBy: null, code: null, isSo: true },
    };
    return { intent, as: 'tapped' };
  }
}
