import { describe, expect, it } from 'vitest';
import { chosenOptions, chosenSteps, type Route } from '../../shared/catalogue/index.ts';
import { must, toFahrenheit } from '../../shared/kernel/index.ts';
import { filesWith } from '../shared/plan/three-elms.ts';

/**
 * FDA Food Code, chapter 3, in °F as printed. The 2022 edition itself was not read; beside each row
 * is the copy that was: a state's adoption of it. Local code and the licensed authority overrule.
 */
const rows = {
  // 3-401.11(A)(1), for 15 s: Minnesota Rules 4626.0340.
  intact: 145,
  // 3-401.11(A)(2), for 17 s (15 s before 2017): Florida inspection text quoting the code.
  injected: 155,
  // 3-401.11(A)(2), the same row.
  ground: 155,
  // 3-401.11(A)(3): an excerpt of the 2017 text; Minnesota has the same with 15 s.
  poultry: 165,
  // 3-401.13: South Carolina Code Regulations 61-25.
  plant: 135,
  // 3-501.16(A)(1): Delaware Food Code.
  hotHold: 135,
  // 3-501.16(A)(2): Delaware Food Code.
  coldHold: 41,
  // 3-501.19(B), hours out of temperature control: Georgia; Washington WAC 246-215.
  outOfControlH: 4,
  // 3-501.14(A), from 135 °F, each counted from there: city guidance; Maine.
  cooling: [
    { toF: 70, withinH: 2 },
    { toF: 41, withinH: 6 },
  ],
} as const;

const { routes, cuts } = filesWith().catalogue;
const routeNamed = (id: string): Route =>
  must(
    routes.find((route) => route.id === id),
    id,
  );
const stepsOf = (route: Route, said: Record<string, string> = {}) =>
  chosenSteps(route, chosenOptions(route, said)).map(({ step }) => step);

/** The cores that the checks of the cook ask for, in °F. */
const coresF = (route: Route, said: Record<string, string> = {}) =>
  stepsOf(route, said).flatMap((step) =>
    step.work === 'hands' && step.check?.coreAtLeastC !== undefined
      ? [toFahrenheit(step.check.coreAtLeastC)]
      : [],
  );

/** Which row each route must keep, with the choices that make it so. */
const asked: readonly [string, Record<string, string>, keyof typeof rows & string][] = [
  ['ribs-squared', {}, 'intact'],
  ['short-ribs-plate', {}, 'intact'],
  ['rib-tips', {}, 'intact'],
  ['burnt-ends', {}, 'intact'],
  ['brisket-whole-or-parted', { part: 'whole' }, 'intact'],
  ['brisket-whole-or-parted', { part: 'parted', moisture: 'inject' }, 'injected'],
  ['shoulder-boneless', { moisture: 'inject', finish: 'slice' }, 'injected'],
  ['shoulder-boneless', { moisture: 'inject', finish: 'pull' }, 'injected'],
  ['sausage', {}, 'ground'],
  ['chicken-halves', {}, 'poultry'],
  ['chicken-halves', { moisture: 'inject' }, 'poultry'],
  ['pit-beans', {}, 'plant'],
  ['braised-greens', {}, 'plant'],
];

describe('the end of every cook lies at the code’s or above', () => {
  it.each(asked)('%s %o: the row of %s', (id, said, row) => {
    expect(Math.max(...coresF(routeNamed(id), said))).toBeGreaterThanOrEqual(Number(rows[row]));
  });

  it('names a core in every route that has a fire', () => {
    for (const route of routes.filter(({ steps }) => steps.some(({ work }) => work === 'fire'))) {
      expect(coresF(route).length, route.id).toBeGreaterThan(0);
    }
  });
});

describe('what waits, waits at the code’s temperatures', () => {
  const waits = routes.flatMap(({ steps }) =>
    steps.flatMap((step) => (step.work === 'wait' ? [step] : [])),
  );

  it('hot: the person is told 135 °F or above wherever a cabinet holds', () => {
    const held = waits.filter(({ keep }) => keep?.in.startsWith('cabinet'));
    expect(held.length).toBeGreaterThan(10);
    for (const { mind } of held) expect(mind?.en).toContain(`${rows.hotHold} °F or above`);
  });

  it('cold: the person is told 41 °F or below wherever the cooler holds for hours', () => {
    const cold = waits.filter(({ keep, atMostS }) => keep?.in === 'cooler' && atMostS >= 6 * 3600);
    expect(cold.length).toBeGreaterThan(8);
    for (const { mind } of cold) expect(mind?.en).toContain(`${rows.coldHold} °F or below`);
  });

  it('out of the cooler: no route leaves raw meat out for four hours', () => {
    const limits = routes.flatMap((route) =>
      route.limits.filter(({ rule }) => rule === 'out-of-temperature'),
    );
    expect(limits.length).toBeGreaterThan(15);
    for (const { atMostS } of limits) expect(atMostS).toBeLessThan(rows.outOfControlH * 3600);
  });

  it('every route that begins with raw meat limits how long it is out', () => {
    const meat = (id: string) => cuts.find((cut) => cut.id === id)?.species !== 'plant';
    const raw = routes.filter(({ cut, id }) => meat(cut) && id !== 'stock');
    for (const { id, limits } of raw) {
      expect(
        limits.some(({ rule }) => rule === 'out-of-temperature'),
        id,
      ).toBe(true);
    }
  });

  it('cooled: stock is checked at both stages, in time', () => {
    const stock = routeNamed('stock');
    const stages = stock.limits
      .filter(({ rule }) => rule === 'cooling')
      .map(({ to, atMostS }) => {
        const step = stock.steps.find(({ id }) => id === to.step);
        const toC = step?.work === 'hands' ? step.check?.coreAtMostC : undefined;
        return { toF: toFahrenheit(must(toC, 'a core')), withinH: atMostS / 3600 };
      });
    for (const { toF, withinH } of rows.cooling) {
      expect(stages.some((stage) => stage.toF <= toF + 1e-9 && stage.withinH <= withinH)).toBe(
        true,
      );
    }
  });
});
