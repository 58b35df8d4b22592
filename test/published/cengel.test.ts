import { describe, expect, it } from 'vitest';
import { convection, runPlain } from '../shared/cook/plain-cook.ts';
import { terms, theta } from '../shared/cook/series.ts';

/**
 * Çengel, "Heat Transfer", the egg in boiling water; from memory: a ball of 5 cm from 5 to 70 °C
 * in 95 °C with h 1200, k 0.627 and alpha 0.151e-6 takes 865 s by the book's one term (Bi 47.8, λ
 * 3.0754, A 1.9958).
 */
describe('boiling an egg', () => {
  const biot = (1200 * 0.025) / 0.627;

  it("has the book's eigenvalue and weight", () => {
    const [first] = terms('sphere', biot, 1);
    expect(first?.zeta).toBeCloseTo(3.076, 3);
    expect(Math.abs((first?.zeta ?? 0) - 3.0754)).toBeLessThan(1e-3);
    expect(Math.abs((first?.c ?? 0) - 1.9958)).toBeLessThan(1e-3);
  });

  it('takes 862.6 s by one term, reckoned without the table', () => {
    const fourier = (862.6 * 0.151e-6) / 0.025 ** 2;
    expect(95 - 90 * theta('sphere', biot, fourier, 0, 1)).toBeCloseTo(70, 2);
  });

  it('takes that by the model too, within a fiftieth: boiling is none of its trade', () => {
    const body = {
      halfThicknessM: 0.025,
      shape: 2,
      conductivityWPerMK: 0.627,
      heatCapacityJPerM3K: 0.627 / 0.151e-6,
      startC: 5,
    };
    const run = runPlain({ body, around: convection(1200), airC: 95 }, 1000);
    const after = run.coresC.findIndex((tempC) => tempC >= 70);
    const [t0 = 0, t1 = 0] = run.timesS.slice(after - 1);
    const [c0 = 0, c1 = 0] = run.coresC.slice(after - 1);
    const takenS = t0 + ((t1 - t0) * (70 - c0)) / (c1 - c0);
    expect(Math.abs(takenS / 862.6 - 1)).toBeLessThan(0.02);
  });
});
