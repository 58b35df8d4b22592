import type { Random } from '../kernel/index.ts';
import type { Belief } from './belief.ts';
import { cholesky } from './matrix.ts';

/**
 * A stream of standard normal numbers (Box and Muller 1958), a function of the stream it is
 * given.
 */
export function normals(random: Random): () => number {
  let kept: number | undefined;
  return () => {
    if (kept !== undefined) {
      const second = kept;
      kept = undefined;
      return second;
    }
    // 1 - [0, 1) is never zero.
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    kept = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/**
 * Draws from a belief, one row a member. Their mean and covariance are exactly those believed, so
 * that a small ensemble starts without a lean of its own.
 */
export function draw(belief: Belief, members: number, normal: () => number): number[][] {
  const size = belief.mean.length;
  const raw = Array.from({ length: members }, () => Array.from({ length: size }, normal));
  const { mean, covariance } = momentsOf(raw);
  const [own, believed] = [cholesky(covariance), cholesky(belief.covariance)];
  return raw.map((row) => {
    // Undo the sample's own mixing from the top, then mix as believed.
    const white: number[] = [];
    for (let i = 0; i < size; i++) {
      let value = (row[i] ?? 0) - (mean[i] ?? 0);
      for (let k = 0; k < i; k++) value -= (own[i]?.[k] ?? 0) * (white[k] ?? 0);
      white.push(value / (own[i]?.[i] ?? 1));
    }
    return belief.mean.map((middle, i) => {
      let value = middle;
      for (let k = 0; k <= i; k++) value += (believed[i]?.[k] ?? 0) * (white[k] ?? 0);
      return value;
    });
  });
}

/** The mean and the covariance of rows, one a member. */
export function momentsOf(rows: readonly (readonly number[])[]): Belief {
  const size = rows[0]?.length ?? 0;
  const mean = new Array<number>(size).fill(0);
  for (const row of rows) for (let i = 0; i < size; i++) mean[i] = (mean[i] ?? 0) + (row[i] ?? 0);
  for (let i = 0; i < size; i++) mean[i] = (mean[i] ?? 0) / rows.length;
  const covariance = mean.map(() => new Array<number>(size).fill(0));
  for (const row of rows) {
    for (let i = 0; i < size; i++) {
      const off = ((row[i] ?? 0) - (mean[i] ?? 0)) / (rows.length - 1);
      const line = covariance[i] ?? [];
      for (let k = 0; k <= i; k++)
        line[k] = (line[k] ?? 0) + off * ((row[k] ?? 0) - (mean[k] ?? 0));
    }
  }
  for (const [i, line] of covariance.entries()) {
    for (let k = i + 1; k < size; k++) line[k] = covariance[k]?.[i] ?? 0;
  }
  return { mean, covariance };
}

/**
 * The standard normal number below which such a share of all lies, within 0.0005 (Abramowitz and
 * Stegun, "Handbook of Mathematical Functions", 26.2.23). @example scoreOf(0.9) //=> about 1.28
 */
export function scoreOf(share: number): number {
  if (share > 0.5) return -scoreOf(1 - share);
  const t = Math.sqrt(-2 * Math.log(share));
  const over = 2.515517 + t * (0.802853 + t * 0.010328);
  const under = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  return over / under - t;
}
