import { z } from 'zod';
import type { Celsius, FileRead, Frozen, Metres, Seconds } from '../kernel/index.ts';
import {
  entry,
  parseQuantity,
  quantityExample,
  quantityPattern,
  quantitySchema,
  readEntry,
  schemaLink,
  seconds,
} from '../kernel/index.ts';
import { cutPriors, pieceUnknowns } from './cut-priors.ts';
import type { Unknown } from './prior.ts';
import { rooms, wraps } from './rooms.ts';
import { smokerPriors, smokerUnknowns, withWetBulb } from './smoker-priors.ts';

const temperature = () => quantitySchema<Celsius>('temperature in degrees Celsius');
const length = () => quantitySchema<Metres>('length in metres');
const duration = () => quantitySchema<Seconds>('duration in seconds');
const positive = () => z.number().positive();
const share = () => z.number().min(0).max(1);

/** The names of a record, as an enumeration of zod wants them. */
const namesOf = <Name extends string>(record: Readonly<Record<Name, unknown>>) =>
  Object.keys(record) as [Name, ...Name[]];

/** Since the piece went in; what lies before that is read, to be refused with its reason. */
function timeSchema() {
  const allowed = `a time since it went in, such as ${quantityExample('duration in seconds')}`;
  const unsigned = quantityPattern('duration in seconds').source.slice(1);
  return z
    .string({ error: allowed })
    .regex(new RegExp(`^-?${unsigned}`), { error: allowed, abort: true })
    .meta({ description: allowed })
    .transform((text) => {
      const isBefore = text.startsWith('-');
      const lasts = parseQuantity('duration in seconds', isBefore ? text.slice(1) : text);
      return seconds(isBefore ? -lasts : lasts);
    });
}

const own = { sureness: z.enum(['textbook', 'measured', 'judged']), source: z.string() };

/** A number in SI that is known, or what is believed of it. */
const unknown = z
  .union(
    [
      z.number(),
      entry({
        scale: z.enum(['ratio', 'shift']),
        median: z.number(),
        spread: z.number(),
        sureness: own.sureness.default('judged'),
        source: own.source.default('the file'),
      }),
      entry({
        scale: z.literal('between'),
        low: z.number(),
        high: z.number(),
        sureness: own.sureness.default('judged'),
        source: own.source.default('the file'),
      }),
    ],
    { error: 'a number, or a scale with median and spread, or "between" with low and high' },
  )
  .transform((said): Unknown => {
    if (typeof said !== 'number') return said;
    const known = { sureness: 'measured', source: 'the file' } as const;
    return { scale: 'shift', median: said, spread: 0, ...known };
  });

/** Any of some unknowns; what is left out is believed as usual. */
function unknowns<Name extends string>(names: readonly Name[]) {
  const shape = Object.fromEntries(names.map((name) => [name, z.exactOptional(unknown)]));
  return entry(shape).transform((said) => said as Partial<Record<Name, Unknown>>);
}

const wrap = () => z.enum(namesOf(wraps));

const smoker = entry({
  id: z.string().min(1).default('smoker').describe('Smokers of one id are one smoker'),
  air: z.enum(namesOf(smokerPriors)).default('draught').describe('How the air gets round in it'),
  set: temperature().describe('Where the fire is set to from the last entry of the log on'),
  log: z
    .array(entry({ at: timeSchema(), air: temperature() }))
    .default([])
    .describe('The air as it was, in order of time'),
  doors: z.array(entry({ at: timeSchema(), open: duration() })).default([]),
  wetBulb: z.exactOptional(temperature()).describe('Of a wet sock in its air, at its set heat'),
  pressurePa: z.exactOptional(positive()),
  wallsBelowAirK: z.exactOptional(z.number()),
  swingK: z.exactOptional(z.number().min(0)).describe('How far the fire strays, for hours on end'),
  unknowns: unknowns(smokerUnknowns).prefault({}),
}).refine(
  ({ wetBulb, set, pressurePa }) =>
    wetBulb === undefined ||
    withWetBulb(smokerPriors.draught, set, wetBulb, pressurePa) !== undefined,
  { error: 'no warmer than the air it is in', path: ['wetBulb'] },
);

const room = z.union(
  [
    z.enum(namesOf(rooms)),
    entry({
      air: temperature(),
      filmWPerM2K: positive(),
      emissivity: share(),
      humidityRatio: z.number().min(0),
    }),
  ],
  { error: `one of: ${Object.keys(rooms).join(', ')}; or its air, film, emissivity, humidity` },
);

const stay = entry({
  at: z.exactOptional(timeSchema()).describe('From when on; or'),
  core: z.exactOptional(temperature()).describe('from when the thermometer shows so much'),
  in: z
    .exactOptional(z.union([entry({ smoker }), entry({ room })]))
    .describe('Another smoker, or a room; left out: the smoker'),
  wrap: wrap().default('none'),
}).refine(({ at, core }) => (at === undefined) !== (core === undefined), {
  error: 'either "at" or "core"',
});

const target = entry({
  id: z.exactOptional(z.string().min(1)),
  temp: temperature(),
  way: z.enum(['rising', 'falling']).default('rising'),
});

const ownWrap = entry({
  contactWPerM2K: positive(),
  passes: share(),
  emissivity: z.exactOptional(share()),
});

const piece = entry({
  cut: z.enum(namesOf(cutPriors)).describe('The cut that it is most like'),
  composition: z
    .exactOptional(
      entry({
        water: z.number(),
        protein: z.number(),
        fat: z.number(),
        ash: z.number(),
        carbohydrate: z.exactOptional(z.number()),
      }),
    )
    .describe('Shares of its weight; left out: as food tables have the cut'),
  thickness: length().describe('At the thickest place, by tape'),
  width: length(),
  length: length(),
  start: temperature().describe('Of its core when it goes in'),
  unknowns: unknowns(pieceUnknowns).prefault({}),
});

/** A piece, its smoker and what was read, as a person writes them. */
export const forecastFileSchema = entry({
  $schema: schemaLink(),
  now: z.exactOptional(timeSchema()).describe('Left out: when the last reading was taken'),
  seed: z.int().min(0).default(1).describe('The same seed has the same forecast'),
  members: z.int().min(40).max(1000).default(80),
  piece,
  smoker,
  stays: z
    .array(stay)
    .default([])
    .describe('What is done with it after it went in: wraps, moves, rests'),
  wraps: entry({ paper: z.exactOptional(ownWrap), foil: z.exactOptional(ownWrap) })
    .prefault({})
    .describe("The kitchen's own, in place of the usual"),
  targets: z.array(target).min(1),
  readings: z
    .array(entry({ at: timeSchema(), core: temperature(), by: z.enum(['probe', 'hand']) }))
    .default([]),
});

export type ForecastFile = Frozen<z.output<typeof forecastFileSchema>>;
export type SmokerInFile = ForecastFile['smoker'];
export type StayInFile = ForecastFile['stays'][number];

/** Reads what a forecast is asked of, or says all that is wrong with it at once. */
export const readForecastFile = (json: unknown): FileRead<ForecastFile> =>
  readEntry(forecastFileSchema, json);
