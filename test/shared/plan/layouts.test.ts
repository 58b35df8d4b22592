import { describe, expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import { buildWith, kitchenEveryDay, onePlan } from './three-elms.ts';

type Layout = 'stacked' | 'turning' | 'long';

/** Raw ribs and raw chicken for one service, where every smoker has this layout. */
function clashesIn(layout: Layout) {
  const smokers = kitchenEveryDay.smokers.map((smoker) => ({ ...smoker, layout }));
  const [noon] = onePlan({}).services;
  const { dishes, ...service } = must(noon, 'a service');
  const chicken = { ...must(dishes[0], 'a dish'), dish: 'chicken' };
  const cookPlan = { ...onePlan({}), services: [{ ...service, dishes: [...dishes, chicken] }] };
  const made = buildWith({ kitchen: { ...kitchenEveryDay, smokers }, cookPlan });
  if (!made.ok) throw new Error(JSON.stringify(made));
  const cutOf = new Map(made.day.tasks.map(({ id, batch }) => [id as string, batch as string]));
  return made.day.problem.clashes
    .filter(({ upper }) => cutOf.get(upper.activity)?.includes('chicken'))
    .filter(({ lower }) => cutOf.get(lower.activity)?.includes('ribs'))
    .flatMap(({ places }) => places);
}

describe('raw chicken beside ribs', () => {
  // Food Code 2022, 3-302.11(A)(1)-(2), from memory: raw animal foods apart by kind, so that none
  // drips on what is cooked less. That racks that turn have no fixed above is common practice, no
  // source.
  it('lies below them where racks are stacked: each pair of racks clashes one way', () => {
    const places = clashesIn('stacked');
    expect(places.length).toBeGreaterThan(0);
    for (const [up, low] of places) expect(places).not.toContainEqual([low, up]);
  });

  it('shares no racks that turn with them, in whatever order they lie', () => {
    const places = clashesIn('turning');
    expect(places.length).toBeGreaterThan(clashesIn('stacked').length);
    for (const [up, low] of places) expect(places).toContainEqual([low, up]);
  });

  it('lies in a long pit anywhere beside them: nothing there is above another', () => {
    expect(clashesIn('long')).toEqual([]);
  });
});
