import type { Mix } from '../catalogue/index.ts';
import type { Kilograms } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';

/** Nitrite that goes into meat, and how. */
export type Ingoing = {
  readonly method: NonNullable<Mix['cures']>;
  readonly nitriteKg: Kilograms;
  /** Of the meat as it is cured. */
  readonly greenKg: Kilograms;
};

/**
 * What so much of a mix brings into so much meat; null where it cures nothing. Of pickle counts
 * what the meat takes up (FSIS Processing Inspectors' Calculations Handbook, chapter 3, 1995).
 * @example ingoing(cure, { doseKg: kilograms(0.25), greenKg: kilograms(100) })?.nitriteKg
 */
export function ingoing(
  mix: Pick<Mix, 'parts' | 'cures' | 'takesUp'>,
  { doseKg, greenKg }: { readonly doseKg: Kilograms; readonly greenKg: Kilograms },
): Ingoing | null {
  if (mix.cures === undefined) return null;
  const whole = mix.parts.reduce((sum, { parts }) => sum + parts, 0);
  const nitrite = mix.parts.reduce((sum, { parts, nitrite: share = 0 }) => sum + parts * share, 0);
  const nitriteKg = kilograms(doseKg * (mix.takesUp ?? 1) * (nitrite / whole));
  return { method: mix.cures, nitriteKg, greenKg };
}
