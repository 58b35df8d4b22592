import { cholesky, type Matrix, plus, solveCholesky, tabulate } from './matrix.ts';
import { momentsOf } from './normal.ts';

/** What was observed, and how far it may be off: each by its own, and together. */
export type Observed = { readonly tempsC: readonly number[]; readonly covariance: Matrix };

/** In so many small steps an ensemble is brought to the readings; one large one would overshoot. */
export const UPDATES = 4;

/**
 * One of the steps of an ensemble smoother with multiple data assimilation (Emerick and Reynolds
 * 2013): the same readings, each time with their covariance blown up by the number of steps.
 * `rows` are the unknowns of the members, `foreseen` what each of them foresees of the readings;
 * the answer is the new unknowns.
 *
 * A small ensemble sees relations where there are none. Each gain is therefore cut back as if its
 * correlation had been drawn from so many members (Furrer and Bengtsson 2007, the optimal taper).
 */
export function update(
  rows: Matrix,
  foreseen: Matrix,
  observed: Observed,
  normal: () => number,
): number[][] {
  const members = rows.length;
  const count = observed.tempsC.length;
  const ofForeseen = momentsOf(foreseen);
  const ofRows = momentsOf(rows);
  const gains = tabulate(ofRows.mean.length, count, () => 0);
  for (let j = 0; j < members; j++) {
    const [row, seen] = [rows[j] ?? [], foreseen[j] ?? []];
    for (const [i, line] of gains.entries()) {
      const off = ((row[i] ?? 0) - (ofRows.mean[i] ?? 0)) / (members - 1);
      for (let k = 0; k < count; k++) {
        line[k] = (line[k] ?? 0) + off * ((seen[k] ?? 0) - (ofForeseen.mean[k] ?? 0));
      }
    }
  }
  for (const [i, line] of gains.entries()) {
    for (const [k, shared] of line.entries()) {
      const own = (ofRows.covariance[i]?.[i] ?? 0) * (ofForeseen.covariance[k]?.[k] ?? 0);
      line[k] = shared * taper(shared * shared, own, members);
    }
  }
  const spread = cholesky(plus(ofForeseen.covariance, observed.covariance, UPDATES));
  const errors = cholesky(observed.covariance);
  const noise = centred(
    Array.from({ length: members }, () => {
      const white = Array.from({ length: count }, normal);
      return errors.map((row) => row.reduce((sum, l, k) => sum + l * (white[k] ?? 0), 0));
    }),
  );
  return rows.map((row, j) => {
    const missed = observed.tempsC.map((tempC, k) => {
      return tempC + Math.sqrt(UPDATES) * (noise[j]?.[k] ?? 0) - (foreseen[j]?.[k] ?? 0);
    });
    const weights = solveCholesky(spread, missed);
    return row.map((value, i) =>
      weights.reduce((sum, weight, k) => sum + (gains[i]?.[k] ?? 0) * weight, value),
    );
  });
}

/**
 * How much of a covariance, by its square and that of its greatest, so many members are to be
 * believed.
 */
function taper(squared: number, own: number, members: number): number {
  return own > 0 ? squared / (squared + (squared + own) / members) : 0;
}

/** Errors that add up to none over the members, so that they pull nobody's mean. */
function centred(rows: readonly (readonly number[])[]): number[][] {
  const { mean } = momentsOf(rows);
  return rows.map((row) => row.map((value, k) => value - (mean[k] ?? 0)));
}
