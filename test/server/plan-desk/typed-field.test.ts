import { describe, expect, it } from 'vitest';
import { typedFault } from '../../../server/plan-desk/typed-fault.ts';
import { typedField } from '../../../server/plan-desk/typed-field.ts';
import { sayIn } from '../../../server/why-not-planned.ts';
import { type CookPlan, readCookPlan } from '../../../shared/plan/index.ts';
import { sayTypedFault } from '../../../shared/words/index.ts';
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

type Service = CookPlan['services'][number];

/** All that is wrong with the demo's first service once it is typed so. */
function faults(change: (service: Service) => object, language: 'en' | 'es') {
  const [first, ...rest] = cookPlan.services;
  if (!first) throw new Error('the demo has no service');
  const typed = { ...cookPlan, services: [{ ...first, ...change(first) }, ...rest] };
  const read = readCookPlan(JSON.parse(JSON.stringify(typed)), plan);
  if (read.ok) throw new Error('nothing is wrong with it');
  const say = sayIn(language, kitchen);
  return read.problems.map((fault) =>
    sayTypedFault(typedFault(fault, { plan: typed, catalogue, say }), say),
  );
}

const withFirst = (change: (dish: Service['dishes'][number]) => object) => (of: Service) => {
  const [first, ...rest] = of.dishes;
  return { dishes: [first && { ...first, ...change(first) }, ...rest] };
};

describe('a fault of a plan that is typed', () => {
  const lunch = service?.name.es;
  const ribs = dish?.name.es;

  it.each([
    [
      'no time',
      () => ({ opens: 'soon' }),
      `${lunch}, abre: se encontró "soon"; se admite: una hora`,
    ],
    [
      'no number',
      withFirst(() => ({ sales: { by: 'shape', portions: Number.NaN, shape: 'even' } })),
      `${lunch}, ${ribs}, porciones: se encontró nada; se admite: un número entero, 1 o más.`,
    ],
    [
      'none of a dish',
      withFirst(() => ({ sales: { by: 'shape', portions: 0, shape: 'even' } })),
      `${lunch}, ${ribs}, porciones: se encontró 0; se admite: un número entero, 1 o más.`,
    ],
    [
      'a rack that is not there',
      withFirst(() => ({ slots: ['z/9'] })),
      `se encontró "z/9"; se admite: uno de: `,
    ],
    [
      'a dish twice',
      (of: Service) => ({ dishes: [...of.dishes, ...of.dishes.slice(0, 1)] }),
      'se admite: cada platillo una vez en un servicio.',
    ],
    ['a service with no dish', () => ({ dishes: [] }), 'se encontró []; se admite: al menos uno.'],
    ['no name', () => ({ name: { en: '' } }), 'se encontró nada; se admite: al menos uno.'],
  ] as const)('is said in Spanish where it is %s', (_what, change, said) => {
    const lines = faults(change, 'es');
    expect(lines.join('\n')).toContain(said);
    expect(lines.join('\n')).not.toMatch(/allowed|found|one of|or more/);
  });
});
