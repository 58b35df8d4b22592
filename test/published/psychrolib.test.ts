import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import {
  humidityFromWetBulb,
  humidityRatio,
  pressureAtPa,
  saturationPressurePa,
  vapourPressurePa,
  wetBulbC,
} from '../../shared/cook/moist-air.ts';
import { steamPa, steamPaPerK } from '../../shared/cook/steam-table.ts';
import { celsius, metres } from '../../shared/kernel/index.ts';
import { convection, runPlain, sealed } from '../shared/cook/plain-cook.ts';

// PsychroLib 1.1.1 (npm `psychrolib`, MIT): the formulae of ASHRAE Fundamentals 2017, written by
// others.
psychrolib.SetUnitSystem(psychrolib.SI);

const range = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

const pressures = [80_000, 101_325];

const wetBulb = (airC: number, ratio: number, pressurePa: number): number =>
  wetBulbC(celsius(airC), ratio, pressurePa) ?? Number.NaN;

describe('moist air, beside psychrolib', () => {
  it('has its saturation pressure from deep frost to the hottest smoker', () => {
    for (const tempC of range(-40, 200, 2.5)) {
      const ratio = saturationPressurePa(celsius(tempC)) / psychrolib.GetSatVapPres(tempC);
      expect(Math.abs(ratio - 1)).toBeLessThan(2e-4);
    }
  });

  const airs = pressures.flatMap((pressurePa) =>
    range(10, 150, 10).flatMap((airC) =>
      [0.001, 0.005, 0.01, 0.02, 0.03, 0.08, 0.12, 0.2]
        .filter((ratio) => vapourPressurePa(ratio, pressurePa) < psychrolib.GetSatVapPres(airC))
        .map((ratio) => ({ airC, ratio, pressurePa, wetC: wetBulb(airC, ratio, pressurePa) })),
    ),
  );

  it('has its wet bulb, from kitchen air to hot smoke', () => {
    for (const { airC, ratio, pressurePa, wetC } of airs) {
      const theirs = psychrolib.GetTWetBulbFromHumRatio(airC, ratio, pressurePa);
      // In air above its boiling point the search of psychrolib can lose itself and end at the
      // air's own.
      if (airC > 80 && theirs > airC - 0.01) continue;
      expect(wetC).toBeCloseTo(theirs, 2);
    }
  });

  it('gives the air back by psychrolib from the wet bulb we found, everywhere', () => {
    for (const { airC, ratio, pressurePa, wetC } of airs) {
      const back = psychrolib.GetHumRatioFromTWetBulb(airC, wetC, pressurePa);
      expect(Math.abs(back - ratio)).toBeLessThan(2e-4 * ratio + 2e-6);
    }
  });

  it('has its humidity from a wet bulb', () => {
    for (const airC of range(20, 140, 20)) {
      for (const wet of range(10, Math.min(airC, 90), 10)) {
        const ours = humidityFromWetBulb(celsius(airC), celsius(wet));
        // Where the air would be drier than dry it clips, and we say that there is no such air.
        if (ours === undefined) continue;
        const theirs = psychrolib.GetHumRatioFromTWetBulb(airC, wet, 101_325);
        expect(Math.abs(ours - theirs)).toBeLessThan(1e-4 * theirs + 1e-6);
      }
    }
  });

  it('has its vapour pressure and humidity ratio', () => {
    for (const pressurePa of pressures) {
      for (const ratio of [0.001, 0.01, 0.05, 0.1, 0.3, 1]) {
        const theirs = psychrolib.GetVapPresFromHumRatio(ratio, pressurePa);
        expect(vapourPressurePa(ratio, pressurePa)).toBeCloseTo(theirs, 6);
        expect(humidityRatio(theirs, pressurePa)).toBeCloseTo(ratio, 9);
      }
    }
  });

  it('has its standard pressure at a height', () => {
    for (const altitudeM of range(0, 4000, 250)) {
      const theirs = psychrolib.GetStandardAtmPressure(altitudeM);
      expect(pressureAtPa(metres(altitudeM))).toBeCloseTo(theirs, 6);
    }
  });

  it('has it in the table too that the heat model reads, and its slope', () => {
    for (const tempC of range(1, 120, 0.37)) {
      const theirs = psychrolib.GetSatVapPres(tempC);
      expect(Math.abs(steamPa(tempC) - theirs)).toBeLessThan(1 + 2e-4 * theirs);
      const slope = (psychrolib.GetSatVapPres(tempC + 0.2) - theirs) / 0.2;
      expect(Math.abs(steamPaPerK(tempC) / slope - 1)).toBeLessThan(0.02);
    }
  });
});

describe('a film of water in hot air, with no heat by radiation', () => {
  it.each([0.02, 0.06, 0.1])('comes to the wet bulb at a humidity of %d, within 0.5 K', (ratio) => {
    const around = { ...convection(9.5), vapourPa: vapourPressurePa(ratio), wrapPasses: 1 };
    const body = {
      halfThicknessM: 0.01,
      shape: 0,
      conductivityWPerMK: 0.5,
      heatCapacityJPerM3K: 3.5e6,
      startC: 50,
    };
    const drying = { ...sealed, wetness: 1, stockKgPerM2: 1e6 };
    const { model } = runPlain({ body, around, airC: 110, drying }, 12 * 3600);
    const theirs = psychrolib.GetTWetBulbFromHumRatio(110, ratio, 101_325);
    expect(Math.abs(model.surfaceC - theirs)).toBeLessThan(0.5);
    expect(Math.abs(model.depthC(0) - theirs)).toBeLessThan(0.5);
  });
});

describe('air that cannot be', () => {
  it('has no wet bulb where it would hold more water than it can', () => {
    expect(wetBulbC(celsius(20), 0.03)).toBeUndefined();
    expect(wetBulbC(celsius(20), 0.0146)).toBeDefined();
  });

  it('has no humidity where the wet bulb is the warmer, or colder than in dry air', () => {
    expect(humidityFromWetBulb(celsius(60), celsius(61))).toBeUndefined();
    expect(humidityFromWetBulb(celsius(110), celsius(20))).toBeUndefined();
  });
});
