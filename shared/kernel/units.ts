import type { Brand } from './brand.ts';

export type Seconds = Brand<number, 'seconds'>;
export type Celsius = Brand<number, 'degrees Celsius'>;
export type Fahrenheit = Brand<number, 'degrees Fahrenheit'>;
export type Kilograms = Brand<number, 'kilograms'>;
export type Metres = Brand<number, 'metres'>;
export type Litres = Brand<number, 'litres'>;

/** Says that a bare number is in seconds. */
export const seconds = (value: number) => value as Seconds;
/** Says that a bare number is in degrees Celsius. */
export const celsius = (value: number) => value as Celsius;
/** Says that a bare number is in degrees Fahrenheit. */
export const fahrenheit = (value: number) => value as Fahrenheit;
/** Says that a bare number is in kilograms. */
export const kilograms = (value: number) => value as Kilograms;
/** Says that a bare number is in metres. */
export const metres = (value: number) => value as Metres;

/** @example minutes(2) //=> 120 seconds */
export const minutes = (value: number) => seconds(value * 60);
/** @example hours(2) //=> 7200 seconds */
export const hours = (value: number) => seconds(value * 3600);

/** Exact by definition of the degree Fahrenheit. @example toCelsius(fahrenheit(212)) //=> 100 */
export const toCelsius = (value: Fahrenheit) => celsius(((value - 32) * 5) / 9);
/** Exact by definition of the degree Fahrenheit. @example toFahrenheit(celsius(100)) //=> 212 */
export const toFahrenheit = (value: Celsius) => fahrenheit((value * 9) / 5 + 32);

/** The international pound of 1959, exact. */
const KILOGRAMS_PER_POUND = 0.45359237;
/** @example fromPounds(1) //=> 0.45359237 kg */
export const fromPounds = (pounds: number) => kilograms(pounds * KILOGRAMS_PER_POUND);
/** @example toPounds(kilograms(0.45359237)) //=> 1 */
export const toPounds = (weight: Kilograms) => weight / KILOGRAMS_PER_POUND;

/** The international inch of 1959, exact. */
export const METRES_PER_INCH = 0.0254;
