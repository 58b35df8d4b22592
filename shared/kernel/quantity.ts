import { assert } from './assert.ts';
import { fahrenheit, fromPounds, METRES_PER_INCH, toCelsius } from './units.ts';

/** What a written amount can be of. Inside everything is in the unit named here. */
export type QuantityKind =
  | 'length in metres'
  | 'weight in kilograms'
  | 'volume in litres'
  | 'duration in seconds'
  | 'temperature in degrees Celsius'
  | 'heat rate in degrees Celsius per second'
  | 'share of one';

type Grammar = {
  readonly example: string;
  /** The units that may stand in it, the larger first, each with its way into the unit inside. */
  readonly units: Readonly<Record<string, (value: number) => number>>;
  /** Whether several amounts may follow one another, `2 h 30 min`. */
  readonly compound: boolean;
};

const times = (factor: number) => (value: number) => value * factor;

/** The US liquid quart of 231/4 cubic inches, exact. */
const LITRES_PER_QUART = 57.75 * (METRES_PER_INCH * 10) ** 3;

const grammars: Readonly<Record<QuantityKind, Grammar>> = {
  'length in metres': {
    example: '"24 in" or "61 cm"',
    units: {
      m: times(1),
      cm: times(0.01),
      mm: times(0.001),
      ft: times(12 * METRES_PER_INCH),
      in: times(METRES_PER_INCH),
    },
    compound: true,
  },
  'weight in kilograms': {
    example: '"12 lb", "2 lb 8 oz" or "1.2 kg"',
    units: { kg: times(1), lb: fromPounds, oz: (oz) => fromPounds(oz / 16), g: times(0.001) },
    compound: true,
  },
  'volume in litres': {
    example: '"200 ml" or "2 qt"',
    units: {
      l: times(1),
      ml: times(0.001),
      qt: times(LITRES_PER_QUART),
      'fl oz': times(LITRES_PER_QUART / 32),
    },
    compound: false,
  },
  'duration in seconds': {
    example: '"2 h 30 min" or "45 s"',
    units: { h: times(3600), min: times(60), s: times(1) },
    compound: true,
  },
  'temperature in degrees Celsius': {
    example: '"250 °F" or "121 °C"',
    units: { '°F': (value) => toCelsius(fahrenheit(value)), '°C': times(1) },
    compound: false,
  },
  'heat rate in degrees Celsius per second': {
    example: '"4 °F/min" or "2 °C/min"',
    units: { '°F/min': times(5 / 9 / 60), '°C/min': times(1 / 60) },
    compound: false,
  },
  'share of one': { example: '"68 %"', units: { '%': (value) => value / 100 }, compound: false },
};

const number = String.raw`\d+(?:\.\d+)?`;

/**
 * The regular expression that an amount of this kind must match, for a schema.
 * @example quantityPattern('share of one').test('68 %') //=> true
 */
export function quantityPattern(kind: QuantityKind): RegExp {
  const { units, compound } = grammars[kind];
  const one = `${number} ?(?:${Object.keys(units).join('|')})`;
  const sign = kind.startsWith('temperature') ? '-?' : '';
  return new RegExp(compound ? `^${one}(?: ${one})*$` : `^${sign}${one}$`);
}

/**
 * How an amount of this kind is written, for the person who wrote another.
 * @example quantityExample('share of one') //=> '"68 %"'
 */
export function quantityExample(kind: QuantityKind): string {
  return grammars[kind].example;
}

/**
 * The amount in the unit that `kind` names; the text must match `quantityPattern(kind)`.
 * @example parseQuantity('duration in seconds', '2 h 30 min') //=> 9000
 */
export function parseQuantity(kind: QuantityKind, text: string): number {
  const { units } = grammars[kind];
  assert(quantityPattern(kind).test(text), `not a ${kind}: ${text}`);
  const parts = text.matchAll(/(-?\d+(?:\.\d+)?) ?([^\d-]+)/g);
  return [...parts].reduce((sum, [, value, unit]) => {
    const convert = units[(unit ?? '').trim()];
    assert(convert, `unknown unit: ${unit}`);
    return sum + convert(Number(value));
  }, 0);
}
