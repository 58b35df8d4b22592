import { describe, expect, it } from 'vitest';
import { unlearned } from '../../../shared/cook/belief.ts';
import { draw, momentsOf, normals } from '../../../shared/cook/normal.ts';
import { UPDATES, update } from '../../../shared/cook/smoother.ts';
import { seeded } from '../../../shared/kernel/index.ts';

/** Four steps of the smoother on a model that is a straight line. */
function smoothed(members: number, seed: number) {
  const normal = normals(seeded(seed));
  let rows = draw(unlearned(3), members, normal);
  // The first unknown is seen three times over, the second once together with it, the third never.
  const foresee = ([a = 0, b = 0]: readonly number[]) => [a, a, a, a + b];
  const observed = {
    tempsC: [1, 1, 1, 2],
    covariance: [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => (i === j ? 0.3 : 0))),
  };
  for (let step = 0; step < UPDATES; step++) {
    rows = update(rows, rows.map(foresee), observed, normal);
  }
  return momentsOf(rows);
}

/** What Bayes says of it: precision 1 + HᵀH/0.3, pull Hᵀd/0.3. */
const precision = [
  [1 + 4 / 0.3, 1 / 0.3],
  [1 / 0.3, 1 + 1 / 0.3],
] as const;
const determinant = precision[0][0] * precision[1][1] - precision[0][1] ** 2;
const pull = [5 / 0.3, 2 / 0.3] as const;
const exact = {
  a: (precision[1][1] * pull[0] - precision[0][1] * pull[1]) / determinant,
  b: (precision[0][0] * pull[1] - precision[0][1] * pull[0]) / determinant,
  varianceA: precision[1][1] / determinant,
};

describe('the smoother', () => {
  it('comes to what Bayes says where the model is a straight line', () => {
    const { mean, covariance } = smoothed(2000, 1);
    expect(mean[0]).toBeCloseTo(exact.a, 1);
    expect(mean[1]).toBeCloseTo(exact.b, 1);
    expect((covariance[0]?.[0] ?? 0) / exact.varianceA).toBeCloseTo(1, 0);
  });

  it('hardly touches what the readings have nothing to do with, however small the ensemble', () => {
    const left = [1, 2, 3, 4, 5].map((seed) => smoothed(80, seed).covariance[2]?.[2] ?? 0);
    expect(Math.min(...left)).toBeGreaterThan(0.85);
  });
});
