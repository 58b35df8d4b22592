export { assert, Bug, must, unreachable } from './assert.ts';
export type { Brand } from './brand.ts';
export {
  addDays,
  daysBetween,
  isLocalDay,
  type Weekday,
  weekdayOf,
  weekdays,
} from './calendar.ts';
export { canonical } from './canonical.ts';
export { type FileFault, type FileRead, filePath, meant, shown } from './fault.ts';
export type * from './ids.ts';
export { after, type Instant, instant, since } from './instant.ts';
export { readJsonText } from './json-text.ts';
export {
  isZone,
  type LocalDay,
  nearestZone,
  recallClock,
  type SteadyClock,
  steadyClock,
  type WallTime,
  wallTime,
} from './local-time.ts';
export { parseQuantity, type QuantityKind, quantityExample, quantityPattern } from './quantity.ts';
export { pickBelow, type Random, seeded } from './random.ts';
export { checkReferences, type Reference, unknownWord, withWords } from './references.ts';
export { type LocalReading, resolveLocal } from './resolve-local.ts';
export {
  clockSchema,
  entry,
  type Frozen,
  idSchema,
  quantitySchema,
  rangeSchema,
  readEntry,
  schemaLink,
  textSchema,
} from './schema.ts';
export { contains, overlaps, type Span } from './span.ts';
export { type Text, textOf } from './text.ts';
export {
  type Celsius,
  celsius,
  type Fahrenheit,
  fahrenheit,
  fromPounds,
  hours,
  type Kilograms,
  kilograms,
  type Litres,
  METRES_PER_INCH,
  type Metres,
  metres,
  minutes,
  type Seconds,
  seconds,
  toCelsius,
  toFahrenheit,
  toPounds,
} from './units.ts';
