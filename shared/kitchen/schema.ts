import { z } from 'zod';
import type {
  BenchId,
  CabinetId,
  Celsius,
  CoolerId,
  Frozen,
  Kilograms,
  Metres,
  PersonId,
  Seconds,
  SkillId,
  SlotId,
  SmokerId,
  StationId,
  StepId,
  ThermometerId,
} from '../kernel/index.ts';
import {
  clockSchema,
  entry,
  idSchema,
  isLocalDay,
  isZone,
  minutes,
  nearestZone,
  quantitySchema,
  schemaLink,
  textSchema,
  weekdays,
} from '../kernel/index.ts';

const rounds = () =>
  z
    .array(idSchema<StepId>())
    .default([])
    .describe('What is done to it on a beat while it is in use: rounds of the catalogue');
const length = () => quantitySchema<Metres>('length in metres');
const temperature = () => quantitySchema<Celsius>('temperature in degrees Celsius');

const rack = entry({
  label: z
    .exactOptional(z.string())
    .describe('How it is marked; left out: its number from the top'),
  length: length(),
  depth: length(),
  holds: quantitySchema<Kilograms>('weight in kilograms').describe('The most it may carry'),
  reads: z
    .exactOptional(temperature())
    .describe('How hot it is here while the smoker is set to its "whenSet"'),
}).transform(({ length, depth, holds, reads, ...rest }) => ({
  ...rest,
  lengthM: length,
  depthM: depth,
  holdsKg: holds,
  ...(reads === undefined ? {} : { readsC: reads }),
}));

const smoker = entry({
  id: idSchema<SmokerId>(),
  name: textSchema(),
  heat: z.enum(['below', 'above', 'side']).describe('Where the heat comes from'),
  air: z
    .exactOptional(z.enum(['draught', 'fan']))
    .describe(
      'How the air gets round in it; left out: by its draught. A fan carries about twice the heat' +
        ' to a surface (17 against 9 W/m²K, each within a third): forecasts begin from that',
    ),
  layout: z
    .enum(['stacked', 'turning', 'long'])
    .default('stacked')
    .describe('Racks above one another, racks that go round, or side by side in a long pit'),
  racks: z
    .array(rack)
    .min(1)
    .describe('From the top down, or from the hot end on; the first is slot 1'),
  whenSet: z
    .exactOptional(temperature())
    .describe('The set temperature that the readings of its racks were taken at'),
  coolest: temperature().describe('The lowest set temperature that it holds'),
  hottest: temperature().describe('The highest set temperature that it holds'),
  preheat: quantitySchema<Seconds>('duration in seconds').describe('From cold to ready'),
  change: quantitySchema<number>('heat rate in degrees Celsius per second').describe(
    'How fast it comes from one set temperature to another',
  ),
  rounds: rounds(),
})
  .refine(
    ({ racks, whenSet }) =>
      whenSet !== undefined || racks.every(({ readsC }) => readsC === undefined),
    { path: ['whenSet'], error: 'the set temperature that the racks were read at' },
  )
  .transform(({ racks, whenSet, coolest, hottest, preheat, change, ...rest }) => ({
    ...rest,
    racks: racks.map(({ readsC, ...rack }, index) => ({
      label: String(index + 1),
      ...rack,
      slot: `${rest.id}/${index + 1}` as SlotId,
      warmerK: readsC === undefined || whenSet === undefined ? 0 : readsC - whenSet,
    })),
    coolestC: coolest,
    hottestC: hottest,
    preheatS: preheat,
    changeCPerS: change,
  }));

/** Common practice, no source. */
const USUAL_WASH_S = minutes(10);

const station = entry({
  id: idSchema<StationId>(),
  name: textSchema(),
  benches: z.array(idSchema<BenchId>()).min(1).describe('The kinds of work done here'),
  pit: z.boolean().default(false).describe('Whether its work is shown on the smoker wall'),
  side: z.enum(['raw', 'clean']).describe('Raw hands touch no panel that clean hands touch'),
  tables: z.int().min(0).describe('How many can work here at once at a table of their own'),
  wash: z
    .exactOptional(quantitySchema<Seconds>('duration in seconds'))
    .describe('Washing and sanitizing a raw table between kinds of meat; left out: 10 min'),
  rounds: rounds(),
}).transform(({ wash, ...rest }) => ({ ...rest, washS: wash ?? USUAL_WASH_S }));

function withSetC<Thing extends { set?: Celsius }>({ set, ...rest }: Thing) {
  return { ...rest, setC: set ?? null };
}

const cabinet = entry({
  id: idSchema<CabinetId>(),
  name: textSchema(),
  pans: z.int().min(0).describe('Places for pans'),
  whole: z.int().min(0).describe('Places for wrapped whole pieces'),
  set: z.exactOptional(temperature()).describe('What it is set to, where it is known'),
  rounds: rounds(),
}).transform(withSetC);

const cooler = entry({
  id: idSchema<CoolerId>(),
  name: textSchema(),
  shelves: z.int().min(1),
  length: length(),
  depth: length(),
  set: z.exactOptional(temperature()).describe('What it is set to, where it is known'),
  rounds: rounds(),
})
  .transform(({ length, depth, ...rest }) => ({ ...rest, lengthM: length, depthM: depth }))
  .transform(withSetC);

const thermometer = entry({
  id: idSchema<ThermometerId>(),
  name: textSchema().describe('As it is marked'),
  station: idSchema<StationId>().describe('On whose wall its check stands'),
  measures: z.enum(['food', 'air']).default('food'),
});

const span = { from: clockSchema(), to: clockSchema() };

const workingDay = z
  .string()
  .refine((day) => (weekdays as readonly string[]).includes(day) || isLocalDay(day), {
    error: `a day such as "2026-11-25", or one of: ${weekdays.join(', ')}`,
  });

const shift = entry({
  on: z.array(workingDay).min(1).describe('Weekdays or dates'),
  ...span,
  breaks: z.array(entry(span)).default([]),
});

const person = entry({
  id: idSchema<PersonId>(),
  name: z.string().trim().min(1),
  language: z
    .exactOptional(z.enum(['en', 'es']))
    .describe('Of their own screen, and of the standards shown to them; left out: the screen’s'),
  trained: z.array(idSchema<SkillId>()).default([]).describe('Skills that need no help'),
  learning: z.array(idSchema<SkillId>()).default([]).describe('Skills that are being learned'),
  learningFactor: z
    .number()
    .min(1)
    .default(1.5)
    .describe('How many times as long a skill takes that is being learned'),
  shifts: z.array(shift),
});

export const kitchenSchema = entry({
  $schema: schemaLink(),
  name: z.string().trim().min(1),
  limits: z.string().default('food-code').describe('The profile of limits that plans are held to'),
  zone: z.string().refine(isZone, {
    error: 'a time zone such as "America/Chicago"',
    params: { nearest: nearestZone },
  }),
  units: entry({
    temperature: z.enum(['°F', '°C']),
    weight: z.enum(['lb', 'kg']),
    clock: z.enum(['12 h', '24 h']),
  }),
  languages: z
    .array(z.enum(['en', 'es']))
    .min(1)
    .describe('The first is the usual one'),
  stations: z.array(station).min(1),
  smokers: z.array(smoker).min(1),
  cabinets: z.array(cabinet),
  coolers: z.array(cooler),
  thermometers: z
    .exactOptional(z.array(thermometer))
    .describe('Those that are carried about: each is checked once a day in ice water'),
  variances: z
    .exactOptional(
      z.array(
        entry({
          for: z.literal('curing'),
          granted: z.string().trim().min(1).describe('By whom and when, as the letter says'),
        }),
      ),
    )
    .describe('What the authority has agreed to: no plan cures anything without it'),
  crew: z.array(person).min(1),
}).transform(({ $schema: _link, ...kitchen }) => kitchen);

/** A kitchen: what it has and who works in it. */
export type Kitchen = Frozen<z.output<typeof kitchenSchema>>;
export type Smoker = Kitchen['smokers'][number];
export type Rack = Smoker['racks'][number];
export type Station = Kitchen['stations'][number];
export type Cooler = Kitchen['coolers'][number];
export type CrewMember = Kitchen['crew'][number];
export type Shift = CrewMember['shifts'][number];
