/**
 * Two stages of FDA Food Code 3-501.14(A) (Wis. Admin. Code ATCP 75, 2020; secondary copy) on
 * Newton's law of cooling, T = Ta + (135 − Ta) · exp(−kt). Derived in closed form, no printed
 * source: both curves take exactly 2 h from 135 to 70 °F.
 */
import { describe, expect, it } from 'vitest';
import { hours } from '../../shared/kernel/index.ts';
import {
  coolingsOf,
  decidingCooling,
  foodCode,
  limitOf,
  projectCooling,
  safetyOf,
} from '../../shared/safety/index.ts';
import { curveF, degF } from '../shared/safety/series.ts';

const curves = [
  { airF: 34, k: 0.5158, totalH: 5.17, met: true },
  { airF: 40, k: 0.5763, totalH: 7.9, met: false },
] as const;

const newton = (airF: number, k: number, minutes: number, stepMin = 1) =>
  curveF((minute) => airF + (135 - airF) * Math.exp((-k * minute) / 60), { minutes, stepMin });

describe.each(curves)('food that cools in air of $airF °F', ({ airF, k, totalH, met }) => {
  it('passes 70 °F after 2 h and 41 °F when the closed form says', () => {
    const { cooling } = safetyOf(newton(airF, k, 600), 'roast', foodCode);
    expect(cooling.stage1_h).toBeCloseTo(2, 3);
    expect(cooling.total_h).toBeCloseTo(totalH, 2);
    expect(cooling.total_h).toBeCloseTo(Math.log((135 - airF) / (41 - airF)) / k, 3);
  });

  it(met ? 'keeps both stages' : 'fails, though it kept the first stage', () => {
    expect(safetyOf(newton(airF, k, 600), 'roast', foodCode).cooling.met).toBe(met);
  });

  it('is projected to that end after an hour', () => {
    const limit = limitOf(foodCode, 'cooling');
    if (limit === null) throw new Error('no cooling row');
    const readings = newton(airF, k, 60, 5);
    const cooling = decidingCooling(coolingsOf(readings, limit, { apartAtMostS: 600 }));
    expect(cooling?.state).toBe('open');
    if (cooling === null) return;
    const stages = projectCooling(readings, cooling, { limit, airC: degF(airF) }) ?? [];
    expect(stages.map(({ expectedS }) => (expectedS ?? 0) / hours(1))).toEqual([
      expect.closeTo(2, 3),
      expect.closeTo(totalH, 2),
    ]);
    expect(stages.map(({ inTime }) => inTime)).toEqual([true, met]);
  });
});

describe('what fails the second stage', () => {
  it('names the row, the hours and what may be done', () => {
    const { broken } = safetyOf(newton(40, 0.5763, 600), 'roast', foodCode);
    expect(broken).toMatchObject([
      {
        row: { id: 'cooling', section: '3-501.14(A)' },
        measured: { value: expect.closeTo(7.9, 1), unit: 'h' },
        limit: { value: 6, unit: 'h' },
        correctiveActions: ['pan-shallower', 'ice-bath', 'reheat-at-once', 'discard'],
      },
    ]);
  });
});
