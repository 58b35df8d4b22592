import { must, seconds } from '../kernel/index.ts';
import { chain } from './chain.ts';
import { indexOf } from './index-of.ts';
import type { Placement, Problem, Schedule } from './model.ts';
import type { Net, Slot } from './net.ts';

/** The schedule that slots make, one for each activity, with the links between them. */
export function scheduleOf(problem: Problem, slots: readonly (Slot | undefined)[]): Schedule {
  const placements = problem.activities.map((activity, i): Placement => {
    const { mode, startS, endS, uses } = must(slots[i], activity.id);
    return {
      activity: activity.id,
      mode: must(activity.modes[mode.index], activity.id).id,
      startS: seconds(startS),
      endS: seconds(endS),
      uses: uses.map((resource, need) => ({
        need,
        resource: must(problem.resources[resource], activity.id).id,
      })),
    };
  });
  return { placements, links: chain(problem, placements) };
}

/** The slots of a schedule; undefined where a net leaves its waits less or more than they have. */
export function slotsOf(problem: Problem, net: Net, { placements }: Schedule): Slot[] | undefined {
  const index = indexOf(problem);
  const slots: Slot[] = [];
  for (const { activity: id, mode: modeId, startS, endS, uses } of placements) {
    const activity = index.activity(id);
    const number = problem.activities[activity]?.modes.findIndex((each) => each.id === modeId);
    const mode = net.modes[activity]?.find((each) => each.index === number);
    if (!mode || endS - startS < mode.minS || endS - startS > mode.maxS) return undefined;
    const resourceOf = (need: number) =>
      index.resource(
        must(
          uses.find((use) => use.need === need),
          id,
        ).resource,
      );
    slots[activity] = { mode, startS, endS, uses: mode.needs.map((_, need) => resourceOf(need)) };
  }
  return slots;
}
