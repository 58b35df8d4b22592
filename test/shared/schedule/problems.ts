import type { ActivityId } from '../../../shared/kernel/index.ts';
import { seconds } from '../../../shared/kernel/index.ts';
import type {
  Activity,
  CapacityResource,
  Goal,
  GoalId,
  Lag,
  Length,
  Mode,
  Need,
  Problem,
  ResourceId,
} from '../../../shared/schedule/index.ts';

/** Short ways to write small problems by hand. Times are bare seconds here, for the eye. */
export const activityId = (name: string) => name as ActivityId;
export const resourceId = (name: string) => name as ResourceId;
export const goalId = (name: string) => name as GoalId;

export const work = (typicalS: number): Length => ({
  kind: 'work',
  lowS: seconds(typicalS),
  typicalS: seconds(typicalS),
  highS: seconds(typicalS),
});

export const wait = (minS: number, maxS: number, aimS?: number): Length => ({
  kind: 'wait',
  minS: seconds(minS),
  maxS: seconds(maxS),
  ...(aimS === undefined ? {} : { aimS: seconds(aimS) }),
});

/** One of these resources, or so much of one of them. */
export const need = (oneOf: readonly string[], amount = 1, role = oneOf.join('/')): Need => ({
  role,
  amount,
  oneOf: oneOf.map(resourceId),
});

export const mode = (length: Length, needs: readonly Need[] = [], id = 'only'): Mode => ({
  id,
  length,
  needs,
  states: [],
});

export const activity = (
  id: string,
  length: Length,
  needs: readonly Need[] = [],
  more: Partial<Activity> = {},
): Activity => ({ id: activityId(id), modes: [mode(length, needs)], ...more });

export const unit = (id: string, open?: readonly (readonly [number, number])[]) =>
  pool(id, 1, open);

export const pool = (
  id: string,
  capacity: number,
  open?: readonly (readonly [number, number])[],
): CapacityResource => ({
  kind: 'capacity',
  id: resourceId(id),
  capacity,
  ...(open
    ? { open: open.map(([start, end]) => ({ start: seconds(start), end: seconds(end) })) }
    : {}),
});

/** From an end to an end, written `'rub.end'`. */
export function lag(from: string, to: string, minS?: number, maxS?: number, reason = 'step'): Lag {
  const end = (text: string): Lag['from'] => {
    const [name = '', which] = text.split('.');
    return { activity: activityId(name), end: which === 'start' ? 'start' : 'end' };
  };
  return {
    from: end(from),
    to: end(to),
    ...(minS === undefined ? {} : { minS: seconds(minS) }),
    ...(maxS === undefined ? {} : { maxS: seconds(maxS) }),
    reason,
  };
}

export const goal = (name: string, dueS: number, end: Goal['end'] = 'end'): Goal => ({
  id: goalId(name),
  activity: activityId(name),
  end,
  dueS: seconds(dueS),
  weight: 1,
});

export const problem = (parts: Partial<Problem> & Pick<Problem, 'activities'>): Problem => ({
  horizonS: seconds(100_000),
  lags: [],
  resources: [],
  clashes: [],
  goals: [],
  ...parts,
});
