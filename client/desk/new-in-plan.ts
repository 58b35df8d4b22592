import type { PlannedDish } from '../../shared/protocol/index.ts';

/** A dish as it comes into a plan, for somebody to say more of it. */
export function newDish(id: string): PlannedDish {
  const sales = { by: 'shape', portions: 10, shape: 'even' } as const;
  return { dish: id as PlannedDish['dish'], sales, choices: {}, hands: {} };
}

/** The same day of the next week; what is no day stays as it is. */
export function weekAfter(day: string): string {
  const at = new Date(`${day}T12:00:00Z`);
  if (Number.isNaN(at.getTime())) return day;
  at.setUTCDate(at.getUTCDate() + 7);
  return at.toISOString().slice(0, 10);
}
