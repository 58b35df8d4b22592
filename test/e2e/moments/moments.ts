import { demoLog } from '../../../server/demo/index.ts';
import type { DayState, Intent, Live } from '../../../shared/day/index.ts';
import { factsOf, openLive } from '../../../shared/day/index.ts';
import type { Instant, Seconds, StationId, TaskId } from '../../../shared/kernel/index.ts';
import {
  after,
  celsius,
  hours,
  instant,
  minutes,
  must,
  seeded,
} from '../../../shared/kernel/index.ts';
import type { Face, StationView, View } from '../../../shared/view/index.ts';
import { stationPage, viewOf } from '../../../shared/view/index.ts';
import { plan, Telling } from '../../shared/day/demo.ts';
import { clearWhatIsOld, salesOf } from './sales.ts';

/** A wall of one station, the pit, the pass, and one that a small kitchen has for two stations. */
export type WallOf = 'station' | 'smoker' | 'pass' | 'shared';

/** A day of the invented kitchen as it stands at one moment, on each wall. */
export type Moment = {
  readonly at: Instant;
  /** What happened a minute ago that nobody had planned; nothing, most of the time. */
  readonly trouble: string;
  readonly views: Readonly<Record<WallOf, View>>;
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

/**
 * Twenty moments from the first work of a day to its end, each just after somebody has begun
 * something: the station is the one that has most in hand and was seldom looked at before.
 */
export function twentyMoments(): Moment[] {
  const random = seeded(SEED);
  const ends = must(built.services.at(-1), 'a service').closesAt;
  const work = demoLog(plan, { now: ends, seed: SEED });
  const taps = [...work, ...salesOf(plan, SEED)].sort((a, b) => a.at - b.at);
  const begins = must(work[0], 'a tap').at;
  const starts = work.filter(({ intent }) => intent.kind === 'start').map(({ at }) => at);
  const told = new Telling();
  const seen = new Map<StationId, number>();
  let next = 0;
  return Array.from({ length: COUNT }, (_, n) => {
    const about = begins + ((n + 0.1 + 0.6 * random()) / COUNT) * (ends - begins);
    const at = wholeMinute((starts.find((start) => start >= about) ?? about) + 60_000);
    const before = after(at, minutes(-1) as Seconds);
    for (let tap = taps[next]; tap && tap.at <= before; tap = taps[++next]) {
      told.ask(tap.intent, tap.at, tap.personId);
    }
    clearWhatIsOld(told, before, hand);
    // Every other moment is an ordinary one.
    const trouble = n % 2 === 0 ? null : must(TROUBLES[((n - 1) / 2) % 4], 'a trouble');
    const isTold = trouble?.tell(told, before) ?? false;
    const views = viewsOf(openLive(told.state, at), seen);
    trouble?.end?.(told, at);
    return { at, trouble: isTold && trouble ? trouble.name : '', views };
  });
}

/** All walls at a moment. `seen`: how often each station was looked at, which it counts. */
function viewsOf(live: Live, seen: Map<StationId, number>): Moment['views'] {
  const shown = (face: Face) => viewOf(live, face);
  const [first, second] = stations
    .map(({ id }) => {
      const seldom = -0.4 * (seen.get(id) ?? 0);
      return { id, rank: inHand(shown({ kind: 'station', station: id }) as StationView) + seldom };
    })
    .sort((a, b) => b.rank - a.rank);
  const station = must(first, 'a station').id;
  seen.set(station, (seen.get(station) ?? 0) + 1);
  return {
    station: shown({ kind: 'station', station }),
    smoker: shown({ kind: 'smoker' }),
    pass: shown({ kind: 'pass' }),
    shared: shown({ kind: 'station', station, beside: [must(second, 'a station').id] }),
  };
}

/** How many of its tasks need a hand now. */
function inHand(view: StationView): number {
  const room = { now: 3, next: 0, further: 0 };
  return stationPage(view, view.at, { room, held: new Set() }).now.filter(({ isDue }) => isDue)
    .length;
}

const wholeMinute = (ms: number) => instant(Math.ceil(ms / 60_000) * 60_000);
