import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must, pickBelow, seconds, seeded } from '../../../shared/kernel/index.ts';
import {
  chain,
  check,
  construct,
  type Link,
  type Placement,
  type Problem,
  type Schedule,
} from '../../../shared/schedule/index.ts';
import { activity, activityId, lag, need, pool, problem, resourceId, work } from './problems.ts';
import { randomProblem } from './random-problem.ts';

const put = (id: string, startS: number, endS: number, resource: string): Placement => ({
  activity: activityId(id),
  mode: 'only',
  startS: seconds(startS),
  endS: seconds(endS),
  uses: [{ need: 0, resource: resourceId(resource) }],
});

const arrows = (links: readonly Link[]) => links.map(({ from, to }) => `${from} → ${to}`);

describe('chain', () => {
  it('hands one unit from user to user', () => {
    const day = problem({
      activities: ['a', 'b', 'c'].map((id) => activity(id, work(100), [need(['ana'])])),
      resources: [pool('ana', 1)],
    });
    const placed = [put('a', 0, 100, 'ana'), put('b', 200, 300, 'ana'), put('c', 100, 200, 'ana')];
    expect(arrows(chain(day, placed))).toEqual(['a → c', 'c → b']);
  });

  it('needs no link while there are units that nobody has used', () => {
    const day = problem({
      activities: ['a', 'b'].map((id) => activity(id, work(100), [need(['cabinet'], 2)])),
      resources: [pool('cabinet', 4)],
    });
    expect(chain(day, [put('a', 0, 100, 'cabinet'), put('b', 150, 250, 'cabinet')])).toEqual([]);
  });

  it('lets amounts flow from those who give them back', () => {
    const amounts = { a: 2, b: 1, c: 3 };
    const day = problem({
      activities: Object.entries(amounts).map(([id, amount]) =>
        activity(id, work(100), [need(['cooler'], amount)]),
      ),
      resources: [pool('cooler', 3)],
    });
    const placed = [
      put('a', 0, 100, 'cooler'),
      put('b', 50, 150, 'cooler'),
      put('c', 150, 250, 'cooler'),
    ];
    expect(arrows(chain(day, placed))).toEqual(['a → c', 'b → c']);
  });

  it('takes the units of who is before it anyway, so that the day stays loose', () => {
    // Both pans are free for `rest`, and it comes after `ribs` by its lag: so it takes that one.
    const day = problem({
      activities: ['chicken', 'ribs', 'rest'].map((id) => activity(id, work(100), [need(['pan'])])),
      lags: [lag('ribs.end', 'rest.start', 0)],
      resources: [pool('pan', 2)],
    });
    const placed = [
      put('chicken', 0, 100, 'pan'),
      put('ribs', 0, 100, 'pan'),
      put('rest', 100, 200, 'pan'),
    ];
    expect(arrows(chain(day, placed))).toEqual(['ribs → rest']);
  });

  it('keeps every resource with any times that keep lags and links', () => {
    fc.assert(
      fc.property(randomProblem({ dueS: 400 }), fc.nat(), (day, seed) => {
        const planned = construct(day, { seed: 1 });
        if (!planned.ok) return;
        const moved = shaken(day, planned.schedule, seed);
        // Some lengths leave no times at all: a task that must lie within another, and is longer.
        fc.pre(moved !== undefined);
        const kinds = new Set(['capacity', 'state', 'clash', 'link']);
        const found = check(day, must(moved, 'times')).filter(({ kind }) => kinds.has(kind));
        expect(found).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

/**
 * The same schedule with other times: everything is put off by chance, waits are drawn out by
 * chance, and then all is moved later until minimum lags and links hold again.
 */
function shaken(
  { lags, activities }: Problem,
  { placements, links }: Schedule,
  seed: number,
): Schedule | undefined {
  const random = seeded(seed);
  const times = new Map(
    placements.map(({ activity: id, mode, startS, endS }) => {
      const its = activities.find((each) => each.id === id)?.modes.find((each) => each.id === mode);
      const lengthS = endS - startS + (its?.length.kind === 'wait' ? pickBelow(random, 30) : 0);
      return [id, { startS: startS + pickBelow(random, 60), lengthS }];
    }),
  );
  const timeOf = (id: string, end: 'start' | 'end') => {
    const { startS, lengthS } = times.get(activityId(id)) ?? { startS: 0, lengthS: 0 };
    return end === 'start' ? startS : startS + lengthS;
  };
  const arcs = [
    ...lags.flatMap(({ from, to, minS }) => (minS === undefined ? [] : [{ from, to, byS: minS }])),
    ...links.map(({ from, to, gapS, after }) => ({
      from: { activity: from, end: after ?? ('end' as const) },
      to: { activity: to, end: 'start' as const },
      byS: gapS,
    })),
  ];
  let isSettled = false;
  for (let round = 0; round < 200 && !isSettled; round++) {
    isSettled = true;
    for (const { from, to, byS } of arcs) {
      const lateS = timeOf(from.activity, from.end) + byS - timeOf(to.activity, to.end);
      const moved = times.get(to.activity);
      if (lateS <= 0 || !moved) continue;
      moved.startS += lateS;
      isSettled = false;
    }
  }
  if (!isSettled) return undefined;
  return {
    links,
    placements: placements.map((placement) => ({
      ...placement,
      startS: seconds(timeOf(placement.activity, 'start')),
      endS: seconds(timeOf(placement.activity, 'end')),
    })),
  };
}
