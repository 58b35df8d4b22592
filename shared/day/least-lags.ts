import type { TaskId } from '../kernel/index.ts';
import type { Lag, Link } from '../schedule/index.ts';
import type { PlanIndex } from './plan-index.ts';

/** A lag with a least, or the order that sharing something makes. */
export type LeastLag = Pick<Lag, 'from' | 'to'> & { readonly minS: NonNullable<Lag['minS']> };

/** The lags into a task, those that these links into it make among them. */
export function leastLagsInto(
  index: PlanIndex,
  links: readonly Link[],
  task: TaskId,
): readonly LeastLag[] {
  const lags = (index.lagsInto.get(task) ?? []).flatMap(({ from, to, minS }) =>
    minS === undefined ? [] : [{ from, to, minS }],
  );
  const orders = links.map(({ from, to, gapS, after }) => ({
    from: { activity: from, end: after ?? ('end' as const) },
    to: { activity: to, end: 'start' as const },
    minS: gapS,
  }));
  return [...lags, ...orders];
}
