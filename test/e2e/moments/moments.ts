import { demoLog } from '../../../server/demo/index.ts';
import type { DayState, Intent } from '../../../shared/day/index.ts';
import { factsOf, openLive } from '../../../shared/day/index.ts';
import type { Instant, Seconds, TaskId } from '../../../shared/kernel/index.ts';
import {
  after,
  celsius,
  hours,
  instant,
  minutes,
  must,
  seeded,
} from '../../../shared/kernel/index.ts';
import type { Face, View } from '../../../shared/view/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { plan, Telling } from '../../shared/day/demo.ts';

/** A day of the invented kitchen as it stands at one moment, on each wall. */
export type Moment = {
  readonly at: Instant;
  /** What happened a minute ago that nobody had planned; nothing, most of the time. */
  readonly trouble: string;
  readonly views: Readonly<Record<'station' | 'smoker', View>>;
};

const SEED = 20;
const COUNT = 20;
const { built } = plan;
const { stations, smokers, crew } = plan.kitchen;

type Trouble = {
  readonly name: string;
  /** Told a minute before it is looked at; false where the moment has no place for it. */
  tell(told: Telling, at: Instant): boolean;
  /** Told once that moment is over. */
  end?(told: Telling, at: Instant): void;
};

const hand = must(crew[0], 'a hand').id;
const smoker = must(smokers[0], 'a smoker').id;

/** What goes otherwise than planned. */
const TROUBLES: readonly Trouble[] = [
  {
    name: 'a task runs late',
    tell: (told, at) => ofRunning(told, at, (task) => ({ kind: 'late', task, byS: minutes(15) })),
  },
  {
    name: 'somebody asks for help',
    tell: (told, at) => ofRunning(told, at, (task) => ({ kind: 'needHelp', task })),
  },
  {
    name: 'a hand is out',
    tell: (told, at) => told.ask({ kind: 'handOut', hand, backAt: after(at, hours(1)) }, at).ok,
    end: (told, at) => told.ask({ kind: 'handIn', hand }, at),
  },
  {
    name: 'a smoker runs cold',
    tell: (told, at) => told.ask({ kind: 'smokerCold', smoker, tempC: celsius(80) }, at).ok,
    end: (told, at) => told.ask({ kind: 'smokerUp', smoker, tempC: celsius(107) }, at),
  },
];

function ofRunning(told: Telling, at: Instant, intent: (task: TaskId) => Intent): boolean {
  const task = runningOf(told.state);
  return task !== null && told.ask(intent(task), at).ok;
}

const runningOf = (state: DayState) =>
  built.tasks.find(({ id, work }) => {
    const { started, finished } = factsOf(state, id);
    return work === 'hands' && started !== null && finished === null;
  })?.id ?? null;

/** Twenty moments from the first work of a day to its end, another station in each. */
export function twentyMoments(): Moment[] {
  const random = seeded(SEED);
  const ends = must(built.services.at(-1), 'a service').closesAt;
  const taps = demoLog(plan, { now: ends, seed: SEED });
  const begins = must(taps[0], 'a tap').at;
  const told = new Telling();
  let next = 0;
  return Array.from({ length: COUNT }, (_, n) => {
    const share = (n + 0.1 + 0.8 * random()) / COUNT;
    const at = wholeMinute(begins + share * (ends - begins));
    for (let tap = taps[next]; tap && tap.at < at; tap = taps[++next]) {
      told.ask(tap.intent, tap.at, tap.personId);
    }
    // Every other moment is an ordinary one.
    const trouble = n % 2 === 0 ? null : must(TROUBLES[((n - 1) / 2) % 4], 'a trouble');
    const isTold = trouble?.tell(told, after(at, minutes(-1) as Seconds)) ?? false;
    const live = openLive(told.state, at);
    const shown = (face: Face) => viewOf(live, face);
    const station = must(stations[n % stations.length], 'a station').id;
    const views = {
      station: shown({ kind: 'station', station }),
      smoker: shown({ kind: 'smoker' }),
    };
    trouble?.end?.(told, at);
    return { at, trouble: isTold && trouble ? trouble.name : '', views };
  });
}

const wholeMinute = (ms: number) => instant(Math.round(ms / 60_000) * 60_000);
