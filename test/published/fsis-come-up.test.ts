/**
 * FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, 14
 * December 2021: come-up time (p. 23-25), monitoring (p. 20-22), brisket and hams (scientific gap
 * 6, p. 48). Primary: text read.
 */
import { describe, expect, it } from 'vitest';
import {
  foodCode,
  judgeEndTemperature,
  judgeProbePlace,
  safetyOf,
} from '../../shared/safety/index.ts';
import { degF, throughF } from '../shared/safety/series.ts';

const warned = (report: ReturnType<typeof safetyOf>) =>
  report.warnings.map(({ warning }) => warning);

describe('the come-up', () => {
  it('is the time from 50 to 130 °F', () => {
    const cook = throughF(
      [
        [0, 40],
        [100, 50],
        [340, 130],
        [480, 200],
      ],
      5,
    );
    expect(safetyOf(cook, 'roast', foodCode).come_up_h).toBeCloseTo(4, 6);
  });

  it('of more than 6 h is a warning and no verdict, since a brisket may take longer', () => {
    const cook = throughF(
      [
        [0, 50],
        [420, 130],
        [600, 203],
      ],
      5,
    );
    const report = safetyOf(cook, 'roast', foodCode);
    expect(report.come_up_h).toBeCloseTo(7, 6);
    expect(warned(report)).toContain('come-up-long');
    expect(report.broken).toEqual([]);
  });

  it('of 6 h is not too long', () => {
    const cook = throughF(
      [
        [0, 50],
        [360, 130],
        [600, 203],
      ],
      5,
    );
    expect(warned(safetyOf(cook, 'roast', foodCode))).not.toContain('come-up-long');
  });

  it('goes on counting when a cook is interrupted', () => {
    const cook = throughF(
      [
        [0, 50],
        [120, 110],
        [180, 80],
        [240, 110],
        [260, 130],
        [480, 203],
      ],
      5,
    );
    const report = safetyOf(cook, 'roast', foodCode);
    expect(report.come_up_h).toBeCloseTo(260 / 60, 6);
    expect(warned(report)).toContain('interrupted');
  });

  it('ends with a full lethal cook, so that cooling is not counted to it', () => {
    const cook = throughF(
      [
        [0, 50],
        [240, 130],
        [480, 203],
        [600, 120],
        [720, 60],
      ],
      5,
    );
    expect(safetyOf(cook, 'roast', foodCode).come_up_h).toBeCloseTo(4, 6);
  });
});

describe('where the temperature is taken', () => {
  it('may be the surface of intact meat', () => {
    expect(judgeProbePlace(foodCode, { kind: 'roast', place: 'surface' }).ok).toBe(true);
  });

  it('is the centre of meat that was injected or needled, ground or stuffed', () => {
    for (const kind of ['injected', 'ground', 'stuffed'] as const) {
      expect(judgeProbePlace(foodCode, { kind, place: 'surface' })).toMatchObject({
        ok: false,
        row: { id: 'probe-at-centre' },
        correctiveActions: ['probe-the-centre'],
      });
      expect(judgeProbePlace(foodCode, { kind, place: 'centre' }).ok).toBe(true);
    }
  });
});

describe('the error of the instrument', () => {
  it('of 1 °F moves a limit of 165 °F to 166 °F', () => {
    const taken = (tempF: number) =>
      judgeEndTemperature(foodCode, { kind: 'chicken', coreC: degF(tempF), errorK: 1 / 1.8 });
    expect(taken(165)).toMatchObject({ ok: false, limit: { value: 166, unit: '°F' } });
    expect(taken(166).ok).toBe(true);
  });
});
