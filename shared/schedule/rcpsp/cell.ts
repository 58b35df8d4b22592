/**
 * Reads a cell that is known to lie within; one kind of array alone, so that the compiler of the
 * inner loops never has to ask which.
 * @example cell(Int32Array.of(5, 6), 1) //=> 6
 */
export function cell(values: Int32Array, index: number): number {
  return values[index] as number;
}
