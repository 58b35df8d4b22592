import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hours, minutes, seconds } from '../../shared/kernel/index.ts';
import {
  check,
  type Planned,
  type Planner,
  type Problem,
  type Schedule,
  validate,
} from '../../shared/schedule/index.ts';
import {
  activity,
  activityId,
  goal,
  lag,
  mode,
  need,
  pool,
  problem,
  resourceId,
  unit,
  wait,
  work,
} from '../shared/schedule/problems.ts';
import { randomProblem } from '../shared/schedule/random-problem.ts';

/** What every planner promises, however it finds its plans. */
export function plannerContract(name: string, planner: Planner) {
  const plan = (of: Problem, seed = 1): Planned => planner(of, { seed });

  /** The plan, after the independent checker has found nothing wrong with it. */
  function planOf(of: Problem): Schedule {
    const planned = plan(of);
    if (!planned.ok) throw new Error(`refused: ${JSON.stringify(planned.conflicts)}`);
    expect(check(of, planned.schedule)).toEqual([]);
    return planned.schedule;
  }

  function placed(of: Problem, id: string) {
    const found = planOf(of).placements.find((each) => each.activity === id);
    if (!found) throw new Error(`${id} is not placed`);
    return found;
  }

  const conflictsOf = (of: Problem) => {
    const planned = plan(of);
    return planned.ok ? [] : planned.conflicts;
  };

  describe(`the planner "${name}"`, () => {
    describe('when it plans', () => {
      it('has a plan for a day on which nothing is to be done', () => {
        expect(planOf(problem({ activities: [] }))).toEqual({ placements: [], links: [] });
      });

      it('is ready when it is due', () => {
        const day = problem({
          activities: [activity('carve', work(60))],
          goals: [goal('carve', 900)],
        });
        expect(placed(day, 'carve').endS).toBeLessThanOrEqual(900);
      });

      it('gives the same plan for the same day and seed', () => {
        fc.assert(
          fc.property(randomProblem({ dueS: 150 }), fc.nat(9), (day, seed) => {
            expect(plan(day, seed)).toEqual(plan(day, seed));
          }),
          { numRuns: 30 },
        );
      });

      it('gives only plans that the checker passes, on days with every feature', () => {
        fc.assert(
          fc.property(randomProblem({ dueS: 150 }), (day) => {
            const planned = plan(day);
            if (planned.ok) expect(check(day, planned.schedule)).toEqual([]);
            else expect(planned.conflicts.length).toBeGreaterThan(0);
          }),
          { numRuns: 150 },
        );
      });
    });

    describe('on one rack and a common service', () => {
      // Own example: two cooks of three hours may each wait at most an hour for the one service. On
      // one rack the first ends three hours before the second does, so it waits at least so long.
      const twoCooks = (capacity: number) =>
        problem({
          horizonS: hours(24),
          activities: [
            activity('ribs', work(hours(3)), [need(['rack'])]),
            activity('chicken', work(hours(3)), [need(['rack'])]),
            activity('serve', work(minutes(30))),
          ],
          lags: [
            lag('ribs.end', 'serve.start', 0, hours(1), 'quality'),
            lag('chicken.end', 'serve.start', 0, hours(1), 'quality'),
          ],
          resources: [pool('rack', capacity)],
        });

      it('finds no plan if both must wait there for less time than one of them takes', () => {
        const [conflict] = conflictsOf(twoCooks(1));
        expect(conflict).toMatchObject({ kind: 'no-room', resources: ['rack'] });
      });

      it('finds one if the rack holds both', () => {
        planOf(twoCooks(2));
      });
    });

    describe('with resources', () => {
      it('lets nobody do two things at once', () => {
        const day = problem({
          activities: ['a', 'b', 'c'].map((id) => activity(id, work(100), [need(['ana'])])),
          resources: [unit('ana')],
          goals: ['a', 'b', 'c'].map((id) => goal(id, 300)),
        });
        const starts = planOf(day).placements.map(({ startS }) => startS);
        expect(starts.sort((a, b) => a - b)).toEqual([0, 100, 200]);
      });

      it('takes the next hand where the first is taken, and keeps to the order otherwise', () => {
        const oneOf = need(['ana', 'ben']);
        const day = problem({
          activities: [activity('a', work(100), [oneOf]), activity('b', work(100), [oneOf])],
          resources: [unit('ana'), unit('ben')],
          goals: [goal('a', 100), goal('b', 100)],
        });
        const hands = planOf(day).placements.flatMap(({ uses }) => uses.map((use) => use.resource));
        expect(hands.sort()).toEqual(['ana', 'ben']);
      });

      it('does work whole within a shift, never over a break', () => {
        const day = problem({
          activities: [activity('trim', work(100), [need(['ana'])])],
          resources: [
            unit('ana', [
              [0, 150],
              [200, 290],
            ]),
          ],
          goals: [goal('trim', 280)],
        });
        expect(placed(day, 'trim').endS).toBeLessThanOrEqual(150);
      });

      it('counts a wait for as long as it lasts, not for its least', () => {
        // Each hold must last until the service, so the two pans overlap however they are cooked.
        const held = (pans: number) =>
          problem({
            activities: [
              activity('cook-a', work(100), [need(['smoker'])]),
              activity('cook-b', work(100), [need(['smoker'])]),
              activity('hold-a', wait(0, 500), [need(['cabinet'])]),
              activity('hold-b', wait(0, 500), [need(['cabinet'])]),
              activity('serve', work(10), [], { releaseS: seconds(400) }),
            ],
            lags: [
              lag('cook-a.end', 'hold-a.start', 0, 0),
              lag('cook-b.end', 'hold-b.start', 0, 0),
              lag('hold-a.end', 'serve.start', 0, 0),
              lag('hold-b.end', 'serve.start', 0, 0),
            ],
            resources: [unit('smoker'), pool('cabinet', pans)],
            goals: [goal('serve', 410)],
          });
        planOf(held(2));
        // One pan is enough only because the second cook may end when the service begins.
        const { placements } = planOf(held(1));
        const lengths = placements.filter(({ activity: id }) => id.startsWith('hold'));
        expect(lengths.filter(({ startS, endS }) => endS > startS)).toHaveLength(1);
      });

      it('waits for the fire to change between two temperatures', () => {
        const at = (id: string, state: string) => ({
          ...activity(id, work(100)),
          modes: [{ ...mode(work(100)), states: [{ resource: resourceId('fire'), state }] }],
        });
        const day = problem({
          activities: [at('ribs', 'hot'), at('brisket', 'low')],
          resources: [
            {
              kind: 'state',
              id: resourceId('fire'),
              initial: 'hot',
              changes: [{ from: 'hot', to: 'low', takesS: seconds(40) }],
              defaultChangeS: seconds(70),
            },
          ],
          goals: [goal('ribs', 300), goal('brisket', 300)],
        });
        const { placements } = planOf(day);
        const [first, second] = placements.slice().sort((a, b) => a.startS - b.startS);
        const changeS = first?.activity === activityId('ribs') ? 40 : 70;
        expect((second?.startS ?? 0) - (first?.endS ?? 0)).toBeGreaterThanOrEqual(changeS);
      });

      it('keeps raw poultry from dripping on what lies below', () => {
        const day = problem({
          activities: [
            activity('chicken', work(100), [need(['top'])]),
            activity('ribs', work(100), [need(['bottom'])]),
          ],
          resources: [unit('top'), unit('bottom')],
          clashes: [
            {
              upper: {
                activity: activityId('chicken'),
                part: { fromS: seconds(0), toS: seconds(60) },
              },
              lower: { activity: activityId('ribs'), part: { fromS: seconds(0) } },
              places: [[resourceId('top'), resourceId('bottom')]],
              reason: 'drips',
            },
          ],
          goals: [goal('chicken', 500), goal('ribs', 500)],
        });
        const { placements, links } = planOf(day);
        const [chicken, ribs] = placements;
        const apart =
          (ribs?.startS ?? 0) >= (chicken?.startS ?? 0) + 60 ||
          (chicken?.startS ?? 0) >= (ribs?.endS ?? 0);
        expect(apart).toBe(true);
        expect(links).toEqual([expect.objectContaining({ reason: 'drips' })]);
      });

      it('works round what is pinned', () => {
        const day = problem({
          activities: [
            activity('a', work(100), [need(['ana'])], {
              pin: {
                mode: 'only',
                startS: seconds(150),
                uses: [{ need: 0, resource: resourceId('ana') }],
              },
            }),
            activity('b', work(100), [need(['ana'])]),
          ],
          resources: [unit('ana')],
          goals: [goal('b', 240)],
        });
        expect(placed(day, 'b').endS).toBeLessThanOrEqual(150);
      });

      it('does in another way what the first way leaves no room for', () => {
        const day = problem({
          activities: [
            {
              id: activityId('lift'),
              modes: [
                mode(work(100), [need(['ana'])], 'alone'),
                mode(work(40), [need(['ana']), need(['ben'])], 'together'),
              ],
            },
          ],
          resources: [unit('ana', [[0, 50]]), unit('ben')],
          goals: [goal('lift', 60)],
        });
        expect(placed(day, 'lift')).toMatchObject({ mode: 'together', uses: [{}, {}] });
      });
    });

    describe('when it refuses', () => {
      it('names lags that go round in a circle, and by how much', () => {
        const day = problem({
          activities: ['rub', 'set', 'smoke'].map((id) => activity(id, work(60))),
          lags: [
            lag('rub.end', 'set.start', 600),
            lag('set.end', 'smoke.start', 0),
            lag('rub.end', 'smoke.start', 0, 500),
          ],
        });
        expect(conflictsOf(day)).toEqual([
          { kind: 'lags-contradict', activities: expect.any(Array), excessS: 160 },
        ]);
      });

      it('names a need that nothing there is could fill', () => {
        const day = problem({
          activities: [activity('load', work(60), [need(['rack'], 3)])],
          resources: [pool('rack', 2)],
        });
        expect(conflictsOf(day)).toEqual([
          { kind: 'no-resource', activity: 'load', role: 'rack', amount: 3, most: 2 },
        ]);
      });

      it('names the goal that its chain is too long for, and by how much', () => {
        const day = problem({
          activities: [activity('smoke', work(600)), activity('carve', work(60))],
          lags: [lag('smoke.end', 'carve.start', 0)],
          goals: [goal('carve', 500)],
        });
        expect(conflictsOf(day)).toEqual([
          { kind: 'goal-too-early', goal: 'carve', shortS: 160, chain: ['smoke', 'carve'] },
        ]);
      });

      it('names the goal that is short for want of hands, by how much, and for whom', () => {
        const day = problem({
          activities: ['a', 'b', 'c'].map((id) => activity(id, work(3600), [need(['ana'])])),
          resources: [unit('ana')],
          goals: ['a', 'b', 'c'].map((id) => goal(id, 2 * 3600)),
        });
        const [short, crowded] = conflictsOf(day);
        expect(short).toMatchObject({ kind: 'goal-too-early', shortS: 3600 });
        expect(crowded).toMatchObject({ kind: 'no-room', role: 'ana', resources: ['ana'] });
        expect(crowded).toHaveProperty('blockedBy', expect.arrayContaining([expect.any(String)]));
      });

      it('never says that a day which is not well formed has no room', () => {
        const day = problem({ activities: [activity('a', work(-1))], goals: [goal('nobody', 10)] });
        expect(conflictsOf(day).map(({ kind }) => kind)).toEqual([
          'malformed',
          'malformed',
          'malformed',
          'malformed',
        ]);
        expect(conflictsOf(day)).toEqual(validate(day));
      });
    });
  });
}
