import type { Seconds, TaskId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Activity, Placement, Schedule } from '../schedule/index.ts';
import { BeforeUse } from './before-use.ts';
import type { BuiltDay, Task, Unattended } from './built.ts';
import { FreeTime } from './round-places.ts';
import { type RoundTime, roundTimes } from './round-times.ts';
import { taskId } from './task-id.ts';

/** Tasks that keep a kitchen's things up, as the schedule has them. */
export type Rounds = {
  readonly tasks: readonly Task[];
  readonly activities: readonly Activity[];
  readonly placements: readonly Placement[];
};

/** Of a running day: the rounds that were given already, and from when on others may be. */
export type RoundsSoFar = {
  readonly given: readonly Placement[];
  readonly nowS: Seconds;
};

type WithRounds = { readonly day: BuiltDay; readonly schedule: Pick<Schedule, 'placements'> };

/**
 * The day with all that its things ask for while they are in use: tasks of their own, each where
 * somebody is free near its time. What nobody is free for is said, and breaks no plan.
 */
export function withRounds(
  day: BuiltDay,
  schedule: Schedule,
  soFar: RoundsSoFar | null = null,
): WithRounds {
  const free = new FreeTime(day.problem, schedule);
  const tasks: Task[] = [];
  const activities: Activity[] = [];
  const placements: Placement[] = [];
  const unattended: Unattended[] = [];
  const beforeUse = new BeforeUse();
  const names = new Set<string>(soFar?.given.map(({ activity }) => activity));
  for (const { round, turn, time, number } of wanted(day, schedule)) {
    const { batch: upkeep, step } = round.task;
    if (soFar && isPast(taskId(upkeep, step), time, soFar)) continue;
    const id = freeName(taskId(upkeep, step), number, names);
    names.add(id);
    const inTurn = beforeUse.inTurn(round, turn, time);
    const from = soFar ? seconds(Math.max(inTurn.fromS, soFar.nowS)) : inTurn.fromS;
    const place = free.place(round.modes, { ...inTurn, fromS: from });
    if (place === null) {
      unattended.push({ upkeep, step, atS: time.atS });
    } else {
      beforeUse.put(round, turn, time, place);
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

/** Whether it was given in its time, or its time is over. */
function isPast(kind: string, { fromS, toS }: RoundTime, { given, nowS }: RoundsSoFar): boolean {
  const isSame = ({ activity }: Placement) => activity.startsWith(`${kind}-`);
  const wasGiven = given.some((each) => isSame(each) && fromS <= each.startS && each.startS <= toS);
  return wasGiven || toS <= nowS;
}

function freeName(kind: string, number: number, taken: ReadonlySet<string>): TaskId {
  let free = number;
  while (taken.has(`${kind}-${free}`)) free++;
  return `${kind}-${free}` as TaskId;
}

/** Every round of the day: those that may be moved least first, and of these the earlier. */
function wanted(day: BuiltDay, schedule: Schedule) {
  const activities = new Map(day.problem.activities.map((activity) => [activity.id, activity]));
  const room = ({ fromS, toS }: RoundTime) => toS - fromS;
  return day.upkeep
    .flatMap((upkeep) =>
      upkeep.rounds.flatMap((round, turn) =>
        roundTimes(upkeep, round, schedule, activities).map((time, index) => ({
          round,
          turn,
          time,
          number: index + 1,
        })),
      ),
    )
    .sort((a, b) => room(a.time) - room(b.time) || a.time.atS - b.time.atS);
}
