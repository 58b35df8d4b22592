import type { Seconds } from '../kernel/index.ts';
import type { Sharing } from './sharing.ts';
import { changeTimeS } from './state-change.ts';
import { inTurn, type Turn } from './turn.ts';

type Group = { readonly state: string; readonly users: number[] };

export type StateOrder = { readonly from: number; readonly to: number; readonly gapS: Seconds };

/**
 * Whoever needs one state waits for all who need the one before, and for the change: from each to
 * each, for any of them may come out of turn one day.
 */
export function stateOrder(sharing: Sharing & { kind: 'state' }, turn: Turn): StateOrder[] {
  const groups: Group[] = [];
  for (const { activity, state } of inTurn(sharing.users, turn)) {
    const last = groups.at(-1);
    if (last?.state === state) last.users.push(activity);
    else groups.push({ state, users: [activity] });
  }
  return groups.flatMap((group, i) => {
    const next = groups[i + 1];
    if (!next) return [];
    const gapS = changeTimeS(sharing.resource, group.state, next.state);
    return group.users.flatMap((from) => next.users.map((to) => ({ from, to, gapS })));
  });
}
