import type { Celsius } from '../../../shared/kernel/index.ts';
import { fahrenheit, seconds, toCelsius } from '../../../shared/kernel/index.ts';
import type { Series } from '../../../shared/safety/index.ts';

/** A temperature that is written in °F. */
export const degF = (value: number): Celsius => toCelsius(fahrenheit(value));

/** Readings of a curve in °F over minutes, one every `stepMin` and one at the end. */
export function curveF(
  tempF: (minute: number) => number,
  { minutes, stepMin = 1 }: { readonly minutes: number; readonly stepMin?: number },
): Series {
  const steps = Math.ceil(minutes / stepMin - 1e-9);
  return Array.from({ length: steps + 1 }, (_, index) => {
    const minute = Math.min(index * stepMin, minutes);
    return { atS: seconds(minute * 60), tempC: degF(tempF(minute)) };
  });
}

/** The same temperature for so many minutes. */
export const heldF = (tempF: number, minutes: number, stepMin = Math.min(1, minutes)): Series =>
  curveF(() => tempF, { minutes, stepMin });

/** Points `[minute, °F]`, with straight lines between them. */
export function throughF(points: readonly (readonly [number, number])[], stepMin = 1): Series {
  const minutes = points.at(-1)?.[0] ?? 0;
  return curveF((minute) => lineThrough(points, minute), { minutes, stepMin });
}

function lineThrough(points: readonly (readonly [number, number])[], minute: number): number {
  const after = points.findIndex(([at]) => at >= minute);
  const [fromMin, fromF] = points[Math.max(after - 1, 0)] ?? [0, 0];
  const [toMin, toF] = points[after] ?? [0, 0];
  return toMin === fromMin ? toF : fromF + ((toF - fromF) * (minute - fromMin)) / (toMin - fromMin);
}

/** A first value and what follows from it step by step. */
export function walk(first: number, steps: readonly number[]): number[] {
  let last = first;
  return [first, ...steps.map((step) => (last += step))];
}
