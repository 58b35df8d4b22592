import { BY } from './by.ts';
import { UNBOUND } from './live-net.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';
import type { Doubt } from './rule-types.ts';

/** What a node is asked by an arc, or its length, from a time; `UNBOUND` where that holds not. */
export function askedOf(rule: Rule, { to, by }: Step, fromS: number): number {
  const { facts, arcs } = rule;
  const activity = to >> 1;
  if (rule.isFact(to)) return UNBOUND;
  if (by === BY.length) return fromS + at(facts.minS, activity);
  if (!rule.holds(by)) return UNBOUND;
  const askedS = fromS + at(arcs.weightS, by);
  if (rule.toOf(by) === to) return askedS;
  return rule.isDriven(activity) ? askedS - at(facts.maxS, activity) : UNBOUND;
}

/** What asks a node: an arc into it or into the far end that drives it on, or its length. */
export type Step = { readonly to: number; readonly by: number };

/** By how much an arc asks for more than the node has that it leads to; nought if it does not. */
export function moreByArcS(rule: Rule, arc: number): number {
  const to = rule.toOf(arc);
  if (rule.isFact(to) || !rule.holds(arc)) return 0;
  const askedS = at(rule.timeS, rule.fromOf(arc)) + at(rule.arcs.weightS, arc);
  return moreS(rule, to, askedS, rule.isPutToHours(arc));
}

/** By how much one who was not believed still asks for more; nought or less if he does not. */
export function moreByDoubtS(rule: Rule, { self, from, by }: Doubt): number {
  const askedS = askedOf(rule, { to: self, by }, at(rule.timeS, from));
  return moreS(rule, self, askedS, by >= 0 && rule.isPutToHours(by));
}

/**
 * By how much that is more than a node has, or the near end that it drives on; nought or less if it
 * is not. Where a maximum has put work outside its hours, less than its time may be more, if it is
 * put to hours itself and fits no longer before their end.
 */
export function moreS(rule: Rule, node: number, askedS: number, isPutToHours: boolean): number {
  const farMoreS = askedS - at(rule.timeS, node);
  const activity = node >> 1;
  const near = activity * 2;
  const isFar = node !== near;
  if (isFar && !rule.isDriven(activity)) return farMoreS;
  const nearS = isFar ? askedS - at(rule.facts.maxS, activity) : askedS;
  const asMuchS = Math.max(farMoreS, nearS - at(rule.timeS, near));
  if (!isPutToHours || (asMuchS <= 0 && !isOutOfHours(rule, near))) return asMuchS;
  return Math.max(asMuchS, rule.inHours(activity, nearS) - at(rule.timeS, near));
}

/** Whether a maximum has put the near end of work where it may be outside its hours. */
export function isOutOfHours(rule: Rule, near: number): boolean {
  const { net } = rule;
  const by = at(rule.by, near);
  if (by < 0 || rule.isPutToHours(by)) return false;
  return net.hours[near >> 1] !== undefined && net.isWork[near >> 1] === 1;
}
