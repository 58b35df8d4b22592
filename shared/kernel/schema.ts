import { z } from 'zod';
import { type FileFault, type FileRead, filePath, shown } from './fault.ts';
import { parseQuantity, type QuantityKind, quantityExample, quantityPattern } from './quantity.ts';
import { unknownWord } from './references.ts';
import { respelt } from './respelt.ts';
import type { Text } from './text.ts';

/** A parsed value as the rest of the code has it: nothing in it can be changed. */
export type Frozen<T> = T extends string | number | boolean | null | undefined
  ? T
  : T extends readonly (infer Item)[]
    ? readonly Frozen<Item>[]
    : { readonly [Key in keyof T]: Frozen<T[Key]> };

/** An object with these keys and no other. */
export function entry<Shape extends z.ZodRawShape>(shape: Shape) {
  const keys = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? keys : undefined),
  });
}

/** A short name that files and addresses can carry. */
export function idSchema<Id extends string>() {
  const allowed = 'a name of small letters, figures and hyphens, such as "spare-ribs"';
  return z
    .string({ error: allowed })
    .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, allowed)
    .transform((id) => id as Id);
}

/** A text for people, in English and where there is one in Spanish. */
export function textSchema() {
  const words = () => z.string().trim().min(1);
  return z
    .strictObject(
      { en: words(), es: z.exactOptional(words()) },
      {
        error: ({ code }) =>
          code === 'unrecognized_keys' ? 'en, es' : '{ "en": "…" }, and "es" beside it for Spanish',
      },
    )
    .transform((text): Text => text);
}

/** Where a file says which JSON Schema it keeps to, for the editor that it is written in. */
export function schemaLink() {
  return z.exactOptional(z.string()).describe('For the editor; not read here');
}

/** A wall-clock time, which may run on into the day after. */
export function clockSchema() {
  const allowed = 'a wall-clock time such as "17:00"; from "24:00" on it is the day after';
  return z.string({ error: allowed }).regex(/^([0-3]\d|4[0-7]):[0-5]\d$/, allowed);
}

/** An amount written with its unit; inside it is a number of the unit that `kind` names. */
export function quantitySchema<Amount extends number>(kind: QuantityKind) {
  const [what] = kind.split(/ in | of /);
  const allowed = `a ${what} such as ${quantityExample(kind)}`;
  return z
    .string({ error: allowed })
    .regex(quantityPattern(kind), { error: allowed, abort: true })
    .meta({ description: allowed })
    .transform((text) => parseQuantity(kind, text) as Amount);
}

/** An amount with its spread; `source` says where the figures come from. */
export function rangeSchema<Amount extends number>(kind: QuantityKind) {
  const amount = () => quantitySchema<Amount>(kind);
  return entry({
    low: amount(),
    typical: amount(),
    high: amount(),
    source: z.exactOptional(z.string()),
  }).refine(({ low, typical, high }) => low <= typical && typical <= high, {
    error: 'low, typical and high in rising order',
  });
}

/** Reads raw JSON by a schema, or says all that is wrong with it at once. */
export function readEntry<Schema extends z.ZodType>(
  schema: Schema,
  json: unknown,
): FileRead<z.output<Schema>> {
  const parsed = schema.safeParse(json, { error: allowedBy });
  if (parsed.success) return { ok: true, value: parsed.data };
  return { ok: false, problems: parsed.error.issues.flatMap((issue) => faultsOf(issue, json)) };
}

function faultsOf(issue: z.core.$ZodIssue, json: unknown): FileFault[] {
  const { path, message } = issue;
  const found = valueAt(json, path);
  if (issue.code === 'unrecognized_keys') {
    const allowed = message.split(', ');
    return issue.keys.map((key) => unknownWord([...path, key], key, allowed));
  }
  const words = wordsAllowed(issue);
  if (words && typeof found === 'string') return [unknownWord(path, found, words)];
  const likely = typeof found === 'string' ? likelySpelling(issue, found) : undefined;
  return [
    {
      path: filePath(path),
      found: shown(found),
      allowed: message,
      ...(likely === undefined ? {} : { meant: likely }),
    },
  ];
}

/** The same as it would be right, where only its spelling is wrong. */
function likelySpelling(issue: z.core.$ZodIssue, found: string): string | undefined {
  if (issue.code === 'custom') return issue.params?.['nearest']?.(found);
  if (issue.code !== 'invalid_format' || !issue.pattern) return undefined;
  const pattern = new RegExp(issue.pattern.replace(/^\/|\/$/g, ''));
  return respelt(found).find((spelling) => pattern.test(spelling));
}

/** The words of a closed list, where one of them was wanted. */
function wordsAllowed(issue: z.core.$ZodIssue): string[] | undefined {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  if (issue.code !== 'invalid_union' || !('options' in issue)) return undefined;
  return Array.isArray(issue.options) ? issue.options.map(String) : undefined;
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    json,
  );
}

const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list [ … ]',
  object: 'an object { … }',
  record: 'an object { … }',
};

/** What would have been right, in words; a schema that says it better itself goes before this. */
function allowedBy(issue: z.core.$ZodRawIssue): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      return kinds[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return `one of: ${issue.values.map(String).join(', ')}`;
    case 'invalid_union':
      return Array.isArray(issue['options']) ? `one of: ${issue['options'].join(', ')}` : undefined;
    case 'too_small':
      return issue.origin === 'number'
        ? `${issue.minimum} or more`
        : `at least ${issue.minimum} of it`;
    case 'too_big':
      return issue.origin === 'number'
        ? `${issue.maximum} or less`
        : `at most ${issue.maximum} of it`;
    default:
      return undefined;
  }
}
