import { cholesky, type Matrix, solveCholesky } from './matrix.ts';
import { momentsOf, scoreOf } from './normal.ts';

/**
 * How much of how some values differ comes from causes that they have with others in common: the
 * square of the multiple correlation, from 0 to 1, cut back by what so few of them would show of
 * causes that do nothing (Ezekiel 1930, from memory). By rank, so that a value of infinity is only
 * the last.
 */
export function sharedPart(values: readonly number[], causes: Matrix): number {
  const scores = scoresOf(values);
  const rows = causes.map((row, i) => [...row, scores[i] ?? 0]);
  const { covariance } = momentsOf(rows);
  const count = (rows[0]?.length ?? 1) - 1;
  const freedom = rows.length - count - 1;
  const own = covariance[count]?.[count] ?? 0;
  if (own <= 0 || freedom <= 0) return 0;
  const among = covariance.slice(0, count).map((row) => row.slice(0, count));
  const withValues = covariance.slice(0, count).map((row) => row[count] ?? 0);
  const weights = solveCholesky(cholesky(among), withValues);
  const explained = weights.reduce((sum, weight, i) => sum + weight * (withValues[i] ?? 0), 0);
  const left = (1 - explained / own) * ((rows.length - 1) / freedom);
  return Math.min(1, Math.max(0, 1 - left));
}

/** The normal scores of values by their rank; what is equal shares the middle of its ranks. */
function scoresOf(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => (a === b ? 0 : a - b));
  return values.map((value) => {
    const [first, last] = [sorted.indexOf(value), sorted.lastIndexOf(value)];
    return scoreOf((first + last + 1) / 2 / values.length);
  });
}
