import { assert } from '../kernel/index.ts';

/** A small square or oblong matrix, row by row. */
export type Matrix = readonly (readonly number[])[];

const entry = (matrix: Matrix, row: number, column: number) => matrix[row]?.[column] ?? Number.NaN;

/** @example identity(2) //=> [[1, 0], [0, 1]] */
export function identity(size: number): number[][] {
  return tabulate(size, size, (i, j) => (i === j ? 1 : 0));
}

/** A matrix from its entries. @example tabulate(1, 2, (i, j) => 10 * i + j) //=> [[0, 1]] */
export function tabulate(
  rows: number,
  columns: number,
  of: (row: number, column: number) => number,
): number[][] {
  return Array.from({ length: rows }, (_, i) =>
    Array.from({ length: columns }, (_, j) => of(i, j)),
  );
}

/** The sum of two matrices of one form, the second times a factor. */
export function plus(a: Matrix, b: Matrix, times = 1): number[][] {
  return a.map((row, i) => row.map((value, j) => value + times * entry(b, i, j)));
}

/** A matrix times a column. @example apply([[1, 2]], [3, 4]) //=> [11] */
export function apply(matrix: Matrix, column: readonly number[]): number[] {
  return matrix.map((row) => row.reduce((sum, value, j) => sum + value * (column[j] ?? 0), 0));
}

/** L of L·Lᵀ, for a symmetric matrix that is positive definite; a bug where it is not. */
export function cholesky(matrix: Matrix): number[][] {
  const size = matrix.length;
  const lower = tabulate(size, size, () => 0);
  for (let i = 0; i < size; i++) {
    const row = lower[i] ?? [];
    for (let j = 0; j <= i; j++) {
      let sum = entry(matrix, i, j);
      for (let k = 0; k < j; k++) sum -= entry(lower, i, k) * entry(lower, j, k);
      if (i === j) assert(sum > 0, `a positive definite matrix, not ${sum} at ${i}`);
      row[j] = i === j ? Math.sqrt(sum) : sum / entry(lower, j, j);
    }
  }
  return lower;
}

/** The x of L·Lᵀ·x = b. */
export function solveCholesky(lower: Matrix, b: readonly number[]): number[] {
  const x = [...b];
  const size = x.length;
  for (let i = 0; i < size; i++) {
    let sum = x[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= entry(lower, i, k) * (x[k] ?? 0);
    x[i] = sum / entry(lower, i, i);
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < size; k++) sum -= entry(lower, k, i) * (x[k] ?? 0);
    x[i] = sum / entry(lower, i, i);
  }
  return x;
}

/** The inverse of a symmetric positive definite matrix. */
export function inverse(matrix: Matrix): number[][] {
  const lower = cholesky(matrix);
  return identity(matrix.length).map((row) => solveCholesky(lower, row));
}

/**
 * The nearest matrix without negative eigenvalues, after Jacobi's rotations (Golub and Van Loan,
 * "Matrix Computations", 8.5). For the few unknowns of a piece.
 */
export function withoutNegative(matrix: Matrix): number[][] {
  const size = matrix.length;
  const work = tabulate(size, size, (i, j) => (entry(matrix, i, j) + entry(matrix, j, i)) / 2);
  const vectors = identity(size);
  // Each sweep about squares what is left off the diagonal; a dozen would do for any matrix.
  for (let sweep = 0; sweep < 12 && isMixed(work); sweep++) {
    for (let p = 0; p < size; p++) for (let q = p + 1; q < size; q++) rotate(work, vectors, p, q);
  }
  return tabulate(size, size, (i, j) => {
    let sum = 0;
    for (let k = 0; k < size; k++) {
      sum += Math.max(0, entry(work, k, k)) * entry(vectors, i, k) * entry(vectors, j, k);
    }
    return sum;
  });
}

const isMixed = (matrix: Matrix) =>
  matrix.some((row, i) => row.some((value, j) => i !== j && Math.abs(value) > 1e-10));

/** Turns rows and columns p and q so that what they share is none. */
function rotate(work: number[][], vectors: number[][], p: number, q: number): void {
  const shared = entry(work, p, q);
  if (Math.abs(shared) < 1e-300) return;
  const slope = (entry(work, q, q) - entry(work, p, p)) / (2 * shared);
  const tangent = Math.sign(slope || 1) / (Math.abs(slope) + Math.hypot(slope, 1));
  const cosine = 1 / Math.hypot(tangent, 1);
  const sine = tangent * cosine;
  const turnColumns = (rows: number[][]) => {
    for (const row of rows) {
      const [a, b] = [row[p] ?? 0, row[q] ?? 0];
      row[p] = cosine * a - sine * b;
      row[q] = sine * a + cosine * b;
    }
  };
  turnColumns(work);
  const [rowP, rowQ] = [work[p] ?? [], work[q] ?? []];
  for (let k = 0; k < work.length; k++) {
    const [a, b] = [rowP[k] ?? 0, rowQ[k] ?? 0];
    rowP[k] = cosine * a - sine * b;
    rowQ[k] = sine * a + cosine * b;
  }
  turnColumns(vectors);
}
