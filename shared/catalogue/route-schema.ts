import { z } from 'zod';
import type {
  BenchId,
  Celsius,
  CutId,
  Frozen,
  Kilograms,
  Metres,
  MixId,
  RouteId,
  Seconds,
  SkillId,
  StepId,
} from '../kernel/index.ts';
import { entry, idSchema, quantitySchema, textSchema } from '../kernel/index.ts';
import { checkSchema, timeSchema } from './work-schema.ts';

const duration = () => quantitySchema<Seconds>('duration in seconds');

const condition = {
  when: z
    .exactOptional(z.record(z.string(), z.array(z.string()).min(1)))
    .describe('Only if each of these choices falls on one of these options'),
};

const choice = entry({
  id: idSchema<string>(),
  name: textSchema(),
  usual: idSchema<string>().describe('The option that is taken where a cook plan says nothing'),
  usualWhen: z
    .exactOptional(z.array(entry({ ...condition, usual: idSchema<string>() })))
    .describe('Other usual options, the first that fits; of choices that are listed before'),
  options: z
    .array(
      entry({
        id: idSchema<string>(),
        name: textSchema(),
        reason: textSchema().describe('Why one would, in one line'),
        as: z
          .exactOptional(idSchema<CutId>())
          .describe('The cut that it then is: other pieces, yields and tubs'),
      }),
    )
    .min(2),
});

const moment = entry({ step: idSchema<StepId>(), end: z.enum(['start', 'end']) });
const spans = entry({ from: moment, to: moment });

const keep = z.discriminatedUnion('in', [
  entry({ in: z.literal('cooler') }),
  entry({ in: z.literal('cabinet, whole') }),
  entry({
    in: z.literal('cabinet, in pans'),
    panHolds: quantitySchema<Kilograms>('weight in kilograms'),
  }).transform(({ in: place, panHolds }) => ({ in: place, panHoldsKg: panHolds })),
]);

const pans = entry({
  length: quantitySchema<Metres>('length in metres'),
  width: quantitySchema<Metres>('length in metres'),
  holds: quantitySchema<Kilograms>('weight in kilograms'),
}).transform(({ length, width, holds }) => ({ lengthM: length, widthM: width, holdsKg: holds }));

/** What every step says, whatever its work. */
const common = {
  id: idSchema<StepId>(),
  title: textSchema().describe('Imperative, verb and cut: "Square spare ribs"'),
  short: z
    .exactOptional(textSchema())
    .describe('The same as a noun in a word or two, for use inside a sentence: "squaring"'),
  mind: z.exactOptional(textSchema()).describe('The one thing to mind'),
  caution: z.exactOptional(textSchema()).describe('Where it can hurt someone'),
  bench: idSchema<BenchId>().describe('The kind of working place on whose wall it is shown'),
  ...condition,
  after: z
    .exactOptional(z.array(idSchema<StepId>()))
    .describe('Steps that must have ended; left out: the one listed before'),
  leaves: z
    .exactOptional(z.enum(['trimmed', 'cooked', 'served']))
    .describe('What the meat is from its end on'),
  makes: z
    .exactOptional(z.enum(['injected', 'ground', 'stuffed']))
    .describe('What it is to the limits from its start on; left out: as it was'),
};

const hands = entry({
  work: z.literal('hands'),
  ...common,
  time: timeSchema,
  hands: z.int().min(1).default(1).describe('How many it takes at once'),
  skill: z.exactOptional(idSchema<SkillId>()),
  table: z.boolean().default(false).describe('Whether it takes a table of its station'),
  mix: z.exactOptional(idSchema<MixId>()).describe('What is weighed out or put on'),
  check: z.exactOptional(checkSchema),
  wraps: z.exactOptional(z.enum(['paper', 'foil'])).describe('What it puts round the pieces'),
  piece: z
    .exactOptional(entry({ one: textSchema(), many: textSchema() }))
    .describe('What one is called in the hand here; left out: as its cut has it'),
  byWeight: z
    .exactOptional(z.literal(true))
    .describe('What is in the hand has no pieces to count: ground meat, slaw'),
});

const fire = entry({ work: z.literal('fire'), ...common, time: timeSchema });

const wait = entry({
  work: z.literal('wait'),
  ...common,
  atLeast: duration(),
  usual: z
    .exactOptional(duration())
    .describe('As long as a plan leaves for it, so that there is time in hand; left out: atLeast'),
  atMost: duration(),
  keep: z.exactOptional(keep).describe('What it takes up meanwhile'),
  spans: z
    .exactOptional(spans)
    .describe('Left out: from the end of the step before to the start of the step after'),
})
  .refine(({ atLeast, usual = atLeast, atMost }) => atLeast <= usual && usual <= atMost, {
    error: 'atLeast, usual and atMost in rising order',
  })
  .transform(({ atLeast, usual, atMost, ...step }) => ({
    ...step,
    atLeastS: atLeast,
    usualS: usual ?? atLeast,
    atMostS: atMost,
  }));

const place = entry({
  work: z.literal('place'),
  ...common,
  set: quantitySchema<Celsius>('temperature in degrees Celsius').describe('Of the smoker'),
  pans: z.exactOptional(pans).describe('Lies in pans; left out: piece by piece'),
  piece: z
    .exactOptional(entry({ one: textSchema(), many: textSchema() }))
    .describe(
      'What one is called on a rack, where no title is beside it; left out: pan, or its cut',
    ),
  spans,
}).transform(({ set, ...step }) => ({ ...step, setC: set }));

const serve = entry({
  work: z.literal('serve'),
  ...common,
  ahead: z
    .exactOptional(duration())
    .describe('So long before its first portion is needed a plan has it ready, where it can'),
}).transform(({ ahead, ...step }) => ({ ...step, aheadS: ahead ?? (0 as Seconds) }));

const limit = entry({
  ...condition,
  from: moment,
  to: moment,
  atMost: duration(),
  reason: z.enum(['quality', 'safety']),
  rule: z
    .exactOptional(z.enum(['out-of-temperature', 'cooling', 'reheat', 'time-control']))
    .describe('Which rule of the profile of limits it must lie within'),
  source: z.exactOptional(z.string()),
}).transform(({ atMost, ...rest }) => ({ ...rest, atMostS: atMost }));

export const routeSchema = entry({
  id: idSchema<RouteId>(),
  name: textSchema(),
  cut: idSchema<CutId>(),
  choices: z.array(choice),
  steps: z.array(z.discriminatedUnion('work', [hands, fire, wait, place, serve])).min(1),
  limits: z.array(limit).describe('Longest times from one moment to another'),
});

/** The way of a cut from the cooler to the plate. */
export type Route = Frozen<z.output<typeof routeSchema>>;
/** A longest time from one moment to another. */
export type RouteLimit = Route['limits'][number];
export type Choice = Route['choices'][number];
export type Step = Route['steps'][number];
export type StepOf<Kind extends Step['work']> = Extract<Step, { readonly work: Kind }>;
/** The start or the end of a step. */
export type Moment = Frozen<z.output<typeof moment>>;
