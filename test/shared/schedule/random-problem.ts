import fc from 'fast-check';
import { must, seconds } from '../../../shared/kernel/index.ts';
import type {
  Activity,
  Clash,
  End,
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
 * Small problems with every feature of the model: units and pools, calendars of both, a fire and a
 * table that is washed, modes, clashes, waits that take up room, lags between any two ends, least
 * and most, releases, deadlines, and goals of several services, each with its weight. Due from
 * second 150 on, some cannot be planned; from 400 on, few.
 */
export const randomProblem = ({ dueS }: { dueS: number }): fc.Arbitrary<Problem> =>
  fc
    .array(fc.array(step(dueS), { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 })
    .chain((chains) =>
      fc
        .record({
          chains: fc.constant(chains),
          lags: fc.array(gap(30), { minLength: 20, maxLength: 20 }),
          cross: fc.array(fc.record({ a: fc.nat(30), b: fc.nat(30), gap: gap(60) }), {
            maxLength: 2,
          }),
          clashes: fc.array(fc.tuple(fc.nat(30), fc.nat(30), fc.nat(5), fc.nat(20)), {
            maxLength: 2,
          }),
          dues: fc.array(due(dueS), { minLength: 4, maxLength: 4 }),
          opening: opening(),
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
  return fc
    .record({
      length: length(),
      needs: fc.array(someNeed(), { maxLength: 2 }),
      fire: fc.option(fc.constantFrom('hot', 'low'), { nil: undefined, freq: 2 }),
      board: fc.option(fc.constantFrom('raw', 'ready'), { nil: undefined, freq: 1 }),
    })
    .map(({ length, needs, fire, board }) => ({
      id,
      length,
      // At a table that is as it must be: it is washed in between.
      needs: board ? [...needs, need(['table'])] : needs,
      states: [
        ...(fire ? [{ resource: resourceId('fire'), state: fire }] : []),
        ...(board ? [{ resource: resourceId('board'), state: board }] : []),
      ],
    }));
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

function gap(roomMostS: number): fc.Arbitrary<Gap> {
  const others = ['start-start', 'end-end', 'start-end'];
  return fc.record({
    minS: fc.oneof(fc.constant(0), fc.nat(8)),
    roomS: fc.option(fc.oneof(fc.constant(0), fc.nat(roomMostS)), { nil: undefined }),
    ends: fc.constantFrom('end-start', 'end-start', 'end-start', 'end-start', ...others),
  });
}

/** When the last step of a chain is due, and the one before it perhaps, for another service. */
function due(dueS: number): fc.Arbitrary<Due> {
  return fc.record({
    atS: fc.integer({ min: dueS, max: dueS + 250 }),
    weight: fc.integer({ min: 1, max: 5 }),
    before: fc.option(fc.constantFrom('start', 'end'), { nil: undefined, freq: 1 }),
  });
}

/** How fire and table are found, and whether the shelf is shut for a while. */
function opening(): fc.Arbitrary<Opening> {
  return fc.record({
    fire: fc.option(fc.constantFrom('hot', 'low'), { nil: undefined }),
    board: fc.option(fc.constantFrom('raw', 'ready'), { nil: undefined }),
    isShut: fc.boolean(),
  });
}

type Gap = { readonly minS: number; readonly roomS: number | undefined; readonly ends: string };
type Due = { readonly atS: number; readonly weight: number; readonly before: End | undefined };
type Opening = {
  readonly fire: string | undefined;
  readonly board: string | undefined;
  readonly isShut: boolean;
};

type Parts = {
  readonly chains: readonly (readonly Step[])[];
  readonly lags: readonly Gap[];
  readonly cross: readonly { readonly a: number; readonly b: number; readonly gap: Gap }[];
  readonly clashes: readonly (readonly [number, number, number, number])[];
  readonly dues: readonly Due[];
  readonly opening: Opening;
};

function assembled({ chains, lags, cross, clashes, dues, opening }: Parts): Problem {
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
      return lagOf(name(chain, i), name(chain, i + 1), must(lags[chain * 4 + i], 'a lag'));
    }),
  );
  // From an earlier activity to a later one of the list, so that no circle arises.
  const ordered = ([a, b]: readonly [number, number]) =>
    [a % activities.length, b % activities.length].sort((x, y) => x - y) as [number, number];
  const across = cross.flatMap(({ a, b, gap }) => {
    const [first, second] = ordered([a, b]);
    const [from, to] = [activities[first]?.id ?? '', activities[second]?.id ?? ''];
    return first === second ? [] : [lagOf(from, to, gap)];
  });
  return problem({
    horizonS: seconds(1000),
    activities,
    lags: [...inChain, ...across],
    resources: resources(opening),
    clashes: clashes.flatMap(([a, b, fromS, lengthS]) => {
      const [first, second] = ordered([a, b]);
      const [upper, lower] = [activities[first], activities[second]];
      return upper && lower && first !== second ? [clash(upper, lower, fromS, lengthS)] : [];
    }),
    goals: chains.flatMap((steps, chain) => {
      const { atS, weight, before } = must(dues[chain], 'a due date');
      const last = { ...goal(name(chain, steps.length - 1), atS), weight };
      const earlier = before && steps.length > 1 ? goal(name(chain, steps.length - 2), atS) : null;
      return earlier && before ? [{ ...earlier, end: before }, last] : [last];
    }),
  });
}

function lagOf(from: string, to: string, { minS, roomS, ends }: Gap): Lag {
  const [first, second] = ends.split('-');
  return lag(
    `${from}.${first}`,
    `${to}.${second}`,
    minS,
    roomS === undefined ? undefined : minS + roomS,
  );
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

function resources({ fire, board, isShut }: Opening): Resource[] {
  return [
    unit('ana', [
      [0, 90],
      [100, 180],
      [190, 420],
    ]),
    unit('ben', [[20, 500]]),
    unit('rack'),
    unit('table'),
    isShut
      ? pool('shelf', 3, [
          [0, 150],
          [170, 600],
        ])
      : pool('shelf', 3),
    pool('pan', 4),
    {
      kind: 'state',
      id: resourceId('fire'),
      changes: [
        { from: 'low', to: 'hot', takesS: seconds(5) },
        { from: 'hot', to: 'low', takesS: seconds(9) },
      ],
      defaultChangeS: seconds(3),
      ...(fire ? { initial: fire } : {}),
    },
    {
      kind: 'state',
      id: resourceId('board'),
      changes: [{ from: 'raw', to: 'ready', takesS: seconds(7) }],
      defaultChangeS: seconds(0),
      ...(board ? { initial: board } : {}),
    },
  ];
}
