import { expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import { kitchenResource } from '../../../shared/plan/index.ts';
import { plan } from '../day/demo.ts';

const { activities, resources } = plan.built.problem;
const { placements } = plan.schedule;
const kindOf = (id: (typeof resources)[number]['id']) => kitchenResource(id).kind;

/** What lies in cabinets and coolers, as the demo's day has it. */
const lying = placements.flatMap(({ activity, startS, endS, mode, uses }) => {
  const of = must(
    activities.find(({ id }) => id === activity)?.modes.find(({ id }) => id === mode),
    activity,
  );
  return uses
    .filter(({ resource }) => ['cabinet', 'cooler'].includes(kindOf(resource)))
    .map(({ need, resource }) => {
      return { resource, startS, endS, length: of.length, amount: of.needs[need]?.amount ?? 0 };
    });
});

it('what is chilled, rested or held takes room for as long as it lasts, from a least on', () => {
  expect(new Set(lying.map(({ resource }) => kindOf(resource)))).toEqual(
    new Set(['cabinet', 'cooler']),
  );
  for (const { startS, endS, length, amount } of lying) {
    expect(length.kind).toBe('wait');
    expect(amount).toBeGreaterThan(0);
    if (length.kind !== 'wait') continue;
    expect(length.minS).toBeLessThan(length.maxS);
    expect(endS - startS).toBeGreaterThanOrEqual(length.minS);
    expect(endS - startS).toBeLessThanOrEqual(length.maxS);
  }
});

it('and no cabinet or cooler ever holds more than it has places', () => {
  for (const resource of resources) {
    if (resource.kind !== 'capacity') continue;
    const here = lying.filter((each) => each.resource === resource.id);
    // What lies there is most where something has just come in.
    for (const { startS } of here) {
      const held = here.filter((each) => each.startS <= startS && startS < each.endS);
      const amount = held.reduce((sum, each) => sum + each.amount, 0);
      expect(amount).toBeLessThanOrEqual(resource.capacity);
    }
  }
});
