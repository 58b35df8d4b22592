import type { ActivityId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Problem, ResourceId } from './model.ts';

/** Numbers for the ids of a problem, in the order in which it lists them. */
export type Index = {
  activity(id: ActivityId): number;
  resource(id: ResourceId): number;
};

/** Numbers the activities and resources of a well-formed problem. */
export function indexOf(problem: Problem): Index {
  const activities = new Map(problem.activities.map(({ id }, i) => [id, i]));
  const resources = new Map(problem.resources.map(({ id }, i) => [id, i]));
  return {
    activity: (id) => must(activities.get(id), id),
    resource: (id) => must(resources.get(id), id),
  };
}
