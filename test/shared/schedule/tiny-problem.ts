import fc from 'fast-check';
import { seconds } from '../../../shared/kernel/index.ts';
import type { Mode, Problem, Resource } from '../../../shared/schedule/index.ts';
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

const HORIZON_S = 10;

/** Three activities in ten seconds, with a little of everything, for trying all that can be. */
export const tinyProblem: fc.Arbitrary<Problem> = fc
  .record({
    modes: fc.array(fc.array(tinyMode(), { minLength: 1, maxLength: 2 }), {
      minLength: 3,
      maxLength: 3,
    }),
    lags: fc.array(fc.tuple(fc.nat(2), fc.nat(2), fc.nat(3), fc.nat(4)), { maxLength: 2 }),
    dues: fc.array(fc.integer({ min: 5, max: HORIZON_S }), { minLength: 2, maxLength: 2 }),
    breakAt: fc.integer({ min: 3, max: 8 }),
    isClash: fc.boolean(),
  })
  .map(({ modes, lags, dues, breakAt, isClash }) =>
    problem({
      horizonS: seconds(HORIZON_S),
      activities: modes.map((its, i) => ({
        id: activityId(`a${i}`),
        modes: its.map((mode, number) => ({ ...mode, id: `m${number}` })),
      })),
      lags: lags.flatMap(([a, b, minS, roomS]) =>
        a < b ? [lag(`a${a}.end`, `a${b}.start`, minS, minS + roomS)] : [],
      ),
      resources: resources(breakAt),
      clashes: isClash ? [drips()] : [],
      goals: dues.map((dueS, i) => goal(`a${2 - i}`, dueS)),
    }),
  );

function tinyMode(): fc.Arbitrary<Mode> {
  const length = fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 1, max: 4 }).map(work) },
    { weight: 1, arbitrary: fc.tuple(fc.nat(2), fc.nat(2)).map(([a, b]) => wait(a, a + b)) },
  );
  const needs = fc.oneof(
    fc.constant([]),
    fc.constantFrom(['ana'], ['ana', 'ben'], ['ben']).map((names) => [need(names)]),
    fc.integer({ min: 1, max: 2 }).map((amount) => [need(['pan'], amount)]),
  );
  const states = fc
    .option(fc.constantFrom('hot', 'low'), { nil: undefined, freq: 2 })
    .map((state) => (state ? [{ resource: resourceId('fire'), state }] : []));
  return fc.record({ id: fc.constant('only'), length, needs, states });
}

function resources(breakAt: number): Resource[] {
  return [
    unit('ana', [
      [0, breakAt],
      [breakAt + 1, HORIZON_S],
    ]),
    unit('ben'),
    pool('pan', 2),
    { kind: 'state', id: resourceId('fire'), changes: [], defaultChangeS: seconds(2) },
  ];
}

const drips = () => ({
  upper: { activity: activityId('a0'), part: { fromS: seconds(0), toS: seconds(2) } },
  lower: { activity: activityId('a1'), part: { fromS: seconds(0) } },
  places: [[resourceId('pan'), resourceId('pan')]] as const,
  reason: 'drips',
});
