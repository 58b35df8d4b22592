import { describe, expect, it } from 'vitest';
import { kilograms, must, toFahrenheit, toPounds } from '../../shared/kernel/index.ts';
import { weightsOf } from '../../shared/plan/weights.ts';
import { dayWith, filesWith, onePlan } from '../shared/plan/three-elms.ts';

/**
 * Facts of the trade: common practice, no source. They are defaults that a kitchen edits, read here
 * off the demo.
 */
const { cuts, routes, mixes } = filesWith().catalogue;
const cut = (id: string) =>
  must(
    cuts.find((each) => each.id === id),
    id,
  );
const step = (route: number, id: string) =>
  must(
    routes[route]?.steps.find((each) => each.id === id),
    id,
  );
const takes = (route: number, id: string) => {
  const found = step(route, id);
  return must(found.work === 'hands' || found.work === 'fire' ? found.time.takesS : null, id);
};

describe('common practice: spare ribs', () => {
  it('come at 3.5 to 5 lb, lose 25 to 35 % to squaring', () => {
    const { weightKg, yields } = cut('spare-ribs');
    expect(toPounds(weightKg.low)).toBeCloseTo(3.5, 9);
    expect(toPounds(weightKg.high)).toBeCloseTo(5, 9);
    expect([yields.trim.low, yields.trim.high]).toEqual([0.65, 0.75]);
  });

  it('take 2 to 4 minutes a slab to square, membrane off', () => {
    const typicalS = takes(0, 'square').typical + takes(0, 'membrane').typical;
    expect(typicalS).toBeGreaterThanOrEqual(120);
    expect(typicalS).toBeLessThanOrEqual(240);
  });

  it('set 10 to 15 minutes at least, and overnight at most', () => {
    const short = step(0, 'set-short');
    const overnight = step(0, 'set-overnight');
    expect(short.work === 'wait' && short.atLeastS).toBe(600);
    expect(overnight.work === 'wait' && overnight.atMostS).toBeLessThanOrEqual(16 * 3600);
  });

  it('smoke 4 to 5 hours in all at 225 to 275 °F, wrapped after 2½ to 3', () => {
    const smokeS = takes(0, 'smoke').typical;
    expect(smokeS / 3600).toBeGreaterThanOrEqual(2.5);
    expect(smokeS / 3600).toBeLessThanOrEqual(3);
    const day = dayWith({ cookPlan: onePlan({}) });
    const chainS = must(day.batches[0], 'a batch').neededS - must(day.pull[0], 'a line').byS;
    expect(chainS / 3600).toBeLessThan(6);
    const stay = step(0, 'stay');
    expect(stay.work === 'place' && toFahrenheit(stay.setC)).toBeCloseTo(275, 9);
  });

  it('are wrapped at 2 to 3 minutes a piece', () => {
    expect(takes(0, 'wrap-paper').typical).toBeGreaterThanOrEqual(120);
    expect(takes(1, 'wrap-paper').typical).toBeLessThanOrEqual(180);
  });
});

describe('common practice: boneless shoulder', () => {
  it('loses 5 to 10 % to trim and gives 50 to 65 % served', () => {
    const shoulder = cut('shoulder');
    expect([shoulder.yields.trim.low, shoulder.yields.trim.high]).toEqual([0.9, 0.95]);
    const { servedKg, rawKg } = weightsOf(shoulder, 1);
    expect(servedKg / rawKg).toBeGreaterThanOrEqual(0.5);
    expect(servedKg / rawKg).toBeLessThanOrEqual(0.65);
  });

  it('takes 200 ml of injection a piece, mixed 10 to 15 % over', () => {
    const mix = must(
      mixes.find(({ id }) => id === 'apple-injection'),
      'injection',
    );
    expect(mix.dose.of === 'piece' && mix.dose.volumeL).toBeCloseTo(0.2, 9);
    expect(mix.overShare).toBeGreaterThanOrEqual(0.1);
    expect(mix.overShare).toBeLessThanOrEqual(0.15);
  });

  it('injected so, gains 5 to 12 % of its green weight at the most', () => {
    const pieceKg = cut('shoulder').weightKg.typical;
    expect(kilograms(0.2 * 1.06) / pieceKg).toBeGreaterThan(0.05);
    expect(kilograms(0.2 * 1.06) / pieceKg).toBeLessThan(0.12);
  });

  it('smokes 5 to 6 hours bare, and is pulled at 205 °F', () => {
    const smokeH = takes(1, 'smoke').typical / 3600;
    expect(smokeH).toBeGreaterThanOrEqual(5);
    expect(smokeH).toBeLessThanOrEqual(6);
    const probe = step(1, 'probe-pull');
    const coreC = must(probe.work === 'hands' ? probe.check?.coreAtLeastC : null, 'a core');
    expect(toFahrenheit(coreC)).toBeCloseTo(205, 9);
  });

  it('has a fat cap, which ribs have not', () => {
    expect([cut('shoulder').fatCap, cut('spare-ribs').fatCap]).toEqual([true, false]);
  });
});

describe('common practice: every cut', () => {
  const trimmed = cuts.filter(({ tubs }) => tubs.length > 0);
  it.each(trimmed.map((each) => [each.id, each] as const))(
    '%s: trim and tubs make the whole',
    (_id, each) => {
      const tubs = each.tubs.reduce((sum, { share }) => sum + share.typical, 0);
      expect(each.yields.trim.typical + tubs).toBeCloseTo(1, 2);
    },
  );
});
