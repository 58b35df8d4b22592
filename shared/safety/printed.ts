import type { Celsius, Kilograms, Seconds } from '../kernel/index.ts';
import {
  assert,
  celsius,
  fahrenheit,
  fromPounds,
  kilograms,
  seconds,
  toCelsius,
  toFahrenheit,
} from '../kernel/index.ts';

/** A temperature with the digits and the unit in which its source prints it. */
export type PrintedTemp = `${number} °F` | `${number} °C`;
/** `<1 s` is what the Food Code prints where no time is needed. */
export type PrintedTime = '<1 s' | `${number} ${'s' | 'min' | 'h' | 'd'}`;
export type PrintedWeight = `${number} lb` | `${number} kg`;
export type PrintedShare = `${number} ppm` | `${number} %`;
type Printed = PrintedTemp | PrintedTime | PrintedWeight | PrintedShare;

export type TempUnit = UnitOf<PrintedTemp>;
export type TimeUnit = UnitOf<PrintedTime>;
type UnitOf<P extends Printed> = P extends `${string} ${infer Unit}` ? Unit : never;

/** A number in the unit of the limit that it stands beside. */
export type Amount<Unit extends string = UnitOf<Printed>> = {
  readonly value: number;
  readonly unit: Unit;
};

const secondsIn = { s: 1, min: 60, h: 3600, d: 86_400 } as const satisfies Record<TimeUnit, number>;

/** @example amountOf('165 °F') //=> { value: 165, unit: '°F' } */
export function amountOf<P extends Printed>(printed: P): Amount<UnitOf<P>> {
  const [digits = '', unit = ''] = printed.replace('<1 s', '0 s').split(' ');
  const value = Number(digits);
  assert(digits !== '' && Number.isFinite(value), `not a printed amount: ${printed}`);
  return { value, unit: unit as UnitOf<P> };
}

/** @example secondsOf('2 h') //=> 7200 */
export function secondsOf(printed: PrintedTime): Seconds {
  const { value, unit } = amountOf(printed);
  return seconds(value * secondsIn[unit]);
}

/** @example celsiusOf('41 °F') //=> 5 */
export function celsiusOf(printed: PrintedTemp): Celsius {
  const { value, unit } = amountOf(printed);
  return unit === '°F' ? toCelsius(fahrenheit(value)) : celsius(value);
}

/** @example kilogramsOf('10 lb') //=> 4.5359237 */
export function kilogramsOf(printed: PrintedWeight): Kilograms {
  const { value, unit } = amountOf(printed);
  return unit === 'lb' ? fromPounds(value) : kilograms(value);
}

/**
 * A temperature as a number of `unit`. A reading of 135 °F that was kept in °C comes back as
 * 134.99999999999997: what differs so far below the digits of any thermometer is arithmetic, and no
 * limit may break by it.
 * @example degrees('°F', celsius(100)) //=> 212
 */
export function degrees(unit: TempUnit, temp: Celsius): number {
  return Math.round((unit === '°F' ? toFahrenheit(temp) : temp) * 1e9) / 1e9;
}

/** A temperature in the unit of a limit. @example tempIn('°F', celsius(100)).value //=> 212 */
export function tempIn<Unit extends TempUnit>(unit: Unit, temp: Celsius): Amount<Unit> {
  return { value: degrees(unit, temp), unit };
}

/** A difference of kelvins as degrees of `unit`. @example degreesIn('°F', 1) //=> 1.8 */
export function degreesIn(unit: TempUnit, differenceK: number): number {
  return unit === '°F' ? differenceK * 1.8 : differenceK;
}

/** A duration in the unit of a limit. @example timeIn('h', seconds(5400)).value //=> 1.5 */
export function timeIn<Unit extends TimeUnit>(unit: Unit, duration: Seconds): Amount<Unit> {
  return { value: duration / secondsIn[unit], unit };
}
