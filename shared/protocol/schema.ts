import { z } from 'zod';
import type {
  Celsius,
  CommandId,
  Instant,
  PersonId,
  ScreenId,
  Seconds,
  SlotId,
  SmokerId,
  StationId,
  TaskId,
} from '../kernel/index.ts';
import { type Face, NOTE_MAX, noteFault } from '../view/index.ts';
import { checks } from './check-schema.ts';
import { NAME_MAX, name, number, whole } from './fields.ts';
import { happenings } from './happening-schema.ts';
import type { Beat, CommandMessage, Hello, Question } from './messages.ts';

/** Most stations on one wall besides the first; nobody reads more. */
const STATIONS_MAX = 20;
/** Most loads one decision may move; a kitchen has fewer racks. */
const MOVES_MAX = 100;

/**
 * What the hub lets in, each message with its keys and no other. Made when asked for: a screen
 * takes types from this room and does not carry the parser.
 */
export function messageSchemas() {
  return {
    /** Of a hello of any version, what says whether the rest can be understood. */
    protocol: z.object({ protocol: z.int() }),
    hello: helloSchema(),
    command: commandSchema(),
    question: questionSchema(),
    beat: z.strictObject({ t0: z.number() }) satisfies z.ZodType<Beat>,
  };
}

function helloSchema(): z.ZodType<Hello> {
  const face: z.ZodType<Face> = z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('station'),
      station: name<StationId>(),
      beside: z.array(name<StationId>()).max(STATIONS_MAX).optional(),
      hand: name<PersonId>().optional(),
    }),
    z.strictObject({ kind: z.literal('smoker') }),
    z.strictObject({ kind: z.literal('pass') }),
    z.strictObject({ kind: z.literal('desk') }),
  ]);
  return z.strictObject({
    protocol: z.int(),
    screenId: name<ScreenId>(),
    face,
    token: z.string().max(NAME_MAX).optional(),
    epoch: z.string().max(NAME_MAX).optional(),
    seq: z.int().nonnegative().optional(),
    sounds: z.boolean().optional(),
  });
}

function questionSchema(): z.ZodType<Question> {
  return z.strictObject({
    kind: z.literal('ifMoved'),
    stay: name<TaskId>(),
    need: z.int().nonnegative(),
    to: name<SlotId>(),
  });
}

function commandSchema(): z.ZodType<CommandMessage> {
  const log = z.string().max(NAME_MAX);
  const head = {
    of: z.strictObject({ log, day: z.string().max(NAME_MAX).nullable() }).optional(),
    id: name<CommandId>(),
    personId: name<PersonId>().nullable(),
    screenId: name<ScreenId>().nullable(),
    tappedAt: whole<Instant>(),
  };
  const task = name<TaskId>();
  const move = z.strictObject({
    stay: name<TaskId>(),
    need: z.int().nonnegative(),
    to: name<SlotId>(),
  });
  const where = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('air'), smoker: name<SmokerId>() }),
    z.strictObject({ kind: z.literal('core'), stay: name<TaskId>() }),
  ]);
  return z.discriminatedUnion('kind', [
    ...happenings(head),
    ...checks(head),
    z.strictObject({ ...head, kind: z.literal('start'), task }),
    z.strictObject({ ...head, kind: z.literal('finish'), task }),
    z.strictObject({ ...head, kind: z.literal('takeBack'), task }),
    z.strictObject({ ...head, kind: z.literal('count'), task, done: z.int() }),
    z.strictObject({ ...head, kind: z.literal('late'), task, byS: whole<Seconds>() }),
    z.strictObject({ ...head, kind: z.literal('needHelp'), task }),
    z.strictObject({ ...head, kind: z.literal('helpCame'), task }),
    z.strictObject({ ...head, kind: z.literal('giveTo'), task, hand: name<PersonId>() }),
    z.strictObject({ ...head, kind: z.literal('reading'), where, tempC: number<Celsius>() }),
    z.strictObject({
      ...head,
      kind: z.literal('moveSlots'),
      moves: z.array(move).min(1).max(MOVES_MAX),
      basedOnSeq: z.int().nonnegative(),
    }),
    z.strictObject({
      ...head,
      kind: z.literal('note'),
      text: z
        .string()
        .trim()
        .refine((text) => noteFault(text) === null, {
          error: `a note of 1 to ${NOTE_MAX} letters, with no control characters`,
        }),
      task: task.nullable(),
    }),
  ]);
}
