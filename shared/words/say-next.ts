import type { Person, TaskView } from '../view/index.ts';
import { sayBecause } from './reasons.ts';
import type { Say } from './say.ts';
import { ui } from './ui.ts';

/** Of a task to come: that it can start or what it waits for, and whose it is. */
export function sayNextWhy(
  { state, because, hand }: TaskView,
  people: readonly Person[],
  say: Say,
): string {
  // A reason that names who it hangs on, or what nobody can help, needs no other name beside it.
  const isWhole = because !== null && ['hand', 'out', 'down', 'shift'].includes(because.kind);
  if (state === 'waiting' && isWhole) return sayBecause(because, say);
  // The time of the plan is at the left already.
  const isTold = state === 'waiting' && because !== null && because.kind !== 'plan';
  const waitsFor = isTold ? sayBecause(because, say) : '';
  const who = people.find(({ id }) => id === hand)?.name;
  return [state === 'ready' ? ui[say.language].ready : waitsFor, who].filter(Boolean).join(' · ');
}
