import { describe, expect, it } from 'vitest';
import {
  type Belief,
  heeding,
  messageBetween,
  placed,
  unlearned,
} from '../../../shared/cook/belief.ts';
import { apply, inverse, withoutNegative } from '../../../shared/cook/matrix.ts';
import { draw, momentsOf, normals } from '../../../shared/cook/normal.ts';
import { seeded } from '../../../shared/kernel/index.ts';

const tilted: Belief = {
  mean: [1, -2],
  covariance: [
    [2, 0.6],
    [0.6, 0.5],
  ],
};

describe('a message', () => {
  it('leads from what was believed before to what is believed after', () => {
    const before = unlearned(2);
    const after: Belief = {
      mean: [0.5, -0.3],
      covariance: [
        [0.4, 0.1],
        [0.1, 0.6],
      ],
    };
    const found = heeding(before, [messageBetween(before, after, 1e9)]);
    for (const i of [0, 1]) {
      expect(found.mean[i]).toBeCloseTo(after.mean[i] ?? 0, 6);
      for (const j of [0, 1]) {
        expect(found.covariance[i]?.[j]).toBeCloseTo(after.covariance[i]?.[j] ?? 0, 6);
      }
    }
  });

  it('never teaches less than nothing', () => {
    const wider: Belief = {
      mean: [0, 0],
      covariance: [
        [1.5, 0],
        [0, 0.5],
      ],
    };
    const { precision } = messageBetween(unlearned(2), wider, 1e9);
    expect(precision[0]?.[0]).toBeCloseTo(0, 9);
    expect(precision[1]?.[1]).toBeCloseTo(1, 6);
  });

  it('teaches less where fewer members have seen it', () => {
    const after: Belief = { mean: [0], covariance: [[0.5]] };
    const of = (members: number) => messageBetween(unlearned(1), after, members).precision[0]?.[0];
    expect(of(20)).toBeLessThan(of(80) ?? 0);
  });

  it('from two who know the same is as sure as both together', () => {
    const message = { precision: [[1]], pull: [2] };
    expect(heeding(unlearned(1), [message, message])).toEqual({
      mean: [expect.closeTo(4 / 3, 12)],
      covariance: [[expect.closeTo(1 / 3, 12)]],
    });
  });

  it('about some unknowns leaves others alone', () => {
    const message = placed({ precision: [[1]], pull: [1] }, 1, 3);
    const found = heeding(unlearned(3), [message]);
    const half = expect.closeTo(0.5, 12);
    expect(found.mean).toEqual([0, half, 0]);
    expect(found.covariance.map((row, i) => row[i])).toEqual([1, half, 1]);
  });
});

describe('draws from a belief', () => {
  it('have exactly its mean and covariance, however few', () => {
    const rows = draw(tilted, 7, normals(seeded(3)));
    const { mean, covariance } = momentsOf(rows);
    for (const i of [0, 1]) {
      expect(mean[i]).toBeCloseTo(tilted.mean[i] ?? 0, 10);
      for (const j of [0, 1]) {
        expect(covariance[i]?.[j]).toBeCloseTo(tilted.covariance[i]?.[j] ?? 0, 10);
      }
    }
  });
});

describe('small matrices', () => {
  it('times their inverse change nothing', () => {
    const back = apply(inverse(tilted.covariance), apply(tilted.covariance, [3, 4]));
    expect(back[0]).toBeCloseTo(3, 10);
    expect(back[1]).toBeCloseTo(4, 10);
  });

  it('lose what is negative in them, and nothing else', () => {
    // Eigenvalues 3 and -1, along the diagonals.
    const found = withoutNegative([
      [1, 2],
      [2, 1],
    ]);
    for (const value of found.flat()) expect(value).toBeCloseTo(1.5, 10);
    const same = withoutNegative(tilted.covariance);
    expect(same[0]?.[0]).toBeCloseTo(2, 10);
    expect(same[0]?.[1]).toBeCloseTo(0.6, 10);
  });
});
