import type { Celsius } from '../kernel/index.ts';
import { humidityFromWetBulb } from './moist-air.ts';
import type { Unknown } from './prior.ts';

/**
 * What all pieces of one smoker have in common and nobody can read off it, in the order of a
 * belief.
 */
export const smokerUnknowns = ['film', 'emissivity', 'humidity', 'airShift'] as const;

export type SmokerUnknowns = Readonly<Record<(typeof smokerUnknowns)[number], Unknown>>;

/** What is believed of a smoker before the kitchen has cooked in it. */
export type SmokerPrior = {
  readonly unknowns: SmokerUnknowns;
  /** By how much the walls are colder than the air, K. */
  readonly wallsBelowAirK: number;
  /**
   * How far the fire will stray from its set temperature for hours on end, as a standard
   * deviation.
   */
  readonly swingK: number;
};

const anySmoker = {
  film: {
    scale: 'ratio',
    median: 9,
    spread: 1.3,
    sureness: 'textbook',
    source: 'free to slow forced air, 5 to 13 W/m²K; 19 with radiation, fitted to roasting turkeys',
  },
  emissivity: {
    scale: 'between',
    low: 0.45,
    high: 0.95,
    sureness: 'measured',
    source: 'beef 0.74 to 0.78; walls between clean steel and soot',
  },
  humidity: {
    scale: 'ratio',
    median: 0.05,
    spread: 1.5,
    sureness: 'judged',
    source: 'kg of water to a kg of dry air, from the fuel and the meat itself',
  },
  airShift: {
    scale: 'shift',
    median: 0,
    spread: 2,
    sureness: 'judged',
    source: 'between the thermometer of the smoker and the air at the piece, K',
  },
} as const satisfies SmokerUnknowns;

/** By how the air gets round in it. */
export const smokerPriors = {
  draught: { unknowns: anySmoker, wallsBelowAirK: 5, swingK: 2 },
  fan: {
    unknowns: {
      ...anySmoker,
      film: {
        scale: 'ratio',
        median: 17,
        spread: 1.3,
        sureness: 'textbook',
        source: 'forced air in an oven, 12 to 25 W/m²K',
      },
    },
    wallsBelowAirK: 2,
    swingK: 1,
  },
} as const satisfies Record<string, SmokerPrior>;

/**
 * A smoker whose humidity somebody has read: the air's temperature and that of a thermometer in a
 * wet sock beside it. Nothing where there is no such air.
 */
export function withWetBulb(
  prior: SmokerPrior,
  air: Celsius,
  wetBulb: Celsius,
  pressurePa?: number,
): SmokerPrior | undefined {
  const ratio = humidityFromWetBulb(air, wetBulb, pressurePa);
  if (ratio === undefined || !(ratio > 0) || ratio === Number.POSITIVE_INFINITY) return undefined;
  const humidity: Unknown = {
    scale: 'ratio',
    median: ratio,
    spread: 1.15,
    sureness: 'measured',
    source: 'a wet sock over a thermometer, in this smoker',
  };
  return { ...prior, unknowns: { ...prior.unknowns, humidity } };
}
