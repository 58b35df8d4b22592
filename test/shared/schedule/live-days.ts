import { seconds } from '../../../shared/kernel/index.ts';
import {
  chain,
  createTimeline,
  type Placement,
  type Problem,
  type Timeline,
} from '../../../shared/schedule/index.ts';
import { activityId, resourceId } from './problems.ts';

/** A placement that fills its one need, if it has one. */
export const put = (id: string, startS: number, endS: number, resource?: string): Placement => ({
  activity: activityId(id),
  mode: 'only',
  startS: seconds(startS),
  endS: seconds(endS),
  uses: resource === undefined ? [] : [{ need: 0, resource: resourceId(resource) }],
});

/** The live day of placements, in the order their starts make. */
export const live = (day: Problem, placements: readonly Placement[]) =>
  createTimeline(day, { placements, links: chain(day, placements) });

/** When something is expected to begin and to end. */
export const spanOf = (timeline: Timeline, id: string) => {
  const { startS, endS } = timeline.times(activityId(id));
  return [startS, endS];
};
