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

const SMALL_HORIZON_S = 16;
const ACTIVITIES = 4;

/**
 * Four activities in sixteen seconds: two ways, calendars, pools, two fires,
 * waits, releases, least and most lags between any two ends. Some of them cannot be.
 */
export const smallDay: fc.Arbitrary<Problem> = fc
  .record({
    ways: fc.array(fc.array(way(), { minLength: 1, maxLength: 2 }), {
      minLength: ACTIVITIES,
      maxLength: ACTIVITIES,
    }),
    releases: fc.array(fc.option(fc.nat(6), { nil: 0, freq: 2 }), {
      minLength: ACTIVITIES,
      maxLength: ACTIVITIES,
    }),
    lags: fc.array(
      fc.record({
        from: fc.nat(ACTIVITIES - 1),
        to: fc.nat(ACTIVITIES - 1),
        ends: fc.constantFrom('end-start', 'end-start', 'start-start', 'end-end'),
        minS: fc.nat(2),
        roomS: fc.option(fc.nat(4), { nil: undefined }),
      }),
      { minLength: 3, maxLength: 5 },
    ),
    dues: fc.array(fc.integer({ min: 10, max: SMALL_HORIZON_S }), { minLength: 2, maxLength: 2 }),
    breakAt: fc.integer({ min: 4, max: 11 }),
  })
  .map(({ ways, releases, lags, dues, breakAt }) =>
    problem({
      horizonS: seconds(SMALL_HORIZON_S),
      activities: ways.map((modes, i) => ({
        id: activityId(`a${i}`),
        modes: modes.map((mode, number) => ({ ...mode, id: `m${number}` })),
        releaseS: seconds(releases[i] ?? 0),
      })),
      lags: lags.flatMap(({ from, to, ends, minS, roomS }) => {
        const [first, then] = ends.split('-');
        const maxS = roomS === undefined ? undefined : minS + roomS;
        return from < to ? [lag(`a${from}.${first}`, `a${to}.${then}`, minS, maxS)] : [];
      }),
      resources: resources(breakAt),
      goals: dues.map((dueS, i) => goal(`a${ACTIVITIES - 1 - i}`, dueS)),
    }),
  );

function way(): fc.Arbitrary<Mode> {
  const length = fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 1, max: 4 }).map(work) },
    {
      weight: 1,
      arbitrary: fc
        .tuple(fc.integer({ min: 1, max: 2 }), fc.nat(2))
        .map(([a, b]) => wait(a, a + b)),
    },
  );
  const needs = fc.oneof(
    fc.constantFrom(['ana'], ['ana', 'ben'], ['ben']).map((names) => [need(names)]),
    fc.integer({ min: 1, max: 2 }).map((amount) => [need(['pan'], amount)]),
    fc.integer({ min: 1, max: 2 }).map((amount) => [need(['ben']), need(['pan'], amount)]),
  );
  const states = fc
    .option(fc.constantFrom('hot', 'low'), { nil: undefined, freq: 2 })
    .map((state) => (state ? [{ resource: resourceId('fire'), state }] : []));
  return fc.record({ id: fc.constant('only'), length, needs, states });
}

const resources = (breakAt: number): Resource[] => [
  unit('ana', [
    [0, breakAt],
    [breakAt + 2, SMALL_HORIZON_S],
  ]),
  unit('ben', [[2, SMALL_HORIZON_S]]),
  pool('pan', 2),
  { kind: 'state', id: resourceId('fire'), changes: [], defaultChangeS: seconds(2) },
];
