import fc from 'fast-check';
import { seconds } from '../../../shared/kernel/index.ts';
import type {
  Activity,
  Clash,
  Lag,
  Length,
  Mode,
  Need,
  Problem,
  Resource,
} from '../../../shared/schedule/index.ts';
import {
  activityId,
  goal,
  lag,
  need,
  pool,
  problem,
  resourceId,
  unit,
  wait,
  work,
} from './problems.ts';

const UNITS = ['ana', 'ben', 'rack'];

/**
 * Small problems with every feature of the model: units and pools, calendars, states, modes,
 * clashes, waits, lags of every shape, releases, deadlines and goals. Due from second 150 on, some
 * cannot be planned; from 400 on, hardly one.
 */
export const randomProblem = ({ dueS }: { dueS: number }): fc.Arbitrary<Problem> =>
  fc
    .array(fc.array(step(dueS), { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 })
    .chain((chains) =>
      fc
        .record({
          chains: fc.constant(chains),
          lags: fc.array(gap(), { minLength: 20, maxLength: 20 }),
          cross: fc.array(fc.tuple(fc.nat(30), fc.nat(30), fc.nat(10)), { maxLength: 2 }),
          clashes: fc.array(fc.tuple(fc.nat(30), fc.nat(30), fc.nat(5), fc.nat(20)), {
            maxLength: 2,
          }),
          dues: fc.array(fc.integer({ min: dueS, max: dueS + 250 }), {
            minLength: 4,
            maxLength: 4,
          }),
          initial: fc.option(fc.constantFrom('hot', 'low'), { nil: undefined }),
        })
        .map(assembled),
    );

type Step = {
  readonly modes: readonly Mode[];
  readonly releaseS: number | undefined;
  readonly deadlineS: number | undefined;
};

function step(dueS: number): fc.Arbitrary<Step> {
  return fc.record({
    modes: fc.oneof(
      { weight: 4, arbitrary: mode('one').map((one) => [one]) },
      { weight: 1, arbitrary: fc.tuple(mode('one'), mode('two')) },
    ),
    releaseS: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined, freq: 4 }),
    deadlineS: fc.option(fc.integer({ min: dueS + 100, max: dueS + 400 }), {
      nil: undefined,
      freq: 6,
    }),
  });
}

function mode(id: string): fc.Arbitrary<Mode> {
  const state = fc.constantFrom('hot', 'low');
  return fc.record({
    id: fc.constant(id),
    length: length(),
    needs: fc.array(someNeed(), { maxLength: 2 }),
    states: fc
      .option(state, { nil: undefined, freq: 2 })
      .map((name) => (name ? [{ resource: resourceId('fire'), state: name }] : [])),
  });
}

function length(): fc.Arbitrary<Length> {
  return fc.oneof(
    { weight: 2, arbitrary: fc.integer({ min: 0, max: 20 }).map(work) },
    {
      weight: 1,
      arbitrary: fc
        .tuple(fc.nat(6), fc.nat(40), fc.nat(20))
        .map(([minS, more, aimS]) => wait(minS, minS + more, Math.min(aimS, minS + more))),
    },
  );
}

function someNeed(): fc.Arbitrary<Need> {
  return fc.oneof(
    fc.subarray(UNITS, { minLength: 1 }).map((names) => need(names)),
    fc.integer({ min: 1, max: 3 }).map((amount) => need(['shelf', 'pan'], amount)),
    fc.integer({ min: 1, max: 2 }).map((amount) => need(['pan'], amount)),
  );
}

function gap() {
  return fc.record({
    minS: fc.oneof(fc.constant(0), fc.nat(8)),
    roomS: fc.option(fc.oneof(fc.constant(0), fc.nat(30)), { nil: undefined }),
    ends: fc.constantFrom('end-start', 'end-start', 'end-start', 'start-start', 'end-end'),
  });
}

type Parts = {
  readonly chains: readonly (readonly Step[])[];
  readonly lags: readonly { minS: number; roomS: number | undefined; ends: string }[];
  readonly cross: readonly (readonly [number, number, number])[];
  readonly clashes: readonly (readonly [number, number, number, number])[];
  readonly dues: readonly number[];
  readonly initial: string | undefined;
};

function assembled({ chains, lags, cross, clashes, dues, initial }: Parts): Problem {
  const name = (chain: number, i: number) => `${'abcd'[chain]}${i}`;
  const activities = chains.flatMap((steps, chain) =>
    steps.map(
      ({ modes, releaseS, deadlineS }, i): Activity => ({
        id: activityId(name(chain, i)),
        modes,
        ...(releaseS === undefined ? {} : { releaseS: seconds(releaseS) }),
        ...(deadlineS === undefined ? {} : { deadlineS: seconds(deadlineS) }),
      }),
    ),
  );
  const inChain = chains.flatMap((steps, chain) =>
    steps.slice(1).map((_, i): Lag => {
      const { minS, roomS, ends } = lags[chain * 4 + i] ?? { minS: 0, roomS: 0, ends: 'end-start' };
      const [from, to] = ends.split('-');
      const maxS = roomS === undefined ? undefined : minS + roomS;
      return lag(`${name(chain, i)}.${from}`, `${name(chain, i + 1)}.${to}`, minS, maxS);
    }),
  );
  // From an earlier activity to a later one of the list, so that no circle arises.
  const ordered = ([a, b]: readonly [number, number]) =>
    [a % activities.length, b % activities.length].sort((x, y) => x - y) as [number, number];
  const across = cross.flatMap(([a, b, minS]) => {
    const [first, second] = ordered([a, b]);
    const [from, to] = [activities[first]?.id, activities[second]?.id];
    return first === second ? [] : [lag(`${from}.start`, `${to}.start`, minS)];
  });
  return problem({
    horizonS: seconds(1000),
    activities,
    lags: [...inChain, ...across],
    resources: resources(initial),
    clashes: clashes.flatMap(([a, b, fromS, lengthS]) => {
      const [first, second] = ordered([a, b]);
      const [upper, lower] = [activities[first], activities[second]];
      return upper && lower && first !== second ? [clash(upper, lower, fromS, lengthS)] : [];
    }),
    goals: chains.map((steps, chain) => goal(name(chain, steps.length - 1), dues[chain] ?? 400)),
  });
}

function clash(upper: Activity, lower: Activity, fromS: number, lengthS: number): Clash {
  return {
    upper: {
      activity: upper.id,
      part: { fromS: seconds(fromS), ...(lengthS ? { toS: seconds(fromS + lengthS) } : {}) },
    },
    lower: { activity: lower.id, part: { fromS: seconds(0) } },
    places: [
      [resourceId('pan'), resourceId('shelf')],
      [resourceId('rack'), resourceId('pan')],
      [resourceId('pan'), resourceId('pan')],
    ],
    reason: 'drips',
  };
}

function resources(initial: string | undefined): Resource[] {
  return [
    unit('ana', [
      [0, 90],
      [100, 180],
      [190, 420],
    ]),
    unit('ben', [[20, 500]]),
    unit('rack'),
    pool('shelf', 3),
    pool('pan', 4),
    {
      kind: 'state',
      id: resourceId('fire'),
      changes: [
        { from: 'low', to: 'hot', takesS: seconds(5) },
        { from: 'hot', to: 'low', takesS: seconds(9) },
      ],
      defaultChangeS: seconds(3),
      ...(initial ? { initial } : {}),
    },
  ];
}
