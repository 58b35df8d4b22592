import type { Activity, Placement, Schedule } from '../schedule/index.ts';
import type { BuiltDay, Task, Unattended } from './built.ts';
import { FreeTime } from './round-places.ts';
import { type RoundTime, roundTimes } from './round-times.ts';
import { taskId } from './task-id.ts';

type WithRounds = { readonly day: BuiltDay; readonly schedule: Pick<Schedule, 'placements'> };

/**
 * The day with all that its things ask for while they are in use: tasks of their own, each where
 * somebody is free near its time. What nobody is free for is said, and breaks no plan.
 */
export function withRounds(day: BuiltDay, schedule: Schedule): WithRounds {
  const free = new FreeTime(day.problem, schedule);
  const tasks: Task[] = [];
  const activities: Activity[] = [];
  const placements: Placement[] = [];
  const unattended: Unattended[] = [];
  for (const { round, time, number } of wanted(day, schedule)) {
    const { batch: upkeep, step } = round.task;
    const id = taskId(upkeep, `${step}-${number}`);
    const place = free.place(round.modes, time);
    if (place === null) {
      unattended.push({ upkeep, step, atS: time.atS });
    } else {
      tasks.push({ id, ...round.task });
      activities.push({ id, modes: round.modes, releaseS: time.fromS });
      placements.push({ activity: id, ...place });
    }
  }
  const { problem } = day;
  return {
    day: {
      ...day,
      tasks: [...day.tasks, ...tasks],
      problem: { ...problem, activities: [...problem.activities, ...activities] },
      unattended,
    },
    schedule: { placements: [...schedule.placements, ...placements] },
  };
}

/** Every round of the day: those that may be moved least first, and of these the earlier. */
function wanted(day: BuiltDay, schedule: Schedule) {
  const activities = new Map(day.problem.activities.map((activity) => [activity.id, activity]));
  const room = ({ fromS, toS }: RoundTime) => toS - fromS;
  return day.upkeep
    .flatMap((upkeep) =>
      upkeep.rounds.flatMap((round) =>
        roundTimes(upkeep, round, schedule, activities).map((time, index) => ({
          round,
          time,
          number: index + 1,
        })),
      ),
    )
    .sort((a, b) => room(a.time) - room(b.time) || a.time.atS - b.time.atS);
}
