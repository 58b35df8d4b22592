import { z } from 'zod';
import type { Frozen } from '../kernel/index.ts';
import { entry, idSchema, textSchema } from '../kernel/index.ts';
import type { PrintedShare, PrintedTemp, PrintedTime, PrintedWeight } from './printed.ts';
import { tableIds } from './tables.ts';

/**
 * What a food is to the rules. `roast` is a whole cut cooked by the roast table; `injected` stands
 * for needled, pressed and tumbled meat too; `poultry` for a bird that is neither chicken nor
 * turkey, or not known to be one of them.
 */
export const kinds = [
  'intact',
  'roast',
  'injected',
  'ground',
  'stuffed',
  'chicken',
  'turkey',
  'poultry',
  'fish',
  'plant',
] as const;
export type Kind = (typeof kinds)[number];

/**
 * How sure a figure is: read in its source, read in a copy, remembered, known among cooks and
 * nowhere printed.
 */
const sureness = z.enum([
  'primary',
  'secondary copy',
  'from memory',
  'common practice',
  'not filled in',
]);

/** What may be done when a row is broken; each row says which of these it allows. */
const correctiveAction = z.enum([
  'keep-cooking',
  'finish-at-full-temperature',
  'reheat-at-once',
  'chill-at-once',
  'pan-shallower',
  'ice-bath',
  'serve-now',
  'discard',
  'reject-delivery',
  'move-below',
  'load-apart',
  'wash-and-sanitise',
  'adjust-thermometer',
  'replace-thermometer',
  'probe-the-centre',
  'weigh-anew',
  'ask-the-authority',
]);
export type CorrectiveAction = z.output<typeof correctiveAction>;

/** Ways in which food is brought back to heat, each with its own row. */
const reheatWay = z.enum(['oven', 'microwave', 'sealed package', 'whole roast']);
export type ReheatWay = z.output<typeof reheatWay>;

/** What takes a kitchen out of the ordinary rules, so that the authority must agree beforehand. */
const processes = ['curing', 'smoking to preserve', 'additives to preserve', 'vacuum bag'] as const;
export type Process = (typeof processes)[number];

const cureMethods = [
  'comminuted',
  'pumped or immersed',
  'dry',
  'bacon, pumped',
  'bacon, immersed',
  'bacon, dry',
] as const;
export type CureMethod = (typeof cureMethods)[number];

const written = <Form extends string>(form: RegExp, example: string) => {
  const allowed = `an amount as its source prints it, such as "${example}"`;
  return z
    .string({ error: allowed })
    .regex(form, allowed)
    .transform((text) => text as Form);
};
const temp = written<PrintedTemp>(/^-?\d+(\.\d+)? (°F|°C)$/, '165 °F');
const time = written<PrintedTime>(/^(\d+(\.\d+)? (s|min|h|d)|<1 s)$/, '15 s');
const weight = written<PrintedWeight>(/^\d+(\.\d+)? (lb|kg)$/, '10 lb');
const share = written<PrintedShare>(/^\d+(\.\d+)? (ppm|%)$/, '200 ppm');

/** A temperature and how long it must last. */
const point = entry({ temp, time });
const points = z.array(point).min(1);

const oven = entry({
  heat: z.enum(['still, dry', 'convection', 'humid']),
  atLeast: z.exactOptional(temp),
  atMost: z.exactOptional(temp),
  pieceUnder: z.exactOptional(weight),
  pieceFrom: z.exactOptional(weight),
});

const cooling = entry({
  from: temp,
  stages: z
    .array(entry({ to: temp, within: time }))
    .min(1)
    .describe('Each `within` counts from the moment the food left `from`'),
});

const timeControl = entry({
  startAtMost: z.exactOptional(temp),
  startAtLeast: z.exactOptional(temp),
  neverAbove: z.exactOptional(temp),
  within: time,
});

const fatTable = entry({
  table: z.enum(tableIds),
  fatAtMost: z.exactOptional(share).describe('Left out for the column that also takes unknown fat'),
});

const anyOven = entry({ anyOven: z.literal(true) });

const row = <const R extends string, Limit extends z.ZodType, Which extends z.ZodRawShape>(
  rule: R,
  limit: Limit,
  which: Which,
) =>
  entry({
    ...which,
    id: idSchema<string>(),
    rule: z.literal(rule),
    section: z.string().describe('Where in the source it stands'),
    what: textSchema().describe('What is limited, without the figures: those are in the limit'),
    limit: z.nullable(limit).describe('null until the kitchen has filled it in'),
    appliesTo: z.union([z.literal('any'), z.array(z.enum(kinds)).min(1)]),
    severity: z.enum(['refuse', 'warn']),
    source: z.string().min(1),
    edition: z.string().min(1),
    sure: sureness,
    corrective: z.array(correctiveAction),
  });

const always = entry({ always: z.literal(true) });
const within = entry({ within: time });

/** A row, in the digits and units of its source. */
export const rowSchema = z.discriminatedUnion('rule', [
  row('end-temperature', entry({ anyOf: points }), {}),
  row('lethality', entry({ tables: z.array(fatTable).min(1) }), {}),
  row('roast-oven', z.union([entry({ ovens: z.array(oven).min(1) }), anyOven]), {}),
  row('come-up', entry({ from: temp, to: temp, within: time }), {}),
  row('probe-at-centre', always, {}),
  row('sample-interval', within, {}),
  row('first-heat', within, {}),
  row('receiving', entry({ atMost: temp }), {}),
  row('cold-hold', entry({ atMost: temp }), {}),
  row('hot-hold', entry({ atLeast: temp }), {}),
  row('hot-hold-roast', entry({ atLeast: temp }), {}),
  row('cooling', cooling, {}),
  row('cooling-from-ambient', cooling, {}),
  row('reheat', entry({ anyOf: points, within: z.exactOptional(time) }), { way: reheatWay }),
  row('out-of-temperature', entry({ above: temp, within: time }), {}),
  row('time-control', timeControl, {}),
  row('date-mark', entry({ within: time, at: temp }), {}),
  row('raw-above-ready', always, {}),
  row('raw-poultry-above', always, {}),
  row('clean-interval', within, {}),
  row('thermometer', entry({ within: temp }), { measures: z.enum(['food', 'air']) }),
  row('variance', always, { process: z.enum(processes) }),
  row('nitrite', entry({ atMost: share }), { method: z.enum(cureMethods) }),
  row('nitrite-at-least', entry({ atLeast: share }), {}),
]);

/** One limit: what it says, in the digits and units its source prints, and how sure that is. */
export type Row = Frozen<z.output<typeof rowSchema>>;
export type Rule = Row['rule'];
export type RowOf<R extends Rule> = Extract<Row, { readonly rule: R }>;
export type LimitOf<R extends Rule> = NonNullable<RowOf<R>['limit']>;
export type Point = Frozen<z.output<typeof point>>;
export type Sureness = z.output<typeof sureness>;
