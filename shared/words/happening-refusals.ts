import type { HappeningRefusal } from '../day/index.ts';
import type { Instant, Kilograms } from '../kernel/index.ts';
import type { Breach, Refusal, Text } from '../view/index.ts';
import { clockTime } from './amounts.ts';
import { sayBreach } from './check-refusals.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { scaleWeight } from './scale-weight.ts';
import { inEach } from './tongue.ts';

const phrases = inEach('happening');

/** Says what is odd of what came, where there are words for it: only a desk takes in anything. */
export const oddSayer: { say?: (refusal: HappeningRefusal, say: Say) => string } = {};

/** Whether a refusal is about what happens to the day besides its tasks. */
export function isHappeningRefusal(
  refusal: Refusal,
  say: Pick<Say, 'language'>,
): refusal is HappeningRefusal {
  return Object.hasOwn(phrases[say.language], refusal.rule);
}

/** Whatever a refusal of this kind may name. */
type Parts = {
  readonly rule: string;
  readonly smoker?: { readonly name: Text };
  readonly person?: { readonly name: string };
  readonly by?: { readonly name: string } | null;
  readonly at?: Instant;
  readonly since?: Instant;
  readonly amount?: number;
  readonly lot?: string;
  readonly cut?: Text;
  readonly useBy?: string;
  readonly mix?: Text;
  readonly weightKg?: Kilograms;
  readonly breach?: Breach;
};

/** Why it could not be kept or undone, as one plain sentence. */
export function sayHappeningRefusal(refusal: HappeningRefusal, say: Say): string {
  const of: Parts = refusal;
  const at = of.at ?? of.since;
  return phrases[say.language][refusal.rule]({
    smoker: of.smoker ? textIn(of.smoker.name, say) : '',
    person: (of.person ?? of.by)?.name ?? '',
    time: at ? clockTime(at, say) : '',
    amount: `${of.amount ?? ''}`,
    lot: of.lot ?? '',
    cut: of.cut ? textIn(of.cut, say) : '',
    day: of.useBy ?? '',
    mix: of.mix ? textIn(of.mix, say) : '',
    weight: of.weightKg === undefined ? '' : scaleWeight(of.weightKg, say),
    odd: oddSayer.say?.(refusal, say) ?? '',
    row: of.breach ? sayBreach(of.breach, say) : '',
  });
}
