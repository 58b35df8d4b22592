import type { Cut } from '../../shared/catalogue/index.ts';
import { kilograms } from '../../shared/kernel/index.ts';

const exactly = (typical: number) => ({ low: typical, typical, high: typical });

/** A piece of one kilogram that loses weight at one stage alone. */
export function onlyTrim(share: number): Pick<Cut, 'weightKg' | 'yields'> {
  return {
    weightKg: { low: kilograms(1), typical: kilograms(1), high: kilograms(1) },
    yields: { trim: exactly(share), cook: exactly(1), carve: exactly(1) },
  };
}
