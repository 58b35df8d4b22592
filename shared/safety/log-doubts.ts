import { celsius, fahrenheit, toCelsius, toFahrenheit } from '../kernel/index.ts';
import type { TempUnit } from './printed.ts';
import { degrees } from './printed.ts';
import { plausibleCoreC } from './readings.ts';

/** What is wrong with one line of a log, in a sentence for the person who can mend it. */
export type LogFault = {
  /** Counted from 1, the line with the names; 0 for the file as a whole. */
  readonly line: number;
  readonly kind:
    | 'columns'
    | 'time'
    | 'number'
    | 'order'
    | 'impossible'
    | 'unit'
    | 'silence'
    | 'too-few';
  readonly sentence: string;
};

/** One temperature as it was written. */
export type Written = { readonly line: number; readonly value: number; readonly atS: number };

const other = (unit: TempUnit): TempUnit => (unit === '°F' ? '°C' : '°F');

/** What a number means in this unit if it was read in the other one. */
const misread = (value: number, unit: TempUnit) =>
  unit === '°F' ? toFahrenheit(celsius(value)) : toCelsius(fahrenheit(value));

/**
 * How far apart two neighbours must be to be doubted, and how near the misread one must come to
 * fit.
 */
const DOUBT = { '°F': { far: 40, near: 15 }, '°C': { far: 22, near: 8 } } as const;

/**
 * Whether a number was taken in the other unit: it stands far from its neighbours, and would stand
 * near them if it had been.
 * @example isOtherUnit(74, '°F', [163, 166]) //=> true
 */
export function isOtherUnit(value: number, unit: TempUnit, neighbours: readonly number[]): boolean {
  const { far, near } = DOUBT[unit];
  const meant = misread(value, unit);
  const isFar = neighbours.every((next) => Math.abs(value - next) > far);
  const fits = Math.min(...neighbours) - near < meant && meant < Math.max(...neighbours) + near;
  return isFar && fits;
}

/**
 * Meat may have cooled so far in the time; one neighbour alone speaks only if it is nearer than
 * this.
 */
const NEAR_S = 1800;

function neighboursOf(column: readonly Written[], index: number): number[] {
  const [one, before, after] = [column[index], column[index - 1], column[index + 1]];
  if (before !== undefined && after !== undefined) return [before.value, after.value];
  const only = before ?? after;
  const isNear = only && one && Math.abs(only.atS - one.atS) <= NEAR_S;
  return isNear ? [only.value] : [];
}

/** Every temperature of a column that cannot be what it says. */
export function doubtsOf(
  column: readonly Written[],
  unit: TempUnit,
  { unitIsSure }: { readonly unitIsSure: boolean },
): LogFault[] {
  const whole = unitIsSure ? null : wholeColumn(column, unit);
  if (whole !== null) return [whole];
  return column.flatMap(({ line, value }, index) => {
    const neighbours = neighboursOf(column, index);
    if (isOtherUnit(value, unit, neighbours)) return [unitFault(line, value, unit, neighbours)];
    return isPlausible(value, unit) ? [] : [impossible(line, value, unit)];
  });
}

function isPlausible(value: number, unit: TempUnit): boolean {
  const { low, high } = plausibleCoreC;
  return degrees(unit, low) <= value && value <= degrees(unit, high);
}

/**
 * A cook ends above 113 °F by every rule, and a cooler stays below 50: between lie °C of a cook.
 */
const [NO_COOLER_F, NO_COOK_ENDS_F] = [50, 113];

function wholeColumn(column: readonly Written[], unit: TempUnit): LogFault | null {
  const highest = column.reduce(
    (most, { value }) => Math.max(most, value),
    Number.NEGATIVE_INFINITY,
  );
  const isLow = unit === '°F' && NO_COOLER_F < highest && highest < NO_COOK_ENDS_F;
  const wrong = column.filter(({ value }) => !isPlausible(value, unit));
  const isHigh = unit === '°C' && wrong.length * 2 > column.length;
  if (!isLow && !isHigh) return null;
  const what = isLow ? 'no cook ends there' : 'meat does not get so hot';
  const sentence =
    `The highest reading is ${highest} ${unit}, and ${what}; ` +
    `was the column read in ${other(unit)}?`;
  return { line: 0, kind: 'unit', sentence };
}

function unitFault(
  line: number,
  value: number,
  unit: TempUnit,
  neighbours: readonly number[],
): LogFault {
  const meant = Math.round(misread(value, unit));
  const between = neighbours.map((next) => `${next}`).join(' and ');
  const sentence =
    `Line ${line} says ${value} ${unit} beside ${between}; ` +
    `was it read in ${other(unit)} (${value} ${other(unit)} is ${meant} ${unit})?`;
  return { line, kind: 'unit', sentence };
}

function impossible(line: number, value: number, unit: TempUnit): LogFault {
  const [low, high] = [plausibleCoreC.low, plausibleCoreC.high].map((temp) => degrees(unit, temp));
  const hint = unit === '°C' && isPlausible(value, '°F') ? '; was it read in °F?' : '.';
  const sentence =
    `Line ${line} says ${value} ${unit}, ` +
    `which a probe in food does not show (${low} to ${high} ${unit})${hint}`;
  return { line, kind: 'impossible', sentence };
}
