import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import {
  check,
  type Link,
  type Placement,
  type Problem,
  type Schedule,
} from '../../../shared/schedule/index.ts';
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
} from './problems.ts';

const put = (
  id: string,
  startS: number,
  endS: number,
  uses: readonly string[] = [],
): Placement => ({
  activity: activityId(id),
  mode: 'only',
  startS: seconds(startS),
  endS: seconds(endS),
  uses: uses.map((resource, i) => ({ need: i, resource: resourceId(resource) })),
});

const schedule = (placements: readonly Placement[], links: readonly Link[] = []): Schedule => ({
  placements,
  links,
});

describe('the checker', () => {
  const day = problem({
    activities: [
      activity('rub', work(60), [need(['ana', 'ben'])]),
      activity('set', wait(100, 300), [need(['cooler'], 2)]),
    ],
    lags: [lag('rub.end', 'set.start', 10, 50)],
    resources: [unit('ana', [[0, 200]]), unit('ben'), pool('cooler', 3)],
    goals: [goal('set', 500)],
  });
  const right = [put('rub', 40, 100, ['ana']), put('set', 120, 300, ['cooler'])];

  it('passes a schedule that keeps everything', () => {
    expect(check(day, schedule(right))).toEqual([]);
  });

  const finds = (what: string, placements: readonly Placement[], expected: readonly object[]) =>
    it(`finds ${what}`, () => {
      const found = check(day, schedule(placements));
      expect(found).toEqual(expected.map((each) => expect.objectContaining(each)));
    });

  const [rub, set] = [put('rub', 40, 100, ['ana']), put('set', 120, 300, ['cooler'])];
  finds('what is not placed', [rub], [{ kind: 'unplaced', activity: 'set' }]);
  finds('what is placed twice', [rub, set, set], [{ kind: 'placed-twice', activity: 'set' }]);
  finds(
    'what the problem does not have',
    [rub, set, put('smoke', 0, 60), { ...rub, mode: 'fast' }],
    [
      { kind: 'placed-twice', activity: 'rub' },
      { kind: 'unknown', what: 'smoke' },
      { kind: 'unknown', what: 'rub fast' },
    ],
  );
  finds(
    'work that is cut short',
    [put('rub', 50, 100, ['ana']), set],
    [{ kind: 'length', activity: 'rub', lengthS: 50 }],
  );
  finds(
    'a wait that is too long',
    [rub, put('set', 120, 450, ['cooler'])],
    [{ kind: 'length', activity: 'set', lengthS: 330 }],
  );
  finds(
    'what begins before the day does',
    [put('rub', -10, 50, ['ben']), put('set', 60, 200, ['cooler'])],
    [{ kind: 'out-of-time', activity: 'rub', byS: 10 }],
  );
  finds(
    'a need that nobody fills',
    [put('rub', 40, 100), set],
    [{ kind: 'need', activity: 'rub', role: 'ana/ben' }],
  );
  finds(
    'a need filled by somebody it does not name',
    [put('rub', 40, 100, ['cooler']), set],
    [{ kind: 'need', activity: 'rub' }],
  );
  finds(
    'a lag that is too short',
    [rub, put('set', 105, 300, ['cooler'])],
    [{ kind: 'lag', byS: 5 }],
  );
  finds(
    'a lag that is too long',
    [rub, put('set', 160, 300, ['cooler'])],
    [{ kind: 'lag', byS: 10 }],
  );
  finds(
    'work after the shift',
    [put('rub', 180, 240, ['ana']), put('set', 250, 400, ['cooler'])],
    [{ kind: 'closed', activity: 'rub', resource: 'ana' }],
  );
  finds(
    'a goal that is missed',
    [put('rub', 250, 310, ['ben']), put('set', 330, 520, ['cooler'])],
    [{ kind: 'goal', goal: 'set', byS: 20 }],
  );

  it('finds a resource that is used beyond its capacity, with the moment and by whom', () => {
    const crowded = problem({
      activities: ['a', 'b'].map((id) => activity(id, work(100), [need(['cooler'], 2)])),
      resources: [pool('cooler', 3)],
    });
    const both = [put('a', 0, 100, ['cooler']), put('b', 50, 150, ['cooler'])];
    expect(check(crowded, schedule(both))).toEqual([
      {
        kind: 'capacity',
        resource: 'cooler',
        atS: 50,
        used: 4,
        capacity: 3,
        activities: ['a', 'b'],
      },
    ]);
    const touching = [put('a', 0, 100, ['cooler']), put('b', 100, 200, ['cooler'])];
    expect(check(crowded, schedule(touching))).toEqual([]);
  });

  const burning = (initial?: string): Problem =>
    problem({
      activities: ['low', 'hot'].map((state) => ({
        ...activity(state, work(100)),
        modes: [{ ...mode(work(100)), states: [{ resource: resourceId('fire'), state }] }],
      })),
      resources: [
        {
          kind: 'state',
          id: resourceId('fire'),
          changes: [{ from: 'low', to: 'hot', takesS: seconds(30) }],
          defaultChangeS: seconds(80),
          ...(initial === undefined ? {} : { initial }),
        },
      ],
    });

  it('finds a fire that has no time to change', () => {
    expect(check(burning(), schedule([put('low', 0, 100), put('hot', 130, 230)]))).toEqual([]);
    expect(check(burning(), schedule([put('low', 0, 100), put('hot', 120, 220)]))).toEqual([
      { kind: 'state', resource: 'fire', first: 'low', second: 'hot', byS: 10 },
    ]);
    expect(check(burning(), schedule([put('low', 170, 270), put('hot', 0, 100)]))).toEqual([
      { kind: 'state', resource: 'fire', first: 'hot', second: 'low', byS: 10 },
    ]);
    expect(check(burning('hot'), schedule([put('low', 70, 170), put('hot', 200, 300)]))).toEqual([
      { kind: 'state', resource: 'fire', first: null, second: 'low', byS: 10 },
    ]);
  });

  it('finds two that may not sit one above the other, and for how long they do', () => {
    const clash = {
      upper: { activity: activityId('raw'), part: { fromS: seconds(0), toS: seconds(60) } },
      lower: { activity: activityId('done'), part: { fromS: seconds(20) } },
      places: [[resourceId('top'), resourceId('bottom')]],
      reason: 'drips',
    } as const;
    const stacked = problem({
      activities: [
        activity('raw', work(100), [need(['top', 'bottom'])]),
        activity('done', work(100), [need(['top', 'bottom'])]),
      ],
      resources: [unit('top'), unit('bottom')],
      clashes: [clash],
    });
    const at = (rawS: number, doneS: number, places: readonly [string, string]) =>
      check(
        stacked,
        schedule([
          put('raw', rawS, rawS + 100, [places[0]]),
          put('done', doneS, doneS + 100, [places[1]]),
        ]),
      );
    expect(at(0, 30, ['top', 'bottom'])).toEqual([{ kind: 'clash', clash, forS: 10 }]);
    expect(at(0, 40, ['top', 'bottom'])).toEqual([]);
    expect(at(0, 30, ['bottom', 'top'])).toEqual([]);
  });

  it('finds what is not where it was pinned, and holds pinned times to no calendar', () => {
    const pinned = problem({
      activities: [
        activity('trim', work(50), [need(['ana'])], {
          pin: { mode: 'only', startS: seconds(90), endS: seconds(200) },
        }),
      ],
      resources: [unit('ana', [[0, 100]])],
    });
    expect(check(pinned, schedule([put('trim', 90, 200, ['ana'])]))).toEqual([]);
    expect(check(pinned, schedule([put('trim', 80, 200, ['ana'])]))).toEqual([
      { kind: 'pin', activity: 'trim' },
    ]);
  });

  it('finds a link that is not kept', () => {
    const link: Link = {
      from: activityId('rub'),
      to: activityId('set'),
      resource: resourceId('ana'),
      gapS: seconds(30),
    };
    expect(check(day, schedule(right, [link]))).toEqual([{ kind: 'link', link, byS: 10 }]);
    expect(check(day, schedule(right, [{ ...link, after: 'start' }]))).toEqual([]);
  });
});
