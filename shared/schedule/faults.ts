import type { Conflict } from './model.ts';

export type Fault = Extract<Conflict, { kind: 'malformed' }>;

/** One thing that is wrong, and where. */
export const fault = (where: string, what: string): Fault[] => [{ kind: 'malformed', where, what }];

/** Whole seconds or amounts, from `least` on. */
export function whole(where: string, value: number, least?: number): Fault[] {
  const range = least === undefined ? '' : ` from ${least}`;
  const holds = Number.isSafeInteger(value) && value >= (least ?? Number.NEGATIVE_INFINITY);
  return holds ? [] : fault(where, `is ${value}, not a whole number${range}`);
}

/** An id that is among those given. */
export function known(where: string, id: string, ids: ReadonlySet<string>): Fault[] {
  return ids.has(id) ? [] : fault(where, `names ${id}, which is not there`);
}

/** Not turned round; what is left out is not judged. */
export function ordered(where: string, low: number | undefined, high: number | undefined): Fault[] {
  if (low === undefined || high === undefined || low <= high) return [];
  return fault(where, `goes from ${low} to ${high}`);
}

/** Ids that are given more than once. */
export function twice(where: string, things: readonly { readonly id: string }[]): Fault[] {
  const seen = new Set<string>();
  const again = new Set<string>();
  for (const { id } of things) (seen.has(id) ? again : seen).add(id);
  return [...again].flatMap((id) => fault(where, `name ${id} more than once`));
}
