import type { Celsius, Instant, Kilograms, Seconds } from '../kernel/index.ts';
import { toFahrenheit, toPounds, wallTime } from '../kernel/index.ts';
import type { Text } from '../view/index.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';

/**
 * The wall clock of the kitchen at an instant.
 * @example clockTime(at, { ...say, clock: '12 h' }) //=> '5:05 pm'
 */
export function clockTime(at: Instant, say: Pick<Say, 'zone' | 'clock'>): string {
  const { time } = wallTime(at, say.zone);
  if (say.clock === '24 h') return time;
  const hour = Number(time.slice(0, 2));
  return `${hour % 12 || 12}${time.slice(2)} ${hour < 12 ? 'am' : 'pm'}`;
}

/**
 * A full hour of the kitchen's clock; one that falls on no full hour there keeps its minutes.
 * @example clockHour(at, { ...say, clock: '12 h' }) //=> '5 pm'
 */
export function clockHour(at: Instant, say: Pick<Say, 'zone' | 'clock'>): string {
  const time = clockTime(at, say);
  return say.clock === '12 h' ? time.replace(':00', '') : time;
}

/**
 * A length of time in whole minutes, as a cook says it.
 * @example durationWords(seconds(5460)) //=> '1 h 31 min'
 */
export function durationWords(durationS: Seconds): string {
  const total = Math.round(Math.abs(durationS) / 60);
  const hours = Math.floor(total / 60);
  const minutes = total % 60;
  if (hours === 0) return `${minutes} min`;
  return minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`;
}

/**
 * Minutes of what is in hand: less than one to either side is none, and nobody is “0 min late”.
 * @example wholeMinutes(seconds(-59)) === 0 //=> true
 */
export const wholeMinutes = (inHandS: Seconds): number => Math.trunc(inHandS / 60);

/** @example temperature(celsius(107), { temperature: '°F' }) //=> '225 °F' */
export function temperature(tempC: Celsius, say: Pick<Say, 'temperature'>): string {
  const shown = say.temperature === '°F' ? toFahrenheit(tempC) : tempC;
  return `${Math.round(shown)} ${say.temperature}`;
}

/**
 * Two figures below ten, whole above: more would be false care. @example weight(kilograms(1.44),
 * say) //=> '1.4 kg'
 */
export function weight(weightKg: Kilograms, say: Pick<Say, 'weight'>): string {
  const shown = say.weight === 'lb' ? toPounds(weightKg) : weightKg;
  const digits = shown < 10 ? 1 : 0;
  return `${shown.toFixed(digits).replace(/\.0$/, '')} ${say.weight}`;
}

/** @example countPieces(1, { one: { en: 'slab' }, many: { en: 'slabs' } }, say) //=> '1 slab' */
export function countPieces(
  count: number,
  piece: { readonly one: Text; readonly many: Text },
  say: Pick<Say, 'language'>,
): string {
  return `${count} ${textIn(count === 1 ? piece.one : piece.many, say)}`;
}
