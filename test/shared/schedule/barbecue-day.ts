import { minutes, pickBelow, type Random, seconds, seeded } from '../../../shared/kernel/index.ts';
import type {
  Activity,
  Goal,
  Lag,
  Length,
  Need,
  Problem,
  Resource,
} from '../../../shared/schedule/index.ts';
import { activityId, goalId, resourceId } from './problems.ts';

/** Every batch is eight steps, and a smoke of two parts makes nine. */
const STEPS = 9;
const HOUR_S = 3600;
/** The plan begins at six the evening before; services are at noon and at six. */
const SERVICES_S = [18 * HOUR_S, 24 * HOUR_S];

/**
 * A day shaped as a barbecue day: batches that go through trim, rub, a set in the cooler, smoke,
 * wrap, smoke again, rest, hold and carving, staggered before two services; hands with shifts and
 * breaks, smokers with racks and set temperatures, a cabinet and a cooler. Our own invention, and
 * sized so that hands and racks are wanted by several batches at a time.
 */
export function barbecueDay(tasks: number, seed: number): Problem {
  const random = seeded(seed);
  const batches = Math.round(tasks / STEPS);
  const kitchens = Math.max(1, Math.ceil(batches / 34));
  const resources = Array.from({ length: kitchens }, (_, k) => kitchenResources(k)).flat();
  const parts = Array.from({ length: batches }, (_, i) => {
    // By turns within each kitchen, so that none has all its batches at one service.
    const isSecond = Math.floor(i / kitchens) % 2;
    return batch(i, { k: i % kitchens, isSecond, random });
  });
  return {
    horizonS: seconds(30 * HOUR_S),
    activities: parts.flatMap(({ activities }) => activities),
    lags: parts.flatMap(({ lags }) => lags),
    resources,
    clashes: [],
    goals: parts.map(({ goal }) => goal),
  };
}

const HANDS = ['ana', 'ben', 'cal', 'dee', 'eli'];
const NIGHT_HANDS = ['fay', 'gus'];
const SMOKERS = ['a', 'b', 'c'];
const RACKS = [1, 2, 3, 4, 5];

function kitchenResources(k: number): Resource[] {
  const shift = (from: number, to: number, breakAt: number) => ({
    open: [
      { start: seconds(from * HOUR_S), end: seconds(breakAt * HOUR_S) },
      { start: seconds(breakAt * HOUR_S + 1800), end: seconds(to * HOUR_S) },
    ],
  });
  const unit = (name: string, capacity: number, open = {}): Resource => ({
    kind: 'capacity',
    id: resourceId(`${name}${k}`),
    capacity,
    ...open,
  });
  return [
    ...HANDS.map((name, i) => unit(name, 1, shift(12 + (i % 2), 26, 17 + (i % 3)))),
    ...NIGHT_HANDS.map((name, i) => unit(name, 1, shift(0, 14, 5 + i))),
    ...SMOKERS.flatMap((smoker) => RACKS.map((rack) => unit(`${smoker}/${rack}-`, 2))),
    unit('cabinet', 24),
    unit('cooler', 40),
    ...SMOKERS.map(
      (smoker): Resource => ({
        kind: 'state',
        id: resourceId(`fire-${smoker}${k}`),
        changes: [],
        defaultChangeS: minutes(30),
      }),
    ),
  ];
}

type Batch = {
  readonly activities: readonly Activity[];
  readonly lags: readonly Lag[];
  readonly goal: Goal;
};

type Where = { readonly k: number; readonly isSecond: number; readonly random: Random };

function batch(i: number, { k, isSecond, random }: Where): Batch {
  const big = pickBelow(random, 3) > 0;
  const dueS = (SERVICES_S[isSecond] ?? 0) + minutes(15 * pickBelow(random, 8));
  const smokeS = minutes(big ? 240 + 15 * pickBelow(random, 12) : 150 + 10 * pickBelow(random, 6));
  const secondS = minutes(big ? 120 + 15 * pickBelow(random, 8) : 45);
  const hands = need('hand', 1, [...HANDS, ...NIGHT_HANDS], k);
  const racks = (smoker: string) =>
    need(
      'rack',
      1 + isSecond,
      RACKS.map((rack) => `${smoker}/${rack}-`),
      k,
    );
  const smoking = (name: string, lengthS: number): Activity => ({
    id: activityId(`${name}-${i}`),
    modes: SMOKERS.map((smoker) => ({
      id: smoker,
      length: work(lengthS),
      needs: [racks(smoker)],
      states: [{ resource: resourceId(`fire-${smoker}${k}`), state: big ? 'low' : 'high' }],
    })),
  });
  const step = (name: string, length: Length, needs: readonly Need[]): Activity => ({
    id: activityId(`${name}-${i}`),
    modes: [{ id: 'only', length, needs, states: [] }],
  });
  const cooler = need('shelf', 1, ['cooler'], k);
  const cabinet = need('pan', 1, ['cabinet'], k);
  const activities = [
    step('trim', work(minutes(8 + pickBelow(random, 18))), [hands]),
    step('rub', work(minutes(4 + pickBelow(random, 8))), [hands]),
    step('set', { kind: 'wait', minS: minutes(15), maxS: minutes(720) }, [cooler]),
    smoking('smoke', smokeS),
    step('wrap', work(minutes(3 + pickBelow(random, 5))), [hands]),
    smoking('finish', secondS),
    step('rest', { kind: 'wait', minS: minutes(20), maxS: minutes(60) }, []),
    step('hold', hold(), [cabinet]),
    step('carve', work(minutes(4 + pickBelow(random, 6))), [hands]),
  ];
  const after = (a: string, b: string, most: number): Lag => ({
    from: { activity: activityId(`${a}-${i}`), end: 'end' },
    to: { activity: activityId(`${b}-${i}`), end: 'start' },
    minS: seconds(0),
    maxS: minutes(most),
    reason: 'step',
  });
  return {
    activities,
    lags: [
      after('trim', 'rub', 30),
      after('rub', 'set', 0),
      after('set', 'smoke', 0),
      after('smoke', 'wrap', 5),
      after('wrap', 'finish', 5),
      after('finish', 'rest', 0),
      after('rest', 'hold', 0),
      after('hold', 'carve', 0),
    ],
    goal: {
      id: goalId(`serve-${i}`),
      activity: activityId(`carve-${i}`),
      end: 'end',
      dueS: seconds(dueS),
      weight: 1,
    },
  };
}

const work = (typicalS: number): Length => ({
  kind: 'work',
  lowS: seconds(Math.round(typicalS * 0.8)),
  typicalS: seconds(typicalS),
  highS: seconds(Math.round(typicalS * 1.4)),
});

const hold = (): Length => ({
  kind: 'wait',
  minS: minutes(15),
  aimS: minutes(60),
  maxS: minutes(240),
});

const need = (role: string, amount: number, names: readonly string[], k: number): Need => ({
  role,
  amount,
  oneOf: names.map((name) => resourceId(`${name}${k}`)),
});
