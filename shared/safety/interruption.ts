import type { Celsius, Seconds } from '../kernel/index.ts';
import { celsius, seconds } from '../kernel/index.ts';
import type { Series } from './readings.ts';

/** A cook that lost heat before it was full. */
export type Interruption = {
  /** The fall began here, after this long on the fire. */
  readonly fromS: Seconds;
  readonly heatedS: Seconds;
  /** When it was as hot as before; null if never. */
  readonly toS: Seconds | null;
  readonly lowestC: Celsius;
};

/** A stall wavers, a door is opened: a fall of less says nothing (common practice, no source). */
const FALL_K = 3;

/**
 * Where a cook lost heat before lethality was met, so that its come-up goes on counting and a
 * finish on another day is cooking in two goes.
 * @param untilS when lethality was met; null if it was not
 */
export function interruptionsOf(readings: Series, untilS: number | null): Interruption[] {
  const [first] = readings;
  if (first === undefined) return [];
  const found: Interruption[] = [];
  let peak = first;
  let lowest = first;
  const note = (toS: Seconds | null) => {
    const heatedS = seconds(peak.atS - first.atS);
    // Readings that fall from the first on are of a cooling, not of a cook.
    if (heatedS === 0 || peak.tempC - lowest.tempC <= FALL_K) return;
    found.push({ fromS: peak.atS, heatedS, toS, lowestC: celsius(lowest.tempC) });
  };
  for (const reading of readings) {
    if (untilS !== null && reading.atS > untilS) break;
    if (reading.tempC >= peak.tempC) {
      note(reading.atS);
      peak = reading;
      lowest = reading;
    } else if (reading.tempC < lowest.tempC) lowest = reading;
  }
  note(null);
  return found;
}
