import { describe, expect, it } from 'vitest';
import { typedField } from '../../../server/plan-desk/typed-field.ts';
import { sayIn } from '../../../server/why-not-planned.ts';
import { plan } from '../../shared/day/demo.ts';

const { catalogue, cookPlan, kitchen } = plan;
const at = (path: string, typed: unknown = cookPlan) => {
  const say = sayIn('en', kitchen);
  return typedField(path, { plan: typed, catalogue, say });
};
const [service] = cookPlan.services;
const dish = catalogue.dishes.find(({ id }) => id === service?.dishes[0]?.dish);

describe('a field of a plan that is typed', () => {
  it('goes by the names on the page, not by its place in a file', () => {
    expect(at('services[0].dishes[0].sales.portions')).toBe(
      `${service?.name.en}, ${dish?.name.en}, portions`,
    );
    expect(at('services[0].opens')).toBe(`${service?.name.en}, opens`);
  });

  it('goes by its place where the page has no name for it, or the plan is no plan', () => {
    expect(at('services[0].dishes[0].sales.by')).toBe('services[0].dishes[0].sales.by');
    expect(at('services[9].opens')).toBe('services[9].opens');
    expect(at('services[0].opens', { services: 'none' })).toBe('services[0].opens');
  });
});
